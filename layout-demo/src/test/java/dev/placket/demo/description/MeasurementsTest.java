package dev.placket.demo.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A list of points of measure on a sheet, in {@code fit.json} and in messages. */
class MeasurementsTest {
  @TempDir private Path dir;

  private static final String HEAD =
      """
      format: placket-pack/1
      sheets:
        m: {name: Measurements, areas: [points], tables: {points: {measures: all}}}
      measurements:
        unit: cm
        sizes: [S, M, L, XL]
        sample: M
      """;

  private Run fit(String text) throws IOException {
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--json", "--overwrite");
  }

  private List<String> page() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      return stripper.getText(pdf).lines().map(String::strip).filter(l -> !l.isEmpty()).toList();
    }
  }

  private static List<String> numbers(JsonNode point) {
    List<String> numbers = new ArrayList<>();
    point.path("values").forEach(v -> numbers.add(v.path("value").asText()));
    return numbers;
  }

  /** Worked by hand: 59.5 - 2.5, + 2.5, + 3; in inches 57 / 2.54 = 22.44, nearest eighth 22 1/2. */
  @Test
  void gradedValuesStandOnTheSheetAndInJson() throws IOException {
    Run run =
        fit(
            HEAD
                + """
                  shown: [cm, in]
                  points:
                    A: {name: Chest, measured: half, tolerance: +1 -0.5, value: 59.5, grade: '2.5, XL 3'}
                    B: {name: Vent, how: open, tolerance: 0.4, values: [22, 22, 22, 22.25]}
                """);
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), FitSchema.errors(run.out()));
    JsonNode list = new ObjectMapper().readTree(run.out()).path("measurements");
    assertEquals(List.of("57", "59.5", "62", "65"), numbers(list.path("points").get(0)));
    assertEquals(List.of("22", "22", "22", "22.25"), numbers(list.path("points").get(1)));
    assertTrue(list.path("points").get(1).path("typed").asBoolean());
    assertEquals("0.5", list.path("points").get(0).path("minus").asText());
    assertEquals(
        "[\"57 cm\",\"22 1/2 in\"]",
        list.path("points").get(0).path("values").get(0).path("shown").toString());
    String page = String.join("\n", page());
    assertTrue(page.contains("57 22 1/2 59.5 23 3/8 62 24 3/8 65 25 5/8"), page);
    // What is typed stays; 22.25 / 2.54 = 8.76, nearest eighth 8 3/4.
    assertTrue(page.contains("22.25 8 3/4"), page);
    // 1 cm is 0.39 in, of which 3/8 is not more; 0.5 cm is 0.197 in: 1/8 is too little, 3/16 is
    // not.
    assertTrue(page.contains("+1 \u22120.5 +3/8 \u22123/16"), page);
  }

  /** Asked for: 22.25 to the nearest half is 22.5; a tolerance of 0.3 is not rounded away. */
  @Test
  void whatIsRoundedInTheUnitOfTheListIsSaid() throws IOException {
    Path pack =
        Files.writeString(
            dir.resolve("pack.yaml"),
            HEAD
                + """
                    round: {cm: 0.5}
                    points:
                      A: {name: Vent, tolerance: 0.3, values: [22, 22, 22, 22.25]}
                      B: {name: Hem, tolerance: 0.3, values: [22, 22, 22, 22.5]}
                  """);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("point A: values are printed to the nearest 0.5 cm"), run.out());
    assertTrue(!run.out().contains("point B"), run.out());
    String page = String.join("\n", page());
    assertTrue(page.contains("22 22 22 22.5 0.3"), page);
    // The note names the step of the list's own unit, whichever is printed first.
    String both = Files.readString(pack).replace("round:", "shown: [in, cm]\n  round:");
    Files.writeString(pack, both);
    Run shown = Run.of("fit", pack, "--out", dir.resolve("both"));
    assertTrue(
        shown.out().contains("point A: values are printed to the nearest 0.5 cm"), shown.out());
  }

  @Test
  void aFileHasTheSameWords() throws IOException {
    Files.writeString(
        dir.resolve("points.csv"),
        "code,name,how,tolerance,value,grade,grade long\n"
            + "A,Inseam,along the seam,1,81,0,\"add 5, 0.5\"\n");
    Run run =
        fit(
            HEAD.replace("[S, M, L, XL]", "{regular: [30, 32, 34], long: [30L, 32L, 34L]}")
                    .replace("sample: M", "sample: [32, 32L]")
                + "  csv: points.csv\n");
    assertEquals(0, run.code(), run.err());
    JsonNode list = new ObjectMapper().readTree(run.out()).path("measurements");
    assertEquals(
        List.of("81", "81", "81", "85.5", "86", "86.5"), numbers(list.path("points").get(0)));
  }

  @Test
  void likelySlipsAreInTheReport() throws IOException {
    Path pack =
        Files.writeString(
            dir.resolve("pack.yaml"),
            HEAD.replace("  sample: M\n", "")
                + """
                  points:
                    A: {name: Cuff, tolerance: 0.5, values: [14, 14.4, 14.8, 15.2]}
                    B: {name: Hem, tolerance: 0.5, values: [57, 59.5, 6.2, 65]}
                """);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(0, run.code(), run.err());
    String out = run.out().replaceAll("\\s+", " ");
    assertTrue(out.contains("no sample size is stated"), run.out());
    assertTrue(out.contains("point A: the tolerance is larger than a step"), run.out());
    assertTrue(out.contains("point B: sizes go up and down; check the value of L."), run.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A: {name: C, value: 9, grade: '1, 3XL 2'} | line 9, column 5: found '3XL 2'",
        "A: {name: C, value: 9, grade: '1, M 2'} | line 9, column 5: found a step from the size 'M'",
        "A: {name: C, value: 9 1/2, grade: 1} | '9 1/2', which is no fraction of an inch",
        "A: {name: C, value: 9 in, grade: 1} | '9 in' in a list in cm",
        "A: {name: C, value: 9} | value and grade, or a value for each size",
        "A: {name: C, values: [1, 2, 3]} | 3 values for 4 sizes",
        "A: {name: C, value: 9, grade: {tall: 1}} | a rule for the group 'tall'",
        "A: {name: C, value: 9, grade: 1, tolerance: -1} | the tolerance '-1'",
        "A: {name: C, value: 9, grade: 1, measured: quarter} | measured 'quarter'",
        "L: {name: C, value: 9, grade: 1} | the code 'L'"
      })
  void slipsAreNamedWithTheirPlace(String point, String message) throws IOException {
    Run run = fit(HEAD + "  points:\n    " + point + "\n");
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains(message), run.err());
    assertTrue(run.err().contains("line 9"), run.err());
  }

  @Test
  void slipsOfAFileHaveItsLine() throws IOException {
    Files.writeString(
        dir.resolve("points.csv"), "code,name,S,M,L,XL\nA,C,1,2,3,4\nB,D,1,2,x,4\nA,E,1,2,3,4\n");
    Run run = fit(HEAD + "  csv: points.csv\n");
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains("points.csv, line 3: 'x', which is no length"), run.err());
    assertTrue(run.err().contains("points.csv, line 4: the code 'A' again"), run.err());
    Files.writeString(dir.resolve("points.csv"), "code,name,wert\nA,C,1\n");
    Run heading = fit(HEAD + "  csv: points.csv\n");
    assertTrue(heading.err().contains("points.csv, line 1: the heading 'wert'"), heading.err());
    Run code =
        fit(
            HEAD.replace("measures: all", "measures: [A, Q]")
                + "  points: {A: {name: C, value: 1, grade: 1}}\n");
    assertTrue(code.err().contains("no point of measure 'Q'"), code.err());
  }

  private static final String DRAWN =
      """
      format: placket-pack/1
      sheets:
        m:
          name: Measurements
          areas: [views]
          windows: {views: }
          flats:
            front:
              file: front.svg
              role: front
              unit: 1mm
              points: {l: {x: 0, y: 50}, r: {x: 100, y: 60}, t: {x: 50, y: 0}, b: {x: 50, y: 100}}
              dimensions:
                A: {from: l, to: r, run: level}
                B: {from: t, to: b}
      measurements:
        unit: cm
        sizes: [S, M]
        sample: M
        points:
          A: {name: Width, value: 8.6, grade: 1}
          B: {name: Length, value: 10, grade: 1}
      """;

  private Run drawn(String text) throws IOException {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-1 -1 102 102'><path"
            + " d='M0 0H100V100H0Z' fill='none' stroke='#000' stroke-width='0.5'/></svg>");
    return fit(text);
  }

  @Test
  void linesOfMeasureAreInJsonWhereTheirSpotsAre() throws IOException {
    Run run = drawn(DRAWN);
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), FitSchema.errors(run.out()));
    JsonNode flat =
        new ObjectMapper().readTree(run.out()).path("sheets").get(0).path("placements").get(0);
    double scale = flat.path("scale").asDouble();
    JsonNode line = flat.path("dimensions").get(0).path("line");
    assertEquals(
        100 * scale, line.get(1).path("x").asDouble() - line.get(0).path("x").asDouble(), 1e-4);
    assertEquals(line.get(0).path("y").asDouble(), line.get(1).path("y").asDouble(), 1e-5);
    JsonNode spot = flat.path("points").get(0);
    assertEquals(spot.path("y").asDouble(), line.get(0).path("y").asDouble(), 1e-5);
    assertEquals("A", flat.path("dimensions").get(0).path("point").asText());
  }

  /** 100 units of 1 mm are 10 cm: 16 % over 8.6 and 14 % over 8.8. */
  @Test
  void drawnLengthsAreComparedWhereAskedFor() throws IOException {
    String asked = DRAWN.replace("  sample: M", "  sample: M\n  check-drawings: true");
    String note = "point A on front: drawn 10 cm, the list says 8.6 cm";
    drawn(asked);
    Path pack = dir.resolve("pack.yaml");
    Run off = Run.of("fit", pack, "--out", dir.resolve("a"));
    assertEquals(0, off.code(), off.err());
    assertTrue(off.out().replaceAll("\\s+", " ").contains(note), off.out());
    assertTrue(!off.out().contains("point B on front"), off.out());
    Files.writeString(pack, asked.replace("8.6", "8.8"));
    Run near = Run.of("fit", pack, "--out", dir.resolve("b"));
    assertTrue(!near.out().contains("point A on front"), near.out());
    Files.writeString(pack, DRAWN);
    Run unasked = Run.of("fit", pack, "--out", dir.resolve("c"));
    assertTrue(!unasked.out().contains("point A on front"), unasked.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "to: r, run | to: rr, run | line 14, column 28: found the point 'rr'",
        "A: {from | C: {from | line 14, column 11: found no point of measure 'C'",
        "run: level | run: slanted | the run of a line 'slanted'",
        "run: level | run: level, beside: 60 | a point beside what is drawn",
        "to: r, run: level | to: l | a line without length"
      })
  void slipsOfLinesAreNamedWithTheirPlace(String is, String becomes, String message)
      throws IOException {
    Run run = drawn(DRAWN.replace(is, becomes));
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains(message), run.err());
  }

  /** By hand: from (0, 50) to the line through (50, 0) and (100, 50), at right angles: 70.71. */
  @Test
  void aMeasureMayBeSquareToAnEdge() throws IOException {
    String square =
        DRAWN
            .replace("t: {x: 50, y: 0}", "t: {x: 50, y: 0}, e: {x: 100, y: 50}")
            .replace("B: {from: t, to: b}", "B: {from: l, edge: [t, e]}")
            .replace("name: Length, value: 10", "name: Length, value: 6")
            .replace("  sample: M", "  sample: M\n  check-drawings: true");
    Run run = drawn(square);
    assertEquals(0, run.code(), run.err());
    Run report = Run.of("fit", dir.resolve("pack.yaml"), "--out", dir.resolve("e"));
    String out = report.out().replaceAll("\\s+", " ");
    assertTrue(out.contains("point B on front: drawn 7.1 cm, the list says 6 cm"), out);
    Run one = drawn(square.replace("edge: [t, e]", "edge: [t]"));
    assertTrue(one.err().contains("1 points of an edge"), one.err());
    Run same = drawn(square.replace("edge: [t, e]", "edge: [t, t]"));
    assertTrue(same.err().contains("an edge between two points at one place"), same.err());
    Run both = drawn(square.replace("edge: [t, e]", "edge: [t, e], to: b"));
    assertTrue(both.err().contains("an edge beside 'to'"), both.err());
  }

  /** Half of a circle with a radius of 40 is 125.66: 12.6 cm, where the list says 10. */
  @Test
  void aMeasureMayRunAlongALine() throws IOException {
    Files.writeString(
        dir.resolve("curve.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-1 -1 102 102'><g fill='none'"
            + " stroke='#000' stroke-width='0.5'><path d='M0 0H100V100H0Z'/>"
            + "<path id='seam' d='M 10,50 A 40 40 0 0 1 90,50'/></g></svg>");
    String along =
        DRAWN
            .replace("file: front.svg", "file: curve.svg")
            .replace("l: {x: 0, y: 50}, r: {x: 100, y: 60}", "l: {x: 10, y: 50}, r: {x: 90, y: 50}")
            .replace("A: {from: l, to: r, run: level}", "A: {from: l, to: r, along: seam}")
            .replace("name: Width, value: 8.6", "name: Width, value: 10")
            .replace("  sample: M", "  sample: M\n  check-drawings: true");
    Run run = drawn(along);
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), FitSchema.errors(run.out()));
    JsonNode flat =
        new ObjectMapper().readTree(run.out()).path("sheets").get(0).path("placements").get(0);
    double scale = flat.path("scale").asDouble();
    // The middle of the circle lies between both spots.
    JsonNode from = spot(flat, "l");
    JsonNode to = spot(flat, "r");
    double x = (from.path("x").asDouble() + to.path("x").asDouble()) / 2;
    double y = from.path("y").asDouble();
    // 2.5 mm beside the seam, outside or inside of it.
    for (JsonNode p : flat.path("dimensions").get(0).path("line")) {
      double off = Math.hypot(p.path("x").asDouble() - x, p.path("y").asDouble() - y) - 40 * scale;
      assertEquals(2.5 * 72 / 25.4, Math.abs(off), 0.05);
    }
    Run report = Run.of("fit", dir.resolve("pack.yaml"), "--out", dir.resolve("e"));
    String out = report.out().replaceAll("\\s+", " ");
    assertTrue(out.contains("point A on front: drawn 12.6 cm, the list says 10 cm"), out);
    Run off = drawn(along.replace("r: {x: 90, y: 50}", "r: {x: 90, y: 55}"));
    assertTrue(off.err().contains("'seam', from which a spot of A lies"), off.err());
    Run none = drawn(along.replace("along: seam", "along: hem"));
    assertTrue(none.err().contains("'hem', which is no single line of the drawing"), none.err());
    Run run2 = drawn(along.replace("along: seam", "along: seam, run: level"));
    assertTrue(run2.err().contains("a run beside 'along'"), run2.err());
  }

  private static JsonNode spot(JsonNode flat, String name) {
    for (JsonNode point : flat.path("points")) {
      if (point.path("point").asText().equals(name)) {
        return point;
      }
    }
    throw new AssertionError(name);
  }

  /** Half and stretched in the languages of the pack; a glossary has the names. */
  @Test
  void howPointsAreMeasuredIsInAllLanguages() throws IOException {
    Files.writeString(dir.resolve("terms.csv"), "en,de\nWaist,Bund\nalong the top,oben\n");
    Run run =
        fit(
            HEAD
                + """
                    points:
                      A: {name: Waist, how: along the top, measured: half stretched, value: 40, grade: 2}
                  languages: [en, de]
                  glossary: terms.csv
                  """
                    .replace("  languages", "languages")
                    .replace("  glossary", "glossary"));
    assertEquals(0, run.code(), run.err());
    String page = String.join(" ", page()).replaceAll("\\s+", " ");
    assertTrue(page.contains("Waist, along the top, half, stretched"), page);
    assertTrue(page.contains("Bund, oben, halbe Weite, gedehnt"), page);
    assertTrue(page.contains("Punkt"), page);
  }

  /** Two oblique lines that cross have no lanes: they are drawn, and the report says so. */
  @Test
  void linesThatMeetAreNamed() throws IOException {
    drawn(
        DRAWN
            .replace("t: {x: 50, y: 0}, b: {x: 50, y: 100}", "t: {x: 10, y: 10}, b: {x: 90, y: 80}")
            .replace("A: {from: l, to: r, run: level}", "A: {from: u, to: v}")
            .replace("l: {x: 0, y: 50},", "u: {x: 90, y: 15}, v: {x: 15, y: 90},"));
    Run run = Run.of("fit", dir.resolve("pack.yaml"), "--out", dir.resolve("x"));
    assertEquals(0, run.code(), run.err());
    String out = run.out().replaceAll("\\s+", " ");
    assertTrue(out.contains("front: the lines of the measures A and B meet; move a spot"), out);
  }

  /** A level line in a lane lies within the flat's footprint, outside of its ink. */
  @Test
  void lanesArePartOfTheFootprint() throws IOException {
    Run run =
        drawn(
            DRAWN
                .replace("r: {x: 100, y: 60}", "r: {x: 100, y: 99.9}")
                .replace("l: {x: 0, y: 50}", "l: {x: 0, y: 99.9}"));
    assertEquals(0, run.code(), run.err());
    JsonNode flat =
        new ObjectMapper().readTree(run.out()).path("sheets").get(0).path("placements").get(0);
    double ink = flat.path("inkedBox").path("bottom").asDouble();
    double room = flat.path("footprint").path("bottom").asDouble();
    JsonNode a = flat.path("dimensions").get(0);
    // On the lower edge it cannot be seen: it lies 4.5 mm below, its code within the footprint.
    assertEquals(ink + 4.5 * 72 / 25.4, a.path("line").get(0).path("y").asDouble(), 1e-3);
    assertTrue(a.path("code").path("bottom").asDouble() <= room, run.out());
    assertEquals("[]", flat.path("callouts").toString());
  }
}
