package dev.placket.pictures.prepare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.function.IntBinaryOperator;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;
import org.apache.commons.imaging.Imaging;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is written is the smallest kind, and three readers get back what went in. */
class PngWriterTest {
  /**
   * Pictures, each of which one kind of PNG fits best: colour type and depth as PNG numbers them.
   */
  enum Kind {
    BLACK_AND_WHITE(0, 1, (x, y) -> Grids.grey((x ^ y) % 3 == 0 ? 0 : 255)),
    FOUR_GREYS(0, 2, (x, y) -> Grids.grey(85 * ((x + y) % 4))),
    SIXTEEN_GREYS(0, 4, (x, y) -> Grids.grey(17 * ((x + 3 * y) % 16))),
    MANY_GREYS(0, 8, (x, y) -> Grids.grey((5 * x + y) % 256)),
    /** Three greys that two bits of grey do not hold, but two bits of palette do. */
    ODD_GREYS(3, 2, (x, y) -> Grids.grey(7 * ((x + y) % 3))),
    ONE_COLOUR(3, 1, (x, y) -> 0xFF204060),
    BLACK_INK_ON_NOTHING(3, 8, (x, y) -> (x * 9 + y) % 256 << 24),
    TWELVE_COLOURS(3, 4, (x, y) -> 0xFF000000 | (x % 4) << 20 | (y % 3) << 4),
    GREYS_AND_ALPHA(4, 8, (x, y) -> (x * 7 % 256) << 24 | (y * 5 % 256) * 0x010101),
    COLOURS(2, 8, (x, y) -> 0xFF000000 | (x * 6) << 16 | (y * 6) << 8 | (x * y) & 255),
    COLOURS_AND_ALPHA(6, 8, (x, y) -> (255 - x) << 24 | (x * 6) << 16 | (y * 6) << 8 | x);

    private final int type;
    private final int depth;
    private final IntBinaryOperator argb;

    Kind(int type, int depth, IntBinaryOperator argb) {
      this.type = type;
      this.depth = depth;
      this.argb = argb;
    }

    PixelGrid grid() {
      return Grids.of(37, 41, argb);
    }
  }

  @ParameterizedTest
  @EnumSource
  void theSmallestKindIsRead(Kind kind) throws Exception {
    byte[] png = PngWriter.encode(kind.grid(), null);
    assertEquals(kind.depth + "-bit type " + kind.type, png[24] + "-bit type " + png[25]);
  }

  @ParameterizedTest
  @EnumSource
  void ourReaderGetsItBack(Kind kind) throws Exception {
    byte[] png = PngWriter.encode(kind.grid(), null);
    RasterPicture raster =
        (RasterPicture)
            PictureReader.read(PictureSource.of("a.png", framed(kind)), ReadLimits.DEFAULT);
    BufferedImage image = raster.image();
    PixelGrid grid = kind.grid();
    for (int y = 0; y < grid.height(); y++) {
      for (int x = 0; x < grid.width(); x++) {
        assertEquals(hex(grid.at(x, y)), hex(image.getRGB(x + 1, y)));
      }
    }
    assertEquals(png[25], kind.type);
  }

  /** With a column of ink at its left, since a picture without any is refused. */
  private static byte[] framed(Kind kind) throws Exception {
    int ink = kind.argb.applyAsInt(0, 1) | 0xFF000000;
    return PngWriter.encode(
        Grids.of(
            38,
            41,
            (x, y) ->
                x == 0 ? y % 2 == 0 ? ink : ~ink | 0xFF000000 : kind.argb.applyAsInt(x - 1, y)),
        null);
  }

  @ParameterizedTest
  @EnumSource
  void twoOutsideReadersGetItBack(Kind kind) throws Exception {
    PixelGrid grid = kind.grid();
    byte[] png = PngWriter.encode(grid, PixelDensity.square(Rate.perMetre(7874)));
    BufferedImage one = ImageIO.read(new ByteArrayInputStream(png));
    BufferedImage two = Imaging.getBufferedImage(png);
    for (int y = 0; y < grid.height(); y++) {
      for (int x = 0; x < grid.width(); x++) {
        assertEquals(hex(grid.at(x, y)), hex(pixel(one, x, y)), "ImageIO at " + x + "," + y);
        int got = two.getRGB(x, y);
        if (kind.type == 0) {
          // Commons Imaging keeps plain greys as 8 bits of linear light: dark ones fall together.
          assertEquals(linear(grid.at(x, y)), linear(got), 1 / 255.0, "Commons Imaging");
        } else {
          assertEquals(hex(grid.at(x, y)), hex(got), "Commons Imaging at " + x + "," + y);
        }
      }
    }
  }

