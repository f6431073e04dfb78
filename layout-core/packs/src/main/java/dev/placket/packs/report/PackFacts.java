package dev.placket.packs.report;

import dev.placket.packs.history.PackHistory;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.sample.SampleCheck;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a pack states besides its sheets.
 *
 * @param fields the header's values by their names, as in {@code style-number}
 * @param measures the points of measure; null for none
 * @param samples what was sewn, judged by them, in the order of the rounds
 * @param history the log of its revisions, and the revision of each sheet
 */
public record PackFacts(
    Map<String, String> fields,
    @Nullable MeasureList measures,
    List<SampleCheck> samples,
    PackHistory history) {
  /** Copies the collections. */
  public PackFacts {
    samples = List.copyOf(samples);
    fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
  }

  /** Without points of measure. */
  public static PackFacts of(Map<String, String> fields) {
    return new PackFacts(fields, null, List.of(), PackHistory.NONE);
  }
}
