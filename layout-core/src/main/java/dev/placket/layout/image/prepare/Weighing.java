package dev.placket.layout.image.prepare;

import dev.placket.layout.image.Drawing;
import dev.placket.layout.image.Picture;
import dev.placket.layout.image.PictureException;
import dev.placket.layout.image.Raster;
import dev.placket.layout.units.Length;

/** Learns how the weight of a picture grows with its density, from two small copies of it. */
public final class Weighing {
  private Weighing() {}

  /**
   * The curve of a picture at its printed size.
   *
   * @param longest the printed length of the longer side of its ink
   * @param soft pixels per inch of the larger of the two copies; the smaller has half
   * @throws PictureException if its pixels cannot be read
   */
  public static WeightCurve of(Picture picture, Length longest, Clearing clearing, double soft)
      throws PictureException {
    double most =
        picture instanceof Raster
            ? picture.inkedBox().longestSide() / longest.in()
            : Double.POSITIVE_INFINITY;
    double high = Math.min(soft, most);
    long one = ready(picture, longest, high / 2, clearing).png().length;
    long two = ready(picture, longest, high, clearing).png().length;
    return WeightCurve.through(high / 2, one, high, two, most);
  }

  private static ReadyPicture ready(
      Picture picture, Length longest, double perInch, Clearing clearing) throws PictureException {
    return picture instanceof Raster raster
        ? Preparing.raster(raster, longest, perInch, clearing)
        : Preparing.drawing((Drawing) picture, longest, perInch);
  }
}
