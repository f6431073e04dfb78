package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureSource;
import java.io.ByteArrayInputStream;
import java.io.InputStream;

/**
 * Bytes that are held anyway, not copied; nobody writes to them.
 *
 * @param name for messages
 * @param bytes of the whole file
 */
public record MemorySource(String name, byte[] bytes) implements PictureSource {
  @Override
  public InputStream open() {
    return new ByteArrayInputStream(bytes);
  }
}
