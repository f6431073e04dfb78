package dev.placket.pictures.svg.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.shape.BoxPairs;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What takes too long to draw is refused before it is drawn; what a designer draws is not. */
class DrawingWorkTest {
  private static final String RECT = "<rect width='150' height='150'/>";

  static Stream<Arguments> heavy() {
    String tile = "<path d='M0 0h3v3z'/>".repeat(200);
    String marked =
        "<path fill='none' marker-mid='url(#m)' d='M0 0" + "h1v1".repeat(15_000) + "'/>";
    String mask = "<mask id='m'><path d='M0 0h199v199z' fill='#fff'/></mask>";
    return Stream.of(
        Arguments.of("markers", "<marker id='m'>" + tile + "</marker>" + marked),
        Arguments.of("masks", mask + "<g mask='url(#m)'>" + RECT + "</g>" + many(300)),
        Arguments.of(
            "nested masks", mask + "<g mask='url(#m)'>".repeat(100) + RECT + "</g>".repeat(100)),
        Arguments.of(
            "a clip",
            "<clipPath id='c'><path d='"
                + star(1_500)
                + "'/></clipPath>"
                + "<rect width='150' height='150' clip-path='url(#c)'/>"),
        Arguments.of(
            "clips",
            "<clipPath id='c'><path d='"
                + star(150)
                + "'/></clipPath>"
                + "<rect width='150' height='150' clip-path='url(#c)'/>".repeat(100)),
        Arguments.of("a path", "<path fill='none' stroke='#000' d='" + star(60_000) + "'/>"),
        Arguments.of("layers", RECT.repeat(20_000)),
        Arguments.of("text", "<text x='5' y='50'>" + "A".repeat(150_000) + "</text>"));
  }

  private static String many(int masked) {
    return "<rect width='150' height='150' mask='url(#m)'/>".repeat(masked);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("heavy")
  void isRefusedWithTheLimit(String name, String inner) {
    PictureException e =
        assertThrows(PictureException.class, () -> read(inner, ReadLimits.DEFAULT));
    String message = String.valueOf(e.getMessage());
    assertTrue(message.startsWith("a.svg: ") && message.contains("; "), message);
    assertTrue(message.contains("limit of 8000000 steps"), message);
  }

  /** The estimate comes first: none of these is built. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void whatWouldNotFitInMemoryIsRefusedWithTheLimit(int kind) throws Exception {
    String inner =
        kind == 0
            ? "<text x='5' y='50'>" + "A".repeat(2_000_000) + "</text>"
            : kind == 1 ? "<rect x='5' y='50' width='9' height='9'/>".repeat(100_000) : RECT;
    ReadLimits limits = kind == 2 ? ReadLimits.DEFAULT.with("memory", 2_000) : ReadLimits.DEFAULT;
    PictureException e = assertThrows(PictureException.class, () -> read(inner, limits));
    String message = String.valueOf(e.getMessage());
    assertTrue(message.contains("more memory than the limit of "), message);
    read(RECT, ReadLimits.DEFAULT.with("memory", 20_000));
  }

  @Test
  void aLimitOfMoreStepsLetsItPass() throws Exception {
    ReadLimits few = ReadLimits.DEFAULT.with("steps", 2_000);
    String drawn = RECT.repeat(10);
    assertThrows(PictureException.class, () -> read(drawn, few));
    read(drawn, few.with("steps", 20_000));
  }

  /** Two hundred hatched lines with markers, a mask and a clip: no more than a garment has. */
  @Test
  void whatAGarmentHasIsDrawn() throws Exception {
    String hatch = "<path d='M0 0L200 200' stroke='#000' marker-end='url(#k)'/>";
    read(
        "<marker id='k'><circle r='2'/></marker><mask id='m'>"
            + RECT.replace("/>", " fill='#fff'/>")
            + "</mask><clipPath id='c'>"
            + RECT
            + "</clipPath><g clip-path='url(#c)'>"
            + hatch.repeat(200)
            + "</g><g mask='url(#m)'>"
            + RECT
            + "</g>",
        ReadLimits.DEFAULT);
  }

  /** Against a count of all pairs, one by one. */
  @Property(tries = 100)
  void pairsAreThoseThatAllWouldGive(
      @ForAll @IntRange(min = 2, max = 60) int n, @ForAll long seed) {
    Random random = new Random(seed);
    double[][] p = new double[n][];
    Path2D path = new Path2D.Double();
    for (int i = 0; i < n; i++) {
      p[i] = new double[] {random.nextInt(20), random.nextInt(20)};
      if (i == 0) {
        path.moveTo(p[i][0], p[i][1]);
      } else {
        path.lineTo(p[i][0], p[i][1]);
      }
    }
    long wanted = 0;
    for (int i = 1; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        boolean across = meet(p[i - 1][0], p[i][0], p[j - 1][0], p[j][0]);
        wanted += across && meet(p[i - 1][1], p[i][1], p[j - 1][1], p[j][1]) ? 1 : 0;
      }
    }
    assertEquals(wanted, BoxPairs.of(100_000, path));
    assertEquals(Math.min(wanted, 6), Math.min(BoxPairs.of(5, path), 6));
  }

  private static boolean meet(double a, double b, double c, double d) {
    return Math.min(a, b) <= Math.max(c, d) && Math.min(c, d) <= Math.max(a, b);
  }

  /**
   * A mask's share is luminance times alpha, with the weights of Filter Effects 1 (0.2125, 0.7154,
   * 0.0721), by hand: of pure red 54, of pure green 182, of half-clear white 128.
   */
  @Test
  void aMaskLetsThroughItsLight() throws Exception {
    String[] fills = {"#fff", "#000", "#f00", "#0f0", "#fff' fill-opacity='.5"};
    int[] wanted = {255, 0, 54, 182, 128};
    for (int i = 0; i < fills.length; i++) {
      Drawing d =
          read(
              "<mask id='m'><rect width='99' height='200' fill='"
                  + fills[i]
                  + "'/></mask>"
                  + "<g mask='url(#m)' transform='translate(50 0)'><rect width='150' height='150'/></g>"
                  + "<path d='M0 0H9V9z'/>",
              ReadLimits.DEFAULT);
      BufferedImage image = d.render(200, InkedBox.ofSize(200, 200));
      assertEquals(wanted[i], image.getRGB(100, 100) >>> 24, 1, fills[i]);
      assertEquals(0, image.getRGB(170, 100) >>> 24, "beside the mask");
      assertEquals(0, image.getRGB(30, 100) >>> 24, "beside the part");
    }
  }

  private static String star(int corners) {
    Random random = new Random(4);
    StringBuilder d = new StringBuilder("M0 0");
    for (int i = 0; i < corners; i++) {
      d.append('L').append(random.nextInt(200)).append(' ').append(random.nextInt(200));
    }
    return d.append('z').toString();
  }

  private static Drawing read(String inner, ReadLimits limits) throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 200'>" + inner + "</svg>";
    return (Drawing)
        PictureReader.read(PictureSource.of("a.svg", svg.getBytes(StandardCharsets.UTF_8)), limits);
  }
}
