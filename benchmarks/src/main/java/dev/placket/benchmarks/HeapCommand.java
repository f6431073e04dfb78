package dev.placket.benchmarks;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs the demo in a small heap. */
@Command(
    name = "heap",
    description = "Runs the demo within a heap; 0 if it succeeds, 1 if not.",
    mixinStandardHelpOptions = true)
final class HeapCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private Placket placket = new Placket();

  @Option(names = "--demo", paramLabel = "FILE", description = "The demo's description.")
  private Path demo = Path.of("layout-demo/src/demo/mg-3107/pack.yaml");

  @Option(names = "--mib", paramLabel = "N", description = "Heap in MiB.")
  private int mib = 256;

  @Override
  public Integer call() throws IOException {
    placket.need();
    Runs.need(demo, "name the description of the demo with --demo");
    PrintWriter out = spec.commandLine().getOut();
    Path work = Files.createTempDirectory("heap");
    try {
      Path printed = work.resolve("printed.txt");
      String made = work.resolve("made").toString();
      Runs.Ended ended = placket.run(printed, mib, List.of("fit", demo.toString(), "--out", made));
      boolean right = Runs.placed(ended.code());
      out.println(
          "demo within " + mib + " MiB: " + (right ? "made" : "failed") + ", exit " + ended.code());
      if (!right) {
        out.println(Files.readString(printed).strip());
      }
      out.flush();
      return right ? 0 : 1;
    } finally {
      Runs.delete(work);
    }
  }
}
