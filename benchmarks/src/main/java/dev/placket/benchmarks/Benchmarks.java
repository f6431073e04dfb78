package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command of the benchmarks: measures the fitter and prints what it found. */
@Command(
    name = "benchmarks",
    description = "Measures speed and quality of the fitter.",
    subcommands = {
      SheetsCommand.class,
      CompareCommand.class,
      RandomCommand.class,
      LinesCommand.class,
      CalloutsCommand.class,
      OrderCommand.class,
      LookCommand.class,
      JmhCommand.class,
      ColdCommand.class,
      FirstCommand.class,
      HeapCommand.class,
      ReadingCommand.class,
      PreparingCommand.class,
      SuiteCommand.class,
      RastersCommand.class,
      WorkbooksCommand.class,
      RowsCommand.class,
      DrawingsCommand.class,
      KillsCommand.class,
      WarmCommand.class
    },
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND")
public final class Benchmarks implements Runnable {
  /** Runs one benchmark; 0 measured, 1 a measured fit is wrong, 2 bad usage or input. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(line(out, err).execute(args));
  }

  static CommandLine line(PrintWriter out, PrintWriter err) {
    CommandLine line = new CommandLine(new Benchmarks());
    line.setOut(out);
    line.setErr(err);
    line.setExecutionExceptionHandler(
        (problem, at, parsed) -> {
          if (problem instanceof PageException) {
            at.getErr().println(problem.getMessage());
            return CommandLine.ExitCode.USAGE;
          }
          throw problem;
        });
    return line;
  }

  @Override
  public void run() {
    CommandLine.usage(this, System.out);
  }
}
