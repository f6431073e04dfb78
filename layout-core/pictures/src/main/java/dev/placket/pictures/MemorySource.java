package dev.placket.pictures;

import java.io.ByteArrayInputStream;
import java.io.InputStream;

/** Bytes that are held anyway, not copied; nobody writes to them. */
record MemorySource(String name, byte[] bytes) implements PictureSource {
  @Override
  public InputStream open() {
    return new ByteArrayInputStream(bytes);
  }
}
