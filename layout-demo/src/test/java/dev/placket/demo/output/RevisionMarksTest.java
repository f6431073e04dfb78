package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Marks of a revision on the sheets of an issue: a triangle with its code beside each change, as is
 * common practice, and the old value struck through.
 */
class RevisionMarksTest {
  private static final String PACK =
      """
      format: placket-pack/1
      fields: {label: Mossgantry, style-number: MG-1, season: A27, revision: C, date: "2027-02-11"}
      header:
        columns: [1fr, 1fr, 1fr]
        rows: [12mm]
        areas: [name season revision]
        cells:
          name: {caption: Style, text: "{style-number}"}
          season: {caption: Season, text: "{season}"}
          revision: {caption: Revision, text: "{revision}"}
      sheets:
        flats:
          name: Flat sheet
          columns: [1fr, 90mm]
          rows: [1fr, 30mm]
          areas:
            - views steps
            - views note
          cells: {note: {text: "Revision {revision}: hem turned twice"}}
          windows: {views: }
          tables:
            steps:
              columns: [{heading: Step, width: 12mm}, {heading: What is done, width: 1fr}]
              rows: [["1", "Fold sleeves back."], ["2", "Fold once across."], ["3", "Bag."]]
          flats:
            front:
              file: front.svg
              role: front
              points: {hem: {across: 50%, down: 90%}}
              callouts: {hem-note: {point: hem, text: Hem rows}}
            pocket: {file: pocket.svg, role: detail}
      """;

  @TempDir private Path dir;
  private Path pack = Path.of("");

  @BeforeEach
  void issued() throws IOException {
    draw("front.svg", 100, 140);
    draw("pocket.svg", 60, 50);
    pack = Files.writeString(dir.resolve("pack.yaml"), PACK);
    assertEquals(0, issue().code());
    change("revision: C, date: \"2027-02-11\"", "revision: D, date: \"2027-03-04\"");
  }

  private void draw(String name, int width, int height) throws IOException {
    Files.writeString(
        dir.resolve(name),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-2 -2 %d %d'><path fill='none'"
                .formatted(width + 4, height + 4)
            + " stroke='#000' d='M0 0H%dV%dH0Z'/></svg>".formatted(width, height));
  }

  private Run issue(Object... more) {
    List<Object> args = new ArrayList<>(List.of("issue", pack));
    args.addAll(List.of(more));
    return Run.of(args.toArray());
  }

  private void change(String from, String to) throws IOException {
    String text = Files.readString(pack);
    assertTrue(text.contains(from), from);
    Files.writeString(pack, text.replace(from, to));
  }

  private Path pdf(String revision, String date) {
    String stem = "MG-1_" + revision + "_" + date;
    return dir.resolve("issues").resolve(stem).resolve(stem + ".pdf");
  }

  /** A letter on the page, in points from its top left corner. */
  private record Letter(String text, double x, double y, double size) {}

