package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.demo.made.PageRead.Line;
import dev.placket.demo.made.PageRead.Words;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The ruling of the demo pack: frame 0.5 mm, cells 0.25, rows of tables 0.18 (the steps of ISO
 * 128), every edge drawn once, header and foot in one place on all sheets. The measures are the
 * house's own for a sheet that is trusted at first glance; rings and leaders of callouts are not
 * drawn yet.
 */
class LookRulesTest {
  private static final String PAPERS = "dev.placket.demo.made.MadePack#papers";

  /** Millimetres; coordinates are written in five decimals of a point. */
  private static final double WRITTEN = 1e-3;

  @ParameterizedTest
  @MethodSource(PAPERS)
  void frameCellsAndRowsHaveTheirWidths(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    Set<String> widths = new TreeSet<>();
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      Rectangle2D frame = inside(made.sheets().get(sheet));
      int sides = 0;
      for (Line line : PageRead.of(made.pdf(), sheet).lines()) {
        widths.add(String.format(Locale.ROOT, "%.3f", line.width()));
        boolean side = line.width() > 0.4;
        sides += side ? 1 : 0;
        if (side) {
          double near = line.upright() ? frame.getMinX() : frame.getMinY();
          double far = line.upright() ? frame.getMaxX() : frame.getMaxY();
          double off = Math.min(Math.abs(line.at() - near), Math.abs(line.at() - far));
          assertEquals(0, off, WRITTEN, "a side of the frame on the margin");
        }
      }
      assertEquals(4, sides, "the frame's sides");
    }
    System.out.println(paper + ", row 1: rules of " + widths + " mm");
    assertEquals(Set.of("0.180", "0.250", "0.500"), widths);
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void aSharedEdgeIsDrawnOnce(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    double nearest = Double.POSITIVE_INFINITY;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      List<Line> lines = PageRead.of(made.pdf(), sheet).lines();
      for (int i = 0; i < lines.size(); i++) {
        for (int j = i + 1; j < lines.size(); j++) {
          Line a = lines.get(i);
          Line b = lines.get(j);
          double both = Math.min(a.end(), b.end()) - Math.max(a.start(), b.start());
          // More than the width of a frame in common: not just a corner.
          if (a.upright() == b.upright() && both > 0.6) {
            nearest = Math.min(nearest, Math.abs(a.at() - b.at()));
          }
        }
      }
    }
    System.out.printf(
        Locale.ROOT, "%s, row 1: parallel rules at least %.2f mm apart%n", paper, nearest);
    assertTrue(nearest > 1, "two rules on one edge, or so close that they run together");
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void headerAndFootStandInOnePlace(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    List<Line> first = new ArrayList<>();
    List<String> captions = new ArrayList<>();
    double most = 0;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      JsonNode said = made.sheets().get(sheet);
      double header = bottom(said, "header kind");
      double foot = top(said, "foot print");
      PageRead page = PageRead.of(made.pdf(), sheet);
      List<Line> ruled =
          page.lines().stream()
              .filter(l -> l.upright() ? l.end() < header + 1 || l.start() > foot - 1 : true)
              .filter(l -> l.upright() || l.at() < header + 0.1 || l.at() > foot - 0.1)
              .toList();
      List<Words> words =
          page.words().stream()
              .filter(w -> w.baseline() < header || w.baseline() > foot)
              .filter(w -> !w.text().matches("\\d+ of \\d+") && w.em() < 4.9)
              .toList();
      List<String> placed =
          words.stream()
              .map(
                  w -> String.format(Locale.ROOT, "%s %.1f %.1f", w.text(), w.left(), w.baseline()))
              .toList();
      if (sheet == 0) {
        first.addAll(ruled);
        captions.addAll(placed);
      }
      assertEquals(captions, placed, "sheet " + (sheet + 1));
      assertEquals(first.size(), ruled.size(), "rules of header and foot on sheet " + (sheet + 1));
      for (int i = 0; i < ruled.size(); i++) {
        most = Math.max(most, first.get(i).from().distance(ruled.get(i).from()));
        most = Math.max(most, first.get(i).to().distance(ruled.get(i).to()));
      }
    }
    System.out.printf(
        Locale.ROOT, "%s, row 2: header and foot differ by at most %.4f mm%n", paper, most);
    assertTrue(captions.size() > 20, "captions and values are compared");
    assertTrue(most <= 0.1, "header and foot move by " + most + " mm");
  }

  private static double bottom(JsonNode sheet, String cell) {
    return box(sheet, cell).getMaxY();
  }

  private static double top(JsonNode sheet, String cell) {
    return box(sheet, cell).getMinY();
  }

  private static Rectangle2D box(JsonNode sheet, String cell) {
    for (JsonNode c : sheet.path("labelledCells")) {
      if (c.path("name").asText().equals(cell)) {
        return Figures.stated(c);
      }
    }
    throw new AssertionError("no cell " + cell);
  }

  /** What margins of 10 mm leave of the paper. */
  private static Rectangle2D inside(JsonNode sheet) {
    double mm = 25.4 / 72;
    double width = sheet.path("paper").path("width").asDouble() * mm;
    double height = sheet.path("paper").path("height").asDouble() * mm;
    return new Rectangle2D.Double(10, 10, width - 20, height - 20);
  }
}
