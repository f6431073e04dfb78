package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Samples on their sheets and in fit.json; the expected values were worked by hand. That a limit
 * met exactly is within is common practice.
 */
class SampleSheetTest {
  @TempDir Path dir;

  /** A: out, then in. B: in at the limit, then out below. C has no tolerance. */
  private static final String ROWS =
      """
      fit-1,M,C,,,,15.4,,,,,,
      fit-1,M,A,,,50,51.1,,,,,,
      fit-1,M,B,,,60,61,,,,,,
      fit-1,,,,,,,,,Collar stands {off},1,pattern room,open
      fit-1,,A,,,,,,,Tack the hem,2,factory,open
      fit-2,M,A,,,,51.0,,,,,,
      fit-2,M,B,,,59.4,,60.5,correct it,,,,
      fit-2,,,,,,,,,,2,,closed
      set,S,A,,,,48.0,,,,,,
      set,S,B,,,,59,,,,,,
      set,L,A,52,0.5,,52.6,,,,,,
      set,L,B,,,,61.2,,,,,,
      """;

  private JsonNode samples(String rows) throws IOException {
    Run run = SamplePack.fit(SamplePack.write(dir, rows));
    assertEquals(0, run.code(), run.err());
    Path fit = dir.resolve("out/fit.json");
    assertEquals(List.of(), FitSchema.errors(Files.readString(fit)));
    return new ObjectMapper().readTree(Files.readString(fit)).get("samples");
  }

  private static List<String> points(JsonNode size) {
    List<String> points = new ArrayList<>();
    for (JsonNode p : size.get("points")) {
      points.add(
          (p.get("point").asText()
                  + " "
                  + p.get("shown").asText()
                  + " "
                  + p.get("verdict").asText()
                  + ", "
                  + p.get("trend").asText())
              .replaceAll(" +", " "));
    }
    return points;
  }

  private static List<String> comments(JsonNode sample) {
    List<String> comments = new ArrayList<>();
    for (JsonNode c : sample.get("comments")) {
      comments.add(
          c.get("number").asText()
              + " since "
              + c.get("since").asText()
              + (c.get("open").asBoolean() ? " open" : " closed")
              + (c.get("carried").asBoolean() ? " carried" : ""));
    }
    return comments;
  }

  @Test
  void judgesEveryRound() throws IOException {
    JsonNode all = samples(ROWS);
    assertEquals(
        List.of("A +1.1 over, none", "B +1 within, none", "C +0.4 no tolerance, none"),
        points(all.at("/0/sizes/0")));
    assertEquals(
        List.of("A +1 within, in again", "B −0.6 under, now out", "C not measured, none"),
        points(all.at("/1/sizes/0")));
    assertEquals("S", all.at("/2/sizes/0/size").asText());
    assertEquals(
        List.of("A 0 within, none", "B 0 within, none", "C not measured, none"),
        points(all.at("/2/sizes/0")));
    // The tolerance of the round, not the list's.
    assertEquals(
        List.of("A +0.6 over, none", "B +0.2 within, none", "C not measured, none"),
        points(all.at("/2/sizes/1")));
    assertEquals(1, all.at("/2/sizes/1/out").asInt());
    assertEquals(3, all.at("/3/sizes/0/notMeasured").asInt());
  }

  @Test
  void carriesOpenCommentsOver() throws IOException {
    JsonNode all = samples(ROWS);
    assertEquals(List.of("1 since fit-1 open", "2 since fit-1 open"), comments(all.get(0)));
    assertEquals(
        List.of("1 since fit-1 open carried", "2 since fit-1 closed"), comments(all.get(1)));
    assertEquals(List.of("1 since fit-1 open carried"), comments(all.get(2)));
    assertEquals(List.of("1 since fit-1 open carried"), comments(all.get(3)));
  }

  /** The words of a page, and where each run of letters stands. */
  private record Word(String text, double left, double top, double right, double bottom) {}

