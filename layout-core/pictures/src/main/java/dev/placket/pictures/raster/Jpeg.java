package dev.placket.pictures.raster;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import java.io.EOFException;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageReader;
import org.jspecify.annotations.Nullable;

/** The header of a JPEG (ITU T.81, JFIF 1.02, Exif), read by hand up to its first scan. */
final class Jpeg {
  private static final int SOS = 0xDA;
  private static final int EOI = 0xD9;

  private final String name;
  private final SourceBytes bytes;
  private int width;
  private int height;
  private int components;
  private int precision;
  private @Nullable PixelDensity density;
  private double aspect = 1;
  private @Nullable Exif exif;
  private boolean profile;

  private Jpeg(String name, SourceBytes bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  /** A decoder, without its input. */
  static ImageReader decoder() throws IOException {
    return Decoders.of(new JPEGImageReaderSpi());
  }

  static RasterHead head(String name, SourceBytes bytes, ReadLimits limits)
      throws PictureException, IOException {
    Jpeg jpeg = new Jpeg(name, bytes);
    jpeg.walk();
    RasterHead.checkSize(name, jpeg.width, jpeg.height, limits);
    if (jpeg.precision != 8) {
      throw new PictureException(
          Fault.content(name, "has " + jpeg.precision + " bits for each sample")
              .in("header")
              .remedy("export it as a JPEG with 8")
              .remedy("export it as a PNG"));
    }
    Exif exif = jpeg.exif;
    PixelDensity density = jpeg.density;
    double aspect = jpeg.aspect;
    if (density == null && exif != null && exif.density() != null && aspect == 1) {
      density = exif.density();
      aspect = density.pixelWidthToHeight();
    }
    int turn = exif == null ? 1 : exif.orientation();
    return new RasterHead(
        "JPEG", jpeg.width, jpeg.height, false, density, aspect, turn, jpeg.cost(), List.of());
  }

  /** Printing colours and profiles are turned into sRGB beside the samples. */
  private int cost() {
    return components == 4 ? 12 : profile ? 10 : 3;
  }

  /** What becomes of the colours of a picture by its profile, or for want of one. */
  static List<PictureNote> profileNotes(byte[] jpeg, int components) {
    byte[] profile = JpegCopy.profile(jpeg);
    if (components == 4) {
      JpegInks inks = JpegInks.of(jpeg);
      String found =
          inks != null && inks.hasProfile()
              ? ", converted to sRGB by the profile in the file"
              : (profile == null ? " and states no profile" : " with a profile that cannot be used")
                  + ", so its colours are approximate; export it in sRGB";
      return List.of(PictureNote.plain("is in printing colours (CMYK)" + found));
    }
    if (profile == null || ColourProfile.isSrgb(profile, 3) || ColourProfile.isSrgb(profile, 1)) {
      return List.of();
    }
    return ColourProfile.isUsable(profile, 3) || ColourProfile.isUsable(profile, 1)
        ? List.of(PictureNote.plain("its colours are converted to sRGB by the profile in the file"))
        : List.of();
  }

  private void walk() throws PictureException, IOException {
    long at = 2;
    try {
      while (true) {
        while (bytes.u8(at) == 0xFF && bytes.u8(at + 1) == 0xFF) {
          at++;
        }
        int marker = bytes.u8(at + 1);
        int length = bytes.u16(at + 2, false);
        if (bytes.u8(at) != 0xFF || length < 2) {
          throw RasterHead.damaged(name, "byte " + at, "the JPEG is damaged");
        }
        segment(marker, at + 4, length - 2);
        at += 2 + length;
        bytes.u8(at - 1);
        if (marker == SOS) {
          return;
        }
      }
    } catch (EOFException e) {
      throw RasterHead.damaged(name, "byte " + at, "the JPEG is cut short");
    }
  }

  private void segment(int marker, long at, int length) throws IOException {
    boolean frame =
        marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    if (frame && length >= 6) {
      precision = bytes.u8(at);
      height = bytes.u16(at + 1, false);
      width = bytes.u16(at + 3, false);
      components = bytes.u8(at + 5);
    } else if (marker == 0xE0 && length >= 12 && bytes.is(at, "JFIF\0")) {
      jfif(bytes.u8(at + 7), bytes.u16(at + 8, false), bytes.u16(at + 10, false));
    } else if (marker == 0xE1 && length > 6 && bytes.is(at, "Exif\0") && exif == null) {
      exif = Exif.read(bytes, at + 6, length - 6);
    } else if (marker == 0xE2 && bytes.is(at, "ICC_PROFILE\0")) {
      profile = true;
    }
  }

  /** JFIF 1.02: units 0 state an aspect only, 1 is per inch, 2 per centimetre. */
  private void jfif(int units, int x, int y) {
    if (x == 0 || y == 0) {
      return;
    }
    aspect = (double) y / x;
    density =
        switch (units) {
          case 1 -> new PixelDensity(Rate.perInch(x), Rate.perInch(y));
          case 2 -> new PixelDensity(Rate.perCentimetre(x), Rate.perCentimetre(y));
          default -> null;
        };
  }

  /** Decoders fill what is missing with grey and say nothing: the end must be there. */
  static void checkEnd(String name, byte[] bytes) throws PictureException {
    for (int i = bytes.length - 2; i >= 2; i--) {
      if ((bytes[i] & 255) == 0xFF && (bytes[i + 1] & 255) == EOI) {
        return;
      }
    }
    throw RasterHead.damaged(name, "byte " + bytes.length, "the JPEG is cut short");
  }
}
