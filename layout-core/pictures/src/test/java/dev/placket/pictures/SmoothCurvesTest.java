package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The control points that SVG 2, 9.3.6 and 9.3.7 say, written out by hand on the right. */
class SmoothCurvesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          M10 10Q10 90 50 90S90 90 90 10   | M10 10Q10 90 50 90C50 90 90 90 90 10
          M10 10Q10 90 50 90s40 0 40 -80   | M10 10Q10 90 50 90c0 0 40 0 40 -80
          M10 10T50 90S90 90 90 10         | M10 10L50 90C50 90 90 90 90 10
          M10 10C10 90 20 90 50 90T90 10   | M10 10C10 90 20 90 50 90L90 10
          M10 10C10 90 20 90 50 90S80 90 90 10 | M10 10C10 90 20 90 50 90C80 90 80 90 90 10
          """)
  void mirrorCurvesOfTheirOwnDegreeAlone(String smooth, String plain) throws Exception {
    assertEquals(ink(plain), ink(smooth));
  }

  private static String ink(String d) throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'><path fill='none'"
            + (" stroke='black' d='" + d + "'/></svg>");
    Drawing drawing =
        (Drawing)
            PictureReader.read(
                PictureSource.of("a.svg", svg.getBytes(StandardCharsets.UTF_8)),
                ReadLimits.DEFAULT);
    int[] pixels =
        drawing
            .render(100, new dev.placket.layout.flat.InkedBox(0, 0, 100, 100))
            .getRGB(0, 0, 100, 100, null, 0, 100);
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < pixels.length; i++) {
      rows.append((pixels[i] >>> 24) > 127 ? '#' : '.').append(i % 100 == 99 ? "\n" : "");
    }
    return rows.toString();
  }
}
