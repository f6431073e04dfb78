package dev.placket.pictures.raster;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.jspecify.annotations.Nullable;

/** A PNG of any kind, written from its samples by the letter of the standard (PNG, 3rd edition). */
final class PngWriter {
  private static final int[][] PASSES = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };

  /** Filter types 0 to 4; this one takes them in turn. */
  static final int MIXED = 5;

  int width;
  int height;
  int depth;
  int colour;
  boolean interlaced;
  int filter;
  int partSize = 1 << 30;
  byte @Nullable [] palette;
  byte @Nullable [] transparency;
  final List<byte[]> before = new ArrayList<>();
  final List<byte[]> after = new ArrayList<>();

  PngWriter(int width, int height, int depth, int colour) {
    this.width = width;
    this.height = height;
    this.depth = depth;
    this.colour = colour;
  }

  static int channels(int colour) {
    return switch (colour) {
      case 2 -> 3;
      case 4 -> 2;
      case 6 -> 4;
      default -> 1;
    };
  }

  /** All samples, row by row, channels side by side, each up to 2^depth − 1. */
  byte[] write(int[] samples) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    if (interlaced) {
      for (int[] p : PASSES) {
        pass(samples, p, packed);
      }
    } else {
      pass(samples, new int[] {0, 0, 1, 1}, packed);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
    ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
    header.put((byte) depth).put((byte) colour).put((byte) 0).put((byte) 0);
    out.writeBytes(chunk("IHDR", header.put((byte) (interlaced ? 1 : 0)).array()));
    byte[] p = palette;
    if (p != null) {
      out.writeBytes(chunk("PLTE", p));
    }
    byte[] t = transparency;
    if (t != null) {
      out.writeBytes(chunk("tRNS", t));
    }
    before.forEach(out::writeBytes);
    byte[] data = deflated(packed.toByteArray());
    for (int at = 0; at < data.length; at += partSize) {
      int to = (int) Math.min(data.length, (long) at + partSize);
      out.writeBytes(chunk("IDAT", java.util.Arrays.copyOfRange(data, at, to)));
    }
    after.forEach(out::writeBytes);
    out.writeBytes(chunk("IEND", new byte[0]));
    return out.toByteArray();
  }

  static byte[] chunk(String type, byte[] body) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(body);
    ByteBuffer b = ByteBuffer.allocate(12 + body.length).putInt(body.length).put(name).put(body);
    return b.putInt((int) crc.getValue()).array();
  }

  static byte[] physical(int x, int y, int unit) {
    return chunk("pHYs", ByteBuffer.allocate(9).putInt(x).putInt(y).put((byte) unit).array());
  }

  private static byte[] deflated(byte[] bytes) {
    Deflater deflater = new Deflater();
    deflater.setInput(bytes);
    deflater.finish();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] part = new byte[8192];
    while (!deflater.finished()) {
      out.write(part, 0, deflater.deflate(part));
    }
    deflater.end();
    return out.toByteArray();
  }

  private void pass(int[] samples, int[] p, ByteArrayOutputStream out) {
    int n = channels(colour);
    int w = (width - p[0] + p[2] - 1) / p[2];
    int h = (height - p[1] + p[3] - 1) / p[3];
    if (w <= 0 || h <= 0) {
      return;
    }
    byte[] above = new byte[(w * n * depth + 7) / 8];
    for (int y = 0; y < h; y++) {
      byte[] row = new byte[above.length];
      for (int i = 0; i < w * n; i++) {
        int x = p[0] + i / n * p[2];
        put(row, i, samples[((p[1] + y * p[3]) * width + x) * n + i % n]);
      }
      int type = filter == MIXED ? y % 5 : filter;
      out.write(type);
      out.writeBytes(filtered(type, row, above, Math.max(1, n * depth / 8)));
      above = row;
    }
  }

  private void put(byte[] row, int i, int sample) {
    if (depth == 16) {
      row[2 * i] = (byte) (sample >> 8);
      row[2 * i + 1] = (byte) sample;
    } else {
      int bit = i * depth;
      row[bit / 8] |= (byte) (sample << (8 - depth - bit % 8));
    }
  }

  private static byte[] filtered(int type, byte[] row, byte[] above, int back) {
    byte[] out = new byte[row.length];
    for (int i = 0; i < row.length; i++) {
      int a = i < back ? 0 : row[i - back] & 255;
      int b = above[i] & 255;
      int c = i < back ? 0 : above[i - back] & 255;
      int p = a + b - c;
      boolean left = Math.abs(p - a) <= Math.abs(p - b) && Math.abs(p - a) <= Math.abs(p - c);
      int paeth = left ? a : Math.abs(p - b) <= Math.abs(p - c) ? b : c;
      int[] guess = {0, a, b, (a + b) / 2, paeth};
      out[i] = (byte) (row[i] - guess[type]);
    }
    return out;
  }
}
