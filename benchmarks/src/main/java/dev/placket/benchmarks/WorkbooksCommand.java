package dev.placket.benchmarks;

import dev.placket.benchmarks.outside.PlacketJars;
import dev.placket.benchmarks.pages.PageException;
import dev.placket.benchmarks.workbooks.WorkbookPlacing;
import dev.placket.benchmarks.workbooks.WorkbookPlacing.Outcome;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Places two flats onto every workbook of a folder and judges the copies. */
@Command(
    name = "workbooks",
    description = {
      "Places two flats onto every file of a folder, in this process, so give it the memory meant.",
      "Says of each: placed, no room, refused (why) or crashed; whether the copy opens in a second"
          + " library where the workbook does, and which part differs that should not.",
      "1 is the exit code if one crashed, does not open, or differs."
    },
    mixinStandardHelpOptions = true)
final class WorkbooksCommand implements Callable<Integer> {
  private static final String FLAT =
      """
      <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 100">
        <path d="M10 10 H80 V90 H10 Z" fill="none" stroke="#000"/>
      </svg>
      """;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "DIR", description = "The folder of workbooks.")
  private Path folder = Path.of(".");

  @Mixin private Placket placket = new Placket();

  @Option(names = "--brief", description = "Prints the sums and what is wrong alone.")
  private boolean brief;

  @Override
  public Integer call() throws IOException {
    placket.need();
    Runs.need(folder, "name a folder of workbooks");
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    out.println(WorkbookPlacing.HEAD);
    List<WorkbookPlacing> all = new ArrayList<>();
    PlacketJars command = new PlacketJars(placket.jars());
    Path work = Files.createTempDirectory("workbooks");
    try {
      Path flats = Files.createDirectory(work.resolve("flats"));
      Files.writeString(flats.resolve("front.svg"), FLAT);
      Files.writeString(flats.resolve("back.svg"), FLAT.replace("H80", "H78"));
      for (Path file : files()) {
        Path made = work.resolve("out" + all.size());
        WorkbookPlacing one = WorkbookPlacing.of(command, flats, 2, file, made);
        all.add(one);
        if (!brief || !one.sound()) {
          out.println(one.line());
          out.flush();
        }
        if (Files.exists(made)) {
          Runs.delete(made);
        }
      }
    } finally {
      Runs.delete(work);
    }
    sums(all).forEach(out::println);
    out.flush();
    return all.stream().allMatch(WorkbookPlacing::sound) ? 0 : 1;
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> files = all.filter(Files::isRegularFile).sorted().toList();
      if (files.isEmpty()) {
        throw new PageException(folder + ": holds no files; name a folder of workbooks");
      }
      return files;
    }
  }

  private static List<String> sums(List<WorkbookPlacing> all) {
    List<String> lines = new ArrayList<>();
    lines.add("# " + all.size() + " files");
    for (Outcome o : Outcome.values()) {
      long n = all.stream().filter(p -> p.outcome() == o).count();
      lines.add("# " + o.toString().toLowerCase(Locale.ROOT).replace('_', ' ') + ": " + n);
    }
    List<WorkbookPlacing> placed = all.stream().filter(p -> p.outcome() == Outcome.PLACED).toList();
    lines.add("# copies that open: " + placed.stream().filter(WorkbookPlacing::opens).count());
    long closed = placed.stream().filter(p -> p.opened() && !p.opens()).count();
    lines.add("# copies that do not open though the workbook does: " + closed);
    long differ = placed.stream().filter(p -> p.differs() != null).count();
    lines.add("# copies with a part that differs and should not: " + differ);
    WorkbookPlacing slowest =
        all.stream().max(Comparator.comparingDouble(WorkbookPlacing::seconds)).orElseThrow();
    lines.add(
        String.format(Locale.ROOT, "# longest: %.1f s (%s)", slowest.seconds(), slowest.file()));
    return lines;
  }
}
