package dev.placket.packs.placed;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatSet;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.StoredJpeg;
import dev.placket.pictures.prepare.Clearing;
import dev.placket.pictures.prepare.FineLines;
import dev.placket.pictures.prepare.ReadyPicture;
import dev.placket.pictures.prepare.ResolvedShare;
import dev.placket.pictures.prepare.ToPrint;
import java.awt.image.BufferedImage;
import org.jspecify.annotations.Nullable;

/**
 * What the pixels of a raster come to at its printed size.
 *
 * @param pixels the pixels of the whole picture
 * @param density pixels per printed inch
 * @param state what that means for the eye
 * @param wanted the pixels to ask for, for the whole picture at the size it aims at
 * @param image what is embedded for its ink
 * @param jpeg the same pixels as the JPEG of its file; null without one, or if they were changed
 * @param fine the finest line of it, in its pixels
 * @param resolvedShare the share of its density that carries detail, at most 1
 */
public record RasterPrint(
    PixelSize pixels,
    EffectiveDensity density,
    PrintState state,
    PixelSize wanted,
    BufferedImage image,
    @Nullable StoredJpeg jpeg,
    FineDetail fine,
    double resolvedShare) {
  /**
   * What a raster comes to at its place.
   *
   * @param item the flat and its file
   * @param raster its picture
   * @param at where it lies
   * @param target the longest side it aims at
   * @param targets what is embedded at most, and what to ask for
   */
  public static RasterPrint of(
      FlatSet.Item item,
      RasterPicture raster,
      Placement at,
      Length target,
      DensityTargets targets) {
    Flat flat = item.flat();
    InkedBox ink = flat.ink();
    double scale = at.scale().doubleValue();
    Length width = Length.pt(ink.width() * scale);
    Length height = Length.pt(ink.height() * scale);
    EffectiveDensity density =
        EffectiveDensity.of(
            (int) Math.round(ink.width()), width, (int) Math.round(ink.height()), height);
    ReadyPicture ready = ready(toPrint(item, raster, at), targets);
    // What to ask for is counted at the size it would have, were it not held small.
    double longest = Math.max(target.pt(), ink.longestSide() * scale);
    double wantedScale = longest / ink.longestSide();
    PixelSize wanted =
        targets.wantedPixels(
            Length.pt(raster.width() * wantedScale), Length.pt(raster.height() * wantedScale));
    PixelSize pixels = new PixelSize(raster.width(), raster.height());
    double share = share(raster);
    return new RasterPrint(
        pixels,
        density,
        targets.state(ResolvedShare.judged(density, share)),
        wanted,
        image(ready),
        ready.jpeg(),
        fine(raster),
        share);
  }

  private static FineDetail fine(RasterPicture raster) {
    try {
      return FineLines.of(raster);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  private static double share(RasterPicture raster) {
    try {
      return ResolvedShare.of(raster);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  /** What is printed of a raster: its ink, cleared, or all of it where its ground stays. */
  static ToPrint toPrint(FlatSet.Item item, RasterPicture raster, Placement at) {
    Flat flat = item.flat();
    Length side = Length.pt(flat.ink().longestSide() * at.scale().doubleValue());
    return FlatSet.keepsGround(flat.role())
        ? ToPrint.whole(raster, side)
        : ToPrint.ink(raster, side, Clearing.FROM_BORDER);
  }

  /** The same with other pixels embedded. */
  RasterPrint with(ReadyPicture other) {
    return new RasterPrint(
        pixels, density, state, wanted, image(other), other.jpeg(), fine, resolvedShare);
  }

  /** Rounded down to whole pixels, so that nothing heavy is embedded. */
  private static ReadyPicture ready(ToPrint what, DensityTargets targets) {
    long most = targets.mostPixels(what.longest(), what.longest()).width();
    return ready(what, most / what.longest().in());
  }

  static ReadyPicture ready(ToPrint what, double perInch) {
    try {
      return what.ready(perInch);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  private static BufferedImage image(ReadyPicture ready) {
    try {
      return ready.grid().toImage();
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }
}
