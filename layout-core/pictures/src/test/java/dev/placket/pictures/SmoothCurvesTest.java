package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
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
          M5 5m5 5q0 80 40 80s40 0 40 -80    | M10 10Q10 90 50 90C50 90 90 90 90 10
          M10 90V10 90Q10 10 50 10H20H50Q90 10 90 50S90 90 50 90 30 90 30 80 | \
          M10 90V10 90Q10 10 50 10H20H50Q90 10 90 50C90 50 90 90 50 90C10 90 30 90 30 80
          M50 50zm-40 -40C10 90 20 90 50 90t40 -80 -10 0zS80 80 50 80 | \
          M10 10C10 90 20 90 50 90Q50 90 90 10Q130 -70 80 10zC10 10 80 80 50 80
          M10 10C10 90 20 90 50 90L60 50S90 90 90 10 | M10 10C10 90 20 90 50 90L60 50C60 50 90 90 90 10
          M10 10C10 90 20 90 50 90H60V50s30 40 30-40 | M10 10C10 90 20 90 50 90H60V50C60 50 90 90 90 10
          M10 10C10 90 20 90 50 90M60 50S90 90 90 10 | M10 10C10 90 20 90 50 90M60 50C60 50 90 90 90 10
          M10 10Q10 90 50 90A9 9 0 0 0 60 50T90 10Z  | M10 10Q10 90 50 90A9 9 0 0 0 60 50L90 10Z
          M10 10Q10 90 50 90L60 50T90 10M20 10T50 20  | M10 10Q10 90 50 90L60 50L90 10M20 10L50 20
          M50 50Q90 90 90 10zT10 20t5 5               | M50 50Q90 90 90 10zL10 20Q-30 -10 15 25
          m10 10q0 80 40 80a2 2 0 0 1 0-4q2 2 9-9S90.5.5 90 10T70 10    | \
          M10 10q0 80 40 80a2 2 0 0 1 0 -4q2 2 9 -9C59 77 90.5 0.5 90 10L70 10
          M10 10C10 90 20 90 50 90S80 90 90 10 | M10 10C10 90 20 90 50 90C80 90 80 90 90 10
          """)
  void mirrorCurvesOfTheirOwnDegreeAlone(String smooth, String plain) throws Exception {
    assertEquals(ink(plain), ink(smooth));
  }

  /** Each vertex has one marker, as in the path whose curves are written out. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          M10 10Q10 90 50 90S90 90 90 10   | M10 10Q10 90 50 90C50 90 90 90 90 10
          M10 10q0 80 40 80s40 0 40 -80    | M10 10Q10 90 50 90C50 90 90 90 90 10
          M10 10C10 90 20 90 50 90T90 10   | M10 10C10 90 20 90 50 90Q50 90 90 10
          M10 10c0 80 10 80 40 80t40 -80 -5 0 | M10 10C10 90 20 90 50 90Q50 90 90 10Q130 -70 85 10
          """)
  void haveOneMarkerAtEachVertex(String smooth, String plain) throws Exception {
    String marker =
        "<marker id='m' overflow='visible' markerUnits='userSpaceOnUse' refX='0' refY='4'"
            + " orient='auto'><path d='M0 0L9 4L0 8Z' fill='#080' fill-opacity='0.5'/></marker>";
    String line =
        marker + "<path fill='none' stroke='#00f' marker-mid='url(#m)' marker-end='url(#m)' d='";
    SameDrawing.assertSame(
        SameDrawing.svg("viewBox='0 0 100 100'", line + plain + "'/>"),
        SameDrawing.svg("viewBox='0 0 100 100'", line + smooth + "'/>"));
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
