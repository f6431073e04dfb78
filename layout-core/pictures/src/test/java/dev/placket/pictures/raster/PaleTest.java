package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Picture;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.typeface.Typefaces;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pale cloth is no empty page: all of it counts. Only pure white and clear pictures are blank. */
class PaleTest {
  private static final int SIDE = 60;
  private static final InkedBox ALL = InkedBox.ofSize(SIDE, SIDE);

  private static PictureSource grey(int... levels) {
    PngWriter png = new PngWriter(SIDE, SIDE, 8, 0);
    Random random = new Random(7);
    int[] samples = new int[SIDE * SIDE];
    Arrays.setAll(samples, i -> levels[random.nextInt(levels.length)]);
    return PictureSource.of("cloth.png", png.write(samples));
  }

  @ParameterizedTest
  @ValueSource(ints = {214, 216, 220, 230, 240, 250, 253, 254})
  void paleGreyIsPlacedWhole(int level) throws Exception {
    RasterPicture read = (RasterPicture) PictureReader.read(grey(level), ReadLimits.DEFAULT);
    assertEquals(ALL, read.inkedBox());
    assertEquals(Ground.OPAQUE_OTHER, read.ground());
  }

  @Test
  void soIsWhiteClothWithItsWeave() throws Exception {
    RasterPicture read =
        (RasterPicture) PictureReader.read(grey(236, 240, 244, 255), ReadLimits.DEFAULT);
    assertEquals(ALL, read.inkedBox());
    assertEquals(ALL, PictureReader.probe(grey(250, 255), ReadLimits.DEFAULT).inkedBox());
  }

  @Test
  void pureWhiteIsBlankButForASwatch() throws Exception {
    PictureSource white = grey(255);
    assertThrows(PictureException.class, () -> PictureReader.read(white, ReadLimits.DEFAULT));
    Picture swatch = PictureReader.readSwatch(white, ReadLimits.DEFAULT, Typefaces.SHIPPED);
    assertEquals(ALL, swatch.inkedBox());
  }

  @Test
  void aClearSwatchIsBlank() {
    PngWriter png = new PngWriter(SIDE, SIDE, 8, 4);
    PictureSource clear = PictureSource.of("clear.png", png.write(new int[2 * SIDE * SIDE]));
    assertThrows(
        PictureException.class,
        () -> PictureReader.readSwatch(clear, ReadLimits.DEFAULT, Typefaces.SHIPPED));
  }
}
