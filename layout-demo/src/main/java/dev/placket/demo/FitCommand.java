package dev.placket.demo;

import dev.placket.demo.workbook.OntoOptions;
import dev.placket.demo.workbook.OntoRun;
import dev.placket.layout.sheet.Paper;
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
      "Exit codes: 0 all placed; 1 a fault of the program; 2 wrong usage or input, nothing"
          + " written; 3 all placed, a picture is soft or the"
          + " weight does not hold; 4 no room, nothing written.",
      "",
      "Example: placket fit flats --paper Letter --out sheets",
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
          "A0 to A6, Letter, Legal or 11x17; else what the description says, or A4. A folder's"
              + " sheet is landscape, a described one stays the way up it is.")
  private @Nullable String paper;

  @Option(names = "--blank", description = "Writes the same sheet without its flats, too.")
  private boolean blank;

  @Option(names = "--replace", description = "Writes files anew that are there already.")
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
      names = "--onto",
      paramLabel = "PACK",
      description = {
        "Places the flats on the worksheets of this workbook (ISO/IEC 29500) and writes a copy.",
        "A folder in WHAT that is named as a worksheet holds the flats of that worksheet."
      })
  private @Nullable Path onto;

  @Mixin private OntoOptions ontoOptions = new OntoOptions();

  private final PrintStream report;
  private final PrintStream messages;

  FitCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      return run();
    } catch (Refusal refusal) {
      refusal.messages().forEach(m -> messages.println("placket: " + m));
      return refusal.exitCode();
    }
  }

  private int run() throws Refusal {
    Path workbook = onto;
    if (workbook != null) {
      Path copy = out == null ? what.resolve("placket") : out;
      OntoRun.Result placed = ontoOptions.run(what, workbook, copy, replace, allowSoft).run();
      report.print(placed.report());
      return placed.soft() ? 3 : 0;
    }
    long most = Weight.bytes(weight);
    Paper known = paper == null ? null : named(paper);
    FitRun.Result result;
    if (Files.isRegularFile(what)) {
      Path into = out == null ? what.resolveSibling("placket") : out;
      result = new PackRun(what, into, known, blank, replace, allowSoft, most).run();
    } else {
      Path into = out == null ? what.resolve("placket") : out;
      Paper on = known == null ? Paper.A4 : known;
      result = new FitRun(what, into, on, blank, replace, allowSoft, most).run();
    }
    report.print(result.report());
    return result.soft() ? 3 : 0;
  }

  private static Paper named(String name) throws Refusal {
    return Paper.named(name)
        .orElseThrow(
            () ->
                Refusal.input(
                    "--paper "
                        + name
                        + ": unknown; known are "
                        + String.join(", ", Paper.NAMED.stream().map(Paper::name).toList())
                        + "."));
  }
}
