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
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Times the whole command, cold, against a command that does nothing. */
@Command(
    name = "cold",
    description = {
      "Two flats, the demo pack, and thirty flats onto ten worksheets, each in a new JVM by the"
          + " launcher, over an empty command started plainly.",
      "1 is the exit code if two flats take more than 3.5 times as long, or thirty more than 7."
    },
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

  private static final double NONE = Double.POSITIVE_INFINITY;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private Placket placket = new Placket();

  @Option(names = "--demo", paramLabel = "FILE", description = "The demo's description.")
  private Path demo = Path.of("layout-demo/src/demo/mg-3107/pack.yaml");

  @Option(names = "--runs", paramLabel = "N", description = "How many runs of each.")
  private int runs = 9;

  /** One thing to do, the most it may take in empty commands, and what it took. */
  private record Job(String name, List<String> arguments, double most, List<Double> times) {
    Job(String name, List<String> arguments, double most) {
      this(name, arguments, most, new ArrayList<>());
    }
  }

  @Override
  public Integer call() throws IOException {
    placket.need();
    Runs.need(demo, "name the description of the demo with --demo");
    Path work = Files.createTempDirectory("cold");
    List<Double> empty = new ArrayList<>();
    List<Job> jobs = jobs(work);
    try {
      // In turns, so that a slow spell of the machine meets all; the first turn fills the caches.
      for (int i = 0; i <= runs; i++) {
        empty.add(empty(work));
        for (Job job : jobs) {
          job.times().add(time(work, job, i));
        }
      }
    } finally {
      Runs.delete(work);
    }
    return report(empty.subList(1, empty.size()), jobs);
  }

  private List<Job> jobs(Path work) throws IOException {
    Path two = Files.createDirectory(work.resolve("two"));
    Files.writeString(two.resolve("front.svg"), FLAT);
    Files.writeString(two.resolve("back.svg"), FLAT);
    Path thirty = Files.createDirectory(work.resolve("thirty"));
    TenWorksheets.flats(thirty, FLAT);
    Path workbook = work.resolve("pack.xlsx");
    TenWorksheets.workbook(workbook);
    return List.of(
        new Job("two flats", List.of("fit", two.toString()), 3.5),
        new Job("the demo pack", List.of("fit", demo.toString()), NONE),
        new Job(
            "thirty flats onto ten worksheets",
            List.of("fit", thirty.toString(), "--onto", workbook.toString()),
            7));
  }

  private int report(List<Double> empty, List<Job> jobs) {
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    out.println("empty command: " + Runs.spread(empty));
    boolean held = true;
    for (Job job : jobs) {
      List<Double> times = job.times().subList(1, job.times().size());
      double ratio = Runs.median(times) / Runs.median(empty);
      out.printf(Locale.ROOT, "%s: %s, ratio %.2f", job.name(), Runs.spread(times), ratio);
      if (job.most() < NONE) {
        boolean right = ratio <= job.most();
        held &= right;
        out.printf(Locale.ROOT, ", at most %.1f: %s", job.most(), right ? "held" : "not held");
      }
      out.println();
    }
    out.flush();
    return held ? 0 : 1;
  }

  private static double empty(Path work) {
    List<String> arguments = List.of("-cp", Runs.classPath(), EmptyCommand.class.getName());
    return Runs.java(work.resolve("empty.txt"), arguments).ms();
  }

  private double time(Path work, Job job, int run) throws IOException {
    Path printed = work.resolve("printed.txt");
    Path made = work.resolve("made");
    List<String> arguments = new ArrayList<>(job.arguments());
    arguments.addAll(List.of("--out", made.resolve(job.name() + run).toString()));
    Runs.Ended ended = placket.run(printed, arguments);
    if (!Runs.placed(ended.code())) {
      throw new PageException(
          job.name() + ": ended with " + ended.code() + ": " + Files.readString(printed).strip());
    }
    return ended.ms();
  }
}
