package dev.placket.packs.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.Blend;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is put together before it is laid down, as pixels and in the PDF: the colours are worked out
 * by hand on white paper (SVG 2, 3.6; Compositing and Blending 1, 5 and 10).
 */
class LayersTest {
  private static final int SIDE = 200;

  /** Two squares under one opacity, the second over the first. */
  private static final String PAIR =
      "<rect x='40' y='40' width='80' height='80' fill='#008000'/>"
          + "<rect x='80' y='80' width='80' height='80' fill='#0000ff'/>";

  private static final String SHADE =
      "<rect x='20' y='20' width='120' height='120' fill='#dd3333'/>"
          + "<rect x='60' y='40' width='120' height='120' fill='#888888' style='mix-blend-mode:";

  private static Drawing read(String inside) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 200'>" + inside + "</svg>";
    return (Drawing)
        PictureReader.read(
            PictureSource.of("l.svg", svg.getBytes(StandardCharsets.UTF_8)), ReadLimits.DEFAULT);
  }

  private static BufferedImage pixels(Drawing drawing) {
    BufferedImage on = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = on.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, SIDE, SIDE);
    g.drawImage(drawing.render(SIDE, new InkedBox(0, 0, SIDE, SIDE)), 0, 0, null);
    g.dispose();
    return on;
  }

  private static byte[] pdf(Drawing drawing) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(SIDE, SIDE));
      document.addPage(page);
      PdfBoxGraphics2D g = new PdfLayers(document, SIDE, SIDE).graphics();
      drawing.paint(g);
      g.dispose();
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        out.drawForm(g.getXFormObject());
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static BufferedImage page(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertFalse(hasImages(document.getPage(0).getResources()));
      return new PDFRenderer(document).renderImageWithDPI(0, 72, ImageType.RGB);
    }
  }

  private static boolean hasImages(PDResources in) throws IOException {
    for (var name : in.getXObjectNames()) {
      PDXObject object = in.getXObject(name);
      if (object instanceof PDImageXObject
          || (object instanceof PDFormXObject form
              && form.getResources() != null
              && hasImages(form.getResources()))) {
        return true;
      }
    }
    return false;
  }

  private static int groups(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return groups(document.getPage(0).getResources());
    }
  }

  private static int groups(PDResources in) throws IOException {
    int sum = 0;
    for (var name : in.getXObjectNames()) {
      if (in.getXObject(name) instanceof PDFormXObject form) {
        sum += form.getGroup() == null ? 0 : 1;
        sum += form.getResources() == null ? 0 : groups(form.getResources());
      }
    }
    return sum;
  }

  private static void assertColour(int expected, int found, int tolerance, String what) {
    for (int shift = 0; shift < 24; shift += 8) {
      assertEquals(
          expected >> shift & 255,
          found >> shift & 255,
          tolerance,
          () -> what + ": " + Integer.toHexString(found & 0xffffff));
    }
  }

  /** Where, and the colour there by hand. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "group |  60,  60 | 80c080",
        "group | 100, 100 | 8080ff",
        "group | 140, 140 | 8080ff",
        "deep  | 100, 100 | 8080ff",
        "twice | 100, 100 | bfbfff",
        "shape |  50,  50 | ff8080",
        "shape |  35,  80 | 808080",
        "shape |  45,  80 | 808080",
        "shade |  30,  30 | dd3333",
        "shade | 100, 100 | 761b1b",
        "shade | 170, 150 | 888888",
        "isolated | 100, 100 | bb8d8d",
        "mask  |  50, 100 | 0000ff",
        "mask  | 100, 100 | 7f7fff",
        "mask  | 150, 100 | ffffff",
        "alpha |  50, 100 | 0000ff",
        "alpha | 100, 100 | 0000ff",
        "alpha | 150, 100 | ffffff",
        "empty | 100, 100 | ffffff",
      })
  void isTheColourThatTheStandardGives(String what, String at, String colour) throws Exception {
    Drawing drawing = read(drawing(what.strip()));
    String[] xy = at.strip().split(",\\s*");
    int x = Integer.parseInt(xy[0]);
    int y = Integer.parseInt(xy[1]);
    int expected = Integer.parseInt(colour.strip(), 16);
    assertColour(expected, pixels(drawing).getRGB(x, y), 3, "pixels of " + what);
    assertColour(expected, page(pdf(drawing)).getRGB(x, y), 3, "PDF of " + what);
  }

  private static String drawing(String what) {
    String frame = "<rect x='1' y='1' width='3' height='3'/>";
    String masked = "<rect width='200' height='200' fill='#0000ff' mask='url(#m)'/>";
    String bands =
        "<rect width='80' height='200' fill='#fff'/>"
            + "<rect x='80' width='40' height='200' fill='#808080'/></mask>";
    return switch (what) {
      case "group" -> "<g opacity='.5'>" + PAIR + "</g>";
      case "deep" -> "<g style='opacity:.5'><g><g>" + PAIR + "</g></g></g>";
      case "twice" -> "<g opacity='.5'><g opacity='.5'>" + PAIR + "</g></g>";
      case "shape" ->
          "<path d='M40 40H160V160H40Z' fill='#f00' stroke='#000' stroke-width='16' opacity='.5'/>";
      case "shade" -> SHADE + "multiply'/>";
      case "isolated" -> "<g opacity='.5'>" + SHADE + "multiply'/></g>";
      case "mask" -> "<mask id='m'>" + bands + masked;
      case "alpha" -> "<mask id='m' mask-type='alpha'>" + bands + masked;
      default -> frame + "<mask id='m'/>" + masked;
    };
  }

  /** PDFBox blends by ISO 32000-1, 11.3.5, with code of its own. */
  @ParameterizedTest
  @EnumSource(Blend.class)
  void blendsAsPdfDoes(Blend blend) throws Exception {
    Drawing drawing = read(SHADE.replace("#888888", "#4080c0") + blend.word() + "'/>");
    int own = pixels(drawing).getRGB(100, 100);
    assertColour(own, page(pdf(drawing)).getRGB(100, 100), 3, blend.word());
    assertTrue(drawing.notes().isEmpty(), () -> "" + drawing.notes());
  }

  @Test
  void whatDoesNotOverlapIsNoGroup() throws Exception {
    Drawing apart =
        read(
            "<g opacity='.5'><rect width='40' height='40'/>"
                + "<rect x='90' width='40' height='40' fill='#0000ff'/></g>");
    byte[] pdf = pdf(apart);
    assertEquals(0, groups(pdf));
    assertEquals(1, groups(pdf(read(drawing("group")))));
    assertColour(0x8080ff, page(pdf).getRGB(100, 20), 2, "folded");
  }

  /** A second reader of the PDF, where poppler is installed. */
  @Test
  void popplerShowsTheSame() throws Exception {
    Path work = Files.createTempDirectory("layers");
    for (String what : new String[] {"group", "shade", "mask", "isolated"}) {
      Drawing drawing = read(drawing(what));
      Path file = Files.write(work.resolve(what + ".pdf"), pdf(drawing));
      Process run;
      try {
        run =
            new ProcessBuilder(
                    "pdftoppm",
                    "-r",
                    "72",
                    "-png",
                    "-singlefile",
                    file.toString(),
                    work.resolve(what).toString())
                .start();
      } catch (IOException e) {
        org.junit.jupiter.api.Assumptions.abort("skipped: no pdftoppm on this machine");
        return;
      }
      assertEquals(0, run.waitFor());
      BufferedImage seen = javax.imageio.ImageIO.read(work.resolve(what + ".png").toFile());
      BufferedImage own = pixels(drawing);
      for (int[] at : new int[][] {{60, 60}, {100, 100}, {140, 140}, {170, 150}, {30, 30}}) {
        assertColour(own.getRGB(at[0], at[1]), seen.getRGB(at[0], at[1]), 4, what);
      }
    }
  }
}
