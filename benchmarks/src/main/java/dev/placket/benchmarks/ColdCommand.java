package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Times the whole command, cold, against a command that does nothing. */
@Command(
    name = "cold",
    description = "Two flats to PDF and preview, each in a new JVM, over an empty command.",
    mixinStandardHelpOptions = true)
final class ColdCommand implements Callable<Integer> {
  private static final String FLAT =
      """
      <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 600">
        <path d="M60 40 L160 20 Q200 60 240 20 L340 40 L390 240 L330 260 L310 180 L310 580 L90 580
          L90 180 L70 260 L10 240 Z" fill="none" stroke="#000" stroke-width="3"/>
        <path d="M200 50 V580" fill="none" stroke="#000" stroke-width="1.5" stroke-dasharray="6 6"/>
      </svg>
      """;

  private static final String WORKBOOK = "pack.xlsx";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(names = "--jar", paramLabel = "JAR", description = "The command placket.")
  private Path jar = Path.of("layout-demo/target/placket.jar");

  @Option(
      names = "--onto",
      description = "Times thirty flats onto a workbook of ten worksheets instead.")
  private boolean onto;

  @Option(names = "--runs", paramLabel = "N", description = "How many runs of each.")
  private int runs = 9;

  @Option(
      names = "--most",
      paramLabel = "RATIO",
      description = "1 is the exit code above it; 5, or 6 with --onto, if not given.")
  private @Nullable Double limit;

  @Override
  public Integer call() throws IOException {
    Runs.need(jar, "build it with mvn package, or name it with --jar");
    PrintWriter out = spec.commandLine().getOut();
    Path work = Files.createTempDirectory("cold");
    List<Double> whole = new ArrayList<>();
    List<Double> empty = new ArrayList<>();
    try {
      Path folder = Files.createDirectory(work.resolve("flats"));
      if (onto) {
        TenWorksheets.flats(folder, FLAT);
        TenWorksheets.workbook(work.resolve(WORKBOOK));
      } else {
        Files.writeString(folder.resolve("front.svg"), FLAT);
        Files.writeString(folder.resolve("back.svg"), FLAT);
      }
      // In turns, so that a slow spell of the machine meets both; the first pair fills the caches.
      for (int i = 0; i <= runs; i++) {
        double emptyMs = empty(work);
        double wholeMs = whole(work, folder, i);
        if (i > 0) {
          empty.add(emptyMs);
          whole.add(wholeMs);
        }
      }
    } finally {
      Runs.delete(work);
    }
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    out.println("empty command: " + Runs.spread(empty));
    String what = onto ? "thirty flats onto ten worksheets: " : "two flats to PDF and preview: ";
    out.println(what + Runs.spread(whole));
    double ratio = Runs.median(whole) / Runs.median(empty);
    double most = limit != null ? limit : onto ? 6 : 5;
    boolean held = ratio <= most;
    out.printf(
        Locale.ROOT, "ratio %.2f, at most %.2f: %s%n", ratio, most, held ? "held" : "not held");
    out.flush();
    return held ? 0 : 1;
  }

  private static double empty(Path work) {
    List<String> arguments = List.of("-cp", Runs.classPath(), EmptyCommand.class.getName());
    return Runs.java(work.resolve("empty.txt"), arguments).ms();
  }

  private double whole(Path work, Path folder, int run) throws IOException {
    Path printed = work.resolve("whole.txt");
    Path made = work.resolve("made" + run);
    List<String> arguments =
        new ArrayList<>(
            List.of("-jar", jar.toString(), "fit", folder.toString(), "--out", made.toString()));
    if (onto) {
      arguments.addAll(List.of("--onto", work.resolve(WORKBOOK).toString()));
    }
    Runs.Ended ended = Runs.java(printed, arguments);
    if (!Runs.placed(ended.code())) {
      throw new PageException(
          jar + ": ended with " + ended.code() + ": " + Files.readString(printed).strip());
    }
    return ended.ms();
  }
}
