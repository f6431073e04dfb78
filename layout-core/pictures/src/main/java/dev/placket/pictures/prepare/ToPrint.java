package dev.placket.pictures.prepare;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.Picture;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;

/**
 * A picture with the size at which it is printed.
 *
 * @param picture the picture
 * @param part what is printed of it, in its own units: its ink, or all of it where the ground stays
 * @param longest the printed length of the longer side of that part; above zero
 * @param clearing what becomes of an opaque ground; of no matter to a drawing
 */
public record ToPrint(Picture picture, InkedBox part, Length longest, Clearing clearing) {
  /** The inked part of a picture. */
  public static ToPrint ink(Picture picture, Length longest, Clearing clearing) {
    return new ToPrint(picture, picture.inkedBox(), longest, clearing);
  }

  /**
   * The ink of a raster that is left once its ground is cleared, of whatever colour that is; the
   * same as {@link #ink} for a ground that is clear or white. O(pixels).
   *
   * @throws PictureException if its pixels cannot be read
   */
  public static ToPrint offColour(RasterPicture raster, Length longest) throws PictureException {
    InkedBox part = raster.inkedBox();
    if (raster.ground() == Ground.OPAQUE_OTHER) {
      PixelRows all = new RasterRows(raster);
      PixelRows rows = ClearedRows.of(all, Clearing.ANY_COLOUR, Preparing.lossy(raster));
      part = rows == all ? part : InkedRows.box(rows);
    }
    return new ToPrint(raster, part, longest, Clearing.ANY_COLOUR);
  }

  /** A picture with its ground, as cloth and photographs are shown: all of a raster. */
  public static ToPrint whole(Picture picture, Length longest) {
    InkedBox all =
        picture instanceof RasterPicture raster
            ? InkedBox.ofSize(raster.width(), raster.height())
            : ((Drawing) picture).groundedBox();
    return new ToPrint(picture, all, longest, Clearing.NONE);
  }

  /**
   * What is printed, with no more pixels than asked for.
   *
   * @param perInch the most pixels per printed inch for a raster, which is never enlarged; just
   *     these for a drawing; above zero
   * @throws PictureException if its pixels cannot be read
   */
  public ReadyPicture ready(double perInch) throws PictureException {
    return picture instanceof RasterPicture raster
        ? Preparing.raster(raster, part, longest, perInch, clearing)
        : Preparing.drawing((Drawing) picture, part, longest, perInch);
  }

  /** Pixels per printed inch that there are to give; infinite for a drawing. */
  public double most() {
    return picture instanceof RasterPicture
        ? part.longestSide() / longest.in()
        : Double.POSITIVE_INFINITY;
  }
}
