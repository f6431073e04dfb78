package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.demo.made.PageRead.Line;
import dev.placket.demo.made.PaintedPaths.Stroked;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How the drawings of the demo pack stand: level, in their scales, filling their room, with air.
 */
class LookViewsTest {
  private static final String PAPERS = "dev.placket.demo.made.MadePack#papers";
  private static final double MM = 25.4 / 72;

  /**
   * In the drawings of both views the points of the shoulders are 470 mm of the garment apart and
   * at one height: the ends of the path that begins at 532,56 and of its counterpart.
   */
  private static final double SHOULDERS = 470;

  @ParameterizedTest
  @MethodSource(PAPERS)
  void viewsStandLevelOnTheShouldersInTheirScales(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    for (String id : List.of("flats", "measurements")) {
      int sheet = made.sheet(id);
      double[] front = shoulders(made, sheet, 0);
      double[] back = shoulders(made, sheet, 1);
      double scale = front[0] / SHOULDERS;
      System.out.printf(
          Locale.ROOT,
          "%s, row 5: %s: shoulders at %.3f and %.3f mm, scales 1:%.3f and 1:%.3f%n",
          paper,
          id,
          front[1],
          back[1],
          1 / scale,
          SHOULDERS / back[0]);
      assertEquals(front[1], back[1], 0.2, id + ": level");
      // Both views are at the front's scale on these sheets.
      assertEquals(1, back[0] / front[0], 0.001, id + ": scales");
      double stated = made.placements(sheet).get(0).path("garmentScale").asDouble();
      assertEquals(stated, scale, 0.001 * scale, id + ": the stated scale");
    }
    double printed = shoulders(made, made.sheet("flats"), 0)[0];
    assertEquals(SHOULDERS / 10, printed, 0.001 * printed, "1:10, with room for its labels");
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void roundScalesAreWhatTheySay(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    for (String id : List.of("details", "label")) {
      int sheet = made.sheet(id);
      List<JsonNode> placements = made.placements(sheet);
      PageRead page = PageRead.of(made.pdf(), sheet);
      for (JsonNode p : placements) {
        double under = 1 / p.path("garmentScale").asDouble();
        String note = "1:" + (under % 1 > 0.4 && under % 1 < 0.6 ? "2.5" : Math.round(under));
        assertTrue(page.words().stream().anyMatch(w -> w.text().equals(note)), id + ": " + note);
        double said = Double.parseDouble(note.substring(2));
        assertEquals(said, under, 0.001 * said, p.path("flat").asText());
      }
    }
  }

  /** Common practice: what is only looked at has no scale that could be measured by. */
  @ParameterizedTest
  @MethodSource(PAPERS)
  void noScaleStandsUnderColouredDrawingsAndSteps(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    for (String id : List.of("colourways", "packing")) {
      PageRead page = PageRead.of(made.pdf(), made.sheet(id));
      assertTrue(page.words().stream().noneMatch(w -> w.text().matches("1:[0-9.]+")), id);
    }
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void viewsFillTheirWindows(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    for (String id : List.of("flats", "inside", "colourways", "measurements")) {
      int sheet = made.sheet(id);
      Rectangle2D window = Figures.stated(made.sheets().get(sheet).path("windows").get(0));
      Rectangle2D all = null;
      List<JsonNode> placements = made.placements(sheet);
      List<Rectangle2D> ink = Figures.ink(made, sheet);
      for (int i = 0; i < ink.size(); i++) {
        String role = placements.get(i).path("role").asText();
        if (Set.of("front", "back", "inside").contains(role)) {
          all = all == null ? ink.get(i) : all.createUnion(ink.get(i));
          for (JsonNode callout : placements.get(i).path("callouts")) {
            all = all.createUnion(Figures.stated(callout.path("label")));
          }
        }
      }
      double across = all.getWidth() / window.getWidth();
      double down = all.getHeight() / window.getHeight();
      System.out.printf(
          Locale.ROOT,
          "%s, row 6: %s: views fill %.0f %% of the width, %.0f %% of the height%n",
          paper,
          id,
          100 * across,
          100 * down);
      assertTrue(Math.max(across, down) >= 0.85, id);
    }
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void inkKeepsAwayFromRules(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    double least = Double.POSITIVE_INFINITY;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      List<Line> lines = PageRead.of(made.pdf(), sheet).lines();
      for (Rectangle2D ink : Figures.ink(made, sheet)) {
        for (Line line : lines) {
          least = Math.min(least, apart(ink, line.ink()));
        }
      }
    }
    System.out.printf(Locale.ROOT, "%s, row 7: ink at least %.3f mm from any rule%n", paper, least);
    assertTrue(least >= 3 - 0.002, "ink " + least + " mm from a rule");
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void frontAndBackStandEightToFifteenApart(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    for (String id : List.of("flats", "measurements")) {
      List<Rectangle2D> ink = Figures.ink(made, made.sheet(id));
      double gap = ink.get(1).getMinX() - ink.get(0).getMaxX();
      System.out.printf(Locale.ROOT, "%s, row 7: %s: front to back %.2f mm%n", paper, id, gap);
      assertTrue(gap >= 8 - 0.002 && gap <= 15, id + ": " + gap);
    }
  }

  /** How far the points of the shoulders are apart, and how high they are, in millimetres. */
  private static double[] shoulders(MadePack made, int sheet, int flat) throws Exception {
    double height = made.sheets().get(sheet).path("paper").path("height").asDouble();
    List<Stroked> strokes = PaintedPaths.figures(made.pdf(), sheet).get(flat).strokes();
    java.nio.file.Path svg =
        made.folder().resolve("flats/" + made.placements(sheet).get(flat).path("source").asText());
    int index = -1;
    List<java.awt.Shape> drawn = DrawnPaths.stroked(svg);
    for (int i = 0; i < drawn.size(); i++) {
      double[][] p = DrawnPaths.points(drawn.get(i));
      if (p[0].length == 4 && p[0][0] == 532 && p[1][0] == 56) {
        index = i;
        break;
      }
    }
    double[][] left = DrawnPaths.points(strokes.get(circlesBefore(index, strokes, drawn)).path());
    double[][] right =
        DrawnPaths.points(strokes.get(circlesBefore(index, strokes, drawn) + 1).path());
    double apart = Math.abs(left[0][3] - right[0][3]) * MM;
    return new double[] {apart, (height - left[1][3] / 1) * MM};
  }

  /** Paths before the shoulders: no circle comes before them in these drawings. */
  private static int circlesBefore(int index, List<Stroked> strokes, List<java.awt.Shape> drawn) {
    assertTrue(index >= 0 && index + 1 < strokes.size() && !drawn.isEmpty());
    return index;
  }

  private static double apart(Rectangle2D a, Rectangle2D b) {
    double x = Math.max(b.getMinX() - a.getMaxX(), a.getMinX() - b.getMaxX());
    double y = Math.max(b.getMinY() - a.getMaxY(), a.getMinY() - b.getMaxY());
    return Math.max(x, y);
  }
}
