package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** 130 million pixels are cleared, averaged down and written within 256 MiB of heap. */
class LargePictureTest {
  @TempDir Path dir;

  @Test
  void aVeryLargePictureNeedsNoLargeHeap() throws Exception {
    Path large = dir.resolve("large.png");
    Path ready = dir.resolve("ready.png");
    Path said = dir.resolve("said.txt");
    Process child =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx256m",
                    "-Djava.awt.headless=true",
                    "-cp",
                    System.getProperty("java.class.path"),
                    LargePicture.class.getName(),
                    large.toString(),
                    ready.toString()))
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertEquals(0, child.waitFor(), () -> read(said));
    BufferedImage image = ImageIO.read(ready.toFile());
    // 180 / 25.4 * 200 = 1417.3 along the longer side of the ink.
    assertEquals(1418, image.getHeight());
    assertEquals(0, image.getRGB(0, 0) >>> 24, "the ground is clear");
    assertEquals(0xFF, image.getRGB(image.getWidth() / 2, image.getHeight() / 2) >>> 24);
  }

  private static String read(Path said) {
    try {
      return Files.readString(said);
    } catch (java.io.IOException e) {
      return e.toString();
    }
  }
}
