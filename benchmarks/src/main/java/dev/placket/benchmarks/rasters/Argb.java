package dev.placket.benchmarks.rasters;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A decoded picture, turned as it is to be seen.
 *
 * @param argb row by row, {@code 0xAARRGGBB}, 8-bit sRGB with alpha not multiplied in
 */
record Argb(int width, int height, int[] argb) {
  private static final String END = "ENDHDR\n";

  /** Reads a PAM of four 8-bit samples, which Netpbm defines (pam(5)). */
  static Argb pam(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    String head = new String(bytes, 0, Math.min(400, bytes.length), StandardCharsets.ISO_8859_1);
    int at = head.indexOf(END);
    if (at < 0 || number(head, "DEPTH") != 4 || number(head, "MAXVAL") != 255) {
      throw new IOException(file + " is no PAM of four 8-bit samples");
    }
    int width = number(head, "WIDTH");
    int height = number(head, "HEIGHT");
    int[] argb = new int[width * height];
    int i = at + END.length();
    for (int p = 0; p < argb.length; p++, i += 4) {
      argb[p] =
          bytes[i + 3] << 24
              | (bytes[i] & 255) << 16
              | (bytes[i + 1] & 255) << 8
              | (bytes[i + 2] & 255);
    }
    return new Argb(width, height, argb);
  }

  private static int number(String head, String key) throws IOException {
    for (String line : head.split("\n")) {
      if (line.startsWith(key + " ")) {
        return Integer.parseInt(line.substring(key.length() + 1).strip());
      }
    }
    throw new IOException("a PAM without " + key.toLowerCase(Locale.ROOT));
  }

  /** How far from another picture, on white and on black; at the most where the sizes differ. */
  Apart apart(Argb other) {
    if (width != other.width || height != other.height) {
      return new Apart(255, 255);
    }
    long sum = 0;
    int largest = 0;
    for (int i = 0; i < argb.length; i++) {
      for (int shift = 0; shift < 24; shift += 8) {
        for (int ground = 0; ground < 256; ground += 255) {
          int d = Math.abs(over(argb[i], shift, ground) - over(other.argb[i], shift, ground));
          sum += d;
          largest = Math.max(largest, d);
        }
      }
    }
    return new Apart(sum / 6.0 / argb.length, largest);
  }

  private static int over(int p, int shift, int ground) {
    int a = p >>> 24;
    return ((p >> shift & 255) * a + ground * (255 - a) + 127) / 255;
  }

  /**
   * A distance of two pictures.
   *
   * @param mean levels of 255
   * @param largest levels of 255 in any channel of any pixel
   */
  record Apart(double mean, int largest) {}
}
