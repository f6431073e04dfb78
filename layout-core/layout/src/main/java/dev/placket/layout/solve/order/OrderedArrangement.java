package dev.placket.layout.solve.order;

import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Plan;
import java.util.List;

/**
 * One way to grant the wishes for order.
 *
 * @param plan what the arrangement keeps
 * @param arrangement at the largest t found for it
 * @param steps what became of each wish
 */
public record OrderedArrangement(Plan plan, Arrangement arrangement, List<OrderStep> steps) {
  /** Copies the list. */
  public OrderedArrangement {
    steps = List.copyOf(steps);
  }
}
