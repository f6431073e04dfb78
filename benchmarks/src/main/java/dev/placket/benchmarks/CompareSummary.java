package dev.placket.benchmarks;

import dev.placket.benchmarks.yardstick.CpSat;
import dev.placket.benchmarks.yardstick.Yardstick;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/** What a comparison comes to: medians, worst, wins and losses. */
final class CompareSummary {
  private static final double SAME = 1e-6;

  private CompareSummary() {}

  static List<String> lines(List<Comparison> all, List<Yardstick> yardsticks) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < yardsticks.size(); i++) {
      lines.add(scales(yardsticks.get(i).name(), all, i));
    }
    TreeSet<Integer> counts = new TreeSet<>();
    all.stream().filter(c -> c.sat() != null).forEach(c -> counts.add(c.page().flats().size()));
    counts.forEach(n -> lines.add(times(n, all)));
    long wrong = all.stream().filter(c -> !c.consistent()).count();
    lines.add(all.size() + " sheets, " + wrong + " with contradicting answers");
    return lines;
  }

  private static String scales(String name, List<Comparison> all, int index) {
    double[] ratios = sorted(all.stream().mapToDouble(c -> c.ratio(index)));
    long wins = DoubleStream.of(ratios).filter(r -> r > 1 + SAME).count();
    long losses = DoubleStream.of(ratios).filter(r -> r < 1 - SAME).count();
    return String.format(
        Locale.ROOT,
        "our scale over %s: median %.4f, least %.4f, largest %.4f; %d larger, %d equal, %d smaller",
        name,
        ratios[ratios.length / 2],
        ratios[0],
        ratios[ratios.length - 1],
        wins,
        ratios.length - wins - losses,
        losses);
  }

  private static String times(int flats, List<Comparison> all) {
    List<Comparison> here =
        all.stream().filter(c -> c.sat() != null && c.page().flats().size() == flats).toList();
    double[] ratios =
        sorted(here.stream().mapToDouble(Comparison::timeRatio).filter(r -> !Double.isNaN(r)));
    long oursOnly = here.stream().filter(c -> c.ours().proven() && !provenBySat(c)).count();
    long satOnly = here.stream().filter(c -> !c.ours().proven() && provenBySat(c)).count();
    String text =
        String.format(
            Locale.ROOT,
            "n=%d: both prove %d of %d, only we %d, only CP-SAT %d",
            flats,
            ratios.length,
            here.size(),
            oursOnly,
            satOnly);
    if (ratios.length > 0) {
      text +=
          String.format(
              Locale.ROOT,
              "; CP-SAT's time to proof over ours: median %.0f, least %.1f",
              ratios[ratios.length / 2],
              ratios[0]);
    }
    return text;
  }

  private static boolean provenBySat(Comparison c) {
    CpSat.Answer sat = c.sat();
    return sat != null && sat.proven();
  }

  private static double[] sorted(DoubleStream values) {
    return values.sorted().toArray();
  }
}
