package dev.placket.pictures.prepare;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The estimate against lines that were drawn at a known width. */
class FineLinesTest {
  /** A broad outline and one finer curve, so that all slants occur. */
  private static RasterPicture drawn(double fine, boolean onWhite) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 600 600'>"
            + (onWhite ? "<rect x='-9' y='-9' width='700' height='700' fill='#fff'/>" : "")
            + "<rect x='20' y='20' width='560' height='560' fill='none' stroke='#000'"
            + " stroke-width='9'/><ellipse cx='300.3' cy='290.6' rx='220' ry='150' fill='none'"
            + " stroke='#000' stroke-width='"
            + fine
            + "'/></svg>";
    Drawing drawing = (Drawing) read(svg.getBytes(StandardCharsets.UTF_8));
    PixelGrid grid =
        PixelGrid.of(drawing.render(600, new dev.placket.layout.flat.InkedBox(0, 0, 600, 600)));
    return (RasterPicture) read(PngWriter.encode(grid, null));
  }

  private static Object read(byte[] bytes) throws Exception {
    return PictureReader.read(PictureSource.of("a", bytes), ReadLimits.DEFAULT);
  }

  @ParameterizedTest
  @CsvSource({"0.8,true", "1,false", "1.5,true", "2,false", "3,true", "5,false"})
  void theFinestLineIsWithinATenthOrATenthOfAPixel(double width, boolean onWhite) throws Exception {
    FineDetail found = FineLines.of(drawn(width, onWhite));
    assertEquals(width, requireNonNull(found.line()), Math.max(0.1, 0.1 * width));
  }

  @Test
  void aFilledFrameHasNoLines() throws Exception {
    RasterPicture photo =
        (RasterPicture) read(PngWriter.encode(Grids.of(90, 90, (x, y) -> Grids.grey(x + y)), null));
    assertNull(FineLines.of(photo).line());
  }
}
