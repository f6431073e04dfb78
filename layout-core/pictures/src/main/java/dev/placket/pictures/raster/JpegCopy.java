package dev.placket.pictures.raster;

import dev.placket.pictures.base.StoredJpeg;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Copies a JPEG by its segments (ITU T.81, annex B). What states only where, by whom and with what
 * a picture was made is left out; tables and coded pixels stay the same bytes.
 */
final class JpegCopy {
  private static final int SOI = 0xD8;
  private static final int EOI = 0xD9;
  private static final int SOS = 0xDA;
  private static final int DNL = 0xDC;
  private static final int COM = 0xFE;
  private static final int APP0 = 0xE0;
  private static final int APP2 = 0xE2;
  private static final int APP14 = 0xEE;
  private static final int APP15 = 0xEF;

  /** Of JFIF without a thumbnail, the length included (JFIF 1.02). */
  private static final int JFIF = 16;

  /** Of Adobe's segment, the length included, and the place of its transform in it. */
  private static final int ADOBE = 14;

  private static final int TRANSFORM = 13;

  private final byte[] from;
  private final ByteArrayOutputStream out;
  private int width;
  private int height;
  private int components;
  private boolean numbered;
  private boolean jfif;
  private int transform = -1;

  private JpegCopy(byte[] from) {
    this.from = from;
    this.out = new ByteArrayOutputStream(from.length);
  }

  /**
   * The picture without what says nothing about its pixels.
   *
   * @param jpeg a whole file whose values are grey or sRGB
   * @return null if it is of a kind that not every reader decodes to the same colours: arithmetic
   *     coding, lossless, four channels, RGB, or a height that follows the pixels
   */
  static @Nullable StoredJpeg of(byte[] jpeg) {
    JpegCopy copy = new JpegCopy(jpeg);
    try {
      return copy.all() && copy.isPlain()
          ? new StoredJpeg(copy.out.toByteArray(), copy.width, copy.height, copy.components == 1)
          : null;
    } catch (ArrayIndexOutOfBoundsException e) {
      return null;
    }
  }

  /** Readers agree that three channels are luminance and two of chrominance. */
  private boolean isPlain() {
    if (components == 1) {
      return true;
    }
    boolean stated = jfif || transform == 1 || numbered;
    return components == 3 && stated && (transform == -1 || transform == 1);
  }

  private boolean all() {
    if (u8(0) != 0xFF || u8(1) != SOI) {
      return false;
    }
    out.write(from, 0, 2);
    int at = 2;
    while (true) {
      while (u8(at) == 0xFF && u8(at + 1) == 0xFF) {
        at++;
      }
      int marker = u8(at + 1);
      if (u8(at) != 0xFF) {
        return false;
      }
      if (marker == EOI) {
        out.write(from, at, 2);
        return components > 0;
      }
      int end = at + 2 + u16(at + 2);
      u8(end - 1);
      if (!segment(marker, at, end)) {
        return false;
      }
      at = marker == SOS ? scan(end) : end;
    }
  }

  /** Copies a segment or leaves it out; false if the file is of another kind. */
  private boolean segment(int marker, int at, int end) {
    if (marker == APP0) {
      application(at, end);
    } else if (marker == APP14 && is(at + 4, "Adobe") && end - at - 2 >= ADOBE) {
      transform = u8(at + 2 + TRANSFORM);
      out.write(from, at, end - at);
    } else if (marker == COM || (marker > APP0 && marker <= APP15)) {
      return true;
    } else if (marker >= 0xC0 && marker <= 0xCF && marker != 0xC4) {
      // Baseline, extended and progressive, by Huffman codes: what PDF 1.7 and OOXML readers have.
      return marker <= 0xC2 && frame(at, end);
    } else if (marker == DNL || marker < 0xC0) {
      return false;
    } else {
      out.write(from, at, end - at);
    }
    return true;
  }

  /** JFIF without its thumbnail. */
  private void application(int at, int end) {
    if (!is(at + 4, "JFIF\0") || end - at - 2 < JFIF) {
      return;
    }
    jfif = true;
    out.write(0xFF);
    out.write(APP0);
    out.write(0);
    out.write(JFIF);
    out.write(from, at + 4, JFIF - 4);
    out.write(0);
    out.write(0);
  }

