package dev.placket.pictures.prepare;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.Rate;
import dev.placket.layout.units.Length;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.StoredJpeg;
import org.jspecify.annotations.Nullable;

/**
 * A picture prepared for a printed size: cropped to its ink, with no more pixels than asked for.
 *
 * @param rows its pixels; read from the source again by each reading if they are many
 * @param width the printed width of the ink
 * @param height its printed height
 * @param cleared whether an opaque ground became transparent
 * @param jpeg the same pixels as the JPEG of the source; null if it has none or they were changed
 */
public record ReadyPicture(
    PixelRows rows, Length width, Length height, boolean cleared, @Nullable StoredJpeg jpeg) {
  /** In metres, exactly. */
  private static final double INCH = 0.0254;

  /** Its size in pixels. */
  public PixelSize size() {
    return new PixelSize(rows.width(), rows.height());
  }

  /** Its pixels per printed inch. */
  public EffectiveDensity density() {
    return EffectiveDensity.of(rows.width(), width, rows.height(), height);
  }

  /**
   * Its density as a PNG states it: whole pixels per metre, so that its longer side prints at its
   * length; the same on both axes, since its pixels are square to half a pixel over the whole.
   */
  public PixelDensity stated() {
    boolean wide = rows.width() >= rows.height();
    double perInch = wide ? rows.width() / width.in() : rows.height() / height.in();
    return PixelDensity.square(Rate.perMetre(Math.max(1, Math.round(perInch / INCH))));
  }

  /** All pixels in memory. */
  public PixelGrid grid() throws PictureException {
    return PixelGrid.of(rows);
  }

  /** The bytes of a PNG, the smallest that holds it without loss. */
  public byte[] png() throws PictureException {
    return PngWriter.encode(rows, stated());
  }
}
