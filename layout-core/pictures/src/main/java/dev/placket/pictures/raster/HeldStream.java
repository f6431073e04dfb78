package dev.placket.pictures.raster;

import java.io.IOException;
import javax.imageio.stream.ImageInputStreamImpl;

/**
 * The bytes of a picture for a decoder. A decoder that goes on asking behind their end is stopped:
 * one takes the end for zeros, and can read them for ever.
 */
final class HeldStream extends ImageInputStreamImpl {
  /** Some decoders look so many bytes ahead, or a few more. */
  private static final int AHEAD = 64;

  /** Some go back after each look ahead; so many looks in all are enough for any. */
  private static final int LOOKS = 4096;

  private final byte[] bytes;
  private int askedBehind;
  private int looks;

  HeldStream(byte[] bytes) {
    this.bytes = bytes;
  }

  @Override
  public int read() throws IOException {
    checkClosed();
    bitOffset = 0;
    if (streamPos >= bytes.length) {
      return end();
    }
    return bytes[(int) streamPos++] & 255;
  }

  @Override
  public int read(byte[] into, int from, int length) throws IOException {
    checkClosed();
    bitOffset = 0;
    if (length == 0) {
      return 0;
    }
    if (streamPos >= bytes.length) {
      return end();
    }
    int n = (int) Math.min(length, bytes.length - streamPos);
    System.arraycopy(bytes, (int) streamPos, into, from, n);
    streamPos += n;
    return n;
  }

  /** What was asked for behind the end in one look counts until something before it is read. */
  @Override
  public void seek(long to) throws IOException {
    super.seek(to);
    if (to < bytes.length) {
      askedBehind = 0;
    }
  }

  private int end() throws IOException {
    if (++askedBehind > AHEAD || ++looks > LOOKS) {
      throw new IOException("the file ends before its pixels do");
    }
    return -1;
  }

  @Override
  public long length() {
    return bytes.length;
  }
}
