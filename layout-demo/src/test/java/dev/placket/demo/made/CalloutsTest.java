package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Callouts on finished pages: where poppler sees their leaders, and what they keep clear of. */
class CalloutsTest {
  private static final double PER_INCH = 200;

  @TempDir private Path dir;

  private Run fit(String garment, int count, String leaders) throws Exception {
    MadeSheet made = MadeSheet.of(garment);
    Random random = new Random(count);
    StringBuilder text = new StringBuilder();
    text.append("format: placket-pack/1\npaper: A3\nsheets:\n  flat:\n    name: Flat sheet\n");
    text.append("    areas: [views]\n    windows: {views: }\n    leaders: " + leaders + "\n");
    text.append("    flats:\n");
    for (String role : List.of("front", "back")) {
      Path svg = made.folder().resolve(role + ".svg");
      Files.copy(svg, dir.resolve(role + ".svg"));
      InkedBox ink = PictureReader.read(PictureSource.of(svg), ReadLimits.DEFAULT).inkedBox();
      text.append("      " + role + ":\n        file: " + role + ".svg\n        role: " + role);
      StringBuilder callouts = new StringBuilder("\n        callouts:\n");
      text.append("\n        points:\n");
      for (int i = 0; i < count; i++) {
        double x = ink.left() + ink.width() * (0.15 + 0.7 * random.nextDouble());
        double y = ink.top() + ink.height() * (i + 0.2 + 0.6 * random.nextDouble()) / count;
        String id = role.substring(0, 1) + i;
        text.append(String.format(Locale.ROOT, "          p%s: {x: %.4f, y: %.4f}%n", id, x, y));
        String words = i % 3 == 0 ? "Topstitched twice, 6 apart" : "Note of the seam " + i;
        String mark = i % 2 == 0 ? ", mark: " + (i + 1) : "";
        callouts.append(
            "          " + id + ": {point: p" + id + ", text: '" + words + "'" + mark + "}\n");
      }
      text.append(callouts);
    }
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(pack, text);
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--json");
  }

  private static double[] points(JsonNode line) {
    double[] xy = new double[2 * line.size()];
    for (int i = 0; i < line.size(); i++) {
      xy[2 * i] = line.get(i).path("x").asDouble();
      xy[2 * i + 1] = line.get(i).path("y").asDouble();
    }
    return xy;
  }

  private static boolean crosses(double[] a, double[] b) {
    for (int i = 2; i < a.length; i += 2) {
      for (int j = 2; j < b.length; j += 2) {
        if (Line2D.linesIntersect(
            a[i - 2], a[i - 1], a[i], a[i + 1], b[j - 2], b[j - 1], b[j], b[j + 1])) {
          return true;
        }
      }
    }
    return false;
  }

  @ParameterizedTest
  @CsvSource({
    "noble,4,auto",
    "noble,8,inclined",
    "noble,15,auto",
    "aaron,4,straight",
    "aaron,8,auto",
    "aaron,15,straight",
    "huey,8,auto",
    "jane,15,auto"
  })
  void leadersAreDarkOnThePageAndCrossNothing(String garment, int count, String leaders)
      throws Exception {
    Run run = fit(garment, count, leaders);
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    assertEquals(List.of(), FitSchema.errors(run.out()));
    BufferedImage page = page();
    JsonNode sheet = new ObjectMapper().readTree(run.out()).path("sheets").get(0);
    List<double[]> lines = new ArrayList<>();
    int callouts = 0;
    for (JsonNode flat : sheet.path("placements")) {
      for (JsonNode callout : flat.path("callouts")) {
        double[] line = points(callout.path("leader"));
        assertEquals(callout.path("x").asDouble(), line[0], 1e-5);
        assertEquals(callout.path("y").asDouble(), line[1], 1e-5);
        double dark = darkShare(page, line);
        assertTrue(dark > 0.97, callout.path("callout").asText() + ": " + dark);
        for (double[] other : lines) {
          assertFalse(crosses(line, other), callout.path("callout").asText());
        }
        lines.add(line);
        callouts++;
      }
    }
    assertEquals(2 * count, callouts);
  }

