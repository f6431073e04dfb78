package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import java.io.EOFException;
import java.io.IOException;

/**
 * The strips or tiles of a TIFF (TIFF 6.0, sections 3 and 15): all that its size asks for must be
 * stated and lie inside the file, since decoders leave black where one is missing.
 */
final class TiffStrips {
  private TiffStrips() {}

  /**
   * Checks the strips or tiles of the first directory.
   *
   * @param little the byte order
   */
  static void check(String name, SourceBytes bytes, TiffDirectory d, boolean little)
      throws PictureException, IOException {
    boolean tiled = d.count(TiffDirectory.TILE_OFFSETS) > 0;
    int offsets = tiled ? TiffDirectory.TILE_OFFSETS : TiffDirectory.STRIP_OFFSETS;
    int counts = tiled ? TiffDirectory.TILE_COUNTS : TiffDirectory.STRIP_COUNTS;
    long needed = needed(d, tiled);
    if (d.count(offsets) < needed) {
      throw RasterHead.damaged(
          name, "header", "states " + d.count(offsets) + " of the " + needed + " parts it needs");
    }
    long[] at = d.all(bytes, offsets, little);
    long[] length = d.all(bytes, counts, little);
    long end = 0;
    long sum = 0;
    for (int i = 0; i < needed; i++) {
      long n = i < length.length ? length[i] : 0;
      end = Math.max(end, at[i] + n);
      sum += n;
    }
    if (length.length > 0 && d.number(TiffDirectory.PACKING, 1) == 1 && sum < plain(d)) {
      throw RasterHead.damaged(
          name, "header", "states " + sum + " bytes of pixels where it needs " + plain(d));
    }
    try {
      bytes.u8(Math.max(end, 1) - 1);
    } catch (EOFException e) {
      throw RasterHead.damaged(name, String.valueOf(e.getMessage()), "the TIFF is cut short");
    }
  }

  private static long needed(TiffDirectory d, boolean tiled) {
    long width = d.number(TiffDirectory.WIDTH, 0);
    long height = d.number(TiffDirectory.HEIGHT, 0);
    long planes = d.number(TiffDirectory.PLANES, 1) == 1 ? 1 : d.number(TiffDirectory.SAMPLES, 1);
    if (tiled) {
      return planes
          * parts(width, d.number(TiffDirectory.TILE_WIDTH, 0))
          * parts(height, d.number(TiffDirectory.TILE_HEIGHT, 0));
    }
    return planes * parts(height, d.number(TiffDirectory.ROWS_PER_STRIP, height));
  }

  private static long parts(long all, long each) {
    return each < 1 ? 1 : (all + each - 1) / each;
  }

  /** Bytes of the pixels where they are not packed. */
  private static long plain(TiffDirectory d) {
    long samples = d.number(TiffDirectory.SAMPLES, 1);
    long bits = d.number(TiffDirectory.BITS, 1) * d.number(TiffDirectory.WIDTH, 0);
    boolean planar = d.number(TiffDirectory.PLANES, 1) != 1;
    long row = planar ? samples * ((bits + 7) / 8) : (bits * samples + 7) / 8;
    return row * d.number(TiffDirectory.HEIGHT, 0);
  }
}
