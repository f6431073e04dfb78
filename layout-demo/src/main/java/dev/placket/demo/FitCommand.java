package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.console.Terminal;
import dev.placket.demo.options.FontOptions;
import dev.placket.demo.options.LimitOptions;
import dev.placket.demo.options.OntoOptions;
import dev.placket.demo.options.PackOptions;
import dev.placket.demo.options.PaperNames;
import dev.placket.demo.options.QuietOption;
import dev.placket.demo.options.ReadLimitOptions;
import dev.placket.demo.options.StrictOption;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.PaperChoice;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.Missing;
import dev.placket.packs.json.NoRoomRefusal;
import dev.placket.packs.placed.Weight;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Report;
import dev.placket.packs.report.ReportOptions;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.Units;
import dev.placket.packs.run.Packs;
import dev.placket.packs.run.RunOptions;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket fit}: places flats on sheets or worksheets and writes the pack. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Input:%n",
    description = {
      "Places flats on sheets and writes the pack.",
      "",
      "Writes the sheets of a description, one ruled flat sheet for a folder, or a copy of a"
          + " workbook.",
      "",
      "A description is a YAML file; placket starter DIR writes one to begin from. In a folder,"
          + " words in the file names give the roles: front, back, side, inside, detail, swatch,"
          + " artwork, photo, step. An optional pack.properties in the folder fills the header.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 all placed; 1 internal error; 2 wrong usage or input, nothing written; 3 all"
          + " placed, but a picture is soft or a sheet is over the size limit; 4 no room, nothing"
          + " written.",
      "",
      "Examples:",
      "  placket fit flats --paper Letter --out sheets",
      "  placket fit my-style/pack.yaml --check",
      "  placket fit my-style/pack.yaml --overwrite",
      "  placket fit flats --units in --json > fit.json",
      "  placket fit flats --onto pack.xlsx --worksheet Flats",
      "  placket fit my-style/workbook.yaml",
      ""
    })
