package dev.placket.pictures.prepare;

import java.io.IOException;
import java.util.zip.Deflater;

/** Deflates packed rows and hands the result on in pieces. */
final class PixelData implements AutoCloseable {
  /** Two under the highest: on line drawings far less time for some per cent more bytes. */
  static final int LEVEL = 7;

  private static final int PIECE = 1 << 16;

  private final Deflater deflater;
  private final byte[] piece = new byte[PIECE];
  private final Sink sink;
  private int filled;

  /**
   * Deflates into a sink.
   *
   * @param strategy of {@link Deflater}
   * @param level of {@link Deflater}
   */
  PixelData(Sink sink, int strategy, int level) {
    this.sink = sink;
    this.deflater = new Deflater(level);
    deflater.setStrategy(strategy);
  }

  /** Takes a piece of the deflated bytes. */
  interface Sink {
    void take(byte[] bytes, int length) throws IOException;
  }

  void write(byte[] row) throws IOException {
    deflater.setInput(row);
    while (!deflater.needsInput()) {
      drain();
    }
  }

  private void drain() throws IOException {
    filled += deflater.deflate(piece, filled, PIECE - filled);
    if (filled == PIECE) {
      sink.take(piece, filled);
      filled = 0;
    }
  }

  @Override
  public void close() throws IOException {
    try {
      deflater.finish();
      while (!deflater.finished()) {
        drain();
      }
      if (filled > 0) {
        sink.take(piece, filled);
      }
    } finally {
      deflater.end();
    }
  }
}