  private static List<Word> words(PDDocument pdf, int page) throws IOException {
    List<Word> words = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void writeString(String text, List<TextPosition> at) {
            TextPosition a = at.get(0);
            TextPosition z = at.get(at.size() - 1);
            words.add(
                new Word(
                    text,
                    a.getXDirAdj(),
                    a.getYDirAdj() - a.getHeightDir(),
                    z.getXDirAdj() + z.getWidthDirAdj(),
                    a.getYDirAdj()));
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.getText(pdf);
    return words;
  }

  /** How much of a word's box is black at 200 pixels per inch and one bit, as a fax has it. */
  private static double black(PDDocument pdf, int page, String text) throws IOException {
    Word word =
        words(pdf, page).stream().filter(w -> w.text().equals(text)).findFirst().orElseThrow();
    BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(page - 1, 200, ImageType.BINARY);
    double scale = 200 / 72.0;
    int black = 0;
    int all = 0;
    for (int y = (int) (word.top * scale) - 3; y < word.bottom * scale + 3; y++) {
      for (int x = (int) (word.left * scale) - 3; x < word.right * scale + 3; x++) {
        all++;
        black += (image.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
      }
    }
    return black / (double) all;
  }

  @Test
  void printsOutOfToleranceInWhiteOnBlack() throws IOException {
    samples(ROWS);
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      assertTrue(black(pdf, 1, "+1.1") > 0.5, "out");
      assertTrue(black(pdf, 1, "+1.1") < 0.9, "its digits are white");
      assertTrue(black(pdf, 1, "+1") < 0.4, "within");
      assertTrue(black(pdf, 1, "+0.4") < 0.4, "no tolerance");
      assertTrue(black(pdf, 2, "−0.6") > 0.5, "out, smaller");
      // The earlier round beside it is reversed, too.
      assertTrue(black(pdf, 2, "+1.1") > 0.5, "out in the round before");
    }
  }

  @Test
  void printsPointsInTheListsOrderAndTextsAsTheyAre() throws IOException {
    samples(ROWS);
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      List<String> first = words(pdf, 1).stream().map(Word::text).toList();
      assertTrue(first.indexOf("Half chest") < first.indexOf("Sleeve"), first.toString());
      assertTrue(first.indexOf("Sleeve") < first.indexOf("Cuff"), first.toString());
      assertTrue(first.contains("Collar stands {off}"), first.toString());
      List<String> second = words(pdf, 2).stream().map(Word::text).toList();
      assertTrue(second.containsAll(List.of("in again", "now out", "closed", "still open")));
      assertTrue(second.contains("Round 1"), second.toString());
      List<String> next = words(pdf, 4).stream().map(Word::text).toList();
      assertTrue(next.containsAll(List.of("Factory", "Ours", "Difference", "Revised", "Comment")));
    }
  }

  @Test
  void saysTotalsAndWhatTheListLacks() throws IOException {
    Run run = SamplePack.fit(SamplePack.write(dir, ROWS));
    String flat = run.out().replaceAll("\\s+", " ");
    assertTrue(
        flat.contains(
            "sample fit-1, size M: 3 of 3 points measured, 1 out of tolerance (A +1.1 cm), 1"
                + " differ and have no tolerance."),
        flat);
    assertTrue(
        flat.contains("point B: fit-2 revised M to 60.5 cm; the list still asks 60 cm."), flat);
  }

  /** A number that is used again for another comment would replace it without a word. */
  @Test
  void saysWhereACommentHasOtherWords() throws IOException {
    String rows = ROWS + "fit-2,,,,,,,,,Shorten the collar,1,,\n";
    Run run = SamplePack.fit(SamplePack.write(dir, rows));
    String flat = run.out().replaceAll("\\s+", " ");
    assertTrue(
        flat.contains("comment 1: fit-2 has other words than before; was 'Collar stands {off}'."),
        flat);
    assertFalse(
        SamplePack.fit(SamplePack.write(dir, ROWS)).out().contains("other words"), "no change");
  }

  /** Three sizes beside one another on A4 landscape, in rows under each point on a narrow page. */
  @Test
  void setsSizesInRowsWhereThereIsNoRoomBeside() throws IOException {
    Path pack = SamplePack.write(dir, ROWS + "set,M,A,,,,50,,,,,,\n");
    List<List<String>> rows = new ArrayList<>();
    for (String paper : List.of("A4 landscape", "A4 portrait")) {
      String text = SamplePack.TEXT.replace("fields:", "");
      Files.writeString(pack, text + (paper.startsWith("A4 p") ? "margins: 12mm\n" : ""));
      Run run = Run.of("fit", pack, "--paper", paper, "--out", dir.resolve("out"), "--overwrite");
      assertEquals(0, run.code(), run.err());
      JsonNode sheet = null;
      for (JsonNode each :
          new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile()).get("sheets")) {
        sheet = each.get("id").asText().equals("set") ? each : sheet;
      }
      List<String> codes = new ArrayList<>();
      for (JsonNode row : sheet.at("/tables/0/rows")) {
        codes.add(row.get(0).asText());
      }
      rows.add(codes);
    }
    assertEquals(List.of("A", "B", "C"), rows.get(0));
    assertEquals(List.of("A", "A", "A", "B", "B", "B", "C", "C", "C"), rows.get(1));
  }
}
