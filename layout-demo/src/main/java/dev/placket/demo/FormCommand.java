package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.options.QuietOption;
import dev.placket.packs.output.Outputs;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.run.Samples;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Visible;
import dev.placket.workbooks.form.FormWorkbook;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.run.WorkbookRanges;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket form}: the workbook in which the measured values of a sample are filled in. */
@Command(
    name = "form",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Description and sample:%n",
    description = {
      "Writes the form of a sample as a workbook (.xlsx) to fill in, one worksheet for each size."
          + " Codes, asked values, tolerances and open comments are in it, locked; the cells to"
          + " fill in are white. The description reads it back under 'samples'.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 written; 1 internal error; 2 an input is at fault or the file exists, nothing"
          + " written.",
      "",
      "Example: placket form pack.yaml fit-2",
      ""
    })
final class FormCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "PACK.yaml", description = "The description.")
  private Path file = Path.of("");

  @Parameters(index = "1", paramLabel = "SAMPLE", description = "A sample under 'checks'.")
  private String sample = "";

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "The folder for SAMPLE.xlsx (default: that of the description).")
  private @Nullable Path out;

  @Option(names = "--overwrite", description = "Overwrites an existing file.")
  private boolean overwrite;

  @Mixin private QuietOption quiet = new QuietOption();

  private final PrintStream report;
  private final PrintStream messages;

  FormCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      write();
      return 0;
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    }
  }

  private void write() throws Refusal {
    Samples samples = Samples.read(file, new WorkbookRanges(WorkbookLimits.DEFAULT));
    FormWorkbook form = FormWorkbook.of(samples.list(), samples.check(sample));
    Path given = out;
    Path folder = given == null ? samples.described().folder() : given;
    String name = sample + ".xlsx";
    Outputs outputs = new Outputs(folder, overwrite);
    List<Fault> obstacles = outputs.obstacles(List.of(name));
    if (!obstacles.isEmpty()) {
      throw Refusal.input(obstacles);
    }
    outputs.write(Map.of(name, form.bytes()));
    if (!quiet.given()) {
      report.println("Written: " + Visible.line(folder.resolve(name).toString()));
      report.println("When it is filled in and beside the description, name it there:");
      report.println("  samples:");
      report.println("    files:");
      report.println(
          "      - {workbook: " + name + ", range: [" + String.join(", ", form.ranges()) + "]}");
    }
  }
}
