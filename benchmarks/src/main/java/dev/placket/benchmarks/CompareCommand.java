package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.yardstick.CpSat;
import dev.placket.benchmarks.yardstick.EqualCells;
import dev.placket.benchmarks.yardstick.RandomBottomLeft;
import dev.placket.benchmarks.yardstick.Yardstick;
import dev.placket.layout.fit.Budget;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs the fitter beside the yardsticks, sheet by sheet in one go, and prints ratios. */
@Command(
    name = "compare",
    description = "Runs the fitter beside greedy packers, equal cells and CP-SAT; prints ratios.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "One tab-separated line a sheet: our scale, bound and milliseconds; our scale over that of each",
      "yardstick; of CP-SAT (one worker, lattice of 0.1 %%, the better of halving and one call) the",
      "interval, milliseconds and how many times longer it took than our proof. Lines with # sum up."
    })
final class CompareCommand implements Callable<Integer> {
  private static final int TRIES = 200;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE.json", description = "Sheets; or 'pages' or 'pages-hard'.")
  private String file = "";

  @Option(names = "--steps", paramLabel = "N", description = "Our budget, in steps.")
  private long steps = Budget.DEFAULT.steps();

  @Option(names = "--seconds", paramLabel = "S", description = "CP-SAT's limit; 0 leaves it out.")
  private double seconds = 60;

  @Option(names = "--sat-flats", paramLabel = "N", description = "CP-SAT up to this many flats.")
  private int satFlats = Integer.MAX_VALUE;

  @Option(names = "--seed", paramLabel = "N", description = "Seed of the random orders.")
  private long seed = 1;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (steps <= 0 || !(seconds >= 0)) {
      throw new CommandLine.ParameterException(
          spec.commandLine(), "--steps is above zero and --seconds not negative");
    }
    List<ReferencePage> pages = PageFile.read(file);
    boolean withSat = seconds > 0 && CpSat.available();
    if (seconds > 0 && !withSat) {
      spec.commandLine().getErr().println("CP-SAT is left out: no native solver for this machine");
    }
    List<Yardstick> yardsticks = new ArrayList<>(Yardstick.GREEDY);
    yardsticks.add(new RandomBottomLeft(TRIES, seed));
    yardsticks.add(new EqualCells());
    CpSat sat = new CpSat(seconds);
    Solve.warmUp(pages);
    Provenance.lines(seed).forEach(l -> out.println("# " + l));
    out.println(Comparison.header(yardsticks));
    List<Comparison> all = new ArrayList<>();
    for (ReferencePage page : pages) {
      boolean satHere = withSat && page.flats().size() <= satFlats;
      Comparison c = Comparison.of(page, new Budget(steps), yardsticks, satHere ? sat : null);
      all.add(c);
      out.println(c.text());
      out.flush();
    }
    CompareSummary.lines(all, yardsticks).forEach(l -> out.println("# " + l));
    out.flush();
    return all.stream().allMatch(Comparison::consistent) ? 0 : 1;
  }
}
