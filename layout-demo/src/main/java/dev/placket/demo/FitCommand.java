package dev.placket.demo;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.console.Terminal;
import dev.placket.demo.options.FontOptions;
import dev.placket.demo.options.LimitOptions;
import dev.placket.demo.options.OntoOptions;
import dev.placket.demo.options.PackOptions;
import dev.placket.demo.options.ReadLimitOptions;
import dev.placket.demo.options.StrictOption;
import dev.placket.layout.sheet.Paper;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.PaperOption;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.Missing;
import dev.placket.packs.json.NoRoomRefusal;
import dev.placket.packs.placed.Weight;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Report;
import dev.placket.packs.report.RunResult;
import dev.placket.packs.report.Telling;
import dev.placket.packs.report.Units;
import dev.placket.packs.run.Packs;
import dev.placket.packs.run.RunOptions;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket fit}: a folder of flats becomes a sheet. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    description = {
      "Makes the sheets of a description, or places the flats of a folder on a ruled flat sheet.",
      "",
      "A description is a YAML file; placket starter DIR writes one to begin from. In a folder,"
          + " roles come from words in the file names: front, back, side, inside, detail, swatch,"
          + " artwork, photo, step. Values for the header are read from pack.properties in the"
          + " folder, if it is there.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 all placed; 1 an internal error; 2 wrong usage or input, nothing"
          + " written; 3 all placed, a picture is soft or the"
          + " weight does not hold; 4 no room, nothing written.",
      "",
      "Examples:",
      "  placket fit flats --paper Letter --out sheets",
      "  placket fit my-style/pack.yaml --replace",
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
      names = "--out",
      paramLabel = "DIR",
      description = "Where sheets are written; else the folder placket beside them.")
  private @Nullable Path out;

  @Option(
      names = "--paper",
      paramLabel = "NAME",
      description =
          "A0 to A6, Letter, Legal or 11x17, as in \"A5 portrait\", or two sides as in 210x148mm;"
              + " else what the description says, or A4. Without a way up a folder's sheet is"
              + " landscape, and a described one stays the way up it is.")
  private @Nullable String paper;

  @Option(names = "--blank", description = "Writes the same sheet without its flats, too.")
  private boolean blank;

  @Option(names = "--replace", description = "Overwrites existing files.")
  private boolean replace;

  @Option(
      names = "--allow-soft",
      description = "Lets pictures grow until they look blurred, rather than holding them small.")
  private boolean allowSoft;

  @Option(
      names = "--weight",
      paramLabel = "MB",
      description =
          "The most that the PDF may weigh, in million bytes; 7 if not given. Pictures get fewer"
              + " pixels for it, down to 150 per inch.")
  private double weight = Weight.DEFAULT;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      description = "What the report says printed lengths in: mm, or in for inches; else mm.")
  private String units = "mm";

  @Option(
      names = "--json",
      description =
          "Prints fit.json to standard output, also where there is no room, and the report to"
              + " standard error.")
  private boolean json;

  @Option(
      names = "--onto",
      paramLabel = "PACK",
      description = {
        "Places the flats on the worksheets of this workbook (ISO/IEC 29500) and writes a copy.",
        "A folder in WHAT that is named as a worksheet holds the flats of that worksheet."
      })
  private @Nullable Path onto;

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
      Messages.print(messages, refusal.messages());
      if (json && refusal instanceof NoRoomRefusal noRoom) {
        report.write(noRoom.json(), 0, noRoom.json().length);
        report.flush();
      }
      return ExitCodes.of(refusal);
    }
  }

  private int run() throws Refusal {
    RunResult result = result(new Telling(units(), limits.limits(), strict.asked()));
    Terminal shown = terminal ? Terminal.here() : Terminal.PLAIN;
    String said = Report.of(result.account(), shown.lines());
    if (json) {
      report.write(result.json(), 0, result.json().length);
      report.flush();
      messages.print(said);
    } else {
      report.print(said);
    }
    return result.account().falls() ? ExitCodes.SHORT : 0;
  }

  private RunResult result(Telling in) throws Refusal {
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
    PaperOption known = PaperOption.of(paper);
    return Packs.ofFolder(what, known == null ? Paper.A4.landscape() : known.paper(), how);
  }

  private RunOptions options(Path into, Telling in) throws Refusal {
    return RunOptions.into(into)
        .withReplace(replace)
        .withBlank(blank)
        .withAllowSoft(allowSoft)
        .withMaxBytes(Weight.bytes(weight))
        .withLimits(size.limits())
        .withReading(new Reading(fonts.typefaces(), readLimits.limits()))
        .withTelling(in);
  }

  /** What is of no use there is said rather than passed over. */
  private void checkForWorkbook() throws Refusal {
    if (paper != null || blank) {
      throw Refusal.input(
          (blank ? "--blank" : "--paper")
              + ": is for sheets of Placket's own; a workbook has its paper and its blank already,"
              + " leave the option out.");
    }
  }

  private RunResult described(Described read, RunOptions how) throws Refusal {
    if (read.pack().workbook() != null) {
      checkForWorkbook();
      return ontoOptions.run(read, onto, how).run();
    }
    if (onto != null) {
      throw Refusal.input(
          what + ": has no workbook; give one there, or name a folder of flats with --onto.");
    }
    return Packs.ofDescription(read, PaperOption.of(paper), how);
  }

  private Units units() throws Refusal {
    return switch (units) {
      case "mm" -> Units.MM;
      case "in" -> Units.IN;
      default -> throw Refusal.input("--units " + units + ": unknown; known are mm and in.");
    };
  }
}
