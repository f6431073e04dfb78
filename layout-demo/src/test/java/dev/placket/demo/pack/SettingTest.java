package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Setting of sheets: sizes and alignment of text, heights and widths of tables. */
class SettingTest {
  @TempDir private Path dir;

  private Run run(String text) throws IOException {
    Files.writeString(
        dir.resolve("tag.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 60 25'>"
            + "<path d='M1,1 H59 V24 H1 Z' fill='none' stroke='#000'/></svg>");
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
  }

  /** A letter on the page. */
  private record Letter(String text, double x, double y, double size) {}

  private List<Letter> letters(int sheet) throws IOException {
    List<Letter> letters = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition p) {
              letters.add(
                  new Letter(p.getUnicode(), p.getXDirAdj(), p.getYDirAdj(), p.getFontSizeInPt()));
            }
          };
      stripper.setStartPage(sheet);
      stripper.setEndPage(sheet);
      stripper.getText(pdf);
    }
    return letters;
  }

  private static final String HEADER =
      """
      format: placket-pack/1
      header:
        columns: [1fr, 1fr, 6fr]
        rows: [10mm, 10mm]
        areas: [a b c, d d d]
        cells:
          a: {caption: Style, text: "Z"}
          b: {caption: Fabric, text: "QQQQQQQQQQQQQQ"}
          c: {caption: Name, text: "X", size: 3.5mm}
          d: {caption: Season, text: "Y"}
      sheets:
        one: {name: One, areas: [all], windows: {all: }}
      """;

  @Test
  void valuesOfOneRowOfAHeaderShareOneSize() throws IOException {
    Run run = run(HEADER);
    assertEquals(0, run.code(), run.err());
    List<Letter> letters = letters(1);
    // The long value shrinks to the least step; the short one beside it goes along.
    assertEquals(size(letters, "Q"), size(letters, "Z"), 1e-9);
    assertTrue(size(letters, "Z") < size(letters, "Y"), "the other row keeps its size");
    // Another stated size is another voice: 3.5 mm beside 2.5 mm.
    assertEquals(1.4, size(letters, "X") / size(letters, "Y"), 1e-6);
    assertEquals(1, run.out().split("to fit: 'Q", -1).length - 1, run.out());
    assertFalse(run.out().contains("to fit: 'Z"), run.out());
  }

  private static double size(List<Letter> letters, String text) {
    return letters.stream().filter(l -> l.text().equals(text)).findFirst().orElseThrow().size();
  }

  private static String table(int rows, String height) {
    StringBuilder text = new StringBuilder("format: placket-pack/1\nsheets:\n  t:\n    name: T\n");
    text.append("    columns: [120mm, 1fr]\n    rows: [%s, 1fr]\n".formatted(height));
    text.append("    areas: [list ., . .]\n    tables:\n      list:\n");
    text.append("        columns: [{heading: X, width: 30mm}, {heading: Z, width: 1fr}]\n");
    text.append("        rows:\n");
    for (int r = 0; r < rows; r++) {
      text.append("          - [\"%d\", Q]\n".formatted(r));
    }
    return text.toString();
  }

  /** Twelve rows and a heading of 5.5 mm each need 71.5 mm. */
  @Test
  void aLastSheetOfFewRowsIsReportedWithWhatIsMissing() throws IOException {
    Run run = run(table(12, "60.6mm"));
    assertEquals(0, run.code(), run.err());
    assertEquals(2, json().path("sheets").size());
    // Ten rows fit into 60.6 mm: two, of 11 mm together, go on.
    assertTrue(
        run.out().contains("the last sheet of table list has only 2 of its 12 rows; 11.0 mm more"),
        run.out());
    assertEquals(0, run(table(12, "71.6mm")).code());
    assertEquals(1, json().path("sheets").size());
    assertFalse(run(table(12, "50mm")).out().contains("the last sheet of table"));
  }

  @Test
  void columnsKeepTheirWidthsOnFurtherSheets() throws IOException {
    assertEquals(0, run(table(12, "50mm")).code());
    double first = x(letters(1), "Q");
    double further = x(letters(2), "Q");
    assertEquals(first, further, 1e-3);
  }

  private static double x(List<Letter> letters, String text) {
    return Objects.requireNonNull(
            letters.stream().filter(l -> l.text().equals(text)).findFirst().orElse(null))
        .x();
  }

  @Test
  void aSheetHasOneBarToCheckThePrintBy() throws IOException {
    String text =
        """
        format: placket-pack/1
        sheets:
          labels:
            name: Labels
            areas: [all]
            windows: {all: }
            flats:
              one: {file: tag.svg, role: artwork, unit: 1mm, true-size: true}
              two: {file: tag.svg, role: artwork, unit: 1mm, true-size: true, caption: Two}
        """;
    Run run = run(text);
    assertEquals(0, run.code(), run.err());
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      String found = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertEquals(1, found.split("100 mm: check this length", -1).length - 1, found);
    }
    // Both print at their true size: 58 and the width of a line.
    json()
        .at("/sheets/0/placements")
        .forEach(
            p ->
                assertEquals(
                    59,
                    (p.at("/inkedBox/right").asDouble() - p.at("/inkedBox/left").asDouble())
                        * 25.4
                        / 72,
                    0.01));
  }

  /** A table with pictures is set in the middle of each row, whether it has a picture or not. */
  @Test
  void rowsWithAndWithoutPicturesAlignAlike() throws IOException {
    String text =
        """
        format: placket-pack/1
        sheets:
          list:
            name: List
            areas: [list]
            tables:
              list:
                window-row: 22mm
                columns: [{heading: Shown, windows: true}, {heading: N, width: 60mm}, {heading: M, width: 30mm}]
                rows:
                  - [tag, Q, "one two three four five six seven eight nine ten eleven twelve"]
                  - ["", Z, "one two three four five six seven eight nine ten eleven twelve"]
            flats:
              tag: {file: tag.svg, role: detail}
        """;
    Run run = run(text);
    assertEquals(0, run.code(), run.err());
    List<Letter> letters = letters(1);
    Letter short1 = letters.stream().filter(l -> l.text().equals("Q")).findFirst().orElseThrow();
    Letter short2 = letters.stream().filter(l -> l.text().equals("Z")).findFirst().orElseThrow();
    // In each row the lone word is level with the middle of the long text beside it.
    assertEquals(middle(letters, short1), short1.y(), 0.05);
    assertEquals(middle(letters, short2), short2.y(), 0.05);
  }

  /** Between the first and the last baseline of the long text nearest to a word. */
  private static double middle(List<Letter> letters, Letter word) {
    List<Double> rows =
        letters.stream()
            .filter(l -> l.x() > word.x() + 100 && Math.abs(l.y() - word.y()) < 22)
            .map(Letter::y)
            .distinct()
            .sorted()
            .toList();
    return (rows.get(0) + rows.get(rows.size() - 1)) / 2;
  }

  /** A caption wraps at the width of its drawing; a line break that is written stays. */
  @Test
  void aCaptionIsAsWideAsItsDrawing() throws IOException {
    String text =
        """
        format: placket-pack/1
        sheets:
          one:
            name: One
            areas: [all]
            windows: {all: }
            flats:
              tag: {file: tag.svg, role: detail, caption: "%s", note: "first\\nsecond", greatest: %s}
        """;
    String caption = "a caption of many words that is wider than most of the drawings tested here";
    assertEquals(0, run(text.formatted(caption, "200mm")).code());
    assertEquals(List.of(caption, "first", "second"), lines());
    assertEquals(0, run(text.formatted(caption, "80mm")).code());
    List<String> lines = lines();
    assertEquals(caption, String.join(" ", lines.subList(0, lines.size() - 2)));
    double widest = 0;
    List<Letter> letters = letters(1);
    for (Letter l : letters) {
      widest = Math.max(widest, l.x());
    }
    JsonNode ink = json().at("/sheets/0/placements/0/inkedBox");
    assertEquals(80, (ink.path("right").asDouble() - ink.path("left").asDouble()) * 25.4 / 72, 0.1);
    assertTrue(widest <= ink.path("right").asDouble(), "no line reaches beyond the drawing");
    assertTrue(lines.size() == 4, "two lines of at most 80 mm: " + lines);
  }

  private List<String> lines() throws IOException {
    List<String> lines = new ArrayList<>();
    json().at("/sheets/0/placements/0/lines").forEach(l -> lines.add(l.asText()));
    return lines.subList(0, lines.size());
  }
}
