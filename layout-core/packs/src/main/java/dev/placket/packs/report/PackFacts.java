package dev.placket.packs.report;

import dev.placket.packs.measure.MeasureList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a pack states besides its sheets.
 *
 * @param fields the header's values by their names, as in {@code style-number}
 * @param measures the points of measure; null for none
 */
public record PackFacts(Map<String, String> fields, @Nullable MeasureList measures) {
  /** Copies the map. */
  public PackFacts {
    fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
  }

  /** Without points of measure. */
  public static PackFacts of(Map<String, String> fields) {
    return new PackFacts(fields, null);
  }
}
