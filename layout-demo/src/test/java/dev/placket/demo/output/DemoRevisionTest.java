package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's revision D, with eight kinds of change, on both papers. */
class DemoRevisionTest {
  private static final Path DEMO = Path.of("src", "demo", "mg-3107");

  /** Old text, new text, and what is printed of the change. */
  private static final Map<String, String> CHANGES = new LinkedHashMap<>();

  static {
    CHANGES.put("season: A27", "season: S28");
    CHANGES.put("to about 470.", "to about 450.");
    CHANGES.put("reference: lab dip 2", "reference: lab dip 3");
    CHANGES.put("consumption: 2.35 m", "consumption: 2.45 m");
    CHANGES.put("Bar tacks 10 long", "Bar tacks 12 long");
    CHANGES.put("text: Cuff rows", "text: Cuff twin rows");
    CHANGES.put("revision: C", "revision: D");
    CHANGES.put("date: 2027-02-11", "date: 2027-03-04");
  }

  @TempDir private Path dir;

  private void copy() throws IOException {
    try (var files = Files.walk(DEMO)) {
      for (Path file : files.toList()) {
        Path to = dir.resolve(DEMO.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else {
          Files.copy(file, to);
        }
      }
    }
  }

  private void change(String file, String from, String to) throws IOException {
    Path path = dir.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(from), from);
    Files.writeString(path, text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void everyChangeIsListedAndMarked(String paper) throws IOException {
    copy();
    Path pack = dir.resolve("pack.yaml");
    // One picture of the demo is too soft, and says so.
    assertEquals(3, Run.of("issue", pack, "--paper", paper).code());
    for (var each : CHANGES.entrySet()) {
      change("pack.yaml", each.getKey(), each.getValue());
    }
    change("points.csv", "51.5", "52");
    change(
        "details/cuff-tab.svg", "</svg>", "<path d='M40 40H60' fill='none' stroke='#000'/></svg>");
    Run run = Run.of("issue", pack, "--paper", paper);
    assertEquals(3, run.code(), run.err());
    assertFalse(run.out().contains("no room beside"), run.out());
    for (String change :
        new String[] {
          "field season: A27 -> S28",
          "cell details, ",
          "row colourways, ",
          "row materials, ",
          "row packing, ",
          "flat details, cuff-tab, drawing",
          "callout flats, ",
          "point A, M: 51.5 -> 52"
        }) {
      assertTrue(run.out().contains("  " + change), change + " in " + run.out());
    }
    String stem = "MG-3107_D_2027-03-04";
    Path pdf = dir.resolve("issues").resolve(stem).resolve(stem + ".pdf");
    // Sheets: flats 1, construction 3, colourways 4, materials 6, measurements 8, packing 9; each
    // also has that of the season, and the measurements the code of point D.
    Map<Integer, Integer> marks = Map.of(1, 2, 2, 1, 3, 3, 4, 2, 5, 1, 6, 2, 7, 1, 8, 3, 9, 2);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (int sheet = 1; sheet <= document.getNumberOfPages(); sheet++) {
        assertEquals(marks.get(sheet), marks(document, sheet), "sheet " + sheet);
      }
    }
  }

  /** Letters D of 1.8 mm that stand alone. */
  private static int marks(PDDocument document, int sheet) throws IOException {
    int[] marks = {0};
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void writeString(
              String text, java.util.List<org.apache.pdfbox.text.TextPosition> positions) {
            for (String word : text.split(" ")) {
              boolean small = positions.get(0).getFontSizeInPt() < 7.5;
              marks[0] += small && word.equals("D") ? 1 : 0;
            }
          }
        };
    stripper.setStartPage(sheet);
    stripper.setEndPage(sheet);
    stripper.getText(document);
    return marks[0];
  }
}
