package dev.placket.layout.sheet;

import dev.placket.layout.units.Length;

/**
 * The size of one column or row of the grid: a length, a share of what lengths leave (CSS Grid's
 * {@code fr}), or what its content needs ({@code auto}).
 */
public sealed interface GridTrack permits GridTrack.Fixed, GridTrack.Share, GridTrack.Auto {
  /**
   * A track of a stated length.
   *
   * @param length not negative
   */
  record Fixed(Length length) implements GridTrack {
    /**
     * Checks the sign.
     *
     * @throws IllegalArgumentException if negative
     */
    public Fixed {
      if (length.pt() < 0) {
        throw new IllegalArgumentException(
            "a track measures " + length.mm() + " mm: give it no negative length");
      }
    }
  }

  /**
   * A track that takes a share of the room left.
   *
   * @param fr above zero
   */
  record Share(double fr) implements GridTrack {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if not above zero
     */
    public Share {
      if (!(fr > 0) || !Double.isFinite(fr)) {
        throw new IllegalArgumentException(
            "a track's share is " + fr + "fr: give it a number above 0");
      }
    }
  }

  /** A track as long as its content, which a length replaces before the grid is laid. */
  record Auto() implements GridTrack {}

  /**
   * Reads {@code 12mm}, {@code 1in}, {@code 2fr}.
   *
   * @throws IllegalArgumentException naming the text, if it is neither a length nor a share
   */
  static GridTrack parse(String text) {
    String t = text.strip();
    if (t.endsWith("fr")) {
      String number = t.substring(0, t.length() - 2).strip();
      if (!number.matches("[+-]?[0-9]*\\.?[0-9]+")) {
        throw new IllegalArgumentException("'" + text + "' is no share: write it like 1fr");
      }
      return new Share(Double.parseDouble(number));
    }
    return new Fixed(Length.parse(t));
  }
}
