package dev.placket.pictures.raster;

import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;

/** Makes decoders of well-kept libraries for what is not decoded here. */
final class Decoders {
  private Decoders() {}

  /** A decoder for the format, set on the bytes; its metadata are never asked for. */
  static ImageReader open(RasterFormat format, byte[] bytes) throws IOException {
    ImageReader reader = format.decoder();
    reader.setInput(new HeldStream(bytes), true, true);
    return reader;
  }

  /** The decoder that a provider makes. */
  static ImageReader of(ImageReaderSpi wanted) throws IOException {
    return register(wanted).createReaderInstance(null);
  }

  /** The decoder that the JDK has for a format. */
  static ImageReader ofJdk(String format) throws IOException {
    Iterator<ImageReader> known = ImageIO.getImageReadersByFormatName(format);
    if (!known.hasNext()) {
      throw new IOException("this Java has no decoder for it");
    }
    return known.next();
  }

  /**
   * Registers a provider: in a merged jar or another class loader its service file may be missing.
   */
  static ImageReaderSpi register(ImageReaderSpi wanted) {
    IIORegistry registry = IIORegistry.getDefaultInstance();
    ImageReaderSpi known = registry.getServiceProviderByClass(wanted.getClass());
    if (known == null) {
      known = wanted;
      registry.registerServiceProvider(known, ImageReaderSpi.class);
    }
    return known;
  }
}
