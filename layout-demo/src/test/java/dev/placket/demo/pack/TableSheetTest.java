package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables measured on the made page: page-look's row on tables, and what goes on over the page. */
class TableSheetTest {
  private static final double MM = 72 / 25.4;

  private static final String TABLE =
      """
      format: placket-pack/1
      foot:
        rows: [8mm]
        areas: [number]
        cells: {number: "{sheet} of {sheets}"}
      sheets:
        measures:
          name: Measurements
          areas: [points]
          tables:
            points: {csv: points.csv, sample: M}
      """;

  @TempDir Path dir;

  private record Letter(String text, double x, double y) {}

  private List<List<Letter>> pages(String csv) throws IOException {
    Files.writeString(dir.resolve("points.csv"), csv);
    Path file = Files.writeString(dir.resolve("pack.yaml"), TABLE);
    Run run = Run.of("fit", file, "--out", dir.resolve("out"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    List<List<Letter>> pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
        List<Letter> letters = new ArrayList<>();
        PDFTextStripper stripper =
            new PDFTextStripper() {
              @Override
              protected void processTextPosition(TextPosition p) {
                letters.add(new Letter(p.getUnicode(), p.getXDirAdj(), p.getYDirAdj()));
              }
            };
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        stripper.getText(pdf);
        pages.add(letters);
      }
    }
    return pages;
  }

  private static String csv(int rows) {
    StringBuilder csv = new StringBuilder("Point,Measured,S,M,L\n");
    for (int i = 1; i <= rows; i++) {
      csv.append("P")
          .append(i)
          .append(",half chest,")
          .append(9 + i)
          .append(".5,")
          .append(95 + 5 * i)
          .append(".25,")
          .append(i)
          .append("\n");
    }
    return csv.toString();
  }

  @Test
  void decimalMarksStandUnderOneAnotherAndRowsHaveRoom() throws IOException {
    List<Letter> letters = pages(csv(8)).get(0);
    TreeSet<Double> lines = new TreeSet<>();
    List<List<Double>> marks = List.of(new ArrayList<>(), new ArrayList<>());
    double half =
        letters.stream().filter(l -> l.text().equals("M")).mapToDouble(Letter::x).max().orElse(0);
    for (Letter l : letters) {
      if (l.text().equals(".")) {
        lines.add(l.y());
        marks.get(l.x() < half - 5 * MM ? 0 : 1).add(l.x());
      }
    }
    for (List<Double> column : marks) {
      assertEquals(8, column.size());
      double least = column.stream().mapToDouble(d -> d).min().orElse(0);
      double most = column.stream().mapToDouble(d -> d).max().orElse(0);
      // page-look row 11: decimals aligned to 0.1 mm.
      assertTrue(most - least <= 0.1 * MM, column.toString());
    }
    Double before = null;
    for (double y : lines) {
      // page-look row 11: rows at least 5.5 mm.
      assertTrue(before == null || y - before >= 5.5 * MM - 1e-3, lines.toString());
      before = y;
    }
  }

  @Test
  void theColumnOfTheSampleSizeIsTintedByATenthAtMost() throws IOException {
    pages(csv(3));
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      var image = new PDFRenderer(pdf).renderImageWithDPI(0, 100);
      TreeMap<Integer, Integer> greys = new TreeMap<>();
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          greys.merge(image.getRGB(x, y) & 255, 1, Integer::sum);
        }
      }
      greys.remove(255);
      int tint =
          greys.entrySet().stream()
              .max(java.util.Map.Entry.comparingByValue())
              .orElseThrow()
              .getKey();
      // page-look row 11: a tenth of black at most; and it is seen.
      assertTrue(tint >= 0.9 * 255 && tint < 250, "most frequent beside white: " + tint);
    }
  }

  @Test
  void wholeRowsGoOnUnderTheirHeadings() throws IOException {
    List<List<Letter>> pages = pages(csv(70));
    assertEquals(3, pages.size());
    int rows = 0;
    for (int i = 0; i < pages.size(); i++) {
      StringBuilder text = new StringBuilder();
      pages.get(i).forEach(l -> text.append(l.text()));
      assertTrue(text.toString().startsWith("PointMeasuredSML"), text.substring(0, 40));
      assertTrue(text.toString().endsWith((i + 1) + " of 3"), text.toString());
      rows += text.toString().split("half chest", -1).length - 1;
    }
    assertEquals(70, rows);
  }

  @Test
  void valuesStandAsTyped() throws IOException {
    StringBuilder text = new StringBuilder();
    pages("Point,M\n{a},1.50\nb,007\n").get(0).forEach(l -> text.append(l.text()));
    assertTrue(text.toString().contains("{a}1.50b007"), text.toString());
  }

  @Test
  void aWrongFileIsAnsweredWithItsOwnLine() throws IOException {
    Files.writeString(dir.resolve("points.csv"), "Point,M\nA,1\nB\n");
    Path file = Files.writeString(dir.resolve("pack.yaml"), TABLE);
    Run run = Run.of("fit", file, "--out", dir.resolve("out"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("points.csv, line 3: 1 values, the first line has 2"), run.err());
    assertTrue(run.err().contains("pack.yaml, line 11"), run.err());
    assertFalse(Files.exists(dir.resolve("out")));
  }
}
