package dev.placket.pictures.raster;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;

/** A TIFF of one page, written from its samples by the letter of TIFF 6.0. */
final class TiffWriter {
  static final int NONE = 1;
  static final int DEFLATE = 8;
  static final int PACK_BITS = 32773;

  final int width;
  final int height;
  final int bits;
  final int samples;
  final Map<Integer, int[]> tags = new TreeMap<>();
  boolean little = true;
  boolean planar;
  int packing = NONE;
  int predictor = 1;
  int rowsPerStrip = 3;

  TiffWriter(int width, int height, int bits, int samples, int photometric) {
    this.width = width;
    this.height = height;
    this.bits = bits;
    this.samples = samples;
    int[] each = new int[samples];
    java.util.Arrays.fill(each, bits);
    tags.put(258, each);
    tags.put(262, new int[] {photometric});
  }

  /** All samples, row by row, those of a pixel side by side. */
  byte[] write(int[] values) {
    int planes = planar ? samples : 1;
    int strips = (height + rowsPerStrip - 1) / rowsPerStrip;
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    int[] offsets = new int[planes * strips];
    int[] counts = new int[planes * strips];
    for (int i = 0; i < offsets.length; i++) {
      byte[] strip = packed(strip(values, i / strips, i % strips));
      offsets[i] = 8 + data.size();
      counts[i] = strip.length;
      data.writeBytes(strip);
      if (data.size() % 2 == 1) {
        data.write(0);
      }
    }
    tags.put(256, new int[] {width});
    tags.put(257, new int[] {height});
    tags.put(259, new int[] {packing});
    tags.put(273, offsets);
    tags.put(277, new int[] {samples});
    tags.put(278, new int[] {rowsPerStrip});
    tags.put(279, counts);
    tags.put(284, new int[] {planar ? 2 : 1});
    tags.put(317, new int[] {predictor});
    return file(data.toByteArray());
  }

  private byte[] file(byte[] data) {
    int directory = 8 + data.length;
    int more = directory + 2 + 12 * tags.size() + 4;
    int size = more + tags.values().stream().mapToInt(v -> 4 * v.length).sum();
    ByteBuffer out =
        ByteBuffer.allocate(size).order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    out.put((byte) (little ? 'I' : 'M')).put((byte) (little ? 'I' : 'M'));
    out.putShort((short) 42).putInt(directory).put(data).putShort((short) tags.size());
    for (Map.Entry<Integer, int[]> tag : tags.entrySet()) {
      int[] v = tag.getValue();
      boolean wide = tag.getKey() == 273 || tag.getKey() == 279;
      int bytes = (wide ? 4 : 2) * v.length;
      out.putShort((short) (int) tag.getKey()).putShort((short) (wide ? 4 : 3)).putInt(v.length);
      int back = out.position() + 4;
      if (bytes > 4) {
        out.putInt(more).position(more);
        more += bytes;
      }
      for (int n : v) {
        if (wide) {
          out.putInt(n);
        } else {
          out.putShort((short) n);
        }
      }
      out.position(back);
    }
    return out.array();
  }

  private byte[] strip(int[] values, int plane, int strip) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int each = planar ? 1 : samples;
    for (int y = strip * rowsPerStrip; y < Math.min(height, (strip + 1) * rowsPerStrip); y++) {
      int[] row = new int[width * each];
      for (int i = 0; i < row.length; i++) {
        int sample = planar ? plane : i % each;
        row[i] = values[(y * width + i / each) * samples + sample];
      }
      // TIFF 6.0, section 14: differences to the pixel before.
      for (int i = row.length - 1; i >= each && predictor == 2; i--) {
        row[i] = row[i] - row[i - each] & (1 << bits) - 1;
      }
      out.writeBytes(bytes(row));
    }
    return out.toByteArray();
  }

  private byte[] bytes(int[] row) {
    byte[] out = new byte[(row.length * bits + 7) / 8];
    for (int i = 0; i < row.length; i++) {
      if (bits == 16) {
        out[2 * i + (little ? 1 : 0)] = (byte) (row[i] >> 8);
        out[2 * i + (little ? 0 : 1)] = (byte) row[i];
      } else {
        for (int b = 0; b < bits; b++) {
          int at = i * bits + b;
          out[at / 8] |= (byte) ((row[i] >> (bits - 1 - b) & 1) << (7 - at % 8));
        }
      }
    }
    return out;
  }

  private byte[] packed(byte[] plain) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    if (packing == PACK_BITS) {
      // Literal runs only, each within a row as section 9 asks.
      int each = plain.length / Math.max(1, rows(plain));
      for (int at = 0; at < plain.length; ) {
        int n = Math.min(Math.min(128, plain.length - at), each - at % each);
        out.write(n - 1);
        out.write(plain, at, n);
        at += n;
      }
    } else if (packing == DEFLATE) {
      Deflater deflater = new Deflater();
      deflater.setInput(plain);
      deflater.finish();
      byte[] part = new byte[4096];
      while (!deflater.finished()) {
        out.write(part, 0, deflater.deflate(part));
      }
      deflater.end();
    } else {
      out.writeBytes(plain);
    }
    return out.toByteArray();
  }

  private int rows(byte[] plain) {
    return plain.length / ((width * (planar ? 1 : samples) * bits + 7) / 8);
  }
}
