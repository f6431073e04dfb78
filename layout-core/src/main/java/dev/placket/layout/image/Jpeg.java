package dev.placket.layout.image;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.jspecify.annotations.Nullable;

/** The header of a JPEG by hand, its pixels through TwelveMonkeys. */
final class Jpeg {
  private static final int SOS = 0xDA;
  private static final int EOI = 0xD9;

  private final String name;
  private final byte[] bytes;
  private int width;
  private int height;
  private @Nullable PixelDensity density;
  private @Nullable Exif exif;

  private Jpeg(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  static RasterHead head(String name, byte[] bytes, ReadLimits limits) throws PictureException {
    Jpeg jpeg = new Jpeg(name, bytes);
    jpeg.walk();
    RasterHead.checkSize(name, jpeg.width, jpeg.height, limits);
    Exif exif = jpeg.exif;
    PixelDensity density = jpeg.density;
    if (density == null && exif != null) {
      density = exif.density();
    }
    int turn = exif == null ? 1 : exif.orientation();
    return new RasterHead("JPEG", jpeg.width, jpeg.height, false, density, turn, List.of());
  }

  private void walk() throws PictureException {
    int at = 2;
    while (true) {
      while (at + 1 < bytes.length && u8(at) == 0xFF && u8(at + 1) == 0xFF) {
        at++;
      }
      if (at + 4 > bytes.length || u8(at) != 0xFF) {
        throw RasterHead.damaged(name, "byte " + at, "the JPEG is cut short or damaged");
      }
      int marker = u8(at + 1);
      int length = u8(at + 2) << 8 | u8(at + 3);
      if (length < 2 || at + 2 + length > bytes.length) {
        throw RasterHead.damaged(name, "byte " + at, "the JPEG is cut short");
      }
      segment(marker, at + 4, length - 2);
      at += 2 + length;
      if (marker == SOS) {
        checkEnd(at);
        return;
      }
    }
  }

  private void segment(int marker, int at, int length) {
    boolean frame =
        marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    if (frame && length >= 6) {
      height = u8(at + 1) << 8 | u8(at + 2);
      width = u8(at + 3) << 8 | u8(at + 4);
    } else if (marker == 0xE0 && length >= 12 && is(at, "JFIF\0")) {
      int x = u8(at + 8) << 8 | u8(at + 9);
      int y = u8(at + 10) << 8 | u8(at + 11);
      density = jfif(u8(at + 7), x, y);
    } else if (marker == 0xE1 && length > 6 && is(at, "Exif\0") && exif == null) {
      exif = Exif.read(bytes, at + 6, length - 6);
    }
  }

  /** JFIF 1.02: units 0 state an aspect only, 1 is per inch, 2 per centimetre. */
  static @Nullable PixelDensity jfif(int units, int x, int y) {
    if (x == 0 || y == 0) {
      return null;
    }
    return switch (units) {
      case 1 -> new PixelDensity(Rate.perInch(x), Rate.perInch(y));
      case 2 -> new PixelDensity(Rate.perCentimetre(x), Rate.perCentimetre(y));
      default -> null;
    };
  }

  /** Decoders fill what is missing with grey and say nothing: the end must be there. */
  private void checkEnd(int from) throws PictureException {
    for (int i = bytes.length - 2; i >= from; i--) {
      if (u8(i) == 0xFF && u8(i + 1) == EOI) {
        return;
      }
    }
    throw RasterHead.damaged(name, "byte " + bytes.length, "the JPEG is cut short");
  }

  private int u8(int at) {
    return bytes[at] & 255;
  }

  private boolean is(int at, String text) {
    for (int i = 0; i < text.length(); i++) {
      if (u8(at + i) != text.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  static Pixels pixels(String name, byte[] bytes, RasterHead head) throws PictureException {
    ImageReader reader = null;
    try {
      reader = spi().createReaderInstance(null);
      reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)), true, true);
      BufferedImage image = reader.read(0);
      if (image.getWidth() != head.width() || image.getHeight() != head.height()) {
        throw new IOException("another size than its header states");
      }
      return new Pixels(head.width(), head.height(), argb(image)).turned(head.orientation());
    } catch (IOException | RuntimeException e) {
      throw new PictureException(
          name + ", pixels: the JPEG is damaged (" + e.getMessage() + "); export it again", e);
    } finally {
      if (reader != null) {
        reader.dispose();
      }
    }
  }

  private static ImageReaderSpi spi() {
    IIORegistry registry = IIORegistry.getDefaultInstance();
    ImageReaderSpi known = registry.getServiceProviderByClass(JPEGImageReaderSpi.class);
    if (known == null) {
      // In a merged jar or another class loader the service file may be missing.
      known = new JPEGImageReaderSpi();
      registry.registerServiceProvider(known, ImageReaderSpi.class);
    }
    return known;
  }

  private static int[] argb(BufferedImage image) {
    int w = image.getWidth();
    int h = image.getHeight();
    if (image.getRaster().getNumBands() > 1) {
      return image.getRGB(0, 0, w, h, null, 0, w);
    }
    // The grey colour space of Java is linear: getRGB would lighten every grey.
    int[] out = image.getRaster().getSamples(0, 0, w, h, 0, (int[]) null);
    for (int i = 0; i < out.length; i++) {
      out[i] = 0xFF000000 | (out[i] & 255) * 0x010101;
    }
    return out;
  }
}
