package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.RowReader;
import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.jspecify.annotations.Nullable;

/**
 * The colours that a picture's values stand for (ICC.1), turned into sRGB row by row by the colour
 * management of the JDK.
 */
final class ColourProfile {
  /** No profile of a display or a grey scale comes near this. */
  private static final int MOST = 1 << 20;

  /** Colours along each edge of the cube that is tried, and from one to the next. */
  private static final int SIDE = 6;

  private static final int STEP = 51;

  /** By so much colour management may miss a value that it leaves alone. */
  private static final int ROUNDING = 2;

  /** So many bits of a colour's hash tell its place among those met before. */
  private static final int SLOTS = 16;

  private final ColorSpace from;

  private ColourProfile(ColorSpace from) {
    this.from = from;
  }

  /**
   * The profile of a PNG's part iCCP (PNG, 11.3.2.3): a name, a zero, the way of packing, the
   * profile.
   *
   * @return null if it is sRGB, in which values are read anyway
   * @throws IllegalArgumentException if it cannot be read, or is not for so many channels
   */
  static @Nullable ColourProfile ofPng(byte[] part, boolean grey) {
    int at = 0;
    while (at < part.length && part[at] != 0) {
      at++;
    }
    if (at + 2 > part.length || part[at + 1] != 0) {
      throw new IllegalArgumentException("no deflated profile");
    }
    ColourProfile profile = of(inflated(part, at + 2), grey ? 1 : 3);
    return profile.isSrgb() ? null : profile;
  }

