package dev.placket.pictures.base;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the bytes of a picture come from, and what to call it in messages. */
public interface PictureSource {
  /** What a message calls the picture: a file name, with or without its folder. */
  String name();

  /**
   * Opens the bytes; every call starts at the beginning.
   *
   * @throws IOException if they cannot be had
   */
  InputStream open() throws IOException;

  /** A file, named by its path as given. */
  static PictureSource of(Path file) {
    return new PictureSource() {
      @Override
      public String name() {
        return file.toString();
      }

      @Override
      public InputStream open() throws IOException {
        return Files.newInputStream(file);
      }
    };
  }

  /** Bytes in memory, copied, under a name. */
  static PictureSource of(String name, byte[] bytes) {
    byte[] own = bytes.clone();
    return new PictureSource() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public InputStream open() {
        return new ByteArrayInputStream(own);
      }
    };
  }
}
