package dev.placket.packs.flats;

import dev.placket.layout.units.Length;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Puts a flat's scale into words: a figure only where a real length is stated. */
public final class ScaleNote {
  private static final String UNKNOWN = "not to scale";

  /** A scale this near to a whole one is called by it. */
  private static final double WHOLE = 0.001;

  private ScaleNote() {}

  /**
   * The garment scale: printed length over real length, null where no real length is stated.
   *
   * @param scale points per drawing unit
   * @param unit the real length of a drawing unit
   */
  public static @Nullable Double garmentScale(double scale, @Nullable Length unit) {
    return unit == null ? null : scale / unit.pt();
  }

  /** The scale alone, as in {@code 1:8.4}, {@code 2.1:1} or {@code not to scale}. */
  public static String scale(@Nullable Double garmentScale) {
    if (garmentScale == null) {
      return UNKNOWN;
    }
    return garmentScale <= 1 ? "1:" + number(1 / garmentScale) : number(garmentScale) + ":1";
  }

  /** One decimal; none where the value is whole to a thousandth of it. */
  private static String number(double value) {
    double whole = Math.rint(value);
    if (whole >= 1 && Math.abs(value - whole) <= WHOLE * whole) {
      return String.format(Locale.ROOT, "%.0f", whole);
    }
    return value < 1.05 ? trimmed(value) : String.format(Locale.ROOT, "%.1f", value);
  }

  /** At most two decimals, as in {@code 0.85}. */
  public static String trimmed(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("\\.?0+$", "");
  }
}
