package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.RowReader;
import dev.placket.pictures.rows.Pixels;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every kind of TIFF that is read comes out as the samples that were written; the kinds beside them
 * are refused by name. Samples stand for colours as TIFF 6.0 has it, sections 4 to 8 and 18.
 */
class TiffKindTest {
  /** Photometric, samples, bits, extra (−1: none), planes allowed apart. */
  private static final int[][] KINDS = {
    {0, 1, 1, -1, 0},
    {0, 1, 4, -1, 0},
    {0, 1, 8, -1, 0},
    {0, 1, 16, -1, 0},
    {1, 1, 1, -1, 0},
    {1, 1, 2, -1, 0},
    {1, 1, 4, -1, 0},
    {1, 1, 8, -1, 0},
    {1, 1, 16, -1, 0},
    {1, 2, 8, 1, 1},
    {1, 2, 8, 2, 1},
    {1, 2, 16, 1, 1},
    {1, 2, 16, 2, 1},
    {2, 3, 8, -1, 1},
    {2, 3, 16, -1, 1},
    {2, 4, 8, 1, 1},
    {2, 4, 8, 2, 1},
    {2, 4, 16, 1, 1},
    {2, 4, 16, 2, 1},
    {3, 1, 1, -1, 0},
    {3, 1, 2, -1, 0},
    {3, 1, 4, -1, 0},
    {3, 1, 8, -1, 0},
    {0, 1, 2, -1, 0}
  };

  private static final int[] PACKINGS = {
    TiffWriter.NONE, TiffWriter.DEFLATE, TiffWriter.PACK_BITS, 32946
  };

  @Property(tries = 600)
  void whatIsReadIsWhatWasWritten(
      @ForAll @IntRange(max = 23) int kind,
      @ForAll @IntRange(max = 2) int packing,
      @ForAll boolean little,
      @ForAll boolean apart,
      @ForAll boolean predicts,
      @ForAll @IntRange(min = 1, max = 40) int width,
      @ForAll long seed)
      throws Exception {
    int[] k = KINDS[kind];
    TiffWriter tiff = new TiffWriter(width, 7, k[2], k[1], k[0]);
    tiff.little = little;
    tiff.packing = PACKINGS[packing];
    tiff.planar = apart && k[4] == 1;
    boolean whole = k[2] == 8 || k[2] == 16;
    tiff.predictor = predicts && whole && tiff.packing == TiffWriter.DEFLATE ? 2 : 1;
    if (k[3] >= 0) {
      tiff.tags.put(338, new int[] {k[3]});
    }
    Random random = new Random(seed);
    int[] colours = random.ints(3L << k[2], 0, 65536).toArray();
    if (k[0] == 3) {
      tiff.tags.put(320, colours);
    }
    int[] values = values(random, tiff, k[3] == 1);
    String what = "kind " + kind + " packing " + tiff.packing + " apart " + tiff.planar;
    Pixels read = stored(tiff.write(values));
    for (int i = 0; i < width * 7; i++) {
      assertNear(expected(k, values, i, colours), read.argb()[i], what + " pixel " + i);
    }
  }

  /** Random samples; where alpha is multiplied in, no colour is above it. */
  private static int[] values(Random random, TiffWriter tiff, boolean multiplied) {
    int[] v = random.ints((long) tiff.width * 7 * tiff.samples, 0, 1 << tiff.bits).toArray();
    for (int i = 0; multiplied && i < v.length; i++) {
      int alpha = v[i - i % tiff.samples + tiff.samples - 1];
      v[i] = Math.min(v[i], alpha);
    }
    return v;
  }

  /** Alpha, red, green, blue of a pixel, 0 to 255. */
  private static double[] expected(int[] kind, int[] v, int pixel, int[] colours) {
    int n = kind[1];
    double most = (1 << kind[2]) - 1;
    int first = v[pixel * n];
    if (kind[0] == 3) {
      int size = colours.length / 3;
      return new double[] {
        255,
        colours[first] / 257.0,
        colours[size + first] / 257.0,
        colours[2 * size + first] / 257.0
      };
    }
    double alpha = kind[3] < 0 ? 1 : v[pixel * n + n - 1] / most;
    double[] argb = {255 * alpha, 0, 0, 0};
    for (int c = 0; c < 3; c++) {
      double value = v[pixel * n + (n < 3 ? 0 : c)] / most;
      value = kind[0] == 0 ? 1 - value : value;
      argb[c + 1] = 255 * (kind[3] == 1 && alpha > 0 ? value / alpha : value);
    }
    return argb;
  }

