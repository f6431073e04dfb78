package dev.placket.pictures.prepare;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.RasterPicture;
import dev.placket.pictures.base.Ground;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.Fault;
import java.util.Locale;

/** Makes pictures ready for the size at which they are printed. */
public final class Preparing {
  /** Up to so many pixels a result is kept in memory rather than made anew for each reading. */
  private static final long KEPT = 24_000_000;

  private Preparing() {}

  /**
   * Clears the ground of a raster, crops it to its ink and averages it down to a density; never up.
   * Preparing the result again changes nothing.
   *
   * @param longest the printed length of the longer side of its inked box
   * @param perInch the most pixels per printed inch, rounded up to whole pixels; above zero
   * @throws PictureException if its pixels cannot be read
   */
  public static ReadyPicture raster(
      RasterPicture raster, Length longest, double perInch, Clearing clearing)
      throws PictureException {
    return raster(raster, raster.inkedBox(), longest, perInch, clearing);
  }

  static ReadyPicture raster(
      RasterPicture raster, InkedBox part, Length longest, double perInch, Clearing clearing)
      throws PictureException {
    InkedBox ink = whole(raster, part);
    Length width = Length.pt(longest.pt() * ink.width() / ink.longestSide());
    Length height = Length.pt(longest.pt() * ink.height() / ink.longestSide());
    PixelRows all = new RasterRows(raster);
    PixelRows rows = ClearedRows.of(all, clears(raster, clearing), lossy(raster));
    boolean cleared = rows != all;
    rows =
        new CroppedRows(
            rows, (int) ink.left(), (int) ink.top(), (int) ink.width(), (int) ink.height());
    double most = wanted(longest, longest, perInch).width();
    double scale = most / Math.max(rows.width(), rows.height());
    if (scale < 1) {
      rows = new AreaRows(rows, scaled(rows.width(), scale), scaled(rows.height(), scale));
    }
    boolean same = !cleared && rows.width() == raster.width() && rows.height() == raster.height();
    return new ReadyPicture(kept(rows), width, height, cleared, same ? raster.jpeg() : null);
  }

  /** What counts as ink all over, pale as it may be, has no ground to clear unasked. */
  private static Clearing clears(RasterPicture raster, Clearing asked) {
    return raster.ground() == Ground.OPAQUE_OTHER && asked != Clearing.ANY_COLOUR
        ? Clearing.NONE
        : asked;
  }

  /**
   * The inked box in whole pixels. Averaging leaves a last pixel too faint to count as ink: where
   * only that is missing, the box reaches to the edge, so that what is ready stays as it is.
   */
  private static InkedBox whole(RasterPicture raster, InkedBox ink) {
    return new InkedBox(
        ink.left() <= 1 ? 0 : Math.floor(ink.left()),
        ink.top() <= 1 ? 0 : Math.floor(ink.top()),
        ink.right() >= raster.width() - 1 ? raster.width() : Math.ceil(ink.right()),
        ink.bottom() >= raster.height() - 1 ? raster.height() : Math.ceil(ink.bottom()));
  }

  private static int scaled(int pixels, double scale) {
    return (int) Math.max(1, Math.round(pixels * scale));
  }

  /** Whether compression leaves noise beside lines; WebP is read only where it is lossless. */
  static boolean lossy(RasterPicture raster) {
    return raster.format().equals("JPEG");
  }

  private static PixelRows kept(PixelRows rows) throws PictureException {
    return (long) rows.width() * rows.height() <= KEPT ? PixelGrid.of(rows) : rows;
  }

  /**
   * Turns the inked part of a drawing into pixels on a transparent ground.
   *
   * @param longest the printed length of the longer side of its inked box
   * @param perInch pixels per printed inch, rounded up to whole pixels for each side; above zero
   * @throws PictureException if so many pixels would take more memory than {@link
   *     ReadLimits#DEFAULT} allows
   */
  public static ReadyPicture drawing(Drawing drawing, InkedBox ink, Length longest, double perInch)
      throws PictureException {
    Length width = Length.pt(longest.pt() * ink.width() / ink.longestSide());
    Length height = Length.pt(longest.pt() * ink.height() / ink.longestSide());
    PixelSize size = wanted(width, height, perInch);
    long limit = ReadLimits.DEFAULT.memory();
    double bytes = 4.0 * size.width() * size.height();
    if (bytes > limit) {
      throw new PictureException(
          Fault.limit(
                  drawing.name(),
                  String.format(
                      Locale.ROOT,
                      "rendering %d × %d pixels takes some %.0f MiB of memory, more than the limit of %d",
                      size.width(),
                      size.height(),
                      bytes / (1 << 20),
                      limit >> 20))
              .remedy("print it smaller")
              .remedy("print it with fewer pixels per inch"));
    }
    PixelGrid grid =
        PixelGrid.sharing(
            drawing.render(Math.toIntExact(size.width()), Math.toIntExact(size.height()), ink));
    return new ReadyPicture(grid, width, height, false, null);
  }

  private static PixelSize wanted(Length width, Length height, double perInch) {
    if (!(perInch > 0)) {
      throw new IllegalArgumentException("a density is above zero, not " + perInch);
    }
    return new DensityTargets(perInch, perInch, perInch).wantedPixels(width, height);
  }
}
