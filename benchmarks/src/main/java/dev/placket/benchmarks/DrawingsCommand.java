package dev.placket.benchmarks;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
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

/** Times probing and placing each drawing of a folder, cold and in little memory. */
@Command(
    name = "drawings",
    description = {
      "Probes and places every SVG of a folder tree, each in a new JVM of 256 MiB.",
      "Ends with 1 if one takes too long, ends with 1 itself, or is probed but not placed."
    },
    mixinStandardHelpOptions = true)
final class DrawingsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "DIR", description = "The folder tree.")
  private Path folder = Path.of(".");

  @Mixin private Placket placket = new Placket();

  @Option(names = "--most", paramLabel = "SECONDS", description = "For each; 5 if not given.")
  private double most = 5;

  @Override
  public Integer call() throws IOException {
    placket.need();
    Runs.need(folder, "name the folder of the drawings");
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    out.println("probe: code, s; fit: code, s; file");
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
    }
    int bad = 0;
    double longest = 0;
    for (Path file : files) {
      Path work = Files.createTempDirectory("drawings");
      try {
        Path flats = Files.createDirectory(work.resolve("flats"));
        Files.copy(file, flats.resolve("front.svg"));
        Runs.Ended probe = run(work, "probe", file.toString());
        Runs.Ended fit =
            run(work, "fit", flats.toString(), "--out", work.resolve("made").toString());
        double slower = Math.max(probe.ms(), fit.ms()) / 1000;
        longest = Math.max(longest, slower);
        boolean crashed = probe.code() == 1 || fit.code() == 1;
        boolean apart = (probe.code() == 0) != Runs.placed(fit.code());
        bad += slower > most || crashed || apart ? 1 : 0;
        out.printf(
            Locale.ROOT,
            "%d %.1f  %d %.1f  %s%n",
            probe.code(),
            probe.ms() / 1000,
            fit.code(),
            fit.ms() / 1000,
            folder.relativize(file));
        out.flush();
      } finally {
        Runs.delete(work);
      }
    }
    out.printf(
        Locale.ROOT,
        "%d drawings, longest %.1f s, %d too slow, crashed or not agreed on%n",
        files.size(),
        longest,
        bad);
    out.flush();
    return bad == 0 ? 0 : 1;
  }

  private Runs.Ended run(Path work, String... arguments) {
    return placket.run(work.resolve("printed.txt"), 256, List.of(arguments));
  }
}
