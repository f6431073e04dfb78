package dev.placket.layout.image;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Collections;
import java.util.List;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/** Unpacks the pixels of a PNG: filters, interlace, every colour type and depth. */
final class PngPixels {
  /** Left, top, step across, step down of the seven passes (PNG, 8.1). */
  private static final int[][] PASSES = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };

  private final Png png;
  private final int[] argb;
  private final int[] colours;

  private PngPixels(Png png) {
    this.png = png;
    this.argb = new int[png.width * png.height];
    this.colours = colours(png);
  }

  static Pixels read(Png png) throws PictureException {
    PngPixels p = new PngPixels(png);
    List<InputStream> runs =
        png.data.stream()
            .<InputStream>map(r -> new ByteArrayInputStream(png.bytes, r[0], r[1]))
            .toList();
    Inflater inflater = new Inflater();
    try (InputStream in =
        new InflaterInputStream(
            new SequenceInputStream(Collections.enumeration(runs)), inflater, 1 << 14)) {
      if (png.interlaced) {
        for (int[] pass : PASSES) {
          p.pass(in, pass[0], pass[1], pass[2], pass[3]);
        }
      } else {
        p.pass(in, 0, 0, 1, 1);
      }
    } catch (IOException | IndexOutOfBoundsException e) {
      throw new PictureException(
          png.name + ", pixels: the PNG is damaged or cut short; export the picture again", e);
    } finally {
      inflater.end();
    }
    return new Pixels(png.width, png.height, p.argb);
  }

  private void pass(InputStream in, int left, int top, int stepX, int stepY) throws IOException {
    int w = (png.width - left + stepX - 1) / stepX;
    int h = (png.height - top + stepY - 1) / stepY;
    if (w <= 0 || h <= 0) {
      return;
    }
    int bits = png.channels() * png.depth;
    int bytesPerPixel = Math.max(1, bits / 8);
    byte[] row = new byte[(int) (((long) w * bits + 7) / 8)];
    byte[] above = new byte[row.length];
    for (int y = 0; y < h; y++) {
      int filter = in.read();
      if (filter < 0 || filter > 4 || in.readNBytes(row, 0, row.length) < row.length) {
        throw new IOException("row " + (top + y * stepY) + " is missing or has filter " + filter);
      }
      unfilter(filter, row, above, bytesPerPixel);
      int to = (top + y * stepY) * png.width + left;
      for (int x = 0; x < w; x++) {
        argb[to + x * stepX] = pixel(row, x);
      }
      byte[] swap = above;
      above = row;
      row = swap;
    }
  }

  private static void unfilter(int filter, byte[] row, byte[] above, int back) {
    for (int i = 0; i < row.length; i++) {
      int a = i < back ? 0 : row[i - back] & 255;
      int b = above[i] & 255;
      int c = i < back ? 0 : above[i - back] & 255;
      int guess =
          switch (filter) {
            case 1 -> a;
            case 2 -> b;
            case 3 -> (a + b) / 2;
            case 4 -> nearest(a, b, c);
            default -> 0;
          };
      row[i] += (byte) guess;
    }
  }

  /** The one of left, above and above left that is nearest to left + above − above left. */
  private static int nearest(int a, int b, int c) {
    int p = a + b - c;
    int pa = Math.abs(p - a);
    int pb = Math.abs(p - b);
    int pc = Math.abs(p - c);
    if (pa <= pb && pa <= pc) {
      return a;
    }
    return pb <= pc ? b : c;
  }

  private int pixel(byte[] row, int x) {
    int n = png.channels();
    if (png.colour == Png.PALETTE) {
      return colours[sample(row, x)];
    }
    int first = sample(row, x * n);
    if (n <= 2) {
      int v = to8(first);
      boolean clear = n == 1 && colours.length == 1 && colours[0] == first;
      int alpha = n == 2 ? to8(sample(row, x * n + 1)) : clear ? 0 : 255;
      return alpha << 24 | v * 0x010101;
    }
    int g = sample(row, x * n + 1);
    int b = sample(row, x * n + 2);
    boolean clear =
        n == 3 && colours.length == 3 && colours[0] == first && colours[1] == g && colours[2] == b;
    int alpha = n == 4 ? to8(sample(row, x * n + 3)) : clear ? 0 : 255;
    return alpha << 24 | to8(first) << 16 | to8(g) << 8 | to8(b);
  }

  private int sample(byte[] row, int i) {
    int d = png.depth;
    if (d == 8) {
      return row[i] & 255;
    }
    if (d == 16) {
      return (row[2 * i] & 255) << 8 | (row[2 * i + 1] & 255);
    }
    int bit = i * d;
    return (row[bit >> 3] & 255) >> (8 - d - (bit & 7)) & ((1 << d) - 1);
  }

  /** A sample of any depth as 8 bits, rounded to the nearest (PNG, 13.12). */
  private int to8(int sample) {
    int most = (1 << png.depth) - 1;
    return png.depth == 8 ? sample : (sample * 255 + most / 2) / most;
  }

  /** The palette with its alpha, or the samples of the one transparent colour, or nothing. */
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
