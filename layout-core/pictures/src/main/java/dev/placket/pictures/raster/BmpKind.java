package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The kinds of BMP that the decoder gets right: bits, compression and the masks that say where in a
 * pixel its colours stand. Any other kind is refused by name.
 *
 * @param bits of a pixel
 * @param alpha whether a mask says where alpha stands
 */
record BmpKind(int bits, boolean alpha) {
  private static final int PLAIN = 0;
  private static final int RUNS_8 = 1;
  private static final int RUNS_4 = 2;
  private static final int MASKS = 3;

  /** Header sizes: of Windows, and of its second, third, fourth and fifth version. */
  private static final Set<Long> HEADERS = Set.of(40L, 52L, 56L, 108L, 124L);

  private static final long HIGHEST_BYTE = 0xFF000000L;

  /** Reads it from a header of 40 bytes or more, which starts at byte 14. */
  static BmpKind read(String name, SourceBytes bytes, long header)
      throws PictureException, IOException {
    int bits = bytes.u16(28, true);
    int compression = (int) bytes.u32(30, true);
    boolean masked = compression == MASKS;
    long alpha = masked && header >= 56 ? bytes.u32(66, true) : 0;
    String reason =
        HEADERS.contains(header)
            ? reason(bits, compression, header)
            : "with a header of " + header + " bytes";
    if (reason == null && masked) {
      reason = masks(bits, bytes.u32(54, true), bytes.u32(58, true), bytes.u32(62, true), alpha);
    }
    if (reason != null) {
      throw refused(name, reason);
    }
    return new BmpKind(bits, alpha != 0);
  }

  static PictureException refused(String name, String reason) {
    return new PictureException(
        Fault.content(name, "is a BMP " + reason + ", a kind that is not read")
            .in("header")
            .remedy("save it as PNG"));
  }

  private static @Nullable String reason(int bits, int compression, long header) {
    boolean known =
        switch (compression) {
          case PLAIN -> Set.of(1, 4, 8, 16, 24, 32).contains(bits);
          case RUNS_8 -> bits == 8;
          case RUNS_4 -> bits == 4;
          case MASKS -> bits == 16 || bits == 32;
          default -> false;
        };
    return known ? null : "of " + bits + " bits to a pixel with compression " + compression;
  }

  private static @Nullable String masks(int bits, long red, long green, long blue, long alpha) {
    boolean five = red == 0x7C00 && green == 0x3E0 && blue == 0x1F;
    boolean six = red == 0xF800 && green == 0x7E0 && blue == 0x1F;
    boolean right =
        bits == 16
            ? (five || six) && alpha == 0
            : eight(red) && eight(green) && eight(blue) && (alpha == 0 || alpha == HIGHEST_BYTE);
    return right
        ? null
        : String.format(
            "with the colour masks %x, %x, %x and %x for alpha", red, green, blue, alpha);
  }

  /** Whether a mask has eight bits side by side. */
  private static boolean eight(long mask) {
    return mask != 0 && mask >> Long.numberOfTrailingZeros(mask) == 0xFF;
  }

  /**
   * Refuses plain 32-bit pixels whose fourth bytes vary: they should mean nothing, but some
   * programs mean alpha by them, and libraries take them one way or the other.
   */
  static void checkSpare(String name, byte[] bmp) throws PictureException {
    boolean old = bmp.length < 54 || number(bmp, 14) < 40;
    if (old || (bmp[28] & 255) != 32 || number(bmp, 30) != PLAIN) {
      return;
    }
    long start = number(bmp, 10);
    for (long at = start + 3; at < bmp.length; at += 4) {
      byte spare = bmp[(int) at];
      if (spare != bmp[(int) start + 3] || (spare != 0 && spare != -1)) {
        throw refused(name, "whose fourth bytes may be alpha or not");
      }
    }
  }

  private static long number(byte[] b, int at) {
    return b[at] & 255
        | (b[at + 1] & 255) << 8
        | (b[at + 2] & 255) << 16
        | (b[at + 3] & 255L) << 24;
  }
}
