package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.packs.compose.Revision;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Visible;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.run.WorkbookRanges;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket revise}: takes the revised values of a sample into the list of points. */
@Command(
    name = "revise",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Description and sample:%n",
    description = {
      "Takes the revised values of a sample into the list of points of measure. Without --write it"
          + " only prints what would change. What was measured before keeps the values that it was"
          + " judged by: they are written into its rows. All else in the files stays as it is.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 printed or written; 1 internal error; 2 an input is at fault, nothing"
          + " written.",
      "",
      "Example: placket revise pack.yaml fit-2 --write",
      ""
    })
final class ReviseCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "PACK.yaml", description = "The description.")
  private Path file = Path.of("");

  @Parameters(index = "1", paramLabel = "SAMPLE", description = "A sample under 'checks'.")
  private String sample = "";

  @Option(names = "--write", description = "Writes the changes.")
  private boolean write;

  private final PrintStream report;
  private final PrintStream messages;

  ReviseCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      revise();
      return 0;
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    }
  }

  private void revise() throws Refusal {
    Described described = PackReader.read(file);
    Revision revision = Revision.of(described, sample, new WorkbookRanges(WorkbookLimits.DEFAULT));
    if (revision.changes().isEmpty()) {
      report.println("No revised value of " + Visible.line(sample) + " differs from the list.");
      return;
    }
    for (Revision.Change change : revision.changes()) {
      report.println(
          "Point %s, size %s: %s becomes %s%s"
              .formatted(
                  Visible.line(change.code()),
                  Visible.line(change.size()),
                  change.before(),
                  change.after(),
                  change.graded() ? ", and all other sizes change by as much" : ""));
    }
    for (Revision.Kept kept : revision.kept()) {
      report.println(
          "  %s, size %s, keeps %s as asked at %s"
              .formatted(
                  Visible.line(kept.sample()),
                  Visible.line(kept.size()),
                  kept.asked(),
                  Visible.line(kept.code())));
    }
    Map<String, String> files = revision.files();
    String names = String.join(", ", files.keySet().stream().map(Visible::line).toList());
    if (!write) {
      report.println("Nothing written. With --write, this changes " + names + ".");
      return;
    }
    for (Map.Entry<String, String> each : files.entrySet()) {
      write(described.folder().resolve(each.getKey()), each.getValue());
    }
    report.println("Written: " + names);
    report.println("State the next revision before the pack is issued again.");
  }

  private static void write(Path path, String text) throws Refusal {
    Path whole = real(path);
    Path folder = whole.getParent();
    Path name = whole.getFileName();
    if (folder == null || name == null) {
      throw new IllegalStateException("a file without a folder: " + whole);
    }
    Outputs outputs = new Outputs(folder, true);
    List<Fault> obstacles = outputs.obstacles(List.of(name.toString()));
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
    outputs.write(Map.of(name.toString(), text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The file itself, where the path is a link to it. */
  private static Path real(Path path) throws Refusal {
    try {
      return path.toRealPath();
    } catch (IOException e) {
      throw Refusal.input(
          Fault.unreadable(path, "cannot be found again")
              .remedy("check that it exists and is readable"));
    }
  }
}
