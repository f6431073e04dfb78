package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings made at a known size and enlarged by a known factor: the truth is one over it. */
class ResolvedShareTest {
  enum Way {
    NEAREST,
    BILINEAR,
    /** Keys' cubic with a = −1/2. */
    BICUBIC
  }

  private static PixelGrid drawn(String name, int longest) throws Exception {
    Path file =
        Path.of(
            System.getProperty("placket.root", "."), "layout-demo/src/demo/mg-3107/flats", name);
    Drawing d = (Drawing) PictureReader.read(PictureSource.of(file), ReadLimits.DEFAULT);
    double width = longest * d.inkedBox().width() / d.inkedBox().longestSide();
    PixelGrid ink = PixelGrid.of(d.render((int) width, d.inkedBox()));
    return Grids.of(
        ink.width() + 12,
        ink.height() + 12,
        (x, y) -> {
          boolean in = x >= 6 && y >= 6 && x < ink.width() + 6 && y < ink.height() + 6;
          return Grids.grey((int) Math.round(in ? Grids.over(ink.at(x - 6, y - 6), 8, 255) : 255));
        });
  }

  private static PixelGrid enlarged(PixelGrid g, double k, Way way) {
    int w = (int) (g.width() * k);
    int h = (int) (g.height() * k);
    double[][] wide = new double[g.height()][w];
    for (int y = 0; y < g.height(); y++) {
      for (int x = 0; x < w; x++) {
        int row = y;
        wide[y][x] = value((x + 0.5) / k - 0.5, g.width(), way, i -> g.at(i, row) & 255);
      }
    }
    return Grids.of(
        w,
        h,
        (x, y) -> {
          double v = value((y + 0.5) / k - 0.5, g.height(), way, i -> wide[i][x]);
          return Grids.grey((int) Math.max(0, Math.min(255, Math.round(v))));
        });
  }

  private static double value(
      double at, int n, Way way, java.util.function.IntToDoubleFunction of) {
    int first = (int) Math.floor(at) - 1;
    double sum = 0;
    for (int i = first; i < first + 4; i++) {
      sum += weight(at - i, way) * of.applyAsDouble(Math.max(0, Math.min(n - 1, i)));
    }
    return sum;
  }

  private static double weight(double off, Way way) {
    double t = Math.abs(off);
    return switch (way) {
      case NEAREST -> off >= -0.5 && off < 0.5 ? 1 : 0;
      case BILINEAR -> Math.max(0, 1 - t);
      case BICUBIC ->
          t < 1
              ? 1.5 * t * t * t - 2.5 * t * t + 1
              : t < 2 ? -0.5 * t * t * t + 2.5 * t * t - 4 * t + 2 : 0;
    };
  }

  @ParameterizedTest
  @CsvSource({
    "NEAREST,1.5",
    "NEAREST,2",
    "NEAREST,2.7",
    "NEAREST,4",
    "NEAREST,6",
    "NEAREST,7",
    "NEAREST,7.5",
    "NEAREST,8",
    "NEAREST,12.4",
    "NEAREST,24",
    "BILINEAR,1.5",
    "BILINEAR,2",
    "BILINEAR,2.7",
    "BILINEAR,4",
    "BICUBIC,1.5",
    "BICUBIC,2",
    "BICUBIC,2.7",
    "BICUBIC,4"
  })
  void whatWasEnlargedIsFound(Way way, double k) throws Exception {
    // A side of 4,000 pixels at most: a hundred million pixels are more than the heap of a test.
    int longest = (int) Math.min(420, 4000 / k);
    for (String name : new String[] {"front.svg", "pocket-detail.svg"}) {
      assertEquals(1 / k, ResolvedShare.of(enlarged(drawn(name, longest), k, way)), 0.15, name);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"front.svg", "back.svg", "pocket-detail.svg", "vent-detail.svg"})
  void whatIsSharpIsSaidToBeSo(String name) throws Exception {
    for (int longest : new int[] {300, 700}) {
      double share = ResolvedShare.of(drawn(name, longest));
      assertTrue(share >= 0.9, name + " at " + longest + ": " + share);
    }
  }

  @Test
  void tooFewEdgesTellNothing() throws Exception {
    assertEquals(1, ResolvedShare.of(Grids.of(50, 50, (x, y) -> Grids.grey(200 + x / 10))));
    EffectiveDensity half = ResolvedShare.resolved(new EffectiveDensity(200, 220), 0.5);
    assertEquals(new EffectiveDensity(100, 110), half);
  }
}
