package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture in a cell of the header, as a logo. */
class CellPictureTest {
  private static final String TEXT =
      """
      format: placket-pack/1
      header:
        columns: [60mm, 1fr]
        rows: [20mm]
        areas: [logo name]
        cells:
          logo: {picture: %s}
          name: {caption: Style, text: Coat}
      sheets:
        one: {name: One, areas: [all], windows: {all: }, flats: {coat: {file: coat.svg, role: front}}}
      """;

  @TempDir private Path dir;

  private Run run(String logo) throws IOException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 40 10'>"
            + "<path d='M0,0 H40 V10 H0 Z' fill='%s'/></svg>";
    Files.writeString(dir.resolve("logo.svg"), svg.formatted("#c02040"));
    Files.writeString(dir.resolve("coat.svg"), svg.formatted("#777777"));
    Path pack = Files.writeString(dir.resolve("pack.yaml"), TEXT.formatted(logo));
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
  }

  private void png(String name, int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(0xC02040));
    g.fillRect(0, 0, width, height);
    g.dispose();
    ImageIO.write(image, "png", dir.resolve(name).toFile());
  }

  /**
   * The cell is 60 by 20 mm from the margin of 10 mm; with 1.5 mm on all sides the room is 57 by
   * 17, in which a picture of 4 to 1 is 57 by 14.25, in the middle of the height.
   */
  @Test
  void aLogoIsAsLargeAsItsCellAllowsInItsOwnProportions() throws IOException {
    assertEquals(0, run("logo.svg").code());
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      check(new PDFRenderer(pdf).renderImageWithDPI(0, 254));
    }
    BufferedImage preview = ImageIO.read(dir.resolve("out/pack.png").toFile());
    double perMm = preview.getWidth() / 297.0;
    assertEquals(0xC02040, preview.getRGB((int) (38 * perMm), (int) (20 * perMm)) & 0xFFFFFF);
    assertEquals(0xFFFFFF, preview.getRGB((int) (38 * perMm), (int) (12 * perMm)) & 0xFFFFFF);
  }

  @Test
  void aLogoOfPixelsLiesInTheSamePlace() throws IOException {
    png("logo.png", 1600, 400);
    Run run = run("logo.png");
    assertEquals(0, run.code(), run.err());
    assertFalse(run.out().contains("it will look blurred"), run.out());
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      check(new PDFRenderer(pdf).renderImageWithDPI(0, 254));
    }
  }

  /** Ten pixels to the millimetre. */
  private static void check(BufferedImage page) {
    int left = page.getWidth();
    int top = page.getHeight();
    int right = 0;
    int bottom = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        if ((page.getRGB(x, y) & 0xFFFFFF) == 0xC02040) {
          left = Math.min(left, x);
          top = Math.min(top, y);
          right = Math.max(right, x + 1);
          bottom = Math.max(bottom, y + 1);
        }
      }
    }
    assertEquals(115, left, 2);
    assertEquals(685, right, 2);
    assertEquals(100 + (200 - 142.5) / 2, top, 2);
    assertEquals(100 + (200 + 142.5) / 2, bottom, 2);
  }

  /** 57 mm are 2.24 in: 112 pixels are 50 to the inch. */
  @Test
  void aBlurredLogoIsReported() throws IOException {
    png("logo.png", 112, 28);
    Run run = run("logo.png");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("logo.png prints at 50 px/in in its cell"), run.out());
  }

  @Test
  void slipsAreAnswered() throws IOException {
    Run absent = run("lgo.svg");
    assertEquals(2, absent.code());
    assertTrue(absent.err().contains("line 7") && absent.err().contains("logo.svg"), absent.err());
    Run both = run("logo.svg, text: Label");
    assertEquals(2, both.code());
    assertTrue(both.err().contains("a picture beside text or a box"), both.err());
  }
}
