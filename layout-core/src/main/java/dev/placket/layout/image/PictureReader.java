package dev.placket.layout.image;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Reads pictures, deciding by their bytes what they are, whatever their names end with. */
public final class PictureReader {
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

  private PictureReader() {}

  /**
   * Reads a picture: SVG, PNG or JPEG.
   *
   * @throws PictureException if it cannot be read, is no picture, is damaged, reaches outside
   *     itself, or asks for more than the limits; its message is for the designer
   */
  public static Picture read(PictureSource source, ReadLimits limits) throws PictureException {
    String name = source.name();
    byte[] bytes = bytes(source, limits);
    if (starts(bytes, PNG) || starts(bytes, JPEG)) {
      return Raster.read(name, digest(bytes), bytes, limits);
    }
    if (looksLikeXml(bytes)) {
      return DrawingReader.read(name, bytes, digest(bytes), limits);
    }
    throw new PictureException(
        name
            + ": "
            + (bytes.length == 0 ? "is empty" : "is no picture that can be read here")
            + "; export it as SVG, PNG or JPEG");
  }

  private static byte[] bytes(PictureSource source, ReadLimits limits) throws PictureException {
    int most = (int) Math.min(limits.bytes(), Integer.MAX_VALUE - 16);
    byte[] bytes;
    try (InputStream in = source.open()) {
      bytes = in.readNBytes(most + 1);
    } catch (IOException e) {
      throw new PictureException(
          source.name()
              + ": cannot be opened ("
              + e.getMessage()
              + "); check that it is there and may be read",
          e);
    }
    if (bytes.length > most) {
      throw new PictureException(
          source.name() + ": has more than " + most + " bytes, the limit; export it smaller");
    }
    return bytes;
  }

  private static boolean starts(byte[] bytes, byte[] with) {
    return bytes.length >= with.length
        && java.util.Arrays.equals(bytes, 0, with.length, with, 0, with.length);
  }

  /** A first {@code <} after a byte order mark and blanks, or UTF-16 with its mark. */
  private static boolean looksLikeXml(byte[] bytes) {
    int at = bytes.length > 2 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB ? 3 : 0;
    if (bytes.length > 1 && (bytes[0] & 255) + (bytes[1] & 255) == 0xFE + 0xFF) {
      return true;
    }
    while (at < bytes.length && (bytes[at] == ' ' || (bytes[at] >= 9 && bytes[at] <= 13))) {
      at++;
    }
    return at < bytes.length && bytes[at] == '<';
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
