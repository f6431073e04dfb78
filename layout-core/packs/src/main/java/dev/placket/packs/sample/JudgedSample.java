package dev.placket.packs.sample;

import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.GradedTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A sample in one size, judged at all points of the list.
 *
 * @param sample what the sample is called
 * @param size its size
 * @param points in the order of the list
 */
public record JudgedSample(String sample, String size, List<JudgedPoint> points) {
  /** Copies the list. */
  public JudgedSample {
    points = List.copyOf(points);
  }

  /**
   * Judges a sample. O(p · r) for p points and r earlier rounds.
   *
   * @param list the points of measure
   * @param sample what the sample is called
   * @param size its size
   * @param values what was measured, in any order; points that are absent were not measured
   * @param stood what was asked in its round, by code, where that is not what the list asks
   * @param before earlier rounds, the oldest first; those of other sizes are passed over
   * @throws IllegalArgumentException if a code is not in the list or comes twice, or the size is
   *     not in the list
   */
  public static JudgedSample of(
      GradedTable list,
      String sample,
      String size,
      List<SampleValue> values,
      Map<String, AskedValue> stood,
      List<JudgedSample> before) {
    if (!list.sizes().contains(size)) {
      throw new IllegalArgumentException("the size '" + size + "', not one of " + list.sizes());
    }
    Map<String, SampleValue> byCode = new LinkedHashMap<>();
    for (SampleValue value : values) {
      if (byCode.put(value.code(), value) != null) {
        throw new IllegalArgumentException("the point '" + value.code() + "' twice");
      }
    }
    List<String> codes = list.points().stream().map(p -> p.point().code()).toList();
    List<String> unknown = new ArrayList<>(byCode.keySet());
    unknown.addAll(stood.keySet());
    unknown.removeAll(codes);
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException("no point '" + unknown.get(0) + "' in " + codes);
    }
    List<JudgedPoint> points = new ArrayList<>();
    for (GradedPoint point : list.points()) {
      String code = point.point().code();
      AskedValue asked = stood.getOrDefault(code, AskedValue.of(point, size));
      SampleValue value = byCode.getOrDefault(code, SampleValue.of(code, null, null));
      Verdict verdict = Verdict.of(value.measured(), asked);
      points.add(new JudgedPoint(asked, value, Trend.of(earlier(code, size, before), verdict)));
    }
    return new JudgedSample(sample, size, points);
  }

  /** The last earlier verdict that says in or out. */
  private static Verdict earlier(String code, String size, List<JudgedSample> before) {
    return before.stream()
        .filter(round -> round.size.equals(size))
        .flatMap(round -> round.points.stream())
        .filter(point -> point.value().code().equals(code))
        .map(JudgedPoint::verdict)
        .filter(Trend::isJudged)
        .reduce(Verdict.NOT_MEASURED, (older, newer) -> newer);
  }

  /** How many points have this verdict. */
  public long count(Verdict verdict) {
    return points.stream().filter(point -> point.verdict() == verdict).count();
  }

  /** How many points are out of tolerance. */
  public long out() {
    return points.stream().filter(point -> point.verdict().isOut()).count();
  }
}
