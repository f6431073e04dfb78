package dev.placket.layout.flat;

import dev.placket.layout.units.Length;

/**
 * A footprint that a flat may take: labels stand right of it, left, or on both sides.
 *
 * @param surround the room round its ink
 * @param least the longest side of the ink that this footprint asks for at least; zero for none
 */
public record FlatShape(Surround surround, Length least) {
  /** Whether a flat may be so large. */
  public boolean suits(Flat flat) {
    return least.pt() <= flat.limits().greatestPt();
  }

  /**
   * The flat with this footprint.
   *
   * @throws IllegalArgumentException if it does not suit the flat's greatest size
   */
  public Flat of(Flat flat) {
    Limits its = flat.limits();
    Length more = its.least().compareTo(least) < 0 ? least : its.least();
    return flat.withSurround(surround).withLimits(new Limits(more, its.greatest()));
  }
}
