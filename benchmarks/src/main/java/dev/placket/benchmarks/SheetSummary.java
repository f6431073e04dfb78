package dev.placket.benchmarks;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * What all sheets of a file come to.
 *
 * @param sheets how many
 * @param proven how many of them are proven
 * @param known how many have a largest scale known
 * @param reached how many of these reach it
 * @param wrong how many answers cannot be true
 * @param lostMedian share of the known scale that is missing, median
 * @param lostWorst share of the known scale that is missing, worst
 */
record SheetSummary(
    int sheets,
    long proven,
    long known,
    long reached,
    long wrong,
    double lostMedian,
    double lostWorst) {
  static SheetSummary of(List<SheetLine> lines) {
    double[] lost =
        lines.stream()
            .flatMapToDouble(
                l -> {
                  var e = l.page().expected();
                  return e == null
                      ? DoubleStream.empty()
                      : DoubleStream.of(1 - l.end().scale() / e.bestKnown());
                })
            .sorted()
            .toArray();
    return new SheetSummary(
        lines.size(),
        lines.stream().filter(l -> l.end().proven()).count(),
        lost.length,
        lines.stream().filter(SheetLine::reachesBest).count(),
        lines.stream().filter(l -> !l.wrong().isEmpty()).count(),
        lost.length == 0 ? Double.NaN : lost[lost.length / 2],
        lost.length == 0 ? Double.NaN : lost[lost.length - 1]);
  }

  String text() {
    String text = sheets + " sheets, " + proven + " proven, " + wrong + " wrong";
    if (known > 0) {
      text +=
          String.format(
              Locale.ROOT,
              "; %d of %d reach the largest scale known, missing %.3f %% in the median, %.3f %% at"
                  + " worst",
              reached,
              known,
              Math.max(0, lostMedian) * 100,
              Math.max(0, lostWorst) * 100);
    }
    return text;
  }
}
