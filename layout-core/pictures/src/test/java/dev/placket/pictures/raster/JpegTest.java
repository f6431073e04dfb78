package dev.placket.pictures.raster;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.Rate;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.rows.Pixels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units and ways up of JPEGs, by JFIF 1.02 and the tags of TIFF 6.0 that Exif takes over. */
class JpegTest {
  private static PictureProbe probe(byte[] jpeg) throws PictureException {
    return PictureReader.probe(PictureSource.of("try.jpg", jpeg), ReadLimits.DEFAULT);
  }

  /** 64 by 32: red, green on top, blue and grey below. */
  private static BufferedImage corners() {
    BufferedImage image = new BufferedImage(64, 32, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.GRAY};
    for (int i = 0; i < 4; i++) {
      g.setColor(colours[i]);
      g.fillRect(i % 2 * 32, i / 2 * 16, 32, 16);
    }
    g.dispose();
    return image;
  }

  @ParameterizedTest
  @CsvSource({"1, 300, 150", "2, 118, 59"})
  void jfifStatesPerInchOrPerCentimetre(int unit, int x, int y) throws Exception {
    PixelDensity d =
        requireNonNull(probe(JpegWriter.of(corners()).jfif(unit, x, y).bytes()).density());
    assertEquals(unit == 1 ? Rate.perInch(x) : Rate.perCentimetre(x), d.x());
    assertEquals(unit == 1 ? Rate.perInch(y) : Rate.perCentimetre(y), d.y());
  }

  @Test
  void jfifWithoutAUnitStatesTheShapeOnly() throws Exception {
    PictureProbe p = probe(JpegWriter.of(corners()).jfif(0, 1, 2).bytes());
    assertNull(p.density());
    assertEquals(2, p.pixelAspect());
  }

  @Test
  void withoutBothNothingIsKnown() throws Exception {
    assertNull(probe(JpegWriter.of(corners()).bytes()).density());
    assertNull(probe(JpegWriter.of(corners()).jfif(1, 0, 0).bytes()).density());
  }

  @ParameterizedTest
  @CsvSource({"2, INCH", "3, CENTIMETRE", "0, INCH"})
  void exifStatesFractionsOfAnyUnit(int unit, Rate.Unit expected) throws Exception {
    for (boolean little : new boolean[] {true, false}) {
      byte[] exif = ExifBlock.of(little).density(72009, 1000, 300, 1, unit).bytes();
      PictureProbe p = probe(JpegWriter.of(corners()).exif(exif).bytes());
      PixelDensity d = requireNonNull(p.density());
      assertEquals(new Rate(72009, 1000, expected), d.x());
      assertEquals(new Rate(300, 1, expected), d.y());
    }
  }

  @Test
  void exifMayStateTheShapeOnly() throws Exception {
    byte[] exif = ExifBlock.of(true).density(2, 1, 1, 1, 1).bytes();
    assertNull(probe(JpegWriter.of(corners()).exif(exif).bytes()).density());
  }

  @Test
  void exifStepsInWhereJfifStatesNoUnit() throws Exception {
    byte[] exif = ExifBlock.of(false).density(300, 1, 300, 1, 2).bytes();
    PictureProbe p = probe(JpegWriter.of(corners()).jfif(0, 1, 1).exif(exif).bytes());
    assertEquals(PixelDensity.square(Rate.perInch(300)), p.density());
  }

  @Test
  void aDamagedExifBlockStatesNothing() throws Exception {
    byte[] exif = ExifBlock.of(true).orientation(6).density(300, 1, 300, 1, 2).bytes();
    PictureProbe p = probe(JpegWriter.of(corners()).exif(Arrays.copyOf(exif, 30)).bytes());
    assertNull(p.density());
    assertEquals(new PixelSize(64, 32), p.pixels());
  }

