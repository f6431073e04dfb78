package dev.placket.pictures.raster;

/** Turns the packed samples of a PNG row into 8-bit sRGB with alpha. */
final class PngSamples {
  private final int colour;
  private final int depth;
  private final int channels;
  private final int most;

  /** The palette with its alpha, or the samples of the one transparent colour, or nothing. */
  private final int[] colours;

  PngSamples(Png png) {
    this.colour = png.colour;
    this.depth = png.depth;
    this.channels = png.channels();
    this.most = (1 << png.depth) - 1;
    this.colours = colours(png);
  }

  /** Unpacks so many pixels into every {@code step}-th place of an array, from {@code to} on. */
  void unpack(byte[] row, int width, int[] argb, int to, int step) {
    if (depth == 8 && colours.length == 0) {
      plain(row, width, argb, to, step);
      return;
    }
    for (int x = 0; x < width; x++) {
      argb[to + x * step] = pixel(row, x);
    }
  }

  /** The common kinds: 8-bit samples, no palette, no colour that stands for clear. */
  private void plain(byte[] row, int width, int[] argb, int to, int step) {
    int i = 0;
    for (int x = 0; x < width; x++, i += channels) {
      int first = row[i] & 255;
      argb[to + x * step] =
          switch (channels) {
            case 1 -> 0xFF000000 | first * 0x010101;
            case 2 -> row[i + 1] << 24 | first * 0x010101;
            case 3 -> 0xFF000000 | first << 16 | (row[i + 1] & 255) << 8 | (row[i + 2] & 255);
            default ->
                row[i + 3] << 24 | first << 16 | (row[i + 1] & 255) << 8 | (row[i + 2] & 255);
          };
    }
  }

  private int pixel(byte[] row, int x) {
    if (colour == Png.PALETTE) {
      return colours[sample(row, x)];
    }
    int first = sample(row, x * channels);
    if (channels <= 2) {
      int v = to8(first);
      boolean clear = channels == 1 && colours.length == 1 && colours[0] == first;
      int alpha = channels == 2 ? to8(sample(row, x * channels + 1)) : clear ? 0 : 255;
      return alpha << 24 | v * 0x010101;
    }
    int g = sample(row, x * channels + 1);
    int b = sample(row, x * channels + 2);
    boolean clear =
        channels == 3
            && colours.length == 3
            && colours[0] == first
            && colours[1] == g
            && colours[2] == b;
    int alpha = channels == 4 ? to8(sample(row, x * channels + 3)) : clear ? 0 : 255;
    return alpha << 24 | to8(first) << 16 | to8(g) << 8 | to8(b);
  }

  private int sample(byte[] row, int i) {
    if (depth == 8) {
      return row[i] & 255;
    }
    if (depth == 16) {
      return (row[2 * i] & 255) << 8 | (row[2 * i + 1] & 255);
    }
    long bit = (long) i * depth;
    return (row[(int) (bit >> 3)] & 255) >> (8 - depth - (int) (bit & 7)) & most;
  }

  /** A sample of any depth as 8 bits, rounded to the nearest (PNG, 13.12). */
  private int to8(int sample) {
    return depth == 8 ? sample : (sample * 255 + most / 2) / most;
  }

  private static int[] colours(Png png) {
    byte[] t = png.transparency;
    byte[] p = png.palette;
    if (png.colour == Png.PALETTE && p != null) {
      int[] c = new int[p.length / 3];
      for (int i = 0; i < c.length; i++) {
        int alpha = t != null && i < t.length ? t[i] & 255 : 255;
        c[i] =
            alpha << 24 | (p[3 * i] & 255) << 16 | (p[3 * i + 1] & 255) << 8 | (p[3 * i + 2] & 255);
      }
      return c;
    }
    if (t == null || png.colour > Png.RGB) {
      return new int[0];
    }
    int[] key = new int[t.length / 2];
    for (int i = 0; i < key.length; i++) {
      key[i] = (t[2 * i] & 255) << 8 | (t[2 * i + 1] & 255);
    }
    return key;
  }
}
