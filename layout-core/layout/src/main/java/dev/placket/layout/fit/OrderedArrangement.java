package dev.placket.layout.fit;

import java.util.List;

/**
 * One way to grant the wishes for order.
 *
 * @param plan what the arrangement keeps
 * @param arrangement at the largest t found for it
 * @param steps what became of each wish
 */
record OrderedArrangement(Plan plan, Arrangement arrangement, List<OrderStep> steps) {
  OrderedArrangement {
    steps = List.copyOf(steps);
  }
}
