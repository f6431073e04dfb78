package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code placket probe} as it is called. */
class ProbeCommandTest {
  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='60' height='80'/></svg>";

  @TempDir Path dir;
  private String said = "";
  private String refused = "";

  /** 200 by 100 on white or on nothing; ink from 20,10 to 180,90. */
  private Path picture(String name, boolean white) throws IOException {
    int type = white ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB;
    BufferedImage image = new BufferedImage(200, 100, type);
    Graphics2D g = image.createGraphics();
    if (white) {
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, 200, 100);
    }
    g.setColor(Color.BLACK);
    g.fillOval(20, 10, 160, 80);
    g.dispose();
    Path file = dir.resolve(name);
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  @Test
  void theJsonIsOfItsSchemaAndTellsWhatIsKnown() throws Exception {
    Path svg = Files.writeString(dir.resolve("front.svg"), SVG);
    assertEquals(0, probe("--json", "--at", "180mm", picture("a.png", false), svg), refused);
    JsonNode all = json();
    assertEquals("placket-probe/1", all.path("format").asText());
    JsonNode png = all.path("files").get(0);
    assertEquals("PNG", png.path("format").asText());
    assertEquals(200, png.path("pixels").path("width").asInt());
    assertTrue(png.path("density").isNull(), "the file states none");
    assertEquals("transparent", png.path("ground").asText());
    assertEquals(20, png.path("inkedBox").path("left").asInt());
    assertEquals(90, png.path("inkedBox").path("bottom").asInt());
    // 160 px on 180 mm are 22.58 to the inch; at 200 the whole 225 mm take 1771.7.
    assertEquals(22.58, png.path("printed").path("density").path("x").asDouble(), 0.005);
    assertEquals("soft", png.path("printed").path("state").asText());
    assertEquals(1772, png.path("wantedPixels").path("width").asInt());
    assertEquals(886, png.path("wantedPixels").path("height").asInt());
    JsonNode drawing = all.path("files").get(1);
    assertTrue(drawing.path("pixels").isNull());
    assertEquals(70, drawing.path("inkedBox").path("right").asDouble(), 1e-6);
    // The ink is 80 of 100 units high: 180 mm of it are 225 mm of drawing, 1771.7 px at 200.
    assertEquals(1772, drawing.path("wantedPixels").path("height").asInt());
  }