  /** The light of a grey, 0 to 1 (IEC 61966-2-1, from memory). */
  private static double linear(int argb) {
    double v = (argb & 255) / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  /**
   * Of ImageIO: getRGB lightens its greys, read as linear light, so take the samples themselves.
   */
  private static int pixel(BufferedImage image, int x, int y) {
    int bands = image.getRaster().getNumBands();
    if (image.getColorModel().getColorSpace().getType() != java.awt.color.ColorSpace.TYPE_GRAY) {
      return image.getRGB(x, y);
    }
    int most = (1 << image.getColorModel().getComponentSize(0)) - 1;
    int[] s = image.getRaster().getPixel(x, y, new int[bands]);
    return (bands == 2 ? s[1] : 255) << 24 | s[0] * 255 / most * 0x010101;
  }

  private static String hex(int argb) {
    return Integer.toHexString(argb);
  }

  @ParameterizedTest
  @CsvSource({"200,7874", "300,11811", "72,2835", "150,5906"})
  void densityIsWrittenInWholePixelsPerMetre(int perInch, int perMetre) throws Exception {
    // 1 inch = 0.0254 m, so 200 / 0.0254 = 7874.02.
    byte[] png = PngWriter.encode(Kind.COLOURS.grid(), PixelDensity.square(Rate.perInch(perInch)));
    int at = find(png, "pHYs");
    ByteBuffer b = ByteBuffer.wrap(png, at + 4, 9);
    assertEquals(perMetre, b.getInt());
    assertEquals(perMetre, b.getInt());
    assertEquals(1, b.get());
  }

  @Test
  void eachAxisKeepsItsDensityAndTheColoursAreNamed() throws Exception {
    byte[] png =
        PngWriter.encode(
            Kind.FOUR_GREYS.grid(), new PixelDensity(Rate.perMetre(4000), Rate.perMetre(8001)));
    RasterPicture read =
        (RasterPicture) PictureReader.read(PictureSource.of("a.png", png), ReadLimits.DEFAULT);
    assertEquals(new PixelDensity(Rate.perMetre(4000), Rate.perMetre(8001)), read.density());
    assertEquals(0, png[find(png, "sRGB") + 4]);
  }

  @Test
  void theSameRowsGiveTheSameBytes() throws Exception {
    PixelGrid grid = Grids.any(300, 400, 9);
    assertArrayEquals(PngWriter.encode(grid, null), PngWriter.encode(grid, null));
  }

  /**
   * A drawing is packed at least about as well as by the plainest way there is: its rows as they
   * are, deflated by the JDK alone. Slopes pack far better by their differences, texture does not.
   */
  @Test
  void theBetterWayOfPackingIsFound() throws Exception {
    PixelGrid slopes =
        Grids.of(400, 300, (x, y) -> 0xFF000000 | (x + y) % 256 << 16 | (x / 2 + y) % 256);
    assertTrue(PngWriter.encode(slopes, null).length < 0.2 * plain(slopes));
    Random random = new Random(3);
    int[] tile = random.ints(16 * 16, 0, 1 << 24).toArray();
    PixelGrid texture =
        Grids.of(400, 300, (x, y) -> 0xFF000000 | tile[(y * 7 + y / 16) % 16 * 16 + x % 16]);
    PixelGrid odd = Grids.of(400, 300, (x, y) -> texture.at(x, y) + (x == 0 ? y : 0));
    assertTrue(PngWriter.encode(odd, null).length < 1.05 * plain(odd));
  }

  private static int plain(PixelGrid grid) {
    byte[] raw = new byte[grid.height() * (1 + 3 * grid.width())];
    int at = 0;
    for (int y = 0; y < grid.height(); y++) {
      at++;
      for (int x = 0; x < grid.width(); x++) {
        for (int shift = 16; shift >= 0; shift -= 8) {
          raw[at++] = (byte) (grid.at(x, y) >> shift);
        }
      }
    }
    Deflater deflater = new Deflater();
    deflater.setInput(raw);
    deflater.finish();
    byte[] into = new byte[raw.length + 100];
    int bytes = deflater.deflate(into);
    deflater.end();
    return bytes;
  }

  /**
   * Flat stretches that differ from the row above, beside noise that does not. They begin at the
   * second pixel of eight bytes, where two filters are equally good.
   */
  @Test
  void flatStretchesUnderOthersAreReadBack() throws Exception {
    int[] noise = new Random(8).ints(128).map(p -> p | 0x01000000).toArray();
    PixelGrid grid =
        Grids.of(128, 200, (x, y) -> x >= 17 && x < 64 ? 0xFF000000 | y * 0x010101 : noise[x]);
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngWriter.encode(grid, null)));
    for (int y = 0; y < grid.height(); y++) {
      for (int x = 0; x < grid.width(); x++) {
        assertEquals(hex(grid.at(x, y)), hex(read.getRGB(x, y)), x + "," + y);
      }
    }
  }

  private static int find(byte[] png, String type) {
    int at = new String(png, StandardCharsets.ISO_8859_1).indexOf(type);
    assertEquals(true, at > 0, type + " is there");
    return at;
  }
}
