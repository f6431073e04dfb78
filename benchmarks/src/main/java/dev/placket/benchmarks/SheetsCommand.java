package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
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

/** Solves the sheets of a file and prints one line for each. */
@Command(
    name = "sheets",
    description =
        "Solves reference sheets, warm, on one thread; prints one tab-separated line each.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Columns: id flats scale bound proven ms1pct msBest msProof steps violation.",
      "The fitter has no clock, so times come from runs with budgets of 1, 2, 4, ... steps up to the",
      "budget asked for: ms1pct is the time of the first run within 1 %% of the largest scale known,",
      "msBest of the first that reaches the final scale, msProof of the first that proves it; NaN",
      "where none does. Short runs count as the median of five. violation counts broken hard rules."
    })
final class SheetsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE.json",
      description = "Sheets in the form of the reference sheets; or 'pages' or 'pages-hard'.")
  private String file = "";

  @Option(names = "--steps", paramLabel = "N", description = "Budget of each sheet, in steps.")
  private long steps = Budget.DEFAULT.steps();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (steps <= 0) {
      throw new CommandLine.ParameterException(
          spec.commandLine(), "--steps is above zero, not " + steps);
    }
    List<ReferencePage> pages = PageFile.read(file);
    Solve.warmUp(pages);
    out.println(SheetLine.HEADER);
    List<SheetLine> lines = new ArrayList<>();
    for (ReferencePage page : pages) {
      SheetLine line = SheetLine.measure(page, new Budget(steps));
      lines.add(line);
      out.println(line.text());
      out.flush();
      line.wrong().forEach(w -> err.println(page.id() + ": " + w));
    }
    SheetSummary summary = SheetSummary.of(lines);
    err.println(summary.text());
    err.flush();
    return summary.wrong() == 0 ? 0 : 1;
  }
}