  /**
   * By hand: 90 units print at 90 mm, so a unit is a millimetre. Least widths are those of ISO 128
   * and ISO 3098 (from memory); that of the gap is common practice. Capitals are about 0.7 of the
   * font size (from memory).
   */
  @Test
  void whatWillPrintIsSaidAndWarnedOf() throws Exception {
    Path svg =
        Files.writeString(
            dir.resolve("fine.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 120 100'>"
                + "<rect x='5.5' y='10.5' width='89' height='60' fill='none' stroke='#000'/>"
                + "<path d='M10 20H90' stroke='#000' stroke-width='0.15'/>"
                + "<path d='M10 30H90' stroke='#000' stroke-width='0.3' stroke-linecap='round'"
                + " stroke-dasharray='1.2 0.7'/>"
                + "<text x='20' y='50' font-size='2'>HEM</text></svg>");
    assertEquals(0, probe("--json", "--at", "90mm", svg), refused);
    JsonNode printed = json().path("files").get(0).path("printed");
    assertEquals(0.15, printed.path("lineMm").asDouble(), 1e-6);
    assertEquals(0.4, printed.path("gapMm").asDouble(), 1e-6);
    assertEquals(1.4, printed.path("letteringMm").asDouble(), 0.05);
    assertEquals("[\"line\",\"lettering\",\"gap\"]", printed.path("tooFine").toString());
    assertTrue(printed.path("resolvedShare").isNull());
    assertEquals(0, probe("--at", "90mm", svg));
    assertTrue(said.contains("finest line 0.15 mm"), said);
    assertTrue(said.contains("prints at 0.15 mm, under 0.18 mm"), said);
    said.lines().forEach(l -> assertTrue(l.length() <= 80, l));
    assertEquals(
        0, probe("--json", "--at", "90mm", "--warn-line", "0.1mm", "--warn-gap", "0.4mm", svg));
    printed = json().path("files").get(0).path("printed");
    assertEquals("[\"lettering\"]", printed.path("tooFine").toString());
    assertEquals(2, probe("--at", "90mm", "--warn-line", "thin", svg));
  }

  @Test
  void aRasterIsEstimatedAndOneThatWasEnlargedIsFound() throws Exception {
    Path sharp = lines("sharp.png", 1);
    Path enlarged = lines("enlarged.png", 3);
    assertEquals(0, probe("--json", "--at", "100mm", sharp, enlarged), refused);
    JsonNode one = json().path("files").get(0).path("printed");
    JsonNode other = json().path("files").get(1).path("printed");
    // Lines of 4 px over 700 px of ink on 100 mm.
    assertEquals(4 * 100.0 / 700, one.path("lineMm").asDouble(), 0.1);
    assertTrue(one.path("resolvedShare").asDouble() >= 0.9, said);
    assertEquals(1 / 3.0, other.path("resolvedShare").asDouble(), 0.15);
    assertEquals(
        other.path("density").path("x").asDouble() * other.path("resolvedShare").asDouble(),
        other.path("resolvedDensity").path("x").asDouble(),
        0.01);
    assertEquals(0, probe("--at", "100mm", enlarged));
    assertTrue(said.contains("enlarged before export"), said);
  }

  /** Rings of 4 px over 700 px, drawn at a part of their pixels and enlarged to all of them. */
  private Path lines(String name, int times) throws IOException {
    int size = 720 / times;
    BufferedImage small = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = small.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, size, size);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.scale(1.0 / times, 1.0 / times);
    g.setStroke(new BasicStroke(4));
    g.setColor(Color.BLACK);
    for (int r = 348; r > 40; r -= 60) {
      g.draw(new Ellipse2D.Double(360 - r, 360 - r, 2 * r, 2 * r));
    }
    g.dispose();
    BufferedImage image = new BufferedImage(720, 720, BufferedImage.TYPE_INT_RGB);
    Graphics2D large = image.createGraphics();
    large.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    large.drawImage(small, 0, 0, 720, 720, null);
    large.dispose();
    Path file = dir.resolve(name);
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  @Test
  void withoutALengthNothingIsWanted() throws Exception {
    assertEquals(0, probe("--json", picture("a.png", true)));
    JsonNode file = json().path("files").get(0);
    assertTrue(file.path("wantedPixels").isNull());
    assertTrue(file.path("printed").isNull());
    assertEquals("opaque white", file.path("ground").asText());
  }

  @Test
  void aWrongEndingIsNotedAndTheFileReadAsWhatItIs() throws Exception {
    Path odd = Files.move(picture("a.png", true), dir.resolve("a.jpg"));
    assertEquals(0, probe("--json", odd));
    JsonNode file = json().path("files").get(0);
    assertEquals("PNG", file.path("format").asText());
    assertTrue(file.path("notes").toString().contains(".jpg"), said);
  }

  @Test
  void aPhotographKeepsItsGround() throws Exception {
    assertEquals(0, probe("--json", picture("collar-photo.png", true)));
    JsonNode box = json().path("files").get(0).path("inkedBox");
    assertEquals(0, box.path("left").asInt());
    assertEquals(200, box.path("right").asInt());
  }

  @Test
  void theTableKeepsToEightyColumnsAndNamesEveryState() throws Exception {
    Path svg = Files.writeString(dir.resolve("a-rather-long-name-of-a-front-view.svg"), SVG);
    Path soft = picture("a.png", true);
    assertEquals(0, probe("--at", "180mm", svg, soft));
    said.lines().forEach(l -> assertTrue(l.length() <= 80, l));
    assertTrue(said.contains("S soft") && said.contains("Sc scalable"), said);
    assertTrue(said.contains("1,772 × 886"), said);
    assertEquals(0, probe("--at", "20mm", soft));
    assertTrue(said.contains("C crisp"), said);
    assertEquals(0, probe("--at", "10mm", soft));
    assertTrue(said.contains("H heavy"), said);
  }

  @Test
  void whatCannotBeReadLeavesOneMessageAndTheRestIsReported() throws Exception {
    Path text = Files.writeString(dir.resolve("no.png"), "no picture");
    assertEquals(2, probe("--json", text, picture("a.png", true), dir.resolve("none.png")));
    assertEquals(1, json().path("files").size());
    assertEquals(2, refused.lines().count(), refused);
    assertTrue(refused.contains("no.png") && refused.contains("none.png"), refused);
  }

  @Test
  void wrongUsageIsRefused() throws Exception {
    Path file = picture("a.png", true);
    assertEquals(2, probe("--at", "large", file));
    assertEquals(2, probe("--at", "-3mm", file));
    assertEquals(2, probe("--limit", "luck=3", file));
    assertEquals(2, probe());
    assertFalse(refused.contains("Exception"), refused);
  }

  @Test
  void limitsCanBeSet() throws Exception {
    Path file = picture("a.png", true);
    assertEquals(2, probe("--limit", "pixels=19999", file));
    assertTrue(refused.contains("200 by 100"), refused);
    assertEquals(0, probe("--limit", "pixels=20000", file));
  }

  private int probe(Object... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] all =
        Stream.concat(Stream.of("probe"), Stream.of(args).map(Object::toString))
            .toArray(String[]::new);
    int code =
        Main.run(
            all,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    said = out.toString(StandardCharsets.UTF_8);
    refused = err.toString(StandardCharsets.UTF_8);
    return code;
  }

  private JsonNode json() throws IOException {
    try (InputStream in = Main.class.getResourceAsStream("/placket-probe-1.schema.json")) {
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
      assertEquals(List.of(), schema.validate(said, InputFormat.JSON));
    }
    return new ObjectMapper().readTree(said);
  }
}
