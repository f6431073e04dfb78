package dev.placket.layout.fit;

/**
 * How far the flats of one kind were enlarged together once the common scale and the order were
 * settled.
 *
 * @param kind which flats
 * @param factor by how much all of them were enlarged together, 1 or more; one that reaches its
 *     maximum size stops there
 * @param bound no arrangement that keeps the order, the common scale and the levels before has a
 *     larger factor; not below {@code factor}
 */
public record SizeLevel(Kind kind, double factor, double bound) {
  private static final double PROVEN = 1e-6;

  /** The flats that are enlarged together, in the order in which they are. */
  public enum Kind {
    /** All views, and what shares a scale group with one. */
    VIEWS,
    /** All that are neither views nor swatches. */
    DETAILS,
    /** Swatches. */
    SWATCHES
  }

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the factor is below 1 or above the bound
   */
  public SizeLevel {
    if (!(factor >= 1) || !(bound >= factor)) {
      throw new IllegalArgumentException("a level of " + factor + " under a bound of " + bound);
    }
  }

  /** Whether the factor is known to be the largest, to one part in a million. */
  public boolean proven() {
    return bound <= factor * (1 + PROVEN);
  }
}
