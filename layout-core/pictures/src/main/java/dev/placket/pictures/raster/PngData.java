package dev.placket.pictures.raster;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;

/** The packed pixels of a PNG: what its IDAT chunks hold, one after another, each checked. */
final class PngData extends InputStream {
  private static final int IDAT = 0x49444154;

  private final InputStream in;
  private final CRC32 crc = new CRC32();
  private long left;
  private boolean ended;

  /** Over a stream that stands at the start of the first IDAT chunk. */
  PngData(InputStream in) throws IOException {
    this.in = in;
    begin();
  }

  private void begin() throws IOException {
    long length = number();
    ended = number() != IDAT;
    left = ended ? 0 : length;
    crc.reset();
    crc.update(new byte[] {'I', 'D', 'A', 'T'});
  }

  private void end() throws IOException {
    if (number() != crc.getValue()) {
      throw new IOException("a part is damaged");
    }
    begin();
  }

  private long number() throws IOException {
    long n = 0;
    for (int i = 0; i < 4; i++) {
      int b = in.read();
      if (b < 0) {
        throw new EOFException("cut short");
      }
      n = n << 8 | b;
    }
    return n;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 255;
  }

  @Override
  public int read(byte[] to, int offset, int length) throws IOException {
    while (left == 0 && !ended) {
      end();
    }
    if (ended) {
      return -1;
    }
    int got = in.read(to, offset, (int) Math.min(length, left));
    if (got < 0) {
      throw new EOFException("cut short");
    }
    crc.update(to, offset, got);
    left -= got;
    return got;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
