package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import dev.placket.benchmarks.suite.Exceptions;
import dev.placket.benchmarks.suite.Judged;
import dev.placket.benchmarks.suite.Standing;
import dev.placket.benchmarks.suite.Suite;
import dev.placket.pictures.base.PictureException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges drawings against reference pictures and a second renderer. */
@Command(
    name = "suite",
    description = {
      "Renders every SVG of a folder tree and holds it against the PNG of the same name, or, where"
          + " there is none, against a second renderer's.",
      "Ends with 1 if a drawing is wrong without a note and not among the exceptions, or crashed."
    },
    mixinStandardHelpOptions = true)
final class SuiteCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "DIR", description = "The folder tree.")
  private Path folder = Path.of(".");

  @Option(names = "--fonts", paramLabel = "DIR", description = "TrueType files for the text.")
  private @Nullable Path fonts;

  @Option(names = "--second", paramLabel = "PROGRAM", description = "The second renderer.")
  private String second = "rsvg-convert";

  @Option(names = "--except", paramLabel = "FILE", description = "A path, a tab, a reason a line.")
  private @Nullable Path except;

  @Option(names = "--list", description = "Prints a line for each file.")
  private boolean list;

  @Override
  public Integer call() throws IOException, PictureException {
    Runs.need(folder, "name the folder of the drawings");
    Map<String, String> excepted = except == null ? Map.of() : Exceptions.read(except);
    PrintWriter out = spec.commandLine().getOut();
    Path work = Files.createTempDirectory("suite");
    try {
      Suite suite = new Suite(folder, fonts, second, work);
      long start = System.nanoTime();
      List<Judged> all = suite.judge();
      if (all.isEmpty()) {
        throw new PageException(folder + ": has no SVG");
      }
      Provenance.lines(0).forEach(l -> out.println("# " + l));
      out.println("# " + suite.second());
      out.printf(Locale.ROOT, "# %.0f s%n", (System.nanoTime() - start) / 1e9);
      return print(all, excepted, out);
    } finally {
      Runs.delete(work);
    }
  }

  private int print(List<Judged> all, Map<String, String> excepted, PrintWriter out) {
    if (list) {
      all.forEach(j -> out.println(j.line()));
    }
    out.println("| how it comes out | drawings |\n|---|---|");
    for (Standing standing : Standing.values()) {
      long n = all.stream().filter(j -> j.standing() == standing).count();
      out.println("| " + standing.words() + " | " + n + " |");
    }
    out.println("| all | " + all.size() + " |");
    List<Judged> faults =
        all.stream()
            .filter(j -> j.standing() == Standing.SILENT || j.standing() == Standing.CRASHED)
            .filter(j -> !excepted.containsKey(j.file()))
            .toList();
    if (except != null) {
      faults.forEach(j -> out.println("not excepted: " + j.line()));
    }
    out.flush();
    return faults.isEmpty() ? 0 : 1;
  }
}
