package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.RandomSheet;
import dev.placket.layout.check.Breach;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.solve.Fitter;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Solves many small random sheets and lets the referee look at every answer. */
@Command(
    name = "random",
    description = "Solves random sheets around planted arrangements, every answer refereed.",
    mixinStandardHelpOptions = true)
final class RandomCommand implements Callable<Integer> {
  private static final double CLOSE = 1e-6;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(names = "--count", paramLabel = "N", description = "How many sheets.")
  private long count = 1_000_000;

  @Option(names = "--seed", paramLabel = "N", description = "Seed of the first; then rising.")
  private long seed = 1;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(seed).forEach(l -> out.println("# " + l));
    long proven = 0;
    long wrong = 0;
    for (long k = seed; k < seed + count; k++) {
      RandomSheet sheet = RandomSheet.of(k);
      Outcome outcome = Fitter.fit(sheet.request());
      List<String> faults = faults(sheet, outcome);
      proven += outcome instanceof Fit f && f.proof().proven() ? 1 : 0;
      wrong += faults.isEmpty() ? 0 : 1;
      for (String fault : faults) {
        out.println("seed " + k + ": " + fault);
      }
    }
    out.printf(Locale.ROOT, "%d sheets, %d proven, %d with faults%n", count, proven, wrong);
    out.flush();
    return wrong == 0 ? 0 : 1;
  }

  /** What is wrong with an answer; nothing, mostly. */
  static List<String> faults(RandomSheet sheet, Outcome outcome) {
    List<String> faults = new ArrayList<>();
    if (!(outcome instanceof Fit fit)) {
      return List.of("no fit, though one was planted");
    }
    for (Breach b : Referee.check(sheet.request(), fit)) {
      faults.add(b.rule() + ": " + b.message());
    }
    double scale = fit.proof().scale().doubleValue();
    double share = sheet.request().order().equals(Order.NONE) ? 0 : sheet.request().order().share();
    if (fit.proof().bound() < sheet.planted() * (1 - CLOSE)) {
      faults.add("bound " + fit.proof().bound() + " under the planted " + sheet.planted());
    }
    if (fit.proof().proven() && scale < sheet.planted() * (1 - share) * (1 - CLOSE)) {
      faults.add("proven at " + scale + " under the planted " + sheet.planted());
    }
    return faults;
  }
}
