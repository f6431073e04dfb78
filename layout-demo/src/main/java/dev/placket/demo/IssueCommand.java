package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.console.Terminal;
import dev.placket.demo.options.FontOptions;
import dev.placket.demo.options.LimitOptions;
import dev.placket.demo.options.PackOptions;
import dev.placket.demo.options.PaperNames;
import dev.placket.demo.options.QuietOption;
import dev.placket.demo.options.ReadLimitOptions;
import dev.placket.demo.options.StrictOption;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.PaperChoice;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.Missing;
import dev.placket.packs.issue.IssueChanges;
import dev.placket.packs.issue.PackIssue;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Report;
import dev.placket.packs.report.ReportOptions;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.Units;
import dev.placket.packs.run.RunOptions;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Visible;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.run.WorkbookRanges;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket issue}: a revision in a folder that is never written again. */
@Command(
    name = "issue",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Description:%n",
    description = {
      "Issues the revision of a style: writes its pack into a new folder, which is never written"
          + " again.",
      "",
      "The folder and its files have the style number, the revision and the date of the description"
          + " in their names. A manifest in it has the SHA-256 digests of all files read and"
          + " written. A revision that was issued with other content, or is older than the last"
          + " issue, is refused.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 issued, or this issue exists already; 1 internal error; 2 wrong usage or input,"
          + " nothing written; 3 issued, but a picture is soft or a sheet is over the size limit;"
          + " 4 no room, nothing written.",
      "",
      "Example: placket issue my-style/pack.yaml",
      ""
    })
final class IssueCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PACK.yaml", description = "The description.")
  private Path file = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "The folder that has a folder for each issue (default: issues, beside the description).")
  private @Nullable Path root;

  @Option(
      names = "--paper",
      paramLabel = "NAME",
      completionCandidates = PaperNames.class,
      description =
          "${COMPLETION-CANDIDATES}, or width and height as in 210x148mm (default: the"
              + " description's paper).")
  private @Nullable String paper;

  @Option(
      names = "--check",
      description = "Does everything but write files; the exit code is that of a full run.")
  private boolean check;

  @Option(
      names = "--no-marks",
      description = "Does not mark on the sheets what changed since the issue before.")
  private boolean unmarked;

  @Mixin private QuietOption quiet = new QuietOption();

  @Mixin private FontOptions fonts = new FontOptions();

  @Mixin private ReadLimitOptions readLimits = new ReadLimitOptions();

  @Mixin private PackOptions size = new PackOptions();

  @Mixin private LimitOptions limits = new LimitOptions();

  @Mixin private StrictOption strict = new StrictOption();

  private final PrintStream report;
  private final PrintStream messages;

  IssueCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      return issue();
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    }
  }

  private int issue() throws Refusal {
    Missing.check(file);
    Described described = PackReader.read(file);
    if (described.pack().workbook() != null) {
      throw Refusal.input(
          Fault.content(file, "is for a workbook, which has no issues")
              .remedy("issue a description with sheets"));
    }
    ReportOptions reporting = new ReportOptions(Units.MM, limits.limits(), strict.asked());
    RunOptions how =
        RunOptions.into(Path.of(""))
            .withCheck(check)
            .withLimits(size.limits())
            .withReading(new Reading(fonts.typefaces(), readLimits.limits()))
            .withReporting(reporting)
            .withRanges(new WorkbookRanges(WorkbookLimits.DEFAULT));
    Path folder = root == null ? file.resolveSibling("issues") : root;
    PackIssue.Issued issued =
        new PackIssue(described, folder, Main.VERSION, !unmarked).issue(PaperChoice.of(paper), how);
    RunResult result = issued.result();
    if (result == null) {
      print("Already issued: " + Visible.line(issued.folder().toString()) + "; nothing to write.");
      return 0;
    }
    int code = result.account().falls() ? ExitCodes.SHORT : 0;
    if (code != 0 || !quiet.given()) {
      report.print(Report.of(result.account(), Terminal.PLAIN.lines()));
    }
    Path before = issued.before();
    if (before == null) {
      print("The first issue of this style.");
    } else if (check) {
      print("The issue before it: " + Visible.line(before.toString()));
    } else {
      IssueChanges.between(before, issued.folder())
          .lines()
          .forEach(line -> print(Visible.line(line)));
    }
    return code;
  }

  private void print(String line) {
    if (!quiet.given()) {
      report.println(line);
    }
  }
}
