package dev.placket.benchmarks;

import dev.placket.benchmarks.outside.Row;
import dev.placket.benchmarks.reading.HeaderTimes;
import dev.placket.benchmarks.reading.InkTimes;
import dev.placket.benchmarks.reading.LargePicture;
import dev.placket.benchmarks.reading.ProfileTimes;
import dev.placket.benchmarks.reading.Vips;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Times reading pictures against libvips, where that is installed. */
@Command(
    name = "reading",
    description = {
      "Header probe, inked box and heap of pictures, against libvips in the same run.",
      "Prints the table that RESULTS.md holds under 'Pictures: reading'; losses are marked."
    },
    mixinStandardHelpOptions = true)
final class ReadingCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private Placket placket = new Placket();

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Path work = Files.createTempDirectory("reading");
    try {
      Vips vips = new Vips(work);
      List<Row> rows = new ArrayList<>();
      rows.addAll(new HeaderTimes(work, vips).measure());
      rows.addAll(new InkTimes(work, vips).measure());
      rows.addAll(ProfileTimes.measure());
      Provenance.lines(0).forEach(l -> out.println("# " + l));
      out.println("# " + vips.version());
      out.println(Row.HEAD);
      rows.forEach(r -> out.println(r.line()));
      out.println(heap(work));
      out.flush();
      return 0;
    } finally {
      Runs.delete(work);
    }
  }

  /** The least heap of those tried in which the command probes a large PNG, its inked box too. */
  private String heap(Path work) throws IOException {
    if (!placket.isBuilt()) {
      return "| 10,000 × 13,000 PNG probed | not measured: no command placket | | | 64 MiB | |";
    }
    Path file = LargePicture.write(work.resolve("large.png"), 10_000, 13_000);
    for (int mib : new int[] {16, 24, 32, 48, 64}) {
      Runs.Ended ended =
          placket.run(work.resolve("probed.txt"), mib, List.of("probe", file.toString()));
      if (ended.code() == 0) {
        String time = Math.round(ended.ms()) + " ms with the start of Java";
        return "| 10,000 × 13,000 PNG probed | " + mib + " MiB heap, " + time + " | | | 64 MiB | |";
      }
    }
    return "| 10,000 × 13,000 PNG probed | not within 64 MiB | | | 64 MiB | **lost** |";
  }
}