  /**
   * Whether a profile leaves all colours as sRGB has them; false if it cannot be read, or is not
   * for so many channels.
   */
  static boolean isSrgb(byte[] profile, int channels) {
    try {
      return of(profile, channels).isSrgb();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** Whether a profile can be read and is for so many channels. */
  static boolean isUsable(byte[] profile, int channels) {
    try {
      of(profile, channels);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** The colours of a profile; null if it cannot be read, or is not for so many channels. */
  static @Nullable ColorSpace space(byte[] profile, int channels) {
    try {
      ICC_Profile read = ICC_Profile.getInstance(profile);
      if (read.getNumComponents() != channels) {
        return null;
      }
      ColorSpace space = new ICC_ColorSpace(read);
      // Some profiles are only found to be broken once they are used.
      space.toRGB(new float[channels]);
      return space;
    } catch (IllegalArgumentException
        | CMMException
        | IndexOutOfBoundsException
        | NegativeArraySizeException e) {
      return null;
    }
  }

  private static ColourProfile of(byte[] bytes, int channels) {
    try {
      ICC_Profile profile = ICC_Profile.getInstance(bytes);
      if (profile.getNumComponents() != channels) {
        throw new IllegalArgumentException("a profile for other channels");
      }
      ColourProfile found = new ColourProfile(new ICC_ColorSpace(profile));
      // Some profiles are only found to be broken once they are used.
      found.isSrgb();
      return found;
    } catch (CMMException | IndexOutOfBoundsException | NegativeArraySizeException e) {
      throw new IllegalArgumentException("a broken profile", e);
    }
  }

  /** Whether it leaves a cube of colours as they are: names of profiles are no guide. */
  private boolean isSrgb() {
    int[] colours = new int[SIDE * SIDE * SIDE];
    for (int i = 0; i < colours.length; i++) {
      int grey = i / SIDE / SIDE * STEP;
      int rest = i / SIDE % SIDE * STEP << 8 | i % SIDE * STEP;
      colours[i] = from.getNumComponents() == 1 ? grey * 0x010101 : grey << 16 | rest;
    }
    int[] turned = colours.clone();
    new Turning(turned.length).turn(turned);
    for (int i = 0; i < colours.length; i++) {
      for (int shift = 0; shift < 24; shift += 8) {
        if (Math.abs((turned[i] >> shift & 255) - (colours[i] >> shift & 255)) > ROUNDING) {
          return false;
        }
      }
    }
    return true;
  }

  private static byte[] inflated(byte[] packed, int from) {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(packed, from, packed.length - from);
      byte[] all = new byte[MOST];
      int n = 0;
      int more;
      while ((more = inflater.inflate(all, n, all.length - n)) > 0) {
        n += more;
      }
      if (!inflater.finished()) {
        throw new IllegalArgumentException("a profile that is cut short or too long");
      }
      return java.util.Arrays.copyOf(all, n);
    } catch (DataFormatException e) {
      throw new IllegalArgumentException("a damaged profile", e);
    } finally {
      inflater.end();
    }
  }

  /** The same rows in sRGB. */
  RowReader applied(RowReader rows) {
    Turning turning = new Turning(rows.width());
    return new RowReader() {
      @Override
      public int width() {
        return rows.width();
      }

      @Override
      public int height() {
        return rows.height();
      }

      @Override
      public void next(int[] row) throws PictureException {
        rows.next(row);
        turning.turn(row);
      }

      @Override
      public void close() {
        rows.close();
      }
    };
  }

  /**
   * Turns rows of one width. Colour management works out its tables for each operation anew, which
   * takes many times as long as a row; so one operation serves all rows of a reading.
   */
  private final class Turning {
    private final int width;
    private final int channels = from.getNumComponents();
    private final byte[] values;
    private final byte[] turned;
    private final int[] places;

    /** Colours met before, opaque, and what they turned into; nothing is 0. */
    private final int[] known = new int[1 << SLOTS];

    private final int[] found = new int[1 << SLOTS];
    private final WritableRaster in;
    private final WritableRaster out;
    private final ColorConvertOp op =
        new ColorConvertOp(from, ColorSpace.getInstance(ColorSpace.CS_sRGB), null);

    Turning(int width) {
      this.width = width;
      this.values = new byte[width * channels];
      this.turned = new byte[width * 3];
      this.places = new int[width];
      this.in = raster(values, channels);
      this.out = raster(turned, 3);
    }

    private WritableRaster raster(byte[] bytes, int bands) {
      int[] offsets = bands == 1 ? new int[] {0} : new int[] {0, 1, 2};
      DataBufferByte data = new DataBufferByte(bytes, bytes.length);
      return Raster.createInterleavedRaster(data, width, 1, width * bands, bands, offsets, null);
    }

    /** Only colours that were not met before are turned; photographs repeat theirs. */
    void turn(int[] row) {
      int missing = 0;
      int i = 0;
      for (int x = 0; x < width; x++) {
        int p = row[x] | 0xFF000000;
        int slot = slot(p);
        if (known[slot] == p) {
          row[x] = row[x] & 0xFF000000 | found[slot];
        } else {
          places[missing++] = x;
          if (channels == 3) {
            values[i++] = (byte) (p >> 16);
            values[i++] = (byte) (p >> 8);
          }
          values[i++] = (byte) p;
        }
      }
      if (missing > 0) {
        convert(missing);
        fill(row, missing);
      }
    }

    private void convert(int count) {
      if (count == width) {
        op.filter(in, out);
      } else {
        op.filter(
            in.createWritableChild(0, 0, count, 1, 0, 0, null),
            out.createWritableChild(0, 0, count, 1, 0, 0, null));
      }
    }

    private void fill(int[] row, int count) {
      for (int i = 0; i < count; i++) {
        int x = places[i];
        int rgb =
            (turned[3 * i] & 255) << 16
                | (turned[3 * i + 1] & 255) << 8
                | (turned[3 * i + 2] & 255);
        int p = row[x] | 0xFF000000;
        int slot = slot(p);
        known[slot] = p;
        found[slot] = rgb;
        row[x] = row[x] & 0xFF000000 | rgb;
      }
    }

    private int slot(int p) {
      return (p * 0x9E3779B1) >>> (32 - SLOTS);
    }
  }
}
