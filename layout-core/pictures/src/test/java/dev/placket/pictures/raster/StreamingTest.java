package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures are rows: a large one is looked at in little memory. */
class StreamingTest {
  /** Runs in a Java of its own, whose heap is small. */
  static final class Child {
    private Child() {}

    public static void main(String[] args) throws PictureException {
      PictureProbe p = PictureReader.probe(PictureSource.of(Path.of(args[0])), ReadLimits.DEFAULT);
      System.out.print(p.pixels() + " " + p.ground() + " " + p.inkedBox());
    }
  }

  @Test
  void aHundredAndThirtyMillionPixelsAreProbedWithin64MebibytesOfHeap(@TempDir Path dir)
      throws Exception {
    Path file = dir.resolve("large.png");
    LargePng.write(file, 10_000, 13_000, new int[] {1200, 900, 8799, 12_099});
    Process child =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx64m",
                    "-Djava.awt.headless=true",
                    "-cp",
                    System.getProperty("java.class.path"),
                    Child.class.getName(),
                    file.toString()))
            .redirectErrorStream(true)
            .start();
    String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, child.waitFor(), said);
    assertEquals(
        "PixelSize[width=10000, height=13000] OPAQUE_WHITE"
            + " InkedBox[left=1200.0, top=900.0, right=8800.0, bottom=12100.0]",
        said);
  }

  @Test
  void whatHasToStandInMemoryIsReckonedFromTheHeader() {
    PngWriter png = new PngWriter(1000, 1000, 8, 0);
    png.interlaced = true;
    int[] samples = new int[1_000_000];
    samples[5] = 255;
    byte[] bytes = png.write(samples);
    ReadLimits little = ReadLimits.DEFAULT.withMemory(3_000_000);
    PictureException e =
        assertThrows(
            PictureException.class,
            () -> PictureReader.probe(PictureSource.of("a.png", bytes), little));
    assertTrue(String.valueOf(e.getMessage()).contains("memory"), e.getMessage());
    png.interlaced = false;
    byte[] rows = png.write(samples);
    assertEquals(
        "PNG", probed(PictureSource.of("a.png", rows), little).format(), "rows need no more");
  }

  private static PictureProbe probed(PictureSource source, ReadLimits limits) {
    try {
      return PictureReader.probe(source, limits);
    } catch (PictureException e) {
      throw new AssertionError(e);
    }
  }
}