  /**
   * TIFF 6.0, tag 274: on which sides the first row and the first column are seen; so where the red
   * (first row, first column) and the green (first row, last column) come to lie.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0, 0, 1, 0", "2, 1, 0, 0, 0", "3, 1, 1, 0, 1", "4, 0, 1, 1, 1",
    "5, 0, 0, 0, 1", "6, 1, 0, 1, 1", "7, 1, 1, 1, 0", "8, 0, 1, 0, 0"
  })
  void everyWayUpIsTurnedUpright(int way, int redX, int redY, int greenX, int greenY)
      throws Exception {
    byte[] exif = ExifBlock.of(true).orientation(way).density(300, 1, 150, 1, 2).bytes();
    byte[] jpeg = JpegWriter.of(corners()).exif(exif).bytes();
    RasterPicture r =
        (RasterPicture) PictureReader.read(PictureSource.of("try.jpg", jpeg), ReadLimits.DEFAULT);
    PictureProbe p = probe(jpeg);
    boolean swapped = way >= 5;
    assertEquals(swapped ? new PixelSize(32, 64) : new PixelSize(64, 32), p.pixels());
    Rate across = requireNonNull(p.density()).x();
    assertEquals(Rate.perInch(swapped ? 150 : 300), across);
    BufferedImage seen = r.image();
    near(0xFF0000, at(seen, redX, redY));
    near(0x00FF00, at(seen, greenX, greenY));
  }

  private static int at(BufferedImage image, int right, int down) {
    int w = image.getWidth();
    int h = image.getHeight();
    return image.getRGB(w / 4 + right * w / 2, h / 4 + down * h / 2);
  }

  private static void near(int expected, int found) {
    for (int shift = 0; shift <= 16; shift += 8) {
      assertEquals(expected >> shift & 255, found >> shift & 255, 6, Integer.toHexString(found));
    }
  }

  @Test
  void greysStayAsDarkAsTheyAre() throws Exception {
    // A grey colour space of Java is linear: read through it, 128 comes out as 188.
    BufferedImage grey = new BufferedImage(32, 32, BufferedImage.TYPE_BYTE_GRAY);
    grey.getRaster().setSamples(0, 0, 32, 32, 0, filled(32 * 32, 128));
    RasterPicture r =
        (RasterPicture)
            PictureReader.read(
                PictureSource.of("a.jpg", JpegWriter.of(grey).bytes()), ReadLimits.DEFAULT);
    near(0x808080, r.image().getRGB(16, 16));
  }

  private static int[] filled(int length, int value) {
    int[] a = new int[length];
    Arrays.fill(a, value);
    return a;
  }

  /** Inks from memory: paper is white, all black is dark, cyan takes red away. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2})
  void printingColoursAreReadWithAndWithoutTheTransform(int transform) throws Exception {
    int[][] inks = {{0, 0, 0, 0}, {0, 0, 0, 255}, {255, 0, 0, 0}, {0, 255, 255, 0}};
    byte[] jpeg = JpegWriter.cmyk(inks, transform);
    RasterPicture r =
        (RasterPicture) PictureReader.read(PictureSource.of("a.jpg", jpeg), ReadLimits.DEFAULT);
    assertTrue(r.notes().toString().contains("CMYK"), r.notes()::toString);
    BufferedImage seen = r.image();
    int white = seen.getRGB(8, 8);
    int black = seen.getRGB(24, 8);
    int cyan = seen.getRGB(40, 8);
    int red = seen.getRGB(56, 8);
    assertTrue((white & 255) > 240 && (white >> 16 & 255) > 240, Integer.toHexString(white));
    assertTrue((black & 255) < 70 && (black >> 16 & 255) < 70, Integer.toHexString(black));
    assertTrue((cyan >> 16 & 255) < 80 && (cyan & 255) > 180, Integer.toHexString(cyan));
    assertTrue((red >> 16 & 255) > 180 && (red & 255) < 80, Integer.toHexString(red));
  }

  @Test
  void aJpegWithoutItsEndIsRefused() {
    byte[] jpeg = JpegWriter.of(corners()).bytes();
    PictureException e =
        assertThrows(PictureException.class, () -> probe(Arrays.copyOf(jpeg, jpeg.length - 40)));
    assertTrue(String.valueOf(e.getMessage()).contains("cut short"), e.getMessage());
  }

  @Test
  void aHeaderThatLiesIsRefused() {
    byte[] jpeg = JpegWriter.of(corners()).bytes();
    int frame = JpegWriter.find(jpeg, 0xC0);
    jpeg[frame + 5] = 0x40;
    jpeg[frame + 7] = 0x40;
    assertThrows(PictureException.class, () -> probe(jpeg));
  }

  @Test
  void bandsAndTheWholeAreTheSamePixels() throws Exception {
    BufferedImage image = new BufferedImage(900, 1200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    for (int y = 0; y < 1200; y += 3) {
      g.setColor(new Color(y % 256, y / 5, 255 - y % 256));
      g.drawLine(0, y, 900, 1199 - y);
    }
    g.dispose();
    byte[] jpeg = JpegWriter.of(image).bytes();
    int[] whole = pixels(jpeg, ReadLimits.DEFAULT);
    // 900 pixels of 3 bytes and the file: 4 MiB leave room for a band, not for 3.2 MB of pixels.
    int[] bands = pixels(jpeg, ReadLimits.DEFAULT.withMemory((4L << 20) + 2L * jpeg.length));
    assertTrue(Arrays.equals(whole, bands));
  }

  private static int[] pixels(byte[] jpeg, ReadLimits limits) throws Exception {
    PictureSource source = new MemorySource("a.jpg", jpeg);
    try (SourceBytes bytes = new SourceBytes(source);
        RowReader rows = RasterFile.open(RasterFormat.JPEG, source, bytes, limits, true).stored()) {
      return Pixels.of(rows).argb();
    }
  }
}
