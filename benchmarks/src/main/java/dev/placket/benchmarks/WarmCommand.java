package dev.placket.benchmarks;

import dev.placket.benchmarks.drawings.PlainBatik;
import dev.placket.benchmarks.pages.PageException;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Times reading and drawing the drawings of a folder, warm, beside the library alone. */
@Command(
    name = "warm",
    description = {
      "Reads and renders every SVG of a folder, in rounds, each round also by Batik alone.",
      "Processor time of this thread, the best round of each; the ratio is what compares."
    },
    mixinStandardHelpOptions = true)
final class WarmCommand implements Callable<Integer> {
  private static final int WIDTH = 600;
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "DIR", description = "The folder.")
  private Path folder = Path.of(".");

  @Option(names = "--rounds", paramLabel = "N", description = "Rounds; 30 if not given.")
  private int rounds = 30;

  @Override
  public Integer call() throws IOException, PictureException {
    Runs.need(folder, "name the folder of the drawings");
    if (rounds < 1) {
      throw new PageException("--rounds is above zero, not " + rounds);
    }
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
    }
    double here = Double.MAX_VALUE;
    double reading = Double.MAX_VALUE;
    double plain = Double.MAX_VALUE;
    for (int i = 0; i < rounds; i++) {
      long read = 0;
      long both = 0;
      long batik = 0;
      for (Path file : files) {
        byte[] bytes = Files.readAllBytes(file);
        long start = CLOCK.getCurrentThreadCpuTime();
        Drawing drawing = read(file, bytes);
        read += CLOCK.getCurrentThreadCpuTime() - start;
        ViewBox v = drawing.viewBox();
        drawing.render(WIDTH, new InkedBox(v.x(), v.y(), v.x() + v.width(), v.y() + v.height()));
        long middle = CLOCK.getCurrentThreadCpuTime();
        both += middle - start;
        PlainBatik.render(bytes, WIDTH);
        batik += CLOCK.getCurrentThreadCpuTime() - middle;
      }
      reading = Math.min(reading, read / 1e6);
      here = Math.min(here, both / 1e6);
      plain = Math.min(plain, batik / 1e6);
    }
    out.printf(
        Locale.ROOT,
        "%d drawings, best of %d: here %.0f ms (reading %.0f), Batik alone %.0f ms, ratio %.3f%n",
        files.size(),
        rounds,
        here,
        reading,
        plain,
        here / plain);
    out.flush();
    return 0;
  }

  private static Drawing read(Path file, byte[] bytes) throws PictureException {
    String name = file.getFileName().toString();
    return (Drawing) PictureReader.read(PictureSource.of(name, bytes), ReadLimits.DEFAULT);
  }
}
