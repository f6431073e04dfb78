package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Colourways from one drawing: named areas take the colour, lines on them stay readable. */
class FillsTest {
  @TempDir Path dir;

  private BufferedImage made(String colour) throws IOException {
    String text =
        """
        format: placket-pack/1
        sheets:
          ways:
            name: Colourways
            areas: [all]
            windows: {all: }
            flats:
              one: {file: front.svg, role: front, caption: "", fills: {body: "%s"}, lines: [seams]}
        """
            .formatted(colour);
    Run run =
        Run.of("fit", ExamplePack.write(dir, text), "--out", dir.resolve("out"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    return ImageIO.read(dir.resolve("out/pack.png").toFile());
  }

  private static int count(BufferedImage image, int rgb) {
    int n = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        n += (image.getRGB(x, y) & 0xFFFFFF) == rgb ? 1 : 0;
      }
    }
    return n;
  }

  @Test
  void aNamedAreaTakesItsColour() throws IOException {
    assertTrue(count(made("#8A7F70"), 0x8A7F70) > 50_000);
  }

  @Test
  void linesOnADarkFillBecomeLightAndOnALightOneStayBlack() throws IOException {
    BufferedImage dark = made("#2F4038");
    BufferedImage light = made("#C49A3A");
    // The waist seam lies across the middle of the drawing.
    assertEquals(0xFFFFFF, onSeam(dark, 0x2F4038));
    assertEquals(0x000000, onSeam(light, 0xC49A3A));
  }

  /** The first colour met downwards from the upper part of the filled area, in its middle. */
  private static int onSeam(BufferedImage image, int fill) {
    int x = image.getWidth() / 2;
    boolean inside = false;
    for (int y = 0; y < image.getHeight(); y++) {
      int rgb = image.getRGB(x, y) & 0xFFFFFF;
      if (inside && (rgb == 0xFFFFFF || rgb == 0)) {
        return rgb;
      }
      inside |= rgb == fill;
    }
    return -1;
  }

  @Test
  void coloursThatBlackAndWhiteLinesCannotBothServeAreRefused() throws IOException {
    String text =
        ExamplePack.TEXT.replace(
            "note: bar tacks 10", "fills: {body: \"#2F4038\", waist: \"#E8E4D8\"}, lines: [seams]");
    Run run = Run.of("fit", ExamplePack.write(dir, text), "--out", dir.resolve("out"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("neither black (1.9:1) nor white"), run.err());
    assertTrue(Files.notExists(dir.resolve("out")));
  }
}
