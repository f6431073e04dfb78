package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A point of measure with a value for each size.
 *
 * @param point what it was made of
 * @param values exact, in millimetres, by size, in the order of the sizes
 */
public record GradedPoint(MeasurePoint point, Map<String, BigDecimal> values) {
  /** Copies the map. */
  public GradedPoint {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** Whether the values were typed, not computed. */
  public boolean typed() {
    return !point.typed().isEmpty();
  }
}