final class FitCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "WHAT",
      description = "A description (.yaml), or a folder of drawings and pictures.")
  private Path what = Path.of("");

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "The folder for the results (default: placket, in the folder or beside the description).")
  private @Nullable Path out;

  @Option(
      names = "--paper",
      paramLabel = "NAME",
      completionCandidates = PaperNames.class,
      description =
          "${COMPLETION-CANDIDATES}, as in \"A5 portrait\", or width and height as in"
              + " 210x148mm (default: the description's paper, or A4). Without an orientation, a"
              + " folder's sheet is landscape and a described sheet keeps its own.")
  private @Nullable String paper;

  @Option(names = "--blank", description = "Also writes the sheets without flats.")
  private boolean blank;

  @Option(names = "--overwrite", description = "Overwrites existing files.")
  private boolean overwrite;

  @Option(
      names = "--check",
      description = "Does everything but write files; the exit code is that of a full run.")
  private boolean check;

  @Option(
      names = "--allow-soft",
      description = "Lets pictures print larger than their pixels allow; they may look blurred.")
  private boolean allowSoft;

  @Option(
      names = "--max-size",
      paramLabel = "MB",
      description =
          "The maximum size of the PDF, in million bytes (default: 7). In a larger PDF, pictures"
              + " get fewer pixels, down to 150 per inch.")
  private double weight = Weight.DEFAULT;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      description =
          "The unit of printed lengths in the report: mm, or in for inches (default: mm).")
  private String units = "mm";

  @Option(
      names = "--json",
      description =
          "Prints fit.json to standard output, also if there is no room, and the report to"
              + " standard error.")
  private boolean json;

  @Option(
      names = "--onto",
      paramLabel = "PACK",
      description = {
        "Places the flats on the worksheets of this workbook (ISO/IEC 29500) and writes a copy. A"
            + " subfolder of WHAT with the name of a worksheet gives the flats of that worksheet."
      })
  private @Nullable Path onto;

  @Mixin private QuietOption quiet = new QuietOption();

  @Mixin private FontOptions fonts = new FontOptions();

  @Mixin private ReadLimitOptions readLimits = new ReadLimitOptions();

  @Mixin private PackOptions size = new PackOptions();

  @Mixin private LimitOptions limits = new LimitOptions();

  @Mixin private StrictOption strict = new StrictOption();

  @Mixin private OntoOptions ontoOptions = new OntoOptions();

  private final PrintStream report;
  private final PrintStream messages;
  private final boolean terminal;

  /**
   * The command with where it writes.
   *
   * @param report takes the report, or {@code fit.json}
   * @param messages takes what is wrong, and the report beside {@code fit.json}
   * @param terminal whether these are what the process was started with, so that a terminal's width
   *     counts
   */
  FitCommand(PrintStream report, PrintStream messages, boolean terminal) {
    this.report = report;
    this.messages = messages;
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try {
      return run();
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      if (json && refusal instanceof NoRoomRefusal noRoom) {
        report.write(noRoom.json(), 0, noRoom.json().length);
        report.flush();
      }
      return ExitCodes.of(refusal);
    }
  }

  private int run() throws Refusal {
    RunResult result = result(new ReportOptions(units(), limits.limits(), strict.asked()));
    int code = result.account().falls() ? ExitCodes.SHORT : 0;
    if (json) {
      report.write(result.json(), 0, result.json().length);
      report.flush();
    }
    if (code != 0 || !quiet.given()) {
      Terminal shown = terminal ? Terminal.here() : Terminal.PLAIN;
      (json ? messages : report).print(Report.of(result.account(), shown.lines()));
    }
    return code;
  }

  private RunResult result(ReportOptions in) throws Refusal {
    Missing.check(what);
    if (Files.isRegularFile(what)) {
      RunOptions how = options(out == null ? what.resolveSibling("placket") : out, in);
      return described(PackReader.read(what), how);
    }
    RunOptions how = options(out == null ? what.resolve("placket") : out, in);
    Path workbook = onto;
    if (workbook != null) {
      Missing.check(workbook);
      checkForWorkbook();
      return ontoOptions.run(what, workbook, how).run();
    }
    PaperChoice known = PaperChoice.of(paper);
    return Packs.ofFolder(what, known == null ? PaperSize.A4.landscape() : known.paper(), how);
  }

  private RunOptions options(Path into, ReportOptions in) throws Refusal {
    return RunOptions.into(into)
        .withOverwrite(overwrite)
        .withCheck(check)
        .withBlank(blank)
        .withAllowSoft(allowSoft)
        .withMaxBytes(Weight.bytes(weight))
        .withLimits(size.limits())
        .withReading(new Reading(fonts.typefaces(), readLimits.limits()))
        .withReporting(in)
        .withRanges(ontoOptions.ranges());
  }

  /** Refuses options that have no effect on a workbook, rather than ignoring them. */
  private void checkForWorkbook() throws Refusal {
    if (paper != null || blank) {
      throw Refusal.input(
          Fault.of(
                  Fault.Kind.SETTING,
                  blank ? "--blank" : "--paper",
                  "does not apply to a workbook, which has its own paper and blank sheet")
              .remedy("leave the option out"));
    }
  }

  private RunResult described(Described read, RunOptions how) throws Refusal {
    if (read.pack().workbook() != null) {
      checkForWorkbook();
      return ontoOptions.run(read, onto, how).run();
    }
    if (onto != null) {
      throw Refusal.input(
          Fault.content(what, "names no workbook")
              .remedy("name one there")
              .remedy("give a folder of flats", WorkbookSetting.WORKBOOK));
    }
    return Packs.ofDescription(read, PaperChoice.of(paper), how);
  }

  private Units units() throws Refusal {
    return switch (units) {
      case "mm" -> Units.MM;
      case "in" -> Units.IN;
      default ->
          throw Refusal.input(
              Fault.of(Fault.Kind.SETTING, "--units " + units, "is unknown")
                  .remedy("give mm or in"));
    };
  }
}
