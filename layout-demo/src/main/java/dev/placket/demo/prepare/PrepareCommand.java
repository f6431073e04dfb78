package dev.placket.demo.prepare;

import dev.placket.demo.console.ExitCodes;
import dev.placket.demo.console.Messages;
import dev.placket.demo.options.FontOptions;
import dev.placket.demo.options.LimitOptions;
import dev.placket.demo.options.QuietOption;
import dev.placket.demo.options.ReadLimitOptions;
import dev.placket.demo.options.StrictOption;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.NamedRole;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.folder.Missing;
import dev.placket.packs.placed.Weight;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Visible;
import dev.placket.pictures.prepare.Clearing;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code placket prepare}: writes print-ready copies of pictures. */
@Command(
    name = "prepare",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    sortOptions = false,
    parameterListHeading = "Input:%n",
    description = {
      "Prepares print-ready copies of pictures.",
      "",
      "Clears white backgrounds, crops to the drawing"
          + " bounds, reduces pixels to what the printed size needs, and writes lossless PNG."
          + " Photographs and swatches, recognized by file name, keep their background. Originals"
          + " are never overwritten.",
      ""
    },
    footer = {
      "",
      "Exit codes: 0 all prepared; 1 internal error; 2 wrong usage or input, nothing written; 3 all"
          + " prepared, but a picture is soft or the copies are over the size limit.",
      "",
      "Example: placket prepare front.png back.svg --at 180mm --out ready",
      ""
    })
