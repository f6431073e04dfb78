package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that makes ready copies: what it writes, what it says, what it leaves alone. */
class PrepareCommandTest {
  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  @TempDir Path dir;
  private Path ready;
  private String said = "";

  @BeforeEach
  void folder() {
    ready = dir.resolve("ready");
  }

  private int run(Object... args) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    int code = Main.run(Arrays.stream(args).map(String::valueOf).toArray(String[]::new), to, to);
    said = bytes.toString(StandardCharsets.UTF_8);
    return code;
  }

  private Path png(String name, int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(8));
    g.drawOval(100, 100, width - 200, height - 200);
    g.dispose();
    Path file = dir.resolve(name);
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  private Path svg(String name) throws IOException {
    return Files.writeString(dir.resolve(name), SVG);
  }

  private List<String> written() throws IOException {
    if (!Files.exists(ready)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(ready)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aRasterAndADrawingAreMadeReady() throws IOException {
    assertEquals(
        0,
        run(
            "prepare",
            png("front.png", 2000, 2600),
            svg("back.svg"),
            "--at",
            "180mm",
            "--out",
            ready),
        said);
    assertEquals(List.of("back.png", "front.png"), written());
    // 180 / 25.4 * 200 = 1417.3 pixels along the longer side of the ink.
    BufferedImage front = ImageIO.read(ready.resolve("front.png").toFile());
    assertEquals(1418, front.getHeight());
    assertEquals(0, front.getRGB(0, 0) >>> 24, "the white ground is clear");
    assertEquals(1418, ImageIO.read(ready.resolve("back.png").toFile()).getHeight());
    assertTrue(said.contains("white background cleared"), said);
    said.lines().forEach(l -> assertTrue(l.length() <= 80 || l.contains(ready.toString()), l));
  }

  @Test
  void theSamePictureGivesTheSameBytes() throws IOException {
    Path front = png("front.png", 800, 900);
    assertEquals(3, run("prepare", front, "--at", "180mm", "--out", ready), said);
    byte[] once = Files.readAllBytes(ready.resolve("front.png"));
    assertEquals(3, run("prepare", front, "--at", "180mm", "--out", ready, "--overwrite"), said);
    assertArrayEquals(once, Files.readAllBytes(ready.resolve("front.png")));
    assertTrue(said.contains("soft") && said.contains("ask for"), said);
  }

  @Test
  void nothingOfTheUsersIsWrittenOver() throws IOException {
    Path front = png("front.png", 400, 500);
    byte[] before = Files.readAllBytes(front);
    assertEquals(2, run("prepare", front, "--at", "18cm", "--out", dir, "--overwrite"));
    assertTrue(said.contains("overwritten"), said);
    assertArrayEquals(before, Files.readAllBytes(front));
    Files.createDirectories(ready);
    Files.writeString(ready.resolve("front.png"), "mine");
    assertEquals(2, run("prepare", front, "--at", "18cm", "--out", ready));
    assertEquals("mine", Files.readString(ready.resolve("front.png")));
  }

  @Test
  void oneFaultyPictureAmongManyLeavesNothing() throws IOException {
    Path torn =
        Files.write(
            dir.resolve("torn.png"),
            Arrays.copyOf(Files.readAllBytes(png("a.png", 300, 300)), 400));
    assertEquals(2, run("prepare", svg("front.svg"), torn, "--at", "90mm", "--out", ready));
    assertTrue(said.contains("torn.png"), said);
    assertEquals(List.of(), written());
  }

  @Test
  void twoOfOneNameAndWrongLengthsAreRefused() throws IOException {
    assertEquals(
        2,
        run(
            "prepare",
            svg("front.svg"),
            png("front.png", 300, 300),
            "--at",
            "9cm",
            "--out",
            ready));
    assertTrue(said.contains("front.png"), said);
    assertEquals(2, run("prepare", svg("front.svg"), "--at", "nine", "--out", ready));
    assertTrue(said.contains("180mm"), said);
    assertEquals(2, run("prepare", svg("front.svg"), "--out", ready));
    assertEquals(
        2, run("prepare", svg("front.svg"), "--at", "9cm", "--density", "0", "--out", ready));
    assertEquals(List.of(), written());
  }

  @Test
  void fewColoursWeighLessAndStayAsTheyAre() throws IOException {
    Path art =
        Files.writeString(
            dir.resolve("art.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100' stroke='#000'>"
                + "<circle cx='40' cy='40' r='30' fill='#b9643c'/>"
                + "<circle cx='55' cy='60' r='30' fill='#37567f'/></svg>");
    assertEquals(0, run("prepare", art, "--at", "180mm", "--out", ready));
    long all = Files.size(ready.resolve("art.png"));
    Path less = dir.resolve("less");
    assertEquals(0, run("prepare", art, "--at", "180mm", "--few-colours", "--out", less));
    assertTrue(said.contains("PNG of few colours, visually lossless"), said);
    assertTrue(Files.size(less.resolve("art.png")) < all * 0.7, said);
    Path again = dir.resolve("again");
    Path once = less.resolve("art.png");
    assertEquals(0, run("prepare", once, "--at", "180mm", "--few-colours", "--out", again));
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(again.resolve("art.png")));
    assertTrue(said.contains("lossless PNG"), said);
  }

  @Test
  void aColouredGroundIsClearedAndCutIfAsked() throws IOException {
    BufferedImage image = new BufferedImage(900, 1200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(180, 148, 104));
    g.fillRect(0, 0, 900, 1200);
    g.setColor(Color.BLACK);
    g.fillRect(200, 300, 400, 600);
    g.dispose();
    Path card = dir.resolve("card.png");
    ImageIO.write(image, "png", card.toFile());
    assertEquals(0, run("prepare", card, "--at", "30mm", "--out", ready));
    BufferedImage kept = ImageIO.read(ready.resolve("card.png").toFile());
    assertEquals(180, kept.getRGB(0, 0) >> 16 & 255);
    assertEquals(
        0, run("prepare", card, "--at", "30mm", "--clear-colour", "--overwrite", "--out", ready));
    BufferedImage cut = ImageIO.read(ready.resolve("card.png").toFile());
    assertEquals(0xFF000000, cut.getRGB(0, 0), "cut to its ink");
    assertEquals(1.5, cut.getHeight() / (double) cut.getWidth(), 0.01);
    assertTrue(said.contains("single-colour background cleared"), said);
    assertEquals(
        2, run("prepare", card, "--at", "3cm", "--clear-colour", "--clear-enclosed", "--out", dir));
  }

  @Test
  void aSheetSaysTheSizes() throws IOException {
    Path flats = Files.createDirectory(dir.resolve("style"));
    Files.writeString(flats.resolve("front.svg"), SVG);
    assertEquals(0, run("fit", flats), said);
    Path fit = flats.resolve("placket/fit.json");
    assertEquals(0, run("prepare", "--for", fit, "--out", ready), said);
    assertEquals(List.of("front.png"), written());
    String json = Files.readString(fit);
    double top = number(json, "top", json.indexOf("\"inkedBox\""));
    double bottom = number(json, "bottom", json.indexOf("\"inkedBox\""));
    BufferedImage front = ImageIO.read(ready.resolve("front.png").toFile());
    assertEquals((bottom - top) / 72 * 200, front.getHeight(), 1);
    Files.writeString(flats.resolve("front.svg"), SVG.replace("70", "60"));
    assertEquals(2, run("prepare", "--for", fit, "--out", ready, "--overwrite"));
    assertTrue(said.contains("changed"), said);
    assertFalse(said.contains("Exception"), said);
  }

  @Test
  void aWeightIsKeptOrItIsSaidByHowMuchNot() throws IOException {
    Path front = png("front.png", 2000, 2600);
    assertEquals(0, run("prepare", front, "--at", "180mm", "--out", ready), said);
    long full = Files.size(ready.resolve("front.png"));
    String less = String.valueOf(0.85 * full / 1e6);
    assertEquals(
        0,
        run("prepare", front, "--at", "180mm", "--out", ready, "--overwrite", "--max-size", less),
        said);
    assertTrue(said.contains("Reduced to"), said);
    assertTrue(Files.size(ready.resolve("front.png")) <= 0.85 * full, said);
    assertEquals(
        3,
        run(
            "prepare",
            front,
            "--at",
            "180mm",
            "--out",
            ready,
            "--overwrite",
            "--max-size",
            "0.002"),
        said);
    assertTrue(said.contains("Over the size limit by"), said);
    // Never under the soft limit: 180 / 25.4 * 150 = 1063 pixels.
    assertEquals(1063, ImageIO.read(ready.resolve("front.png").toFile()).getHeight());
  }

  private static double number(String json, String field, int from) {
    int at = json.indexOf("\"" + field + "\"", from);
    String rest = json.substring(json.indexOf(':', at) + 1);
    return Double.parseDouble(rest.split("[,}\\n]")[0].strip());
  }

  /** The front of the starter lies on several sheets; 200 pixels per inch are the default. */
  @Test
  void aPictureOnSeveralSheetsIsPreparedForTheLargest() throws IOException {
    assertEquals(0, run("starter", dir), said);
    assertEquals(0, run("fit", dir.resolve("pack.yaml"), "--out", dir), said);
    double longest = 0;
    int places = 0;
    JsonNode fit = new ObjectMapper().readTree(dir.resolve("fit.json").toFile());
    for (JsonNode p :
        fit.findValues("placements").stream().flatMap(PrepareCommandTest::each).toList()) {
      if (p.path("source").asText().equals("front.svg")) {
        JsonNode box = p.path("inkedBox");
        longest = Math.max(longest, box.path("right").asDouble() - box.path("left").asDouble());
        longest = Math.max(longest, box.path("bottom").asDouble() - box.path("top").asDouble());
        places++;
      }
    }
    assertTrue(places > 1, "the starter places it once: " + places);
    assertEquals(0, run("prepare", "--for", dir.resolve("fit.json"), "--out", ready), said);
    BufferedImage copy = ImageIO.read(ready.resolve("front.png").toFile());
    assertEquals(longest / 72 * 200, Math.max(copy.getWidth(), copy.getHeight()), 1);
  }

  private static Stream<JsonNode> each(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false);
  }

  /** 50 m at 200 to the inch: 393,701 pixels, squared 155,000 million. */
  @Test
  void moreThanTheLimitOfPixelsIsRefusedByName() throws IOException {
    Path drawing = dir.resolve("square.svg");
    Files.writeString(
        drawing,
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
            + "<rect width='100' height='100'/></svg>");
    Run over = Run.of("prepare", drawing, "--at", "50000mm", "--out", dir.resolve("over"));
    assertEquals(2, over.code(), over.err());
    assertTrue(over.err().contains("155000 million pixels"), over.err());
    assertTrue(over.err().contains("--max-pixels"), over.err());
    Object[] within = {
      "prepare", drawing, "--at", "200mm", "--max-pixels", 2, "--out", dir.resolve("within")
    };
    // 1,575 pixels squared are 2.48 million.
    assertEquals(2, Run.of(within).code());
    within[5] = 3;
    assertEquals(0, Run.of(within).code());
  }

  /** A wide rectangle in one layer, a tall one in another; the file shows both. */
  private static void layered(Path file) throws IOException {
    try (PDDocument made = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(120, 120));
      made.addPage(page);
      PDOptionalContentProperties layers = new PDOptionalContentProperties();
      made.getDocumentCatalog().setOCProperties(layers);
      try (PDPageContentStream on = new PDPageContentStream(made, page)) {
        for (boolean wide : new boolean[] {true, false}) {
          PDOptionalContentGroup layer = new PDOptionalContentGroup(wide ? "shell" : "lining");
          layers.addGroup(layer);
          on.beginMarkedContent(COSName.OC, layer);
          on.addRect(10, 10, wide ? 80 : 20, wide ? 40 : 100);
          on.stroke();
          on.endMarkedContent();
        }
      }
      made.save(file.toFile());
    }
  }

  /** The copy shows what the pack shows, and each choice of layers has a copy of its own. */
  @Test
  void theLayersOfThePackAreThoseOfTheCopy() throws IOException {
    layered(dir.resolve("coat.pdf"));
    Files.writeString(
        dir.resolve("pack.yaml"),
        """
        format: placket-pack/1
        sheets:
          one:
            name: One
            areas: [all]
            windows: {all: }
            flats:
              shell: {file: coat.pdf, role: detail, layers: [shell]}
              lining: {file: coat.pdf, role: detail, layers: [lining]}
        """);
    assertEquals(0, run("fit", dir.resolve("pack.yaml"), "--out", dir), said);
    assertEquals(0, run("prepare", "--for", dir.resolve("fit.json"), "--out", ready), said);
    assertEquals(
        List.of("coat-lining.png", "coat-shell.png"), written().stream().sorted().toList());
    // 80 by 40 and 20 by 100 with a line of 1 around.
    assertEquals(81.0 / 41, ratio("coat-shell.png"), 0.02);
    assertEquals(21.0 / 101, ratio("coat-lining.png"), 0.02);
    String json = Files.readString(dir.resolve("fit.json"));
    Files.writeString(dir.resolve("old.json"), json.replace("\"layers\"", "\"strata\""));
    assertEquals(2, run("prepare", "--for", dir.resolve("old.json"), "--out", dir.resolve("b")));
    assertTrue(said.contains("does not state which layers of coat.pdf are shown"), said);
  }

  @Test
  void aFilledDrawingIsPreparedAsDrawnAndTheReportStatesIt() throws IOException {
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90'><rect id='shell' x='9' y='9'"
            + " width='40' height='60' fill='#fff' stroke='#000'/></svg>");
    Files.writeString(
        dir.resolve("pack.yaml"),
        """
        format: placket-pack/1
        sheets:
          one:
            name: One
            areas: [all]
            windows: {all: }
            flats:
              k1: {file: coat.svg, role: front, fills: {shell: "#8A7F70"}}
        """);
    assertEquals(0, run("fit", dir.resolve("pack.yaml"), "--out", dir), said);
    assertEquals(0, run("prepare", "--for", dir.resolve("fit.json"), "--out", ready), said);
    assertEquals(List.of("coat.png"), written());
    assertTrue(said.replaceAll("\\s+", " ").contains("filled with colours in the pack"), said);
    BufferedImage copy = ImageIO.read(ready.resolve("coat.png").toFile());
    int middle = copy.getRGB(copy.getWidth() / 2, copy.getHeight() / 2);
    assertEquals(0xFFFFFF, middle & 0xFFFFFF, "as drawn");
  }

  @Test
  void filesOfOneNameInFoldersAndPartsOfAnSvgAreTold() throws IOException {
    Path style = Files.createDirectories(dir.resolve("style"));
    for (String folder : List.of("outer", "inner")) {
      int width = folder.equals("outer") ? 40 : 20;
      Files.writeString(
          Files.createDirectory(style.resolve(folder)).resolve("cuff.svg"),
          "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 90'><rect x='9' y='9' width='"
              + width
              + "' height='60'/></svg>");
    }
    Files.writeString(
        style.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 90'><g id='front'>"
            + "<rect x='9' y='9' width='70' height='35'/></g><g id='back'>"
            + "<rect x='109' y='9' width='20' height='80'/></g></svg>");
    Files.writeString(
        style.resolve("pack.yaml"),
        """
        format: placket-pack/1
        sheets:
          one:
            name: One
            areas: [all]
            windows: {all: }
            flats:
              front: {file: "coat.svg#front", role: front}
              back: {file: "coat.svg#back", role: back}
              outer: {file: outer/cuff.svg, role: detail}
              inner: {file: inner/cuff.svg, role: detail}
        """);
    assertEquals(0, run("fit", style.resolve("pack.yaml"), "--out", style.resolve("made")), said);
    Path fit = style.resolve("made/fit.json");
    assertEquals(0, run("prepare", "--for", fit, "--out", ready), said);
    assertEquals(
        List.of("coat-back.png", "coat-front.png", "inner-cuff.png", "outer-cuff.png"),
        written().stream().sorted().toList());
    // Proportions of the rectangles as drawn above.
    assertEquals(2, ratio("coat-front.png"), 0.05);
    assertEquals(0.25, ratio("coat-back.png"), 0.02);
    assertEquals(2.0 / 3, ratio("outer-cuff.png"), 0.03);
    assertEquals(1.0 / 3, ratio("inner-cuff.png"), 0.03);
  }

  private double ratio(String name) throws IOException {
    BufferedImage copy = ImageIO.read(ready.resolve(name).toFile());
    return (double) copy.getWidth() / copy.getHeight();
  }
}
