package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.packs.folder.Missing;
import dev.placket.packs.issue.IssueChanges;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Visible;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket compare}: what differs between two issues. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Issues:%n",
    description = {
      "Lists what changed from one issue of a style to another: fields, sheets, cells, rows of"
          + " tables, flats, callouts, points of measure, the size and place of flats, and the files"
          + " that differ.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 compared; 1 internal error; 2 an input is at fault.",
      "",
      "Example: placket compare issues/MG-3107_C_2027-02-11 issues/MG-3107_D_2027-03-04",
      ""
    })
final class ChangesCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "OLD",
      description = "The earlier issue: its folder, or the fit.json of a pack.")
  private Path before = Path.of("");

  @Parameters(index = "1", paramLabel = "NEW", description = "The later one.")
  private Path after = Path.of("");

  @Option(names = "--json", description = "Prints the changes as JSON.")
  private boolean json;

  private final PrintStream report;
  private final PrintStream messages;

  ChangesCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      Missing.check(before);
      Missing.check(after);
      IssueChanges changes = IssueChanges.between(before, after);
      if (json) {
        byte[] bytes = changes.json();
        report.write(bytes, 0, bytes.length);
        report.flush();
      } else {
        changes.lines().forEach(line -> report.println(Visible.line(line)));
      }
      return 0;
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
