package dev.placket.pictures.raster;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import java.io.EOFException;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The numbers of a TIFF 6.0 directory, as TIFF files and Exif blocks hold it: only the tags asked
 * for below are kept, so nothing of place, author or software is ever read.
 */
final class TiffDirectory {
  static final int WIDTH = 256;
  static final int HEIGHT = 257;
  static final int BITS = 258;
  static final int PACKING = 259;
  static final int PHOTOMETRIC = 262;
  static final int BIT_ORDER = 266;
  static final int STRIP_OFFSETS = 273;
  static final int ORIENTATION = 274;
  static final int SAMPLES = 277;
  static final int ROWS_PER_STRIP = 278;
  static final int STRIP_COUNTS = 279;
  static final int X_RATE = 282;
  static final int Y_RATE = 283;
  static final int PLANES = 284;
  static final int UNIT = 296;
  static final int PREDICTOR = 317;
  static final int COLOURS = 320;
  static final int TILE_WIDTH = 322;
  static final int TILE_HEIGHT = 323;
  static final int TILE_OFFSETS = 324;
  static final int TILE_COUNTS = 325;
  static final int INK_SET = 332;
  static final int EXTRA = 338;
  static final int SAMPLE_FORMAT = 339;

  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;

  /** No tag that is needed in full has more values, but for {@link #COLOURS} and strips. */
  private static final int LISTED = 64;

  /** Up to so many values need no looking after. */
  private static final int TRUSTED = 4096;

  /** First values of each tag; of a rational numerator and denominator. */
  private final Map<Integer, long[]> values = new TreeMap<>();

  /** How many values each tag has, and where they stand. */
  private final Map<Integer, Field> fields = new TreeMap<>();

  /**
   * Where the values of a tag stand.
   *
   * @param type SHORT or LONG
   */
  private record Field(int type, long count, long at) {}

  private final Set<Integer> rational = new TreeSet<>();

  /** Where the next directory is, from the start of the block; 0 if there is none. */
  long next;

  private TiffDirectory() {}

  /**
   * Reads the first directory of the block from {@code base}, never past {@code end}.
   *
   * @throws EOFException naming the place, if it is cut short
   */
  static TiffDirectory read(SourceBytes bytes, long base, long end, boolean little)
      throws IOException {
    return at(bytes, base, base + bytes.u32(base + 4, little), end, little);
  }

  static TiffDirectory at(SourceBytes bytes, long base, long at, long end, boolean little)
      throws IOException {
    TiffDirectory d = new TiffDirectory();
    int entries = bytes.u16(inside(at, end), little);
    for (int i = 0; i < entries; i++) {
      long e = inside(at + 2 + 12L * i, end);
      int tag = bytes.u16(e, little);
      int type = bytes.u16(e + 2, little);
      long count = bytes.u32(e + 4, little);
      long value = bytes.u32(e + 8, little);
      if (count > TRUSTED) {
        // Decoders make room for so many values before they look whether these are there.
        bytes.u8(inside(base + value + count * size(type) - 1, end));
      }
      if (!wanted(tag) || count == 0) {
        continue;
      }
      if (type == SHORT || type == LONG) {
        long from = count * size(type) <= 4 ? e + 8 : inside(base + value, end);
        Field field = new Field(type, count, from);
        d.fields.put(tag, field);
        d.values.put(tag, list(bytes, field, Math.min(count, LISTED), little));
      } else if (type == RATIONAL) {
        long from = inside(base + value, end);
        d.values.put(tag, new long[] {bytes.u32(from, little), bytes.u32(from + 4, little)});
        d.rational.add(tag);
      }
    }
    d.next = bytes.u32(inside(at + 2 + 12L * entries, end), little);
    return d;
  }

