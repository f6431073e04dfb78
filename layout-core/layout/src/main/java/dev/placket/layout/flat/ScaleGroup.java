package dev.placket.layout.flat;

/**
 * A flat's part in a set of flats whose scales hang together: its scale is the group's common scale
 * times {@code ratio}.
 *
 * @param name the group; the same name on one sheet is the same group
 * @param ratio this flat's scale over the group's common scale, above zero; kept as the decimal it
 *     was entered as
 */
public record ScaleGroup(String name, double ratio) {
  /**
   * Checks the ratio.
   *
   * @throws IllegalArgumentException if it is not above zero
   */
  public ScaleGroup {
    if (!(ratio > 0) || !Double.isFinite(ratio)) {
      throw new IllegalArgumentException(
          "the ratio in scale group " + name + " is above zero, not " + ratio);
    }
  }
}
