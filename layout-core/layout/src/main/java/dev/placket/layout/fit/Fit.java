package dev.placket.layout.fit;

import java.util.List;

/**
 * A placement for every flat, with its proof and the price of its order.
 *
 * @param placements one for each flat, in the order of the request
 * @param proof how good the common scale is known to be
 * @param order what became of each wish, in the order of the request; empty where none was asked
 * @param levels how far the flats of each kind were enlarged together; empty where growth was not
 *     asked for, and without kinds that were at their maximum
 */
public record Fit(
    List<Placement> placements, Proof proof, List<OrderStep> order, List<SizeLevel> levels)
    implements Outcome {
  /** A fit without levels. */
  public Fit(List<Placement> placements, Proof proof, List<OrderStep> order) {
    this(placements, proof, order, List.of());
  }

  /** Copies the lists. */
  public Fit {
    placements = List.copyOf(placements);
    order = List.copyOf(order);
    levels = List.copyOf(levels);
  }

  /**
   * The placement of the flat with that id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Placement placement(String flat) {
    return placements.stream()
        .filter(p -> p.flat().equals(flat))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no placement for flat '" + flat + "'"));
  }
}
