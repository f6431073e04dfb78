package dev.placket.layout.fit;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Flats laid out over as many sheets of one kind as they need, in their order.
 *
 * @param sheets the sheets, empty where there is a conflict
 * @param scale the least common scale of all sheets, the largest it can be on so many; null where
 *     there is a conflict
 * @param bound no way to share the flats among so many sheets has a larger one
 * @param provenFewest whether it is known that fewer sheets do not hold them
 * @param conflict why not even one sheet for each would do; else null
 */
public record FlowResult(
    List<FlowSheet> sheets,
    @Nullable BigDecimal scale,
    double bound,
    boolean provenFewest,
    @Nullable Conflict conflict) {
  /** Copies the list. */
  public FlowResult {
    sheets = List.copyOf(sheets);
  }
}
