package dev.placket.pictures.prepare;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.Rate;
import dev.placket.layout.units.Length;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A picture made ready for its printed size. */
class PreparingTest {
  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 400 300'><ellipse cx='200' cy='150'"
          + " rx='150' ry='100' fill='none' stroke='#000' stroke-width='6'/><path d='M60 60L340 210'"
          + " stroke='#a02020' stroke-width='3' stroke-dasharray='9 6'/></svg>";

  private static Picture read(byte[] bytes) throws Exception {
    return PictureReader.read(PictureSource.of("a", bytes), ReadLimits.DEFAULT);
  }

  private static Drawing drawing() throws Exception {
    return (Drawing) read(SVG.getBytes(StandardCharsets.UTF_8));
  }

  /** The drawing at 306 mm of ink, laid on white with a white border of 20 pixels. */
  private static RasterPicture onWhite(double perInch) throws Exception {
    PixelGrid grid =
        Preparing.drawing(drawing(), drawing().inkedBox(), Length.mm(306), perInch).grid();
    return (RasterPicture)
        read(
            PngWriter.encode(
                Grids.of(
                    grid.width() + 40,
                    grid.height() + 40,
                    (x, y) -> {
                      boolean inside =
                          x >= 20 && x < grid.width() + 20 && y >= 20 && y < grid.height() + 20;
                      int p = inside ? grid.at(x - 20, y - 20) : 0;
                      int out = 0xFF;
                      for (int shift = 16; shift >= 0; shift -= 8) {
                        out = out << 8 | (int) Math.round(Grids.over(p, shift, 255));
                      }
                      return out;
                    }),
                null));
  }

  @Test
  void aDrawingHasExactlyThePixelsOfItsPrintedSize() throws Exception {
    // Ink of 306 by 206 units at 180 mm: 180 / 25.4 * 200 = 1417.3, and 206/306 of it is 954.2.
    ReadyPicture ready = Preparing.drawing(drawing(), drawing().inkedBox(), Length.mm(180), 200);
    assertEquals(new PixelSize(1418, 955), ready.size());
    assertEquals(200, ready.density().least(), 0.1);
    assertEquals(DensityTargets.DEFAULT.wantedPixels(ready.width(), ready.height()), ready.size());
  }

  @Test
  void twiceTheDensityHasFourTimesThePixels() throws Exception {
    RasterPicture raster = onWhite(400);
    PixelSize one = Preparing.raster(raster, Length.mm(180), 100, Clearing.NONE).size();
    PixelSize two = Preparing.raster(raster, Length.mm(180), 200, Clearing.NONE).size();
    assertEquals(4, (double) two.width() * two.height() / one.width() / one.height(), 0.01);
  }

  @Test
  void preparingTwiceIsPreparingOnce() throws Exception {
    byte[] once = Preparing.raster(onWhite(300), Length.mm(180), 150, Clearing.FROM_BORDER).png();
    byte[] twice =
        Preparing.raster((RasterPicture) read(once), Length.mm(180), 150, Clearing.FROM_BORDER)
            .png();
    assertArrayEquals(once, twice);
  }

  @Test
  void aDrawingMadeReadyStaysAsItIs() throws Exception {
    byte[] once = Preparing.drawing(drawing(), drawing().inkedBox(), Length.mm(180), 200).png();
    byte[] twice =
        Preparing.raster((RasterPicture) read(once), Length.mm(180), 200, Clearing.FROM_BORDER)
            .png();
    assertArrayEquals(once, twice);
  }

  @Test
  void nothingIsEnlargedAndTheSizeOnPaperIsStated() throws Exception {
    RasterPicture raster = onWhite(100);
    ReadyPicture ready = Preparing.raster(raster, Length.mm(306), 200, Clearing.FROM_BORDER);
    assertEquals(raster.inkedBox().width(), ready.size().width());
    assertTrue(ready.cleared());
    RasterPicture again = (RasterPicture) read(ready.png());
    PixelDensity stated = requireNonNull(again.density());
    // 100 pixels to the inch are 3937 to the metre; the ink is cut to whole pixels.
    assertEquals(3937, stated.x().perMetre(), 15);
    assertEquals(Rate.Unit.METRE, stated.x().unit());
  }

  @Test
  void clearedAndLaidOnWhiteItIsThePicture() throws Exception {
    RasterPicture raster = onWhite(200);
    PixelGrid kept = Preparing.raster(raster, Length.mm(180), 130, Clearing.NONE).grid();
    PixelGrid clear = Preparing.raster(raster, Length.mm(180), 130, Clearing.FROM_BORDER).grid();
    assertEquals(0, clear.at(0, 0));
    for (int y = 0; y < kept.height(); y++) {
      for (int x = 0; x < kept.width(); x++) {
        for (int shift = 0; shift <= 16; shift += 8) {
          assertEquals(
              kept.at(x, y) >> shift & 255, Math.round(Grids.over(clear.at(x, y), shift, 255)), 1);
        }
      }
    }
  }

  @Test
  void aPictureThatKeepsItsGroundIsPrintedWhole() throws Exception {
    RasterPicture raster = onWhite(100);
    // The longer side of all of it at 100 mm and 90 to the inch: 354.3 pixels, rounded up.
    ReadyPicture ready = ToPrint.whole(raster, Length.mm(100)).ready(90);
    assertEquals(355, ready.size().width());
    assertEquals(0xFFFFFFFF, ready.grid().at(0, 0));
    double aspect = raster.height() / (double) raster.width();
    assertEquals(355 * aspect, ready.size().height(), 0.5);
    assertEquals(100 * aspect, ready.height().mm(), 1e-9);
  }
}
