package dev.placket.layout.density;

import dev.placket.layout.units.Length;

/**
 * Where a print density turns from soft to crisp to heavy, and what to aim at; pixels per inch.
 *
 * <p>At a reading distance of 400 mm the eye resolves 218 pixels per inch and at 300 mm 291 (ISO
 * 8596, one minute of arc), hence the usual 200 and 300.
 *
 * @param soft below it a picture is soft
 * @param aim what the wanted pixels are counted for
 * @param heavy above it a picture is heavy
 */
public record DensityTargets(double soft, double aim, double heavy) {
  /** Soft under 150, aiming at 200, heavy over 300 pixels per inch. */
  public static final DensityTargets DEFAULT = new DensityTargets(150, 200, 300);

  /** Slack for the rounding of lengths: far under a pixel, far over the error of a double. */
  private static final double SLACK = 1e-9;

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException with the three, unless 0 &lt; soft ≤ aim ≤ heavy
   */
  public DensityTargets {
    if (!(soft > 0) || !(aim >= soft) || !(heavy >= aim) || Double.isInfinite(heavy)) {
      throw new IllegalArgumentException(
          "densities out of order: soft " + soft + ", aim " + aim + ", heavy " + heavy);
    }
  }

  /**
   * The state of a raster: soft if its poorer axis is under {@link #soft()}, heavy if it is over
   * {@link #heavy()}, else crisp; both limits themselves are crisp.
   */
  public PrintState state(EffectiveDensity density) {
    double d = density.least();
    if (d < soft * (1 - SLACK)) {
      return PrintState.SOFT;
    }
    return d > heavy * (1 + SLACK) ? PrintState.HEAVY : PrintState.CRISP;
  }

  /**
   * The printed length at which so many pixels are just not soft.
   *
   * @param pixelsLongest pixels along the longer side; above zero
   */
  public Length greatestSide(long pixelsLongest) {
    return Length.in(pixelsLongest / soft);
  }

  /** The pixels to export for a printed size, at the density aimed at; rounded up. */
  public PixelSize wantedPixels(Length width, Length height) {
    return new PixelSize(up(width.in() * aim), up(height.in() * aim));
  }

  /**
   * The most pixels worth embedding for a printed size, at the heavy limit; rounded down, so that
   * what is embedded is never heavy, but at least 1.
   */
  public PixelSize mostPixels(Length width, Length height) {
    return new PixelSize(down(width.in() * heavy), down(height.in() * heavy));
  }

  private static int up(double pixels) {
    return Math.max(1, (int) Math.ceil(pixels * (1 - SLACK)));
  }

  private static int down(double pixels) {
    return Math.max(1, (int) Math.floor(pixels * (1 + SLACK)));
  }
}
