package dev.placket.packs.measure;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A point of measure before it is graded; lengths in millimetres.
 *
 * @param code its letter, or the label's own code
 * @param plus how much larger a sample may be; null for no tolerance
 * @param minus how much smaller it may be, as a positive number; null for no tolerance
 * @param value at the sample size; null where all values are typed
 * @param rules by the group's name; that under the empty name is for all groups without their own
 * @param typed values by size; empty where they are graded
 */
public record MeasurePoint(
    String code,
    @Nullable BigDecimal plus,
    @Nullable BigDecimal minus,
    @Nullable BigDecimal value,
    Map<String, GradeRule> rules,
    Map<String, BigDecimal> typed) {
  /**
   * Copies the maps.
   *
   * @throws IllegalArgumentException if it is both graded and typed, or neither, or has a negative
   *     tolerance
   */
  public MeasurePoint {
    rules = Map.copyOf(rules);
    typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    boolean positive =
        (plus == null || plus.signum() >= 0) && (minus == null || minus.signum() >= 0);
    if ((value == null) == typed.isEmpty() || value != null && rules.isEmpty() || !positive) {
      throw new IllegalArgumentException(code + ": a value with rules, or typed values");
    }
  }
}
