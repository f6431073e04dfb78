package dev.placket.pictures.raster;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** A BMP of Windows' first or later headers, written by hand (BITMAPINFOHEADER, BITMAPV4HEADER). */
final class BmpWriter {
  private BmpWriter() {}

  /**
   * One of pixels without a palette.
   *
   * @param masks of red, green, blue, alpha; none for plain pixels
   * @param pixels row by row from the top, as they stand in the file
   */
  static byte[] of(int width, int height, int bits, int[] masks, int[] pixels) {
    return of(width, height, bits, masks, new int[0], pixels, false);
  }

  /** One with a palette of {@code 0xRRGGBB}, or from the top down. */
  static byte[] of(
      int width, int height, int bits, int[] masks, int[] palette, int[] pixels, boolean down) {
    int header = masks.length == 0 ? 40 : 108;
    int row = (width * bits + 31) / 32 * 4;
    int start = 14 + header + 4 * palette.length;
    ByteBuffer b = ByteBuffer.allocate(start + row * height).order(ByteOrder.LITTLE_ENDIAN);
    b.put((byte) 'B').put((byte) 'M').putInt(b.capacity()).putInt(0).putInt(start);
    b.putInt(header).putInt(width).putInt(down ? -height : height);
    b.putShort((short) 1).putShort((short) bits).putInt(masks.length == 0 ? 0 : 3);
    b.putInt(row * height).putInt(0).putInt(0).putInt(palette.length).putInt(0);
    for (int mask : masks) {
      b.putInt(mask);
    }
    b.position(14 + header);
    for (int colour : palette) {
      b.putInt(colour);
    }
    for (int y = 0; y < height; y++) {
      int at = start + row * (down ? y : height - 1 - y);
      for (int x = 0; x < width; x++) {
        int p = pixels[y * width + x];
        for (int i = 0; i < Math.max(1, bits / 8); i++) {
          if (bits >= 8) {
            b.put(at + x * bits / 8 + i, (byte) (p >> 8 * i));
          } else {
            int place = at + x * bits / 8;
            int shift = 8 - bits - x * bits % 8;
            b.put(place, (byte) (b.get(place) | p << shift));
          }
        }
      }
    }
    return b.array();
  }
}
