package dev.placket.pictures.prepare;

import java.io.OutputStream;

/** Counts bytes and keeps none. */
final class CountedBytes extends OutputStream {
  private long count;

  long count() {
    return count;
  }

  @Override
  public void write(int b) {
    count++;
  }

  @Override
  public void write(byte[] bytes, int from, int length) {
    count += length;
  }
}
