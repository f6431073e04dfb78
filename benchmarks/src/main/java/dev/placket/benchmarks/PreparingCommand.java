package dev.placket.benchmarks;

import dev.placket.benchmarks.outside.OutsideProgram;
import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.preparing.PreparingTimes;
import dev.placket.pictures.base.PictureException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Times making pictures ready, and weighs them, beside outside programs where installed. */
@Command(
    name = "preparing",
    description = {
      "Resampling, rasterising and packing, against libvips, librsvg, Batik, optipng and pngquant.",
      "Prints the table that RESULTS.md holds under 'Pictures: preparing'; losses are marked."
    },
    mixinStandardHelpOptions = true)
final class PreparingCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(names = "--flat", paramLabel = "SVG", description = "The drawing to measure with.")
  private Path flat = Path.of("layout-demo/src/demo/mg-3107/flats/front.svg");

  @Override
  public Integer call() throws IOException, PictureException {
    Runs.need(flat, "name another with --flat");
    PrintWriter out = spec.commandLine().getOut();
    Path work = Files.createTempDirectory("preparing");
    try {
      List<String> lines = PreparingTimes.measure(flat, work);
      Provenance.lines(0).forEach(l -> out.println("# " + l));
      for (String name : List.of("vips", "rsvg-convert", "optipng", "pngquant")) {
        out.println("# " + OutsideProgram.version(name));
      }
      out.println(Row.HEAD);
      lines.forEach(out::println);
      out.flush();
      return 0;
    } finally {
      Runs.delete(work);
    }
  }
}
