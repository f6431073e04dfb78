package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How the time of a pack grows with the rows of its table, from 1,000 on by doubling. */
@Command(
    name = "rows",
    description = "Time of a pack by the rows of its table, doubled again and again.",
    mixinStandardHelpOptions = true)
final class RowsCommand implements Callable<Integer> {
  private static final int FIRST = 1000;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private Placket placket = new Placket();

  @Option(names = "--to", paramLabel = "N", description = "The most rows; 8000 if not given.")
  private int to = 8 * FIRST;

  @Override
  public Integer call() throws IOException {
    placket.need();
    PrintWriter out = spec.commandLine().getOut();
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    Path folder = Files.createTempDirectory("rows");
    try {
      double before = 0;
      for (int rows = FIRST; rows <= to; rows *= 2) {
        double ms = ms(folder, rows);
        String times = before == 0 ? "" : String.format(Locale.ROOT, "%.2f times", ms / before);
        out.printf(Locale.ROOT, "%d rows\t%.0f ms\t%s%n", rows, ms, times);
        out.flush();
        before = ms;
      }
    } finally {
      Runs.delete(folder);
    }
    return 0;
  }

  private double ms(Path folder, int rows) throws IOException {
    StringBuilder csv = new StringBuilder("Code,Point of measure,S,M,L\n");
    for (int i = 0; i < rows; i++) {
      csv.append(
          "P" + i + ",Width across the chest " + i + "," + i / 8.0 + "," + i / 4.0 + ",1.5\n");
    }
    Files.writeString(folder.resolve("points.csv"), csv);
    Path pack = folder.resolve("pack.yaml");
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        sheets:
          points:
            name: Points
            areas: [points]
            tables:
              points: {csv: points.csv}
        """);
    Path printed = folder.resolve("printed.txt");
    Runs.Ended ended = placket.run(printed, List.of("fit", pack.toString(), "--overwrite"));
    if (!Runs.placed(ended.code())) {
      throw new PageException(rows + " rows: " + Files.readString(printed).strip());
    }
    return ended.ms();
  }
}
