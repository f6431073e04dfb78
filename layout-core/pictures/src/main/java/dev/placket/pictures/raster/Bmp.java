package dev.placket.pictures.raster;

import com.twelvemonkeys.imageio.plugins.bmp.BMPImageReaderSpi;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.Rate;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import java.io.EOFException;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageReader;

/** The header of a BMP: the sizes and the pixels per metre of its second part. */
final class Bmp {
  private static final int OLD = 12;
  private static final int FULL = 40;

  private Bmp() {}

  /** A decoder, without its input. */
  static ImageReader decoder() throws IOException {
    return Decoders.of(new BMPImageReaderSpi());
  }

  static RasterHead head(String name, SourceBytes bytes, ReadLimits limits)
      throws PictureException, IOException {
    try {
      long size = bytes.u32(14, true);
      if (size == OLD) {
        int w = bytes.u16(18, true);
        int h = bytes.u16(20, true);
        RasterHead.checkSize(name, w, h, limits);
        if (!Set.of(1, 4, 8, 24).contains(bytes.u16(24, true))) {
          throw BmpKind.refused(name, "of " + bytes.u16(24, true) + " bits to a pixel");
        }
        return new RasterHead("BMP", w, h, false, null, 1, 1, 8, List.of());
      }
      if (size < FULL) {
        throw RasterHead.damaged(name, "header", "a BMP with a header of " + size + " bytes");
      }
      long w = (int) bytes.u32(18, true);
      long h = Math.abs((long) (int) bytes.u32(22, true));
      RasterHead.checkSize(name, w, h, limits);
      long x = bytes.u32(38, true);
      long y = bytes.u32(42, true);
      boolean stated = x > 0 && y > 0 && x <= Integer.MAX_VALUE && y <= Integer.MAX_VALUE;
      PixelDensity density = stated ? new PixelDensity(Rate.perMetre(x), Rate.perMetre(y)) : null;
      // The fourth byte of plain 32-bit pixels means nothing, whatever stands there.
      boolean alpha = BmpKind.read(name, bytes, size).alpha();
      double aspect = density == null ? 1 : density.pixelWidthToHeight();
      return new RasterHead("BMP", (int) w, (int) h, alpha, density, aspect, 1, 8, List.of());
    } catch (EOFException e) {
      throw RasterHead.damaged(name, "header", "the BMP is cut short");
    }
  }
}