  private static void assertNear(double[] expected, int found, String what) {
    assertEquals(expected[0], found >>> 24, 0.51, what + " alpha");
    // Behind what is clear lies no colour.
    for (int c = 0; c < 3 && expected[0] > 0; c++) {
      assertEquals(expected[c + 1], found >> (16 - 8 * c) & 255, 1.01, what + " channel " + c);
    }
  }

  static Pixels stored(byte[] bytes) throws Exception {
    PictureSource source = PictureSource.of("try", bytes);
    try (SourceBytes in = new SourceBytes(source)) {
      RasterFormat format =
          java.util.Objects.requireNonNull(RasterFormat.of(in.first(RasterFormat.ENOUGH)));
      try (RowReader rows =
          RasterFile.open(format, source, in, ReadLimits.DEFAULT, true).stored()) {
        return Pixels.of(rows);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1, 6, 0, 0, samples of 6 bits",
    "1, 1, 12, 0, 0, samples of 12 bits",
    "2, 3, 4, 0, 0, samples of 4 bits",
    "2, 3, 14, 0, 0, samples of 14 bits",
    "1, 1, 8, 339, 2, signed samples",
    "1, 1, 16, 339, 3, floating-point",
    "2, 4, 8, 0, 0, 4 samples of colour",
    "2, 4, 8, 338, 0, 4 samples of colour",
    "2, 5, 8, 338, 2, 5 samples of colour",
    "0, 2, 8, 338, 2, 2 samples of grey",
    "3, 2, 8, 338, 2, extra sample",
    "4, 1, 1, 0, 0, transparency mask",
    "6, 3, 8, 0, 0, YCbCr",
    "8, 3, 8, 0, 0, Lab",
    "32845, 3, 16, 0, 0, LogLuv",
    "1, 1, 8, 266, 2, in reverse",
    "77, 1, 8, 0, 0, unknown kind of colours"
  })
  void otherKindsAreRefusedByName(
      int photometric, int samples, int bits, int tag, int value, String word) {
    TiffWriter tiff = new TiffWriter(4, 4, bits, samples, photometric);
    if (tag != 0) {
      tiff.tags.put(tag, new int[] {value});
    }
    assertRefused(tiff.write(new int[16 * samples]), word);
  }

  @ParameterizedTest
  @CsvSource({"6, old-style JPEG", "34925, LZMA", "50000, Zstandard", "12345, 12345"})
  void otherCompressionIsRefusedByName(int packing, String word) {
    TiffWriter tiff = new TiffWriter(4, 4, 8, 1, 1);
    tiff.packing = packing;
    assertRefused(tiff.write(new int[16]), word);
  }

  /** TIFF 6.0, section 3: the strips together hold all rows. */
  @Test
  void stripsThatAreMissingOrOutsideAreRefused() {
    TiffWriter tiff = new TiffWriter(4, 9, 8, 1, 1);
    byte[] whole = tiff.write(new int[36]);
    assertRefused(java.util.Arrays.copyOf(whole, whole.length - 200), "cut short");
    tiff.rowsPerStrip = 9;
    byte[] one = tiff.write(new int[36]);
    // ROWS_PER_STRIP is the tag 278: 0x0116, a SHORT, its value 8 bytes on.
    for (int i = 0; i < one.length - 12; i++) {
      if (one[i] == 0x16 && one[i + 1] == 1 && one[i + 2] == 3) {
        one[i + 8] = 3;
      }
    }
    assertRefused(one, "states 1 of the 3 parts");
  }

  private static void assertRefused(byte[] tiff, String word) {
    String said =
        String.valueOf(assertThrows(PictureException.class, () -> stored(tiff)).getMessage());
    assertTrue(said.startsWith("try, ") && said.contains(word), said);
  }

  /** Damage anywhere is a refusal or a picture, never anything else. */
  @Property(tries = 400)
  void damageNeverCrashes(
      @ForAll @IntRange(max = 23) int kind,
      @ForAll @IntRange(max = 2) int packing,
      @ForAll long seed)
      throws Exception {
    int[] k = KINDS[kind];
    TiffWriter tiff = new TiffWriter(9, 7, k[2], k[1], k[0]);
    tiff.packing = PACKINGS[packing];
    if (k[3] >= 0) {
      tiff.tags.put(338, new int[] {k[3]});
    }
    Random random = new Random(seed);
    if (k[0] == 3) {
      tiff.tags.put(320, random.ints(3L << k[2], 0, 65536).toArray());
    }
    byte[] bytes = tiff.write(values(random, tiff, false));
    for (int i = 0; i < 3; i++) {
      bytes[4 + random.nextInt(bytes.length - 4)] = (byte) random.nextInt();
    }
    try {
      stored(bytes);
    } catch (PictureException e) {
      assertTrue(String.valueOf(e.getMessage()).startsWith("try"), e.getMessage());
    }
  }
}
