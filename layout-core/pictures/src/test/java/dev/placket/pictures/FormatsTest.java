package dev.placket.pictures;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.Rate;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.raster.RasterFile;
import dev.placket.pictures.raster.RasterFormat;
import dev.placket.pictures.raster.SourceBytes;
import dev.placket.pictures.rows.Pixels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The other formats, told by their bytes; pixels against PNGs of the same picture. */
class FormatsTest {
  private static byte[] file(String name) throws IOException {
    String ending = name.substring(name.indexOf('.') + 1);
    String folder = ending.equals("tif") ? "tiff" : ending;
    try (InputStream in = FormatsTest.class.getResourceAsStream("formats/" + folder + "/" + name)) {
      return in.readAllBytes();
    }
  }

  private static RasterPicture read(String name, byte[] bytes) throws PictureException {
    return (RasterPicture) PictureReader.read(PictureSource.of(name, bytes), ReadLimits.DEFAULT);
  }

  private static PictureProbe probe(String name, byte[] bytes) throws PictureException {
    return PictureReader.probe(PictureSource.of(name, bytes), ReadLimits.DEFAULT);
  }

  /** As the file holds them: some of the files state pixels that are not square. */
  private static int[] stored(String name) throws PictureException, IOException {
    PictureSource source = PictureSource.of(name, file(name));
    try (SourceBytes bytes = new SourceBytes(source)) {
      RasterFormat format = requireNonNull(RasterFormat.of(bytes.first(RasterFormat.ENOUGH)));
      RasterFile raster = RasterFile.open(format, source, bytes, ReadLimits.DEFAULT, true);
      try (RowReader rows = raster.stored()) {
        return Pixels.of(rows).argb();
      }
    }
  }

  private static void assertSame(String png, String other, int slack) throws Exception {
    int[] expected = stored(png);
    int[] found = stored(other);
    assertEquals(expected.length, found.length);
    for (int i = 0; i < expected.length; i++) {
      boolean clear = expected[i] >>> 24 == 0 && found[i] >>> 24 == 0;
      for (int shift = 0; shift <= 24 && !clear; shift += 8) {
        int difference = Math.abs((expected[i] >> shift & 255) - (found[i] >> shift & 255));
        assertTrue(difference <= slack, other + " at " + i % 40 + "," + i / 40);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "white.png, white-lzw.tif, 0",
    "white.png, white-deflate.tif, 0",
    "white.png, white-packbits.tif, 0",
    "white.png, white-none.tif, 0",
    "white.png, white-16.tif, 1",
    "white.png, pages.tif, 0",
    "alpha.png, alpha-tiled.tif, 0",
    "alpha.png, lossless-alpha.webp, 0"
  })
  void losslessKindsAreTheSamePixels(String png, String other, int slack) throws Exception {
    assertSame(png, other, slack);
  }

  /** RFC 9649, 2.5 and 2.7.1.2: a frame of VP8, by itself or with an alpha part before it. */
  @ParameterizedTest
  @ValueSource(strings = {"lossy.webp", "lossy-alpha.webp"})
  void aLossyWebpIsRefusedWithTheWayOut(String name) throws Exception {
    byte[] bytes;
    try (InputStream in = FormatsTest.class.getResourceAsStream("refused/" + name)) {
      bytes = in.readAllBytes();
    }
    for (Executable reading :
        List.<Executable>of(() -> read(name, bytes), () -> probe(name, bytes))) {
      String said = String.valueOf(assertThrows(PictureException.class, reading).getMessage());
      assertTrue(said.startsWith(name + ": is a WebP with lossy"), said);
      assertTrue(said.contains("save it as PNG"), said);
    }
  }

  @Test
  void aLosslessWebpWithAlphaKeepsItsSize() throws Exception {
    PictureProbe p = probe("big.webp", file("big-alpha.webp"));
    assertEquals(new PixelSize(1200, 1500), p.pixels());
    assertEquals(Ground.TRANSPARENT, p.ground());
    assertEquals(new InkedBox(100, 200, 1000, 1200), p.inkedBox());
    assertNull(p.density());
  }

  @Test
  void printingColoursOfATiffComeOutAsColours() throws Exception {
    RasterPicture r = read("cmyk.tif", file("cmyk.tif"));
    assertTrue(r.notes().toString().contains("CMYK"), r.notes()::toString);
    int white = r.image().getRGB(2, 2);
    int red = r.image().getRGB(8, 9);
    int blue = r.image().getRGB(30, 20);
    assertTrue((white >> 16 & 255) > 240 && (white & 255) > 240, Integer.toHexString(white));
    assertTrue((red >> 16 & 255) > 150 && (red & 255) < 100, Integer.toHexString(red));
    assertTrue((blue & 255) > 130 && (blue >> 16 & 255) < 110, Integer.toHexString(blue));
  }

  @Test
  void oneBitTiffsAreBlackAndWhite() throws Exception {
    RasterPicture r = read("b.tif", file("bilevel.tif"));
    assertEquals(0xFFFFFFFF, r.image().getRGB(2, 2));
    assertEquals(0xFF000000, r.image().getRGB(8, 9));
  }

  @Test
  void ofSeveralPagesTheFirstIsReadAndSaidSo() throws Exception {
    PictureProbe p = probe("pages.tif", file("pages.tif"));
    assertEquals(new PixelSize(40, 30), p.pixels());
    assertTrue(p.notes().toString().contains("3 pages"), p.notes()::toString);
  }

  @Test
  void aTiffStatesItsDensityPerAxis() throws Exception {
    PixelDensity d = requireNonNull(probe("a.tif", file("white-lzw.tif")).density());
    // 11.811 to the millimetre is 300 to the inch, and half of it down.
    assertEquals(300, d.x().perInch(), 0.001);
    assertEquals(150, d.y().perInch(), 0.001);
    assertEquals(Rate.Unit.CENTIMETRE, d.x().unit());
  }

  @Test
  void onePixelToTheMillimetreStandsForUnknown() throws Exception {
    PictureProbe p = probe("a.tif", file("alpha-tiled.tif"));
    assertNull(p.density());
    assertTrue(p.notes().toString().contains("unknown"), p.notes()::toString);
  }

  private static BufferedImage dot(int type) {
    BufferedImage image = new BufferedImage(24, 18, type);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 24, 18);
    g.setColor(new Color(180, 20, 60));
    g.fillRect(4, 5, 7, 8);
    g.dispose();
    return image;
  }

