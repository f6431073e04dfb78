package dev.placket.layout.image;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.jspecify.annotations.Nullable;

/**
 * The four tags of an Exif block that say how large and which way up a picture is: 274, 282, 283,
 * 296 (TIFF 6.0). Nothing else of it is read, so nothing else can reach an output.
 */
record Exif(@Nullable PixelDensity density, int orientation) {
  private static final int SHORT = 3;
  private static final int RATIONAL = 5;

  /** Reads the first directory; a damaged block states nothing. */
  static Exif read(byte[] bytes, int at, int length) {
    ByteBuffer in = ByteBuffer.wrap(bytes, at, length).slice();
    try {
      in.order(in.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
      return directory(in, in.getInt(4));
    } catch (IndexOutOfBoundsException e) {
      return new Exif(null, 1);
    }
  }

  private static Exif directory(ByteBuffer in, int at) {
    int orientation = 1;
    int unit = 2;
    long[] x = {0, 0};
    long[] y = {0, 0};
    int entries = in.getShort(at) & 0xFFFF;
    for (int i = 0; i < entries; i++) {
      int e = at + 2 + 12 * i;
      int type = in.getShort(e + 2) & 0xFFFF;
      switch (in.getShort(e) & 0xFFFF) {
        case 274 -> orientation = type == SHORT ? in.getShort(e + 8) : 1;
        case 282 -> x = rational(in, e, type);
        case 283 -> y = rational(in, e, type);
        case 296 -> unit = type == SHORT ? in.getShort(e + 8) : 1;
        default -> {
          // Of no concern here.
        }
      }
    }
    boolean turn = orientation >= 5 && orientation <= 8;
    return new Exif(density(unit, turn ? y : x, turn ? x : y), orientation);
  }

  private static long[] rational(ByteBuffer in, int entry, int type) {
    if (type != RATIONAL) {
      return new long[] {0, 0};
    }
    int at = in.getInt(entry + 8);
    return new long[] {in.getInt(at) & 0xFFFFFFFFL, in.getInt(at + 4) & 0xFFFFFFFFL};
  }

  /** TIFF 6.0, tag 296: 1 states an aspect only, 2 is per inch, 3 per centimetre. */
  static @Nullable PixelDensity density(int unit, long[] x, long[] y) {
    if (unit < 2 || unit > 3 || x[0] == 0 || x[1] == 0 || y[0] == 0 || y[1] == 0) {
      return null;
    }
    Rate.Unit u = unit == 2 ? Rate.Unit.INCH : Rate.Unit.CENTIMETRE;
    return new PixelDensity(new Rate(x[0], x[1], u), new Rate(y[0], y[1], u));
  }
}