  /** The share of spots along a line that have a dark pixel within one pixel. */
  private static double darkShare(BufferedImage page, double[] line) {
    int dark = 0;
    int all = 0;
    for (int i = 2; i < line.length; i += 2) {
      double length = Math.hypot(line[i] - line[i - 2], line[i + 1] - line[i - 1]);
      for (double at = 1; at < length - 1; at += 0.5) {
        double t = at / length;
        double x = (line[i - 2] + t * (line[i] - line[i - 2])) * PER_INCH / 72;
        double y = (line[i - 1] + t * (line[i + 1] - line[i - 1])) * PER_INCH / 72;
        boolean found = false;
        for (int dx = -1; dx <= 1; dx++) {
          for (int dy = -1; dy <= 1; dy++) {
            int px = Math.min(page.getWidth() - 1, Math.max(0, (int) Math.floor(x) + dx));
            int py = Math.min(page.getHeight() - 1, Math.max(0, (int) Math.floor(y) + dy));
            found |= (page.getRGB(px, py) & 255) < 170;
          }
        }
        dark += found ? 1 : 0;
        all++;
      }
    }
    return all == 0 ? 1 : dark / (double) all;
  }

  private Run plain(String callouts) throws Exception {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
            + "<rect x='0' y='0' width='100' height='100' fill='none' stroke='#999'"
            + " stroke-width='0.1'/></svg>");
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        sheets:
          flat:
            name: Flat
            areas: [views]
            windows: {views: }
            flats:
              front:
                file: front.svg
                role: front
                points: {a: {x: 30, y: 20}, b: {x: 70, y: 60}, c: {x: 40, y: 80}, n: {x: 32, y: 20}}
                callouts: {%s}
        """
            .formatted(callouts));
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--json", "--overwrite");
  }

  private BufferedImage page() throws Exception {
    Poppler.run(
        dir,
        "pdftoppm",
        "-r",
        "" + PER_INCH,
        "-gray",
        "-png",
        "-singlefile",
        dir.resolve("out/pack.pdf").toString(),
        dir.resolve("page").toString());
    return ImageIO.read(new File(dir.resolve("page") + ".png"));
  }

  /** A note of two spots, and a ring whose radius is a quarter of the view. */
  @Test
  void severalLeadersAndRingsAreOnThePage() throws Exception {
    Run run =
        plain(
            "darts: {point: [a, b], text: Darts, end: arrow},"
                + " pocket: {point: c, mark: D1, region: 18}");
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), FitSchema.errors(run.out()));
    BufferedImage page = page();
    JsonNode placed =
        new ObjectMapper().readTree(run.out()).path("sheets").get(0).path("placements").get(0);
    JsonNode callouts = placed.path("callouts");
    assertEquals(3, callouts.size());
    assertEquals(callouts.get(0).path("label"), callouts.get(1).path("label"));
    for (JsonNode callout : callouts) {
      assertTrue(darkShare(page, points(callout.path("leader"))) > 0.97, callout.toString());
    }
    JsonNode ringed = callouts.get(2);
    double scale = placed.path("scale").asDouble();
    double radius = ringed.path("ring").asDouble();
    assertEquals(18 * scale, radius, 1e-5);
    double[] start = points(ringed.path("leader"));
    double x = ringed.path("x").asDouble();
    double y = ringed.path("y").asDouble();
    assertEquals(radius, Math.hypot(start[0] - x, start[1] - y), 1e-5);
    double[] circle = new double[2 * 73];
    for (int i = 0; i <= 72; i++) {
      circle[2 * i] = x + radius * Math.cos(Math.toRadians(5 * i));
      circle[2 * i + 1] = y + radius * Math.sin(Math.toRadians(5 * i));
    }
    assertTrue(darkShare(page, circle) > 0.97);
    // No dot in the middle of a ring; an arrowhead is dark 1.5 mm from its tip.
    assertEquals(0, darkShare(page, new double[] {x - 5, y, x + 5, y}));
    double[] dart = points(callouts.get(0).path("leader"));
    double length = Math.hypot(dart[2] - dart[0], dart[3] - dart[1]);
    double along = 1.5 * 72 / 25.4;
    double aside = 0.26 * along - 0.6;
    double atX = dart[0] + (dart[2] - dart[0]) / length * along;
    double atY = dart[1] + (dart[3] - dart[1]) / length * along;
    double toX = -(dart[3] - dart[1]) / length * aside;
    double toY = (dart[2] - dart[0]) / length * aside;
    double[] within = {atX - toX, atY - toY, atX + toX, atY + toY};
    assertEquals(1, darkShare(page, within));
  }

  /** Two of 100 units are 1.8 mm, a dot and a gap, from 90 mm on. */
  @Test
  void spotsThatWouldTouchRaiseTheLeastSize() throws Exception {
    String pair = "d: {point: a, mark: 1}, e: {point: n, mark: 2}";
    Run wide = plain(pair);
    assertEquals(0, wide.code(), wide.err());
    Path pack = dir.resolve("pack.yaml");
    String small = "role: front\n        greatest: 89mm";
    String text = Files.readString(pack).replace("role: front", small);
    Files.writeString(pack, text);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
    assertEquals(4, run.code(), run.err());
    assertTrue(run.err().contains("no room for the callouts of front"), run.err());
    Files.writeString(pack, text.replace("89mm", "91mm"));
    assertEquals(0, Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite").code());
  }

  @Test
  void aRingBeyondTheDrawingAndAPointTwiceAreRefused() throws Exception {
    Run beyond = plain("pocket: {point: c, mark: D1, region: 20.5}");
    assertEquals(2, beyond.code(), beyond.err());
    assertTrue(beyond.err().contains("line 12, column 57"), beyond.err());
    assertTrue(beyond.err().contains("at most 20.00 around this point"), beyond.err());
    Run twice = plain("darts: {point: [a, a], text: Darts}");
    assertEquals(2, twice.code(), twice.err());
    assertTrue(twice.err().contains("the point 'a' twice"), twice.err());
    Run none = plain("darts: {point: [], text: Darts}");
    assertEquals(2, none.code(), none.err());
    assertTrue(none.err().contains("no point; expected one or more points"), none.err());
    Run end = plain("darts: {point: a, text: Darts, end: cross}");
    assertEquals(2, end.code(), end.err());
    assertTrue(end.err().contains("the end of a leader"), end.err());
  }

  @Test
  void tooManyCalloutsAndUnknownWordsAreOneMessage() throws Exception {
    Run many = fit("noble", 41, "auto");
    assertEquals(2, many.code());
    assertTrue(many.err().contains("41 callouts of one flat; expected at most 40"), many.err());
    Files.delete(dir.resolve("front.svg"));
    Files.delete(dir.resolve("back.svg"));
    Run sideways = fit("noble", 2, "sideways");
    assertEquals(2, sideways.code());
    assertTrue(sideways.err().contains("sideways"), sideways.err());
  }

  @Test
  void calloutsWithoutRoomAreNamedWithACure() throws Exception {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90'>"
            + "<path id='hem' d='M9 9H80V80H9Z'/></svg>");
    Path pack = dir.resolve("pack.yaml");
    // 60 by 70 mm with margins of 10: the square of 40 mm fits, a label beside it does not.
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        paper: {width: 70mm, height: 80mm}
        margins: 10mm
        sheets:
          flat:
            name: Flat
            areas: [views]
            windows: {views: }
            flats:
              front:
                file: front.svg
                role: front
                callouts: {c: {point: hem, text: A hem that is turned twice}}
        """);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(4, run.code(), run.err());
    assertTrue(run.err().contains("no room for the callouts of front"), run.err());
    assertTrue(run.err().contains("set 'leaders: none'"), run.err());
  }

  /** A part of the drawing that the view cuts off is no spot that anybody sees. */
  @Test
  void aSpotBesideTheDrawingIsRefused() throws Exception {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90'>"
            + "<path d='M9 9H80V80H9Z'/><path id='far' d='M500 500H510V505Z'/></svg>");
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        sheets:
          flat:
            name: Flat
            areas: [views]
            windows: {views: }
            flats:
              front:
                file: front.svg
                role: front
                callouts: {c: {point: far, text: Far}}
        """);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains("line 11, column"), run.err());
    assertTrue(run.err().contains("a point beside what is drawn"), run.err());
  }

  private Run flats(int count, String each) throws IOException {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90'>"
            + "<path id='hem' d='M9 9H80V80H9Z' fill='none' stroke='#000'/></svg>");
    StringBuilder text = new StringBuilder("format: placket-pack/1\npaper: A3\nsheets:\n");
    text.append(
        "  flat:\n    name: Flat\n    areas: [views]\n    windows: {views: }\n    flats:\n");
    for (int i = 0; i < count; i++) {
      text.append(
          "      f%d: {file: front.svg, role: detail%s}\n".formatted(i, each.replace("#", "" + i)));
    }
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(pack, text);
    return Run.of("fit", pack, "--out", dir.resolve("out"));
  }

  /** Six labels of 2.5 mm with gaps are taller than a drawing of 20 mm. */
  @Test
  void labelsTallerThanTheLargestDrawingAreNamedWithACure() throws Exception {
    StringBuilder callouts = new StringBuilder();
    for (int i = 0; i < 12; i++) {
      callouts.append(i == 0 ? "" : ", ").append("c#x" + i + ": {point: hem, text: Hem}");
    }
    Run run = flats(1, ", greatest: 20mm, callouts: {" + callouts + "}");
    assertEquals(4, run.code(), run.err());
    assertTrue(run.err().contains("no room for the callouts of f0"), run.err());
  }

  /**
   * Twelve spots near the right edge and near one another: their labels are taller than that, so
   * that leaders need a wide lane. With a narrow one the drawing is larger, by hand at least 6 mm
   * of 100: the sentence on the scale may not say that nothing larger fits.
   */
  @Test
  void aWideLaneIsNotCalledTheLargestScale() throws Exception {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 150'>"
            + "<path d='M0 0H100V150H0Z' fill='none' stroke='#000'/></svg>");
    StringBuilder points = new StringBuilder();
    StringBuilder callouts = new StringBuilder();
    for (int i = 0; i < 12; i++) {
      points.append(i == 0 ? "" : ", ").append("p" + i + ": {x: 98, y: " + (55 + 3.5 * i) + "}");
      callouts
          .append(i == 0 ? "" : ", ")
          .append("c" + i + ": {point: p" + i + ", mark: " + i + "}");
    }
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        paper: {width: 130mm, height: 260mm}
        margins: 10mm
        sheets:
          flat:
            name: Flat
            areas: [views]
            windows: {views: }
            leaders: inclined
            flats:
              front:
                file: front.svg
                role: front
                points: {%s}
                callouts: {%s}
        """
            .formatted(points, callouts));
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("below the largest possible as this sheet"), run.out());
  }

  @Test
  void nineFlatsWithCalloutsFitTogether() throws Exception {
    Run run = flats(9, ", callouts: {c#: {point: hem, mark: 1}, d#: {point: hem, text: Hem}}");
    assertEquals(0, run.code(), run.err());
  }

  @Test
  void noneLeavesThemToOtherPrograms() throws IOException, Exception {
    Run run = fit("noble", 3, "none");
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    JsonNode sheet = new ObjectMapper().readTree(run.out()).path("sheets").get(0);
    JsonNode callout = sheet.path("placements").get(0).path("callouts").get(0);
    assertTrue(callout.has("x") && !callout.has("leader"), callout.toString());
  }
}
