package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drawings as librsvg renders them, a second renderer that shares no code with Batik. */
class SecondRendererTest {
  /** Ink of two renderings of one drawing: Pearson's correlation, as for pages. */
  private static final double SAME = 0.98;

  @TempDir Path work;

  static Stream<String> drawings() {
    return Stream.of(
            "aaron", "brian", "bruce", "carlton", "diana", "huey", "hugo", "jane", "noble",
            "sabrina")
        .flatMap(g -> Stream.of(g + "-front.svg", g + "-back.svg"));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void showsTheSame(String name) throws Exception {
    Path file = folder().resolve(name);
    Drawing drawing = (Drawing) PictureReader.read(PictureSource.of(file), ReadLimits.DEFAULT);
    PixelGrid ours = Preparing.drawing(drawing, drawing.inkedBox(), Length.mm(120), 200).grid();
    BufferedImage theirs = rendered(file, drawing.inkedBox(), ours.width(), ours.height());
    assertEquals(ours.width(), theirs.getWidth());
    assertEquals(ours.height(), theirs.getHeight());
    double same = correlation(ours, theirs);
    assertTrue(same >= SAME, name + " correlates at " + same);
  }

  /**
   * The drawing with its inked box as its viewBox, so that both show the same part in the same
   * place.
   */
  private BufferedImage rendered(Path file, InkedBox ink, int width, int height)
      throws IOException, InterruptedException {
    double scale = Math.min(width / ink.width(), height / ink.height());
    String box =
        String.format(
            Locale.ROOT,
            "preserveAspectRatio=\"none\" viewBox=\"%s %s %s %s\"",
            ink.left(),
            ink.top(),
            width / scale,
            height / scale);
    String svg = Files.readString(file).replaceFirst("viewBox=\"[^\"]*\"", box);
    Path inked = Files.writeString(work.resolve("inked.svg"), svg);
    Path png = work.resolve("inked.png");
    Process process;
    try {
      process =
          new ProcessBuilder(
                  "rsvg-convert",
                  "--width=" + width,
                  "--height=" + height,
                  "--output=" + png,
                  inked.toString())
              .inheritIO()
              .start();
    } catch (IOException e) {
      Assumptions.abort("skipped: no rsvg-convert on this machine");
      throw e;
    }
    assertEquals(0, process.waitFor());
    return ImageIO.read(png.toFile());
  }

  private static double correlation(PixelGrid ours, BufferedImage theirs) {
    int n = ours.width() * ours.height();
    double[] a = new double[n];
    double[] b = new double[n];
    for (int y = 0; y < ours.height(); y++) {
      for (int x = 0; x < ours.width(); x++) {
        a[y * ours.width() + x] = ink(ours.at(x, y));
        b[y * ours.width() + x] = ink(theirs.getRGB(x, y));
      }
    }
    double meanA = java.util.Arrays.stream(a).average().orElse(0);
    double meanB = java.util.Arrays.stream(b).average().orElse(0);
    double both = 0;
    double ownA = 0;
    double ownB = 0;
    for (int i = 0; i < n; i++) {
      both += (a[i] - meanA) * (b[i] - meanB);
      ownA += (a[i] - meanA) * (a[i] - meanA);
      ownB += (b[i] - meanB) * (b[i] - meanB);
    }
    return both / Math.sqrt(ownA * ownB);
  }

  /** How dark a pixel is on white paper, 0 to 1. */
  private static double ink(int argb) {
    double dark = 765 - (argb >> 16 & 255) - (argb >> 8 & 255) - (argb & 255);
    return (argb >>> 24) / 255.0 * dark / 765;
  }

  private static Path folder() {
    Path at = Path.of(System.getProperty("placket.root", ".")).toAbsolutePath().normalize();
    for (Path p = at; p != null; p = p.getParent()) {
      Path found = p.resolve("shared/flats");
      if (Files.isDirectory(found)) {
        return found;
      }
    }
    Assumptions.abort("skipped: no shared/flats beside or above " + at);
    throw new AssertionError();
  }
}