  /** The letters of a page, line by line as they stand in the file. */
  private List<Letter> letters(Path pdf) throws IOException {
    List<Letter> letters = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition p) {
          letters.add(
              new Letter(p.getUnicode(), p.getXDirAdj(), p.getYDirAdj(), p.getFontSizeInPt()));
        }
      }.getText(document);
    }
    return letters;
  }

  private static String text(List<Letter> letters) {
    StringBuilder text = new StringBuilder();
    letters.forEach(l -> text.append(l.text()));
    return text.toString();
  }

  /** Where a word begins on the page. */
  private static Letter word(List<Letter> letters, String word) {
    int at = text(letters).indexOf(word);
    assertTrue(at >= 0, word + " in " + text(letters));
    return letters.get(at);
  }

  /** The codes in triangles: a D of 1.8 mm, where no other text is so small and begins with it. */
  private List<Letter> marks() throws IOException {
    List<Letter> letters = letters(pdf("D", "2027-03-04"));
    List<Letter> marks = new ArrayList<>();
    double small = Objects.requireNonNull(word(letters, "Style")).size();
    for (int i = 0; i < letters.size(); i++) {
      Letter l = letters.get(i);
      if (l.text().equals("D") && Math.abs(l.size() - small) < 0.01) {
        marks.add(l);
      }
    }
    return marks;
  }

  /** Revision, date, and a cell that only fills in the revision, are no changes to mark. */
  @Test
  void nothingIsMarkedWhereOnlyTheRevisionDiffers() throws IOException {
    assertEquals(0, issue().code());
    assertEquals(List.of(), marks());
  }

  @Test
  void eachChangeHasOneTriangleBesideIt() throws IOException {
    change("season: A27", "season: S28");
    change("Fold once across.", "Fold twice across.");
    change("hem turned twice", "hem turned once");
    change("text: Hem rows", "text: Hem twin rows");
    draw("pocket.svg", 60, 51);
    Run run = issue();
    assertEquals(0, run.code(), run.err());
    List<Letter> letters = letters(pdf("D", "2027-03-04"));
    List<Letter> marks = marks();
    assertEquals(5, marks.size(), text(letters));
    for (String word : List.of("S28", "Fold twice", "turned once", "Hem twin", "Detail")) {
      Letter changed = word(letters, word);
      assertTrue(
          marks.stream()
              .anyMatch(
                  m -> Math.abs(m.y() - changed.y()) < 9 && Math.abs(m.x() - changed.x()) < 160),
          word + ": " + changed + " " + marks);
    }
    // Old values stand beside the new ones.
    assertTrue(text(letters).contains("A27"), text(letters));
    assertTrue(text(letters).contains("Fold once across."), text(letters));
    assertFalse(run.out().contains("no room"), run.out());
  }

  @Test
  void anAddedRowIsMarkedAndARemovedOneIsNot() throws IOException {
    change("[\"3\", \"Bag.\"]", "[\"4\", \"Box.\"]");
    assertEquals(0, issue().code());
    List<Letter> marks = marks();
    assertEquals(1, marks.size());
    assertEquals(word(letters(pdf("D", "2027-03-04")), "Box.").y(), marks.get(0).y(), 4);
  }

  /** The sheet is as before in every pixel, but for what the marks add. */
  @Test
  void marksMoveAndCoverNothing() throws IOException {
    change("season: A27", "season: S28");
    change("Fold once across.", "Fold twice across.");
    draw("pocket.svg", 60, 51);
    assertEquals(0, issue().code());
    BufferedImage marked = image(pdf("D", "2027-03-04"));
    Path plain = dir.resolve("plain");
    assertEquals(0, issue("--no-marks", "--out", plain).code());
    BufferedImage bare = image(first(plain));
    int added = 0;
    for (int y = 0; y < bare.getHeight(); y++) {
      for (int x = 0; x < bare.getWidth(); x++) {
        int was = bare.getRGB(x, y) & 255;
        int is = marked.getRGB(x, y) & 255;
        assertTrue(is <= was + 2, "ink lost at " + x + ", " + y);
        if (is < was - 2) {
          added++;
          assertTrue(was > 200, "a mark on ink at " + x + ", " + y);
        }
      }
    }
    assertTrue(added > 200, "" + added);
  }

  private Path first(Path root) throws IOException {
    try (var files = Files.walk(root)) {
      return files.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
    }
  }

  private static BufferedImage image(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFRenderer(document).renderImageWithDPI(0, 150);
    }
  }

  /** Marks of an earlier revision are gone with the next. */
  @Test
  void onlyTheCurrentRevisionIsMarked() throws IOException {
    change("season: A27", "season: S28");
    assertEquals(0, issue().code());
    assertEquals(1, marks().size());
    change("revision: D, date: \"2027-03-04\"", "revision: E, date: \"2027-03-09\"");
    change("Bag.", "Polybag.");
    assertEquals(0, issue().code());
    String text = text(letters(pdf("E", "2027-03-09")));
    assertFalse(text.contains("A27"), text);
    assertTrue(text.contains("Polybag."), text);
  }

  /** Of a stage and a round, initials and number stand in the triangle. */
  @Test
  void aLongRevisionIsMarkedByItsInitials() throws IOException {
    change("revision: D, date: \"2027-03-04\"", "revision: proto 2, date: \"2027-03-04\"");
    change("season: A27", "season: S28");
    Run run = issue();
    assertEquals(0, run.code(), run.err());
    assertFalse(run.out().contains("no room"), run.out());
    Path folder;
    try (var all = Files.list(dir.resolve("issues"))) {
      folder = all.filter(f -> f.toString().contains("proto")).findFirst().orElseThrow();
    }
    try (var files = Files.list(folder)) {
      Path pdf = files.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
      assertTrue(text(letters(pdf)).contains("P2"), text(letters(pdf)));
    }
  }

  /** A cell full of text has no room; the margin beside it has. */
  @Test
  void aMarkWithoutRoomInItsCellStandsInTheMargin() throws IOException {
    change("rows: [1fr, 30mm]", "rows: [1fr, 6mm]");
    change("Revision {revision}: hem turned twice", "Hem " + "x".repeat(61));
    Run run = issue();
    assertEquals(0, run.code(), run.err());
    List<Letter> marks = marks();
    assertEquals(1, marks.size(), run.out());
    // Right of the frame, which ends 10 mm from the edge of the paper.
    assertTrue(marks.get(0).x() > (297 - 10) * 72 / 25.4, "" + marks);
  }

  /** The changed sheet stands in the report as it was and as it is, with boxes on both. */
  @Test
  void theReportShowsTheSheetBeforeAndAfter() throws IOException {
    change("Fold once across.", "Fold twice across.");
    assertEquals(0, issue().code());
    String stem = "MG-1_D_2027-03-04";
    String page = Files.readString(dir.resolve("issues/" + stem + "/" + stem + "-report.html"));
    int start = page.indexOf("What changed since C 2027-02-11");
    assertTrue(start > 0, page.substring(0, 2000));
    String section = page.substring(start, page.indexOf("</section>", start));
    assertTrue(
        section.contains(
            "row flats, steps, 2, What is done: Fold once across. -&gt; Fold twice across."),
        section.replaceAll("base64,[^\"]*", "base64"));
    assertEquals(1, section.split("class=\"pair\"", -1).length - 1);
    int was = section.split("<rect class=\"was\"", -1).length - 1;
    assertTrue(was >= 2, "the row and the revision: " + was);
    assertEquals(was, section.split("<rect class=\"is\"", -1).length - 1);
    assertTrue(section.contains("href=\"data:image/png;base64,"), "as it was");
    assertTrue(section.contains("href=\"#picture-1\""), "as it is");
    // Without an earlier issue there is nothing to compare.
    String first = "MG-1_C_2027-02-11";
    assertFalse(
        Files.readString(dir.resolve("issues/" + first + "/" + first + "-report.html"))
            .contains("What changed"));
  }

  /** Without the values of the issue before nothing can be marked: nothing is issued. */
  @Test
  void aDamagedIssueBeforeIsNamedAndNothingIsWritten() throws IOException {
    Path json = dir.resolve("issues/MG-1_C_2027-02-11/MG-1_C_2027-02-11-fit.json");
    Files.writeString(json, "{");
    Run run = issue();
    assertEquals(2, run.code());
    assertTrue(run.err().contains("MG-1_C_2027-02-11-fit.json"), run.err());
    assertTrue(run.err().contains("or move the issue away"), run.err());
    assertFalse(Files.exists(dir.resolve("issues/MG-1_D_2027-03-04")));
  }

  /** A preview of the issue before that is gone leaves out the pictures, not the list. */
  @Test
  void aLostPreviewLeavesOutThePictures() throws IOException {
    change("Fold once across.", "Fold twice across.");
    Files.delete(dir.resolve("issues/MG-1_C_2027-02-11/MG-1_C_2027-02-11.png"));
    Run run = issue();
    assertEquals(0, run.code(), run.err());
    String stem = "MG-1_D_2027-03-04";
    String page = Files.readString(dir.resolve("issues/" + stem + "/" + stem + "-report.html"));
    assertTrue(page.contains("What changed since C 2027-02-11"));
    assertFalse(page.contains("class=\"pair\""));
  }
}
