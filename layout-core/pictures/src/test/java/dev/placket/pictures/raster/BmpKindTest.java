package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureException;
import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of BMP that is read comes out as the pixels that were written. */
class BmpKindTest {
  /** Bits, then the masks of red, green, blue and alpha. */
  private static final int[][] KINDS = {
    {16},
    {24},
    {32},
    {16, 0x7C00, 0x3E0, 0x1F, 0},
    {16, 0xF800, 0x7E0, 0x1F, 0},
    {32, 0xFF0000, 0xFF00, 0xFF, 0},
    {32, 0xFF0000, 0xFF00, 0xFF, 0xFF000000},
    {32, 0xFF, 0xFF00, 0xFF0000, 0xFF000000},
    {32, 0xFF000000, 0xFF0000, 0xFF00, 0}
  };

  @Property(tries = 200)
  void whatIsReadIsWhatWasWritten(
      @ForAll @IntRange(max = 8) int kind,
      @ForAll @IntRange(min = 1, max = 33) int width,
      @ForAll boolean down,
      @ForAll long seed)
      throws Exception {
    int bits = KINDS[kind][0];
    int[] masks = Arrays.copyOfRange(KINDS[kind], 1, KINDS[kind].length);
    // A plain 32-bit pixel has nothing in its fourth byte, a plain 16-bit one none in its top bit.
    int used = kind == 0 ? 0x7FFF : kind == 2 ? 0xFFFFFF : kind >= 5 ? -1 : (1 << bits) - 1;
    int unused = masks.length == 0 ? 0 : ~(masks[0] | masks[1] | masks[2] | masks[3]);
    int[] pixels = new Random(seed).ints(5L * width).map(p -> p & used & ~unused).toArray();
    byte[] bytes = BmpWriter.of(width, 5, bits, masks, new int[0], pixels, down);
    int[] read = TiffKindTest.stored(bytes).argb();
    int[] m =
        masks.length > 0
            ? masks
            : bits == 16
                ? new int[] {0x7C00, 0x3E0, 0x1F, 0}
                : new int[] {0xFF0000, 0xFF00, 0xFF, 0};
    for (int i = 0; i < pixels.length; i++) {
      int alpha = m[3] == 0 ? 255 : pixels[i] >>> 24;
      assertEquals(alpha, read[i] >>> 24, "alpha of pixel " + i);
      for (int c = 0; c < 3; c++) {
        assertEquals(level(pixels[i], m[c]), read[i] >> (16 - 8 * c) & 255, 1.01, "pixel " + i);
      }
    }
  }

  private static double level(int pixel, int mask) {
    int shift = Integer.numberOfTrailingZeros(mask);
    return 255.0 * ((pixel & mask) >>> shift) / (mask >>> shift);
  }

  @ParameterizedTest
  @CsvSource({"1, false", "4, true", "8, false"})
  void palettesAreFollowed(int bits, boolean down) throws Exception {
    Random random = new Random(bits);
    int[] palette = random.ints(1L << bits, 0, 1 << 24).toArray();
    int[] pixels = random.ints(7 * 5, 0, 1 << bits).toArray();
    byte[] bytes = BmpWriter.of(7, 5, bits, new int[0], palette, pixels, down);
    int[] expected = Arrays.stream(pixels).map(p -> 0xFF000000 | palette[p]).toArray();
    assertEquals(Arrays.toString(expected), Arrays.toString(TiffKindTest.stored(bytes).argb()));
  }

  @Test
  void aPixelBehindThePalettesEndIsRefused() {
    assertRefused(
        BmpWriter.of(4, 1, 8, new int[0], new int[100], new int[] {0, 1, 2, 100}, false), "pixels");
  }

  @Test
  void aFourthByteThatVariesIsRefused() {
    assertRefused(
        BmpWriter.of(2, 1, 32, new int[0], new int[] {0x80112233, 0xFF112233}), "alpha or not");
  }

  @ParameterizedTest
  @CsvSource({
    "16, 48, 14, 1, 0",
    "16, 3840, 240, 15, 0",
    "16, 3840, 240, 15, 61440",
    "16, 31744, 992, 31, 32768",
    "32, 267386880, 1047552, 1023, 0"
  })
  void otherMasksAreRefusedByName(int bits, int r, int g, int b, int a) {
    assertRefused(BmpWriter.of(1, 1, bits, new int[] {r, g, b, a}, new int[] {9}), "colour masks");
  }

  @Test
  void otherBitsAreRefusedByName() {
    assertRefused(BmpWriter.of(4, 1, 2, new int[0], new int[4], new int[4], false), "2 bits");
  }

  private static void assertRefused(byte[] bmp, String word) {
    String said =
        String.valueOf(
            assertThrows(PictureException.class, () -> TiffKindTest.stored(bmp)).getMessage());
    assertTrue(said.startsWith("try, ") && said.contains(word), said);
  }

  @Property(tries = 300)
  void damageNeverCrashes(@ForAll @IntRange(max = 8) int kind, @ForAll long seed) throws Exception {
    Random random = new Random(seed);
    int[] masks = Arrays.copyOfRange(KINDS[kind], 1, KINDS[kind].length);
    byte[] bytes = BmpWriter.of(9, 5, KINDS[kind][0], masks, random.ints(45).toArray());
    for (int i = 0; i < 3; i++) {
      bytes[18 + random.nextInt(bytes.length - 18)] = (byte) random.nextInt();
    }
    try {
      TiffKindTest.stored(bytes);
    } catch (PictureException e) {
      assertTrue(String.valueOf(e.getMessage()).startsWith("try"), e.getMessage());
    }
  }
}
