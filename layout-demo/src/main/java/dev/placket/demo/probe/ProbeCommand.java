package dev.placket.demo.probe;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.options.FontOptions;
import dev.placket.demo.options.LimitOptions;
import dev.placket.demo.options.ReadLimitOptions;
import dev.placket.demo.options.StrictOption;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.fault.Fault;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket probe}: reports what is in pictures. */
@Command(
    name = "probe",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Input:%n",
    description = {
      "Reports what is in pictures and how they print.",
      "",
      "Lists format, pixels, stated density, background and drawing"
          + " bounds; with --at also the effective print density, the wanted pixels, and the"
          + " printed size of the finest lines, lettering and stitch gaps.",
      "",
      "Recognizes the format by content, not by file name. Writes no files.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 all read; 1 internal error; 2 wrong usage, or a file cannot be read (the"
          + " others are still reported).",
      "",
      "Example: placket probe front.png back.svg --at 180mm",
      ""
    })
public final class ProbeCommand implements Callable<Integer> {
  /** No picture of a pack prints longer. */
  private static final double LONGEST_MM = 10_000;

  @Parameters(paramLabel = "FILE", arity = "1..*", description = "The pictures.")
  private List<Path> files = List.of();

  @Option(
      names = "--at",
      paramLabel = "LENGTH",
      description =
          "The printed length of the longer side of the drawing bounds, as in 180mm or 7in.")
  private @Nullable String at;

  @Option(names = "--json", description = "Prints JSON (placket-probe/1) instead of the table.")
  private boolean json;

  @Mixin private ReadLimitOptions limits = new ReadLimitOptions();

  @Mixin private FontOptions fonts = new FontOptions();

  @Mixin private LimitOptions warnings = new LimitOptions();

  @Mixin private StrictOption strict = new StrictOption();

  private final PrintStream report;
  private final PrintStream messages;

  /**
   * The command.
   *
   * @param report takes the table or the JSON
   * @param messages takes messages about files that cannot be read
   */
  public ProbeCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      return run();
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    }
  }

  private int run() throws Refusal {
    Length length = length();
    PrintLimits least = warnings.limits();
    ProbeRun run =
        new ProbeRun(
            new Reading(fonts.typefaces(), limits.limits()),
            length,
            new Progress(messages, System.console() != null && !json));
    run.run(new ArrayList<>(files));
    if (json) {
      report.print(ProbeJson.of(run.probed, least));
    } else if (!run.probed.isEmpty()) {
      report.print(ProbeTable.of(run.probed, least));
    }
    report.flush();
    List<Fault> refused = new ArrayList<>(run.refused);
    if (strict.asked()) {
      run.probed.forEach(p -> refused.addAll(p.differences()));
    }
    Messages.printFaults(messages, refused);
    return refused.isEmpty() ? 0 : ExitCodes.INPUT;
  }

  private @Nullable Length length() throws Refusal {
    if (at == null) {
      return null;
    }
    try {
      Length length = Length.parse(at);
      if (length.pt() > 0 && length.mm() <= LONGEST_MM) {
        return length;
      }
      if (length.mm() > LONGEST_MM) {
        throw Refusal.input(
            Fault.of(Fault.Kind.SETTING, "--at " + at, "is over the maximum of 10000 mm")
                .remedy("give the printed length, as in 180mm or 7in"));
      }
    } catch (IllegalArgumentException e) {
      // Reported below, for everything that is not a length.
    }
    throw Refusal.input(
        Fault.of(Fault.Kind.SETTING, "--at " + at, "is not a printed length")
            .remedy("write it as in 180mm or 7in"));
  }
}
