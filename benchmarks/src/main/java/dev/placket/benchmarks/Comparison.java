package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.yardstick.CpSat;
import dev.placket.benchmarks.yardstick.Yardstick;
import dev.placket.layout.fit.Budget;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One sheet, our fit and those of others.
 *
 * @param page the sheet
 * @param ours our run
 * @param others the scale of each yardstick
 * @param sat CP-SAT's better answer, or null where it did not run
 */
record Comparison(ReferencePage page, Solve ours, List<Double> others, CpSat.@Nullable Answer sat) {
  private static final double SAME = 1e-6;

  static Comparison of(
      ReferencePage page, Budget budget, List<Yardstick> yardsticks, @Nullable CpSat sat) {
    Solve ours = Solve.of(page.request().withBudget(budget));
    List<Double> others = yardsticks.stream().map(y -> y.pack(page).scale()).toList();
    return new Comparison(page, ours, others, sat == null ? null : better(sat, page));
  }

  /** Of two answers the proven one, then the faster one, then the narrower one. */
  private static CpSat.Answer better(CpSat sat, ReferencePage page) {
    CpSat.Answer once = sat.once(page);
    CpSat.Answer halving = sat.halving(page);
    if (once.proven() && halving.proven()) {
      return once.ms() <= halving.ms() ? once : halving;
    }
    if (once.proven() || halving.proven()) {
      return once.proven() ? once : halving;
    }
    return once.bound() - once.scale() <= halving.bound() - halving.scale() ? once : halving;
  }

  static String header(List<Yardstick> yardsticks) {
    List<String> cells = new ArrayList<>(List.of("id", "flats", "scale", "bound", "proven", "ms"));
    yardsticks.forEach(y -> cells.add("over " + y.name()));
    cells.addAll(List.of("satScale", "satBound", "satProven", "satMs", "satMs/ms"));
    return String.join("\t", cells);
  }

  String text() {
    List<String> cells = new ArrayList<>();
    cells.add(page.id());
    cells.add(Integer.toString(page.flats().size()));
    cells.add(SheetLine.number(ours.scale(), 6));
    cells.add(SheetLine.number(ours.bound(), 6));
    cells.add(Boolean.toString(ours.proven()));
    cells.add(SheetLine.number(ours.ms(), 3));
    for (int i = 0; i < others.size(); i++) {
      cells.add(SheetLine.number(ratio(i), 4));
    }
    cells.add(SheetLine.number(sat == null ? Double.NaN : sat.scale(), 6));
    cells.add(SheetLine.number(sat == null ? Double.NaN : sat.bound(), 6));
    cells.add(sat == null ? "NaN" : Boolean.toString(sat.proven()));
    cells.add(SheetLine.number(sat == null ? Double.NaN : sat.ms(), 1));
    cells.add(SheetLine.number(timeRatio(), 1));
    return String.join("\t", cells);
  }

  /** Our scale over that of a yardstick. */
  double ratio(int yardstick) {
    return ours.scale() / others.get(yardstick);
  }

  /** CP-SAT's time over ours; NaN where either proves nothing. */
  double timeRatio() {
    return sat == null || !sat.proven() || !ours.proven() ? Double.NaN : sat.ms() / ours.ms();
  }

  /** Whether nobody found more than our bound, and we no more than CP-SAT's. */
  boolean consistent() {
    double most = others.stream().mapToDouble(d -> d).max().orElse(0);
    if (sat != null) {
      most = Math.max(most, sat.scale());
    }
    boolean bounded = !(most > ours.bound() * (1 + SAME));
    return bounded && (sat == null || ours.scale() <= sat.bound() * (1 + SAME));
  }
}
