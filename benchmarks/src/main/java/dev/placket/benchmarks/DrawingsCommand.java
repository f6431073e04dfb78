package dev.placket.benchmarks;

import dev.placket.benchmarks.drawings.DrawingRun;
import dev.placket.benchmarks.drawings.DrawingRuns;
import dev.placket.benchmarks.outside.PlacketJars;
import dev.placket.benchmarks.pages.PageException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Probes and places each drawing of folders, all in this process and its memory. */
@Command(
    name = "drawings",
    description = {
      "Probes and places every SVG of folder trees, in this process, so give it the memory meant:",
      "java -Xmx256m -jar benchmarks.jar drawings DIR...",
      "Prints each drawing that is wrong and a table with one row per folder. Ends with 1 if a"
          + " drawing takes too long, ends with an internal error or out of memory, or is taken by"
          + " one command and refused by the other."
    },
    mixinStandardHelpOptions = true)
final class DrawingsCommand implements Callable<Integer> {
  private static final int LIMIT_SECONDS = 120;
  private static final long MIB = 1 << 20;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(arity = "1..*", paramLabel = "DIR", description = "The folder trees.")
  private List<Path> folders = List.of();

  @Mixin private Placket placket = new Placket();

  @Option(names = "--most", paramLabel = "SECONDS", description = "For each; 5 if not given.")
  private double most = 5;

  @Option(names = "--all", description = "Prints every drawing, not only what is wrong.")
  private boolean all;

  @Override
  public Integer call() throws IOException {
    placket.need();
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    out.println("# heap " + Runtime.getRuntime().maxMemory() / MIB + " MiB");
    PlacketJars command = new PlacketJars(placket.jars());
    List<DrawingRuns> table = new ArrayList<>();
    for (Path folder : folders) {
      Runs.need(folder, "name the folder of the drawings");
      table.add(runs(folder, command, out));
    }
    out.println();
    out.println(DrawingRuns.HEAD);
    table.forEach(runs -> out.println(runs.row()));
    out.flush();
    return table.stream().allMatch(DrawingRuns::sound) ? 0 : 1;
  }

  private DrawingRuns runs(Path folder, PlacketJars command, PrintWriter out) throws IOException {
    List<DrawingRun> runs = new ArrayList<>();
    for (Path file : files(folder)) {
      Path work = Files.createTempDirectory("drawings");
      try {
        DrawingRun run = run(folder, file, command, work);
        runs.add(run);
        if (all || !run.sound(most)) {
          out.println(run.line());
          out.flush();
        }
      } finally {
        Runs.delete(work);
      }
    }
    return new DrawingRuns(folder.toString(), runs, most);
  }

  private static DrawingRun run(Path folder, Path file, PlacketJars command, Path work)
      throws IOException {
    Path flats = Files.createDirectory(work.resolve("flats"));
    Files.copy(file, flats.resolve("front.svg"));
    PlacketJars.Ended probe = command.run(LIMIT_SECONDS, "probe", file.toString());
    PlacketJars.Ended fit =
        command.run(
            LIMIT_SECONDS, "fit", flats.toString(), "--out", work.resolve("made").toString());
    return new DrawingRun(folder.relativize(file).toString(), probe, fit);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> files = all.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
      if (files.isEmpty()) {
        throw new PageException(folder + ": holds no drawings; name a folder with files *.svg");
      }
      return files;
    }
  }
}
