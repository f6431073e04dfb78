package dev.placket.packs.flats;

import org.jspecify.annotations.Nullable;

/**
 * The line on its scale under a flat: a figure only where a real length is stated, and a reduction
 * against the flat that leads its group.
 *
 * @param against the leading flat, as in {@code the front}; empty where there is nothing to compare
 * @param ratio the scale over that of the leading flat; 1 where there is nothing to compare
 * @param stated whether the real length of a unit is stated, hence a garment scale
 * @param brief whether the line keeps to what is needed, on small paper
 */
public record ScaleLine(String against, double ratio, boolean stated, boolean brief) {
  /** A scale as wide as any that may come out. */
  private static final double WIDEST = 1 / 88.8;

  /** The line of a flat that is compared with none. */
  public static ScaleLine alone(boolean stated) {
    return new ScaleLine("", 1, stated, false);
  }

  /** The same line, brief. */
  ScaleLine shortened() {
    return new ScaleLine(against, ratio, stated, true);
  }

  /** A line as wide as any that may come out. */
  String widest() {
    return text(stated ? WIDEST : null);
  }

  /**
   * The line.
   *
   * @param garmentScale printed length over real length; null where no real length is stated
   */
  public String text(@Nullable Double garmentScale) {
    if (against.isEmpty() || ratio == 1) {
      return ScaleNote.scale(garmentScale);
    }
    String share = ScaleNote.trimmed(ratio);
    if (garmentScale != null) {
      String scale = ScaleNote.scale(garmentScale);
      return brief ? scale : scale + ", " + share + " of " + against + "'s scale";
    }
    String change = brief ? "" : ratio < 1 ? "reduced to " : "enlarged to ";
    return change + share + " of " + against;
  }
}
