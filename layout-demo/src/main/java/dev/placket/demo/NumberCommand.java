package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.packs.compose.CalloutCodes;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.run.Numbering;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Visible;
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

/** {@code placket number}: codes for the callouts of a description. */
@Command(
    name = "number",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Description:%n",
    description = {
      "Assigns a number to each callout with 'mark: new' in a description, and a code from D1 on to"
          + " each that names a detail, in reading order. Codes in use are never changed. A code"
          + " that is missing between those in use is added to 'retired' and never assigned"
          + " again.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 written, or nothing to assign; 1 internal error; 2 an input is at fault,"
          + " nothing written.",
      "",
      "Example: placket number pack.yaml",
      ""
    })
final class NumberCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PACK.yaml", description = "The description; rewritten in place.")
  private Path file = Path.of("");

  @Option(names = "--check", description = "Prints the codes and writes nothing.")
  private boolean check;

  private final PrintStream report;
  private final PrintStream messages;

  NumberCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      number();
      return 0;
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    }
  }

  private void number() throws Refusal {
    Numbering numbering = Numbering.of(file, Reading.DEFAULT);
    CalloutCodes codes = numbering.codes();
    for (CalloutCodes.Given given : codes.given()) {
      report.println(
          given.code()
              + "  "
              + Visible.line(given.flat() + ", " + given.callout())
              + " (sheet "
              + Visible.line(given.sheet())
              + ")");
    }
    if (!codes.retired().isEmpty()) {
      report.println("Retired: " + String.join(", ", codes.retired()));
    }
    if (codes.given().isEmpty() && codes.retired().isEmpty()) {
      report.println("No callout has 'mark: new'; nothing to assign.");
    } else if (check) {
      report.println("Nothing written.");
    } else {
      write(numbering.text());
    }
  }

  /** The file itself, where the path is a link to it. */
  private Path real() throws Refusal {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      throw Refusal.input(
          Fault.unreadable(file, "cannot be found again")
              .remedy("check that it exists and is readable"));
    }
  }

  private void write(String text) throws Refusal {
    Path whole = real();
    Path folder = whole.getParent();
    Path name = whole.getFileName();
    if (folder == null || name == null) {
      throw new IllegalStateException("a description without a folder: " + whole);
    }
    Outputs outputs = new Outputs(folder, true);
    List<Fault> obstacles = outputs.obstacles(List.of(name.toString()));
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
    outputs.write(Map.of(name.toString(), text.getBytes(StandardCharsets.UTF_8)));
    report.println("Written: " + Visible.line(file.toString()));
  }
}
