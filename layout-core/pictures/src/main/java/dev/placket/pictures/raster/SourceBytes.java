package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureSource;
import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/**
 * Bytes of a source at any place, through one small window: a header is read without the pixels
 * between its parts, wherever in the file those parts are.
 */
public final class SourceBytes implements Closeable {
  private static final int WINDOW = 4096;

  private final PictureSource source;
  private InputStream in;
  private final byte[] window = new byte[WINDOW];
  private long start;
  private int filled;

  /** Opens a source at its first byte. */
  public SourceBytes(PictureSource source) throws IOException {
    this.source = source;
    this.in = source.open();
  }

  /** The byte at a place, 0 to 255; past the end an {@link EOFException} that names the place. */
  int u8(long at) throws IOException {
    long inside = at - start;
    if (inside < 0 || inside >= filled) {
      move(at);
      inside = at - start;
    }
    return window[(int) inside] & 255;
  }

  int u16(long at, boolean little) throws IOException {
    int a = u8(at);
    int b = u8(at + 1);
    return little ? b << 8 | a : a << 8 | b;
  }

  long u32(long at, boolean little) throws IOException {
    long a = u16(at, little);
    long b = u16(at + 2, little);
    return little ? b << 16 | a : a << 16 | b;
  }

  /** Whether the letters stand at a place; not where the file ends before. */
  boolean is(long at, String letters) throws IOException {
    try {
      for (int i = 0; i < letters.length(); i++) {
        if (u8(at + i) != letters.charAt(i)) {
          return false;
        }
      }
      return true;
    } catch (EOFException e) {
      return false;
    }
  }

  /** Up to so many bytes from the start; fewer only where the file is shorter. */
  public byte[] first(int most) throws IOException {
    if (start != 0 || filled == 0) {
      try {
        move(0);
      } catch (EOFException e) {
        return new byte[0];
      }
    }
    return Arrays.copyOf(window, Math.min(most, filled));
  }

  private void move(long at) throws IOException {
    if (at < 0) {
      throw new EOFException("byte " + at);
    }
    long next = start + filled;
    if (at < next) {
      in.close();
      in = source.open();
      next = 0;
    }
    try {
      in.skipNBytes(at - next);
    } catch (EOFException e) {
      start = 0;
      filled = 0;
      in.close();
      in = source.open();
      throw new EOFException("byte " + at);
    }
    start = at;
    filled = in.readNBytes(window, 0, WINDOW);
    if (filled == 0) {
      throw new EOFException("byte " + at);
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
