package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The points of measure of a pack, as other programs take them.
 *
 * @param unit of the figures
 * @param shown how values are printed, one or more
 * @param table the values
 * @param names what each point measures, by its code
 */
public record MeasureList(
    MeasureUnit unit, List<Rounding> shown, GradedTable table, Map<String, String> names) {
  /** Copies the collections. */
  public MeasureList {
    shown = List.copyOf(shown);
    names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
  }

  /** A length of the table in the unit of the figures, exactly. */
  public BigDecimal inUnit(BigDecimal mm) {
    BigDecimal exact = mm.divide(unit.length());
    return exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
  }
}