  private static long[] list(SourceBytes bytes, Field field, long count, boolean little)
      throws IOException {
    long[] list = new long[(int) count];
    for (int i = 0; i < list.length; i++) {
      long at = field.at + (long) i * size(field.type);
      list[i] = field.type == SHORT ? bytes.u16(at, little) : bytes.u32(at, little);
    }
    return list;
  }

  /** Bytes of a value by its type (TIFF 6.0, page 15). */
  private static int size(int type) {
    return switch (type) {
      case 3, 8 -> 2;
      case 4, 9, 11, 13 -> 4;
      case 5, 10, 12 -> 8;
      default -> 1;
    };
  }

  private static long inside(long at, long end) throws IOException {
    if (at >= end) {
      throw new EOFException("byte " + at);
    }
    return at;
  }

  private static boolean wanted(int tag) {
    return switch (tag) {
      case WIDTH,
          HEIGHT,
          BITS,
          PACKING,
          PHOTOMETRIC,
          BIT_ORDER,
          STRIP_OFFSETS,
          ORIENTATION,
          SAMPLES,
          ROWS_PER_STRIP,
          STRIP_COUNTS,
          X_RATE,
          Y_RATE,
          PLANES,
          UNIT,
          PREDICTOR,
          COLOURS,
          TILE_WIDTH,
          TILE_HEIGHT,
          TILE_OFFSETS,
          TILE_COUNTS,
          INK_SET,
          EXTRA,
          SAMPLE_FORMAT ->
          true;
      default -> false;
    };
  }

  /** The first value of a tag, or what stands for its absence. */
  long number(int tag, long absent) {
    long[] v = values.get(tag);
    return v == null || rational.contains(tag) ? absent : v[0];
  }

  /** The first values of a tag, up to 64; none where it is absent. */
  long[] numbers(int tag) {
    long[] v = values.get(tag);
    return v == null || rational.contains(tag) ? new long[0] : v.clone();
  }

  /** How many values a tag has. */
  long count(int tag) {
    Field field = fields.get(tag);
    return field == null ? 0 : field.count;
  }

  /** All values of a tag; none where it is absent. */
  long[] all(SourceBytes bytes, int tag, boolean little) throws IOException {
    Field field = fields.get(tag);
    return field == null ? new long[0] : list(bytes, field, field.count, little);
  }

  boolean has(int tag) {
    return values.containsKey(tag);
  }

  int orientation() {
    return (int) number(ORIENTATION, 1);
  }

  /**
   * The density, or null where none is stated or what stands for none.
   *
   * <p>TIFF 6.0, tag 296: 1 states an aspect only, 2 (if absent, too) is per inch, 3 per cm.
   */
  @Nullable PixelDensity density() {
    return perMillimetre() ? null : stated();
  }

  /** Whether it states what some programs write for want of a density; no picture is meant so. */
  boolean perMillimetre() {
    PixelDensity d = stated();
    return d != null
        && Math.abs(d.x().perMetre() - 1000) < 0.5
        && Math.abs(d.y().perMetre() - 1000) < 0.5;
  }

  private @Nullable PixelDensity stated() {
    long unit = number(UNIT, 2);
    long[] x = rate(X_RATE);
    long[] y = rate(Y_RATE);
    if (unit < 2 || unit > 3 || x == null || y == null) {
      return null;
    }
    Rate.Unit u = unit == 2 ? Rate.Unit.INCH : Rate.Unit.CENTIMETRE;
    return new PixelDensity(new Rate(x[0], x[1], u), new Rate(y[0], y[1], u));
  }

  /** How wide a pixel is for its height, whether or not a unit of length is stated. */
  double aspect() {
    long[] x = rate(X_RATE);
    long[] y = rate(Y_RATE);
    return x == null || y == null ? 1 : (double) y[0] / y[1] * x[1] / x[0];
  }

  private long @Nullable [] rate(int tag) {
    long[] v = values.get(tag);
    return v == null || !rational.contains(tag) || v[0] == 0 || v[1] == 0 ? null : v;
  }
}