  private boolean frame(int at, int end) {
    if (components != 0) {
      return false;
    }
    height = u16(at + 5);
    width = u16(at + 7);
    components = u8(at + 9);
    numbered = true;
    for (int i = 0; i < components; i++) {
      numbered &= u8(at + 10 + 3 * i) == i + 1;
    }
    out.write(from, at, end - at);
    return true;
  }

  /** Copies coded pixels up to the next marker that is no restart. */
  private int scan(int start) {
    int at = start;
    while (u8(at) != 0xFF
        || u8(at + 1) == 0
        || u8(at + 1) == 0xFF
        || (u8(at + 1) >= 0xD0 && u8(at + 1) <= 0xD7)) {
      at++;
    }
    out.write(from, start, at - start);
    return at;
  }

  /**
   * The profile of a JPEG, from the segments that hold it in order (ICC.1, annex B.4).
   *
   * @return null if there is none; empty if parts of it are missing
   */
  static byte @Nullable [] profile(byte[] jpeg) {
    byte[][] chunks = new byte[256][];
    int count = 0;
    try {
      int at = 2;
      while (u8(jpeg, at + 1) != SOS && u8(jpeg, at + 1) != EOI) {
        if (u8(jpeg, at + 1) == 0xFF) {
          at++;
          continue;
        }
        int end = at + 2 + (u8(jpeg, at + 2) << 8 | u8(jpeg, at + 3));
        if (u8(jpeg, at + 1) == APP2 && is(jpeg, at + 4, "ICC_PROFILE\0") && end >= at + 18) {
          count = Math.max(count, u8(jpeg, at + 17));
          chunks[u8(jpeg, at + 16)] = java.util.Arrays.copyOfRange(jpeg, at + 18, end);
        }
        at = end;
      }
    } catch (ArrayIndexOutOfBoundsException e) {
      return new byte[0];
    }
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (int i = 1; i <= count; i++) {
      if (chunks[i] == null) {
        return new byte[0];
      }
      all.writeBytes(chunks[i]);
    }
    return count == 0 ? null : all.toByteArray();
  }

  /** The channels that the frame states; 0 without one. */
  static int components(byte[] jpeg) {
    try {
      int at = 2;
      while (u8(jpeg, at + 1) != SOS && u8(jpeg, at + 1) != EOI) {
        int marker = u8(jpeg, at + 1);
        if (marker == 0xFF) {
          at++;
          continue;
        }
        if (marker >= 0xC0
            && marker <= 0xCF
            && marker != 0xC4
            && marker != 0xC8
            && marker != 0xCC) {
          return u8(jpeg, at + 9);
        }
        at += 2 + (u8(jpeg, at + 2) << 8 | u8(jpeg, at + 3));
      }
    } catch (ArrayIndexOutOfBoundsException e) {
      return 0;
    }
    return 0;
  }

  /** The transform that Adobe's segment states before the first scan; -1 without one. */
  static int adobeTransform(byte[] jpeg) {
    try {
      int at = 2;
      while (u8(jpeg, at + 1) != SOS && u8(jpeg, at + 1) != EOI) {
        if (u8(jpeg, at + 1) == 0xFF) {
          at++;
          continue;
        }
        if (u8(jpeg, at + 1) == APP14 && is(jpeg, at + 4, "Adobe")) {
          return u8(jpeg, at + 2 + TRANSFORM);
        }
        at += 2 + (u8(jpeg, at + 2) << 8 | u8(jpeg, at + 3));
      }
    } catch (ArrayIndexOutOfBoundsException e) {
      return -1;
    }
    return -1;
  }

  private int u8(int at) {
    return u8(from, at);
  }

  private int u16(int at) {
    return u8(at) << 8 | u8(at + 1);
  }

  private boolean is(int at, String letters) {
    return is(from, at, letters);
  }

  private static int u8(byte[] bytes, int at) {
    return bytes[at] & 255;
  }

  private static boolean is(byte[] bytes, int at, String letters) {
    byte[] wanted = letters.getBytes(StandardCharsets.ISO_8859_1);
    return at + wanted.length <= bytes.length
        && java.util.Arrays.equals(wanted, 0, wanted.length, bytes, at, at + wanted.length);
  }
}
