package dev.placket.pictures.raster;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import dev.placket.pictures.PictureProbe;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.imaging.FormatCompliance;
import org.apache.commons.imaging.ImagingException;
import org.apache.commons.imaging.bytesource.ByteSource;
import org.apache.commons.imaging.common.RationalNumber;
import org.apache.commons.imaging.formats.tiff.TiffDirectory;
import org.apache.commons.imaging.formats.tiff.TiffField;
import org.apache.commons.imaging.formats.tiff.TiffReader;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.taginfos.TagInfo;
import org.jspecify.annotations.Nullable;

/** Commons Imaging as the second reader of a TIFF's tags: its fractions are exact, too. */
final class SecondTagReader {
  private SecondTagReader() {}

  /** Adds what differs: the density with its unit, each as a fraction. */
  static void compare(Path file, PictureProbe probe, List<String> wrong) throws IOException {
    try {
      TiffDirectory first =
          new TiffReader(false)
              .readFirstDirectory(ByteSource.file(file.toFile()), false, new FormatCompliance(""))
              .directories
              .get(0);
      TiffField turned = first.findField(TiffTagConstants.TIFF_TAG_ORIENTATION);
      boolean swaps = turned != null && turned.getIntValue() >= 5 && turned.getIntValue() <= 8;
      PixelDensity ours = probe.density();
      Rate across = rate(first, TiffTagConstants.TIFF_TAG_XRESOLUTION);
      Rate down = rate(first, TiffTagConstants.TIFF_TAG_YRESOLUTION);
      PixelDensity theirs =
          across == null || down == null
              ? null
              : swaps ? new PixelDensity(down, across) : new PixelDensity(across, down);
      if (ours != null && !ours.equals(theirs)) {
        wrong.add(file.getFileName() + ": " + ours + ", Commons Imaging has " + theirs);
      }
    } catch (ImagingException e) {
      System.out.println("  Commons Imaging refuses " + file.getFileName() + ": " + e.getMessage());
    }
  }

  /** Null without the tag, without a unit (TIFF 6.0: 2 inches, 3 centimetres), or with a zero. */
  private static @Nullable Rate rate(TiffDirectory in, TagInfo tag) throws ImagingException {
    TiffField field = in.findField(tag);
    TiffField unit = in.findField(TiffTagConstants.TIFF_TAG_RESOLUTION_UNIT);
    int code = unit == null ? 2 : unit.getIntValue();
    if (field == null
        || !(field.getValue() instanceof RationalNumber r)
        || r.numerator <= 0
        || r.divisor <= 0
        || code < 2
        || code > 3) {
      return null;
    }
    Rate.Unit length = code == 3 ? Rate.Unit.CENTIMETRE : Rate.Unit.INCH;
    return new Rate(r.numerator, r.divisor, length);
  }
}