  private static byte[] written(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(image, format, out), format);
    return out.toByteArray();
  }

  @ParameterizedTest
  @ValueSource(ints = {BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_BYTE_INDEXED})
  void bmpsAreReadWithTheirDensity(int type) throws Exception {
    byte[] bmp = written(dot(type), "bmp");
    // BITMAPINFOHEADER: pixels per metre stand at 38 and 42; 0 states none.
    ByteBuffer.wrap(bmp).order(ByteOrder.LITTLE_ENDIAN).putInt(38, 11811).putInt(42, 3937);
    PictureProbe p = probe("a.bmp", bmp);
    assertEquals("BMP", p.format());
    assertEquals(new PixelDensity(Rate.perMetre(11811), Rate.perMetre(3937)), p.density());
    assertEquals(new InkedBox(4, 5, 11, 13), p.inkedBox());
    ByteBuffer.wrap(bmp).putInt(38, 0).putInt(42, 0);
    assertNull(probe("a.bmp", bmp).density());
    int red = read("a.bmp", bmp).image().getRGB(6, 6);
    assertEquals(180, red >> 16 & 255, 40, Integer.toHexString(red));
  }

  @Test
  void gifsNeverStateADensityAndMayBeClear() throws Exception {
    byte[] two = {0, (byte) 255};
    IndexColorModel model = new IndexColorModel(1, 2, two, two, two, 1);
    BufferedImage image = new BufferedImage(24, 18, BufferedImage.TYPE_BYTE_BINARY, model);
    for (int x = 0; x < 24 * 18; x++) {
      boolean ink = x % 24 >= 4 && x % 24 < 11 && x / 24 >= 5 && x / 24 < 13;
      image.getRaster().setSample(x % 24, x / 24, 0, ink ? 0 : 1);
    }
    byte[] gif = written(image, "gif");
    PictureProbe p = probe("a.gif", gif);
    assertEquals("GIF", p.format());
    assertNull(p.density());
    assertEquals(Ground.TRANSPARENT, p.ground());
    assertEquals(new InkedBox(4, 5, 11, 13), p.inkedBox());
    // GIF 89a, 18: the shape of a pixel is (n + 15) / 64.
    gif[12] = 49;
    assertEquals(1, probe("a.gif", gif).pixelAspect());
    gif[12] = 17;
    assertEquals(0.5, probe("a.gif", gif).pixelAspect());
  }

  @Test
  void aGifFrameStandsWhereItsScreenHasIt() throws Exception {
    byte[] gif = written(dot(BufferedImage.TYPE_BYTE_INDEXED), "gif");
    // GIF 89a, 18 and 20: a screen of 40 by 30, and the frame at 10, 9.
    ByteBuffer b = ByteBuffer.wrap(gif).order(ByteOrder.LITTLE_ENDIAN);
    b.putShort(6, (short) 40).putShort(8, (short) 30);
    int frame = 13 + ((gif[10] & 0x80) == 0 ? 0 : 3 << ((gif[10] & 7) + 1));
    while (gif[frame] == 0x21) {
      frame += 2;
      while (gif[frame] != 0) {
        frame += 1 + (gif[frame] & 255);
      }
      frame++;
    }
    b.putShort(frame + 1, (short) 10).putShort(frame + 3, (short) 9);
    PictureProbe p = probe("a.gif", gif);
    assertEquals(new PixelSize(40, 30), p.pixels());
    assertEquals(new InkedBox(10, 9, 34, 27), p.inkedBox());
  }

  private static byte[] zipped(String text) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream gz = new GZIPOutputStream(out)) {
      gz.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return out.toByteArray();
  }

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><rect width='3' height='3'/></svg>";

  @Test
  void compressedDrawingsAreDrawings() throws Exception {
    PictureProbe p = probe("a.svgz", zipped(SVG));
    assertEquals("SVGZ", p.format());
    assertNull(p.pixels());
    assertEquals(0, p.notes().size(), p.notes()::toString);
    assertEquals(3, requireNonNull(p.inkedBox()).right(), 1e-6);
    assertThrows(PictureException.class, () -> probe("a.svgz", zipped("no drawing")));
  }

  @Test
  void aDrawingThatUnpacksWithoutEndIsStopped() throws Exception {
    byte[] bomb = zipped(SVG.replace("<rect", " ".repeat(60 << 20) + "<rect"));
    assertTrue(bomb.length < 100_000, "packed small");
    PictureException e = assertThrows(PictureException.class, () -> probe("a.svgz", bomb));
    assertTrue(String.valueOf(e.getMessage()).contains("unpacks"), e.getMessage());
  }

  @Test
  void aSheetBehindADrawingIsItsGround() throws Exception {
    assertEquals(Ground.TRANSPARENT, ground(""));
    assertEquals(Ground.OPAQUE_WHITE, ground("<rect width='9' height='9' fill='#fff'/>"));
    assertEquals(Ground.OPAQUE_OTHER, ground("<rect width='9' height='9' fill='#fc9'/>"));
    assertEquals(Ground.TRANSPARENT, ground("<rect width='8' height='9' fill='#fff'/>"));
  }

  private static Ground ground(String sheet) throws PictureException {
    byte[] svg = SVG.replace("<rect", sheet + "<rect").getBytes(StandardCharsets.UTF_8);
    return probe("a.svg", svg).ground();
  }

  @ParameterizedTest
  @CsvSource({
    "a.png, white-lzw.tif, TIFF",
    "a.JPG, white.png, PNG",
    "a.svg, lossless-alpha.webp, WebP",
    "dir.tif/a.bmp, white.png, PNG"
  })
  void aWrongEndingIsNoted(String name, String file, String format) throws Exception {
    PictureProbe p = probe(name, file(file));
    assertEquals(format, p.format());
    assertTrue(p.notes().toString().contains("it is " + format), p.notes()::toString);
  }

  @ParameterizedTest
  @CsvSource({"a.png, white.png", "a, white.png", "a.tiff, white-lzw.tif", "a.b/c, white.png"})
  void aRightOrMissingEndingIsNot(String name, String file) throws Exception {
    assertTrue(
        probe(name, file(file)).notes().stream().noneMatch(n -> n.text().contains("its name")));
  }
}
