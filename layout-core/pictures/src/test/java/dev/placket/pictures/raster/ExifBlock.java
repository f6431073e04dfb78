package dev.placket.pictures.raster;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;

/** An Exif block of a few tags, as TIFF 6.0 lays a directory out. */
final class ExifBlock {
  private record Entry(int tag, int type, long a, long b) {}

  private final boolean little;
  private final List<Entry> entries = new ArrayList<>();

  private ExifBlock(boolean little) {
    this.little = little;
  }

  static ExifBlock of(boolean little) {
    return new ExifBlock(little);
  }

  ExifBlock orientation(int value) {
    entries.add(new Entry(274, 3, value, 0));
    return this;
  }

  ExifBlock density(long xOver, long xUnder, long yOver, long yUnder, int unit) {
    entries.add(new Entry(282, 5, xOver, xUnder));
    entries.add(new Entry(283, 5, yOver, yUnder));
    if (unit > 0) {
      entries.add(new Entry(296, 3, unit, 0));
    }
    return this;
  }

  byte[] bytes() {
    int size = 8 + 2 + 12 * entries.size() + 4;
    ByteBuffer b = ByteBuffer.allocate(size + 8 * entries.size());
    b.order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    b.put((byte) (little ? 'I' : 'M')).put((byte) (little ? 'I' : 'M'));
    b.putShort((short) 42).putInt(8).putShort((short) entries.size());
    int value = size;
    for (Entry e : entries) {
      b.putShort((short) e.tag).putShort((short) e.type).putInt(1);
      if (e.type == 3) {
        b.putShort((short) e.a).putShort((short) 0);
      } else {
        b.putInt(value);
        value += 8;
      }
    }
    b.putInt(0);
    for (Entry e : entries) {
      if (e.type == 5) {
        b.putInt((int) e.a).putInt((int) e.b);
      }
    }
    return b.array();
  }
}
