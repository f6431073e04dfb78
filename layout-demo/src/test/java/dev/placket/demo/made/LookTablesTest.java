package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.made.PageRead.Line;
import dev.placket.demo.made.PageRead.Tint;
import dev.placket.demo.made.PageRead.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables of the demo pack: rows to write in, decimals in line, the sample size strong. */
class LookTablesTest {
  private static final String PAPERS = "dev.placket.demo.made.MadePack#papers";
  private static final double ROWS = 0.18;

  @ParameterizedTest
  @MethodSource(PAPERS)
  void rowsAreHighEnoughForAPencil(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    double least = Double.POSITIVE_INFINITY;
    for (int sheet = 0; sheet < made.sheets().size(); sheet++) {
      List<Line> all = PageRead.of(made.pdf(), sheet).lines();
      List<Line> rows =
          all.stream().filter(l -> !l.upright() && Math.abs(l.width() - ROWS) < 0.01).toList();
      for (Line row : rows) {
        double above =
            all.stream()
                .filter(l -> !l.upright() && l.at() < row.at() - 0.5)
                .filter(l -> l.start() < row.end() && l.end() > row.start())
                .mapToDouble(l -> row.at() - l.at())
                .min()
                .orElseThrow();
        least = Math.min(least, above);
      }
    }
    System.out.printf(Locale.ROOT, "%s, row 11: rows at least %.2f mm high%n", paper, least);
    assertTrue(least >= 5.5 - 1e-3, "a row of " + least + " mm");
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void decimalsStandInLine(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    PageRead page = PageRead.of(made.pdf(), made.sheet("measurements"));
    double worst = 0;
    for (List<Words> column : columns(made, page)) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (Words w : column) {
        double mark = mark(made, w);
        least = Math.min(least, mark);
        most = Math.max(most, mark);
      }
      worst = Math.max(worst, most - least);
    }
    System.out.printf(
        Locale.ROOT, "%s, row 11: decimal marks of a column within %.3f mm%n", paper, worst);
    assertTrue(worst <= 0.1);
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void valuesStandAsTyped(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    PageRead page = PageRead.of(made.pdf(), made.sheet("measurements"));
    List<List<String>> printed =
        columns(made, page).stream().map(c -> c.stream().map(Words::text).toList()).toList();
    List<List<String>> typed = new ArrayList<>();
    for (int c = 0; c < 7; c++) {
      List<String> column = new ArrayList<>();
      for (String[] row : rows()) {
        column.add(row[c]);
      }
      typed.add(column);
    }
    assertEquals(typed, printed);
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void theSampleSizeIsStrongOnAFaintTint(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    PageRead page = PageRead.of(made.pdf(), made.sheet("measurements"));
    List<List<Words>> columns = columns(made, page);
    double stem = 0;
    for (int c = 0; c < columns.size(); c++) {
      for (Words w : columns.get(c)) {
        // Sizes run XS, S, M: M is the sample, the third.
        assertEquals(c == 2, w.stroke() > 0, w.text());
        stem = Math.max(stem, w.stroke() / w.em());
      }
    }
    double headings = page.find("XXL").baseline();
    Words heading =
        page.words().stream()
            .filter(w -> w.text().equals("M") && Math.abs(w.baseline() - headings) < 1)
            .findFirst()
            .orElseThrow();
    assertTrue(heading.stroke() > 0, "its heading");
    // The stem of a digit of the typeface is 0.09 of the em by its outlines (measured on its 1).
    double regular = stemOfOne(made);
    double times = (regular + stem) / regular;
    assertEquals(1, page.tints().size());
    Tint tint = page.tints().get(0);
    System.out.printf(
        Locale.ROOT,
        "%s, row 11: strong stems %.2f times the others, tint %.0f %%%n",
        paper,
        times,
        100 * (1 - tint.grey()));
    assertTrue(times >= 1.25, "seen as strong");
    assertTrue(tint.grey() >= 0.9, "a tint of at most a tenth");
    for (Words w : columns.get(2)) {
      assertTrue(tint.box().contains(w.left(), w.baseline()), w.text());
      assertTrue(tint.box().contains(w.right(), w.baseline()), w.text());
    }
  }

  /** The columns XS to XXL and the tolerance, by the rows of the file. */
  private static List<List<Words>> columns(MadePack made, PageRead page) throws Exception {
    List<List<Words>> columns = new ArrayList<>();
    List<String> headings = List.of("XS", "S", "M", "L", "XL", "XXL", "±");
    double below = page.find("XXL").baseline();
    for (String heading : headings) {
      Words head =
          page.words().stream()
              .filter(w -> w.text().equals(heading) && Math.abs(w.baseline() - below) < 1)
              .findFirst()
              .orElseThrow();
      double middle = (head.left() + head.right()) / 2;
      columns.add(
          page.words().stream()
              .filter(w -> w.text().matches("[0-9.]+") && w.baseline() > below + 2)
              .filter(w -> Math.abs((w.left() + w.right()) / 2 - middle) < 5)
              .sorted((a, b) -> Double.compare(a.baseline(), b.baseline()))
              .toList());
    }
    return columns;
  }

  /** The graded values and tolerances of the demo as they were worked by hand, and typed. */
  private static List<String[]> rows() {
    return """
        46.5 49 51.5 54 57 60 1
        59.5 62 64.5 67 70 73 1
        93 94.5 96 97.5 99 100.5 1
        98 99.5 101 102.5 104 105.5 1
        44.2 45.6 47 48.4 50 51.6 0.7
        62 63 64 65 66 67 1
        23.9 24.7 25.5 26.3 27.3 28.3 0.5
        14 14.4 14.8 15.2 15.6 16 0.3
        7.5 7.5 7.5 7.5 7.5 7.5 0.3
        9 9 9 9 9 9 0.5
        22 22 22 22 22 22 0.5
        17.5 17.5 17.5 17.5 17.5 17.5 0.3
        22 22 22 22 22 22 0.3
        17.7 18.6 19.5 20.4 21.5 22.6 0.5
        """
        .lines()
        .map(line -> line.split(" "))
        .toList();
  }

  /** Where the decimal mark is or would be: the whole part's end, by the font's own widths. */
  private static double mark(MadePack made, Words w) throws Exception {
    int dot = w.text().indexOf('.');
    String after = dot < 0 ? "" : w.text().substring(dot);
    return w.right() - width(made, after) * w.em();
  }

  private static double width(MadePack made, String text) throws Exception {
    try (PDDocument document = Loader.loadPDF(made.pdf().toFile())) {
      var resources = document.getPage(made.sheet("measurements")).getResources();
      PDFont font = resources.getFont(resources.getFontNames().iterator().next());
      double sum = 0;
      for (int c : text.codePoints().toArray()) {
        sum += font.getStringWidth(Character.toString(c)) / 1000;
      }
      return sum;
    }
  }

  /** The width of the stem of 1, as a share of the em, by its outline at half its height. */
  private static double stemOfOne(MadePack made) throws Exception {
    try (PDDocument document = Loader.loadPDF(made.pdf().toFile())) {
      var resources = document.getPage(made.sheet("measurements")).getResources();
      PDFont font = resources.getFont(resources.getFontNames().iterator().next());
      int code = ((font.encode("1")[0] & 255) << 8) | (font.encode("1")[1] & 255);
      var outline = ((org.apache.pdfbox.pdmodel.font.PDVectorFont) font).getNormalizedPath(code);
      int inside = 0;
      for (int x = -100; x < 1000; x++) {
        inside += outline.contains(x + 0.5, 350) ? 1 : 0;
      }
      return inside / 1000.0;
    }
  }
}
