package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Damage that only a checksum shows, and a transparent colour that no pixel can have. */
class ChecksumsTest {
  private static byte[] png(boolean interlaced) {
    PngWriter png = new PngWriter(9, 8, 8, 0);
    png.interlaced = interlaced;
    int[] samples = new int[72];
    Arrays.setAll(samples, i -> 3 * i);
    return png.write(samples);
  }

  /** RFC 1950, 2.2: the last four bytes of the packed data are the Adler sum of the plain ones. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aWrongAdlerSumIsRefused(boolean interlaced) {
    byte[] bytes = png(interlaced);
    // Behind the data of the last IDAT stand its own sum and the 12 bytes of IEND.
    int end = bytes.length - 12 - 4;
    bytes[end - 1] ^= 1;
    int start = 8 + 25;
    CRC32 crc = new CRC32();
    crc.update(bytes, start + 4, end - start - 4);
    ByteBuffer.wrap(bytes).putInt(end, (int) crc.getValue());
    assertThrows(PictureException.class, () -> TiffKindTest.stored(bytes));
  }

  /** PNG, third edition, 5.3: each chunk ends with its sum. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aWrongSumOfTheLastChunkIsRefused(boolean interlaced) {
    byte[] bytes = png(interlaced);
    bytes[bytes.length - 13] ^= 1;
    assertThrows(PictureException.class, () -> TiffKindTest.stored(bytes));
  }

  /**
   * GIF 89a, 23: the index 5 of a table of two colours. Two pixels, the colours 0 and 1, packed as
   * clear, 0, 1, end in codes of 3 bits.
   */
  @Test
  void aTransparentColourOutsideTheTableMakesNothingClear() throws Exception {
    byte[] gif = {
      'G',
      'I',
      'F',
      '8',
      '9',
      'a',
      2,
      0,
      1,
      0,
      (byte) 0x80,
      0,
      0,
      10,
      20,
      30,
      40,
      50,
      60,
      0x21,
      (byte) 0xF9,
      4,
      1,
      0,
      0,
      5,
      0,
      0x2C,
      0,
      0,
      0,
      0,
      2,
      0,
      1,
      0,
      0,
      2,
      2,
      0x44,
      0x0A,
      0,
      0x3B
    };
    assertEquals(
        Arrays.toString(new int[] {0xFF0A141E, 0xFF28323C}),
        Arrays.toString(TiffKindTest.stored(gif).argb()));
    gif[25] = 1;
    assertEquals(0xFF0A141E, TiffKindTest.stored(gif).argb()[0]);
    assertEquals(0, TiffKindTest.stored(gif).argb()[1] >>> 24);
    gif[10] = 0;
    String said =
        String.valueOf(
            assertThrows(PictureException.class, () -> TiffKindTest.stored(gif)).getMessage());
    assertTrue(said.startsWith("try"), said);
  }
}
