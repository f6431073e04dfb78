package dev.placket.pictures;

import com.twelvemonkeys.imageio.plugins.bmp.BMPImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.tiff.TIFFImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;

/** The decoders of well-kept libraries for what is not decoded here. */
final class Decoders {
  private Decoders() {}

  /** A decoder for the format, set on the bytes; its metadata are never asked for. */
  static ImageReader open(Format format, byte[] bytes) throws IOException {
    ImageReader reader = reader(format);
    reader.setInput(new HeldStream(bytes), true, true);
    return reader;
  }

  private static ImageReader reader(Format format) throws IOException {
    return switch (format) {
      case JPEG -> registered(new JPEGImageReaderSpi()).createReaderInstance(null);
      case TIFF -> {
        // Pictures inside a TIFF may be JPEGs.
        registered(new JPEGImageReaderSpi());
        yield registered(new TIFFImageReaderSpi()).createReaderInstance(null);
      }
      case BMP -> registered(new BMPImageReaderSpi()).createReaderInstance(null);
      case WEBP -> registered(new WebPImageReaderSpi()).createReaderInstance(null);
      case GIF -> {
        Iterator<ImageReader> known = ImageIO.getImageReadersByFormatName("gif");
        if (!known.hasNext()) {
          throw new IOException("this Java has no decoder for it");
        }
        yield known.next();
      }
      default -> throw new IOException("no decoder is needed for it");
    };
  }

  /** In a merged jar or another class loader the service file may be missing. */
  private static ImageReaderSpi registered(ImageReaderSpi wanted) {
    IIORegistry registry = IIORegistry.getDefaultInstance();
    ImageReaderSpi known = registry.getServiceProviderByClass(wanted.getClass());
    if (known == null) {
      known = wanted;
      registry.registerServiceProvider(known, ImageReaderSpi.class);
    }
    return known;
  }
}
