package dev.placket.pictures.raster;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.rows.Pixels;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of PNG, written sample by sample and read back pixel by pixel. */
class PngTest {
  /** Depths that the standard allows each colour type (PNG, 11.2.1, table 12). */
  private static final int[][] KINDS = {
    {0, 1, 2, 4, 8, 16}, {2, 8, 16}, {3, 1, 2, 4, 8}, {4, 8, 16}, {6, 8, 16}
  };

  record Kind(int colour, int depth, boolean interlaced, int filter, boolean keyed) {}

  static Stream<Kind> kinds() {
    List<Kind> all = new ArrayList<>();
    for (int[] k : KINDS) {
      for (int depth : Arrays.copyOfRange(k, 1, k.length)) {
        for (int filter = 0; filter <= PngWriter.MIXED; filter++) {
          for (int i = 0; i < 2; i++) {
            all.add(new Kind(k[0], depth, i == 1, filter, false));
            if (k[0] < 4) {
              all.add(new Kind(k[0], depth, i == 1, filter, true));
            }
          }
        }
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void isReadBackPixelByPixel(Kind kind) throws Exception {
    Random random = new Random(kind.hashCode());
    // Odd sizes leave bits over at the end of rows; small ones leave passes empty.
    for (int size : new int[] {1, 2, 3, 5, 8, 9, 17, 33}) {
      PngWriter png = new PngWriter(size, size + 2, kind.depth, kind.colour);
      png.interlaced = kind.interlaced;
      png.filter = kind.filter;
      png.partSize = size == 9 ? 1 : 1 << 30;
      int n = PngWriter.channels(kind.colour);
      int most = (1 << kind.depth) - 1;
      int[] samples = random.ints(size * (size + 2) * n, 0, most + 1).toArray();
      int[] palette = random.ints(Math.min(256, most + 1), 0, 1 << 24).toArray();
      int[] alphas = random.ints(Math.max(1, palette.length / 2), 0, 256).toArray();
      if (kind.colour == 3) {
        png.palette = bytes(palette, 3);
        png.transparency = kind.keyed ? bytes(alphas, 1) : null;
      } else if (kind.keyed) {
        png.transparency = bytes(Arrays.copyOf(samples, n), 2);
      }
      int[] expected = new int[size * (size + 2)];
      for (int i = 0; i < expected.length; i++) {
        int[] s = Arrays.copyOfRange(samples, i * n, i * n + n);
        boolean clear = kind.keyed && Arrays.equals(s, Arrays.copyOf(samples, n));
        expected[i] =
            kind.colour == 3
                ? (kind.keyed && s[0] < alphas.length ? alphas[s[0]] : 255) << 24 | palette[s[0]]
                : argb(kind.colour, s, most, clear);
      }
      assertArrayEquals(expected, stored(png.write(samples)).argb(), kind + ", " + size);
    }
  }

  /** PNG, 13.12: a sample of any depth is its share of the greatest, rounded to the nearest. */
  private static int argb(int colour, int[] s, int most, boolean clear) {
    int[] v = Arrays.stream(s).map(i -> (int) Math.round(255.0 * i / most)).toArray();
    return switch (colour) {
      case 0 -> (clear ? 0 : 255) << 24 | v[0] << 16 | v[0] << 8 | v[0];
      case 2 -> (clear ? 0 : 255) << 24 | v[0] << 16 | v[1] << 8 | v[2];
      case 4 -> v[1] << 24 | v[0] << 16 | v[0] << 8 | v[0];
      default -> v[3] << 24 | v[0] << 16 | v[1] << 8 | v[2];
    };
  }

  private static byte[] bytes(int[] numbers, int each) {
    byte[] b = new byte[numbers.length * each];
    for (int i = 0; i < b.length; i++) {
      b[i] = (byte) (numbers[i / each] >> 8 * (each - 1 - i % each));
    }
    return b;
  }

  private static Pixels stored(byte[] png) throws PictureException, IOException {
    PictureSource source = PictureSource.of("try.png", png);
    try (SourceBytes bytes = new SourceBytes(source)) {
      RasterFile file = RasterFile.open(RasterFormat.PNG, source, bytes, ReadLimits.DEFAULT, true);
      try (RowReader rows = file.stored()) {
        return Pixels.of(rows);
      }
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "pngsuite_headers.csv", numLinesToSkip = 2)
  void whatPngSuiteListsIsAmongThem(
      String file, int w, int h, int depth, int colour, int interlace, String physical)
      throws Exception {
    PngWriter png = new PngWriter(w, h, depth, colour);
    png.interlaced = interlace == 1;
    if (colour == 3) {
      png.palette = bytes(new Random(7).ints(1 << depth, 0, 1 << 24).toArray(), 3);
    }
    int[] p = {0, 0, 0};
    if (physical != null) {
      p = Arrays.stream(physical.split("[xu]")).mapToInt(Integer::parseInt).toArray();
      png.before.add(PngWriter.physical(p[0], p[1], p[2]));
    }
    if (kinds().noneMatch(k -> k.colour == colour && k.depth == depth)) {
      png.depth = 8;
      png.colour = 2;
      byte[] bytes = png.write(new int[w * h * 3]);
      // PNG, 5.3: depth and colour type stand at bytes 24 and 25; the checksum is made to agree.
      bytes[24] = (byte) depth;
      bytes[25] = (byte) colour;
      byte[] header = PngWriter.chunk("IHDR", Arrays.copyOfRange(bytes, 16, 29));
      System.arraycopy(header, 0, bytes, 8, header.length);
      assertTrue(file.startsWith("x"), file);
      assertThrows(PictureException.class, () -> probe(bytes), file);
      return;
    }
    int[] samples = new Random(5).ints(w * h * PngWriter.channels(colour), 0, 1 << depth).toArray();
    PictureProbe probe = probe(png.write(samples));
    assertEquals("PNG", probe.format());
    assertEquals(w, requireNonNull(probe.pixels()).width());
    assertEquals(h, requireNonNull(probe.pixels()).height());
    PixelDensity expected =
        p[2] == 1 ? new PixelDensity(Rate.perMetre(p[0]), Rate.perMetre(p[1])) : null;
    assertEquals(expected, probe.density());
    if (p[0] > 0) {
      // The pictures with flat and high pixels are square to look at.
      assertEquals((double) p[1] / p[0], probe.pixelAspect(), 1e-12);
    }
  }

  private static PictureProbe probe(byte[] png) throws PictureException {
    return PictureReader.probe(PictureSource.of("try.png", png), ReadLimits.DEFAULT);
  }

  private static PngWriter grey() {
    return new PngWriter(4, 4, 8, 0);
  }

  private static final int[] DOT = {
    255, 255, 255, 255, 255, 0, 255, 255, 255, 255, 255, 255, 255, 255, 255, 255
  };

  @Test
  void pixelsPerMetreStayTheWholeNumber() throws Exception {
    PngWriter png = grey();
    png.before.add(PngWriter.physical(11811, 5906, 1));
    PixelDensity d = requireNonNull(probe(png.write(DOT)).density());
    assertEquals(Rate.perMetre(11811), d.x());
    assertEquals(Rate.perMetre(5906), d.y());
    // PNG, 11.3.4.3: an inch is 0.0254 m; 300 per inch reads back as 299.9994.
    assertEquals(299.9994, d.x().perInch(), 1e-9);
  }

  @Test
  void withoutAUnitOnlyTheShapeIsKnown() throws Exception {
    PngWriter png = grey();
    png.before.add(PngWriter.physical(2, 1, 0));
    byte[] bytes = png.write(DOT);
    PictureProbe probe = probe(bytes);
    assertNull(probe.density());
    assertEquals(0.5, probe.pixelAspect());
    assertTrue(probe.notes().toString().contains("not square"), probe.notes()::toString);
    RasterPicture raster =
        (RasterPicture) PictureReader.read(PictureSource.of("a.png", bytes), ReadLimits.DEFAULT);
    // Pixels half as wide as high: the picture is seen twice as high as it has rows for.
    assertEquals(4, raster.width());
    assertEquals(8, raster.height());
    assertEquals(8, raster.image().getHeight());
  }

  @Test
  void withoutPhysNothingIsKnown() throws Exception {
    assertNull(probe(grey().write(DOT)).density());
  }

  @Test
  void aDamagedExtraPartIsPassedOverAndSaidSo() throws Exception {
    PngWriter png = grey();
    byte[] damaged = PngWriter.physical(3000, 3000, 1);
    damaged[10] ^= 1;
    png.before.add(damaged);
    PictureProbe probe = probe(png.write(DOT));
    assertNull(probe.density());
    assertTrue(probe.notes().toString().contains("pHYs"), probe.notes()::toString);
  }

  @Test
  void theWayUpMayStandBehindThePixels() throws Exception {
    PngWriter png = new PngWriter(4, 2, 8, 0);
    png.after.add(PngWriter.chunk("eXIf", ExifBlock.of(true).orientation(6).bytes()));
    PictureProbe probe = probe(png.write(new int[] {0, 255, 255, 255, 255, 255, 255, 255}));
    // Exif 2.3, tag 274: 6 is seen turned clockwise, so the first pixel comes to the top right.
    assertEquals(2, requireNonNull(probe.pixels()).width());
    assertEquals(
        new dev.placket.layout.flat.InkedBox(1, 0, 2, 1), requireNonNull(probe.inkedBox()));
  }

  @Test
  void aHeaderThatPromisesTooMuchIsRefusedBeforeAnythingIsUnpacked() {
    byte[] png = grey().write(DOT);
    png[16 + 2] = 0x20;
    png[20 + 2] = 0x20;
    System.arraycopy(PngWriter.chunk("IHDR", Arrays.copyOfRange(png, 16, 29)), 0, png, 8, 25);
    PictureException e = assertThrows(PictureException.class, () -> probe(png));
    assertTrue(String.valueOf(e.getMessage()).contains("more pixels"), e.getMessage());
  }

  @Test
  void aPictureBeyondTheLimitIsRefusedFromItsHeader() {
    PngWriter png = grey();
    byte[] bytes = png.write(DOT);
    ReadLimits few = ReadLimits.DEFAULT.withPixels(15);
    PictureException e =
        assertThrows(
            PictureException.class,
            () -> PictureReader.head(PictureSource.of("a.png", Arrays.copyOf(bytes, 60)), few));
    assertTrue(String.valueOf(e.getMessage()).contains("4 by 4"), e.getMessage());
  }

  @Test
  void anUnknownNeededPartIsRefusedAndAnotherPassedOver() throws Exception {
    PngWriter png = grey();
    png.before.add(PngWriter.chunk("quIc", "a".getBytes(StandardCharsets.US_ASCII)));
    probe(png.write(DOT));
    png.before.add(PngWriter.chunk("QuIc", "a".getBytes(StandardCharsets.US_ASCII)));
    assertThrows(PictureException.class, () -> probe(png.write(DOT)));
  }
}