public final class PrepareCommand implements Callable<Integer> {
  private static final long MILLION = 1_000_000;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      description = "The pictures; with --for, those of the sheet by default.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--at",
      paramLabel = "LENGTH",
      description =
          "The printed length of the longer side of the drawing bounds, as in 180mm, 18cm or 7in.")
  private @Nullable String at;

  @Option(
      names = "--for",
      paramLabel = "FIT",
      description = "A fit.json; each picture is prepared for its printed size on the sheet.")
  private @Nullable Path fit;

  @Option(
      names = "--density",
      paramLabel = "N",
      description = "The maximum pixels per printed inch (default: 200).")
  private double density = DensityTargets.DEFAULT.aim();

  @Option(names = "--keep-background", description = "Keeps white backgrounds.")
  private boolean keepBackground;

  @Option(
      names = "--clear-colour",
      description = "Clears a background of any single colour, not only white.")
  private boolean clearColour;

  @Option(
      names = "--clear-enclosed",
      description =
          "Also clears white areas enclosed by lines; a white garment becomes transparent.")
  private boolean clearEnclosed;

  @Option(
      names = "--few-colours",
      description =
          "Reduces a copy to at most 256 colours where that is visually lossless (PSNR at least"
              + " 60 dB); coloured artwork shrinks to less than half.")
  private boolean fewColours;

  @Option(
      names = "--max-size",
      paramLabel = "MB",
      description =
          "The maximum size of all copies together, in million bytes (default: 7). Larger copies"
              + " get fewer pixels, down to 150 per inch.")
  private double weight = Weight.DEFAULT;

  @Option(
      names = "--max-pixels",
      paramLabel = "N",
      description = "The maximum size of the copy of a drawing, in million pixels (default: 200).")
  private long mostPixels = PrepareRun.MOST_PIXELS / MILLION;

  @Mixin private FontOptions fonts = new FontOptions();

  @Mixin private ReadLimitOptions readLimits = new ReadLimitOptions();

  @Mixin private LimitOptions limits = new LimitOptions();

  @Mixin private StrictOption strict = new StrictOption();

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      required = true,
      description = "The folder for the copies.")
  private Path out = Path.of("");

  @Option(names = "--overwrite", description = "Overwrites existing files.")
  private boolean overwrite;

  @Mixin private QuietOption quiet = new QuietOption();

  private final PrintStream report;
  private final PrintStream messages;

  /**
   * The command with where it writes.
   *
   * @param report takes the table
   * @param messages takes messages and progress
   */
  public PrepareCommand(PrintStream report, PrintStream messages) {
    this.report = report;
    this.messages = messages;
  }

  @Override
  public Integer call() {
    try {
      if (!(density > 0) || Double.isInfinite(density)) {
        throw Refusal.input(
            Fault.of(Fault.Kind.SETTING, "--density " + density, "is not a density")
                .remedy("give a number above zero, as in 200"));
      }
      long most = Weight.bytes(weight);
      if (mostPixels < 1) {
        throw Refusal.input(
            Fault.of(Fault.Kind.SETTING, "--max-pixels " + mostPixels, "is not a limit")
                .remedy("give a number above zero"));
      }
      PrintLimits least = limits.limits();
      if (clearColour && clearEnclosed) {
        throw Refusal.input(
            Fault.of(
                Fault.Kind.SETTING,
                "prepare",
                "give --clear-colour or --clear-enclosed, not both"));
      }
      List<Job> jobs = jobs(new Reading(fonts.typefaces(), readLimits.limits()));
      PrepareRun.Ready ready =
          new PrepareRun(jobs, most, mostPixels * MILLION, out, overwrite, strict.asked())
              .run(progress(jobs.size()));
      boolean soft =
          ready.done().stream().anyMatch(d -> d.state(DensityTargets.DEFAULT) == PrintState.SOFT);
      int code = soft || ready.weight() > most ? ExitCodes.SHORT : 0;
      if (code != 0 || !quiet.given()) {
        report.print(PrepareTable.of(ready, most, DensityTargets.DEFAULT, least));
        report.println("Written to " + Visible.line(out.toString()));
      }
      return code;
    } catch (Refusal refusal) {
      Messages.printFaults(messages, refusal.faults());
      return ExitCodes.of(refusal);
    }
  }

  private IntConsumer progress(int all) {
    boolean watched = System.console() != null && all > 1 && !quiet.given();
    return ready -> {
      if (watched) {
        messages.print("\r" + ready + " of " + all + " prepared" + (ready == all ? "\n" : ""));
      }
    };
  }

  private List<Job> jobs(Reading reading) throws Refusal {
    Path sheet = fit;
    String length = at;
    if ((sheet == null) == (length == null)) {
      throw Refusal.input(
          Fault.of(
              Fault.Kind.SETTING, "prepare", "give either --at, as in --at 180mm, or --for FIT"));
    }
    List<Job> all = sheet != null ? forSheet(sheet) : atLength(length == null ? "" : length);
    return all.stream().map(j -> j.with(reading)).toList();
  }

  private List<Job> atLength(String text) throws Refusal {
    if (files.isEmpty()) {
      throw Refusal.input(
          Fault.of(Fault.Kind.SETTING, "prepare", "no picture is named")
              .remedy("name one or more, as in front.png"));
    }
    Length longest = LimitOptions.length("--at", text);
    List<Fault> missing = files.stream().filter(f -> !Files.exists(f)).map(Missing::fault).toList();
    if (!missing.isEmpty()) {
      throw Refusal.input(missing);
    }
    return files.stream().map(f -> job(f, longest, NamedRole.of(f))).toList();
  }

  private List<Job> forSheet(Path sheet) throws Refusal {
    SheetFiles from = new SheetFiles(sheet, files);
    // A picture on several sheets is prepared once, for its largest place.
    Map<String, Job> once = new LinkedHashMap<>();
    List<Fault> missing = new ArrayList<>();
    for (FitSizes.Placed placed : FitSizes.read(sheet)) {
      Path file = from.find(placed.source(), placed.digest());
      String part = null;
      int mark = placed.source().lastIndexOf('#');
      if (file == null && mark > 0) {
        file = from.find(placed.source().substring(0, mark), placed.digest());
        part = placed.source().substring(mark + 1);
      }
      if (file == null && files.isEmpty()) {
        missing.add(
            Fault.unreadable(
                    placed.source(),
                    "is neither in the folder of " + sheet + " nor in the one above")
                .remedy("name the pictures, too"));
      } else if (file != null) {
        Job job = job(file, part, placed, role(sheet, placed));
        once.merge(file + "#" + part + placed.layers(), job, Job::larger);
      }
    }
    List<Job> jobs = new ArrayList<>(once.values());
    for (Path file : files) {
      if (jobs.stream().noneMatch(j -> j.file().equals(file))) {
        missing.add(
            Fault.content(file, "is on no sheet of " + sheet)
                .remedy("leave it out")
                .remedy("use --at"));
      }
    }
    if (!missing.isEmpty()) {
      throw Refusal.input(missing);
    }
    return apart(jobs);
  }

  /** Copies of files with one name in several folders have the folder's name before theirs. */
  private static List<Job> apart(List<Job> jobs) {
    Map<String, Long> copies =
        jobs.stream().collect(Collectors.groupingBy(Job::output, Collectors.counting()));
    return jobs.stream()
        .map(j -> copies.getOrDefault(j.output(), 1L) > 1 ? j.withFolder() : j)
        .toList();
  }

  private static Role role(Path sheet, FitSizes.Placed placed) throws Refusal {
    try {
      return Role.valueOf(placed.role().toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw Refusal.input(
          Fault.content(sheet, "the role '" + placed.role() + "' is unknown")
              .remedy("make the file again with fit"));
    }
  }

  private Job job(Path file, Length longest, Role role) {
    return job(file, null, new FitSizes.Placed("", "", null, List.of(), false, longest), role);
  }

  private Job job(Path file, @Nullable String part, FitSizes.Placed placed, Role role) {
    boolean whole = FlatSet.keepsGround(role);
    return new Job(
        file,
        part,
        placed.layers(),
        placed.filled(),
        "",
        placed.longest(),
        density,
        clearing(role),
        whole,
        fewColours,
        placed.digest(),
        Reading.DEFAULT);
  }

  private Clearing clearing(Role role) {
    if (keepBackground || FlatSet.keepsGround(role)) {
      return Clearing.NONE;
    }
    if (clearColour) {
      return Clearing.ANY_COLOUR;
    }
    return clearEnclosed ? Clearing.ENCLOSED_TOO : Clearing.FROM_BORDER;
  }
}
