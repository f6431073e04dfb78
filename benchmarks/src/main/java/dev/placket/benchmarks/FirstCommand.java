package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Times the first solve of a JVM: each sheet in a process of its own, reading the file left out.
 */
@Command(
    name = "first",
    description = "The first solve in a new JVM, sheet by sheet, without start and reading.",
    mixinStandardHelpOptions = true)
final class FirstCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE.json", description = "Sheets; or 'pages' or 'pages-hard'.")
  private String file = "";

  @Option(names = "--flats", paramLabel = "N", description = "Sheets of up to so many flats.")
  private int flats = 8;

  @Option(names = "--sheet", hidden = true, description = "Solve this one here and print its time.")
  private String only = "";

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    List<ReferencePage> pages = PageFile.read(file);
    if (!only.isEmpty()) {
      ReferencePage page =
          pages.stream().filter(p -> p.id().equals(only)).findFirst().orElseThrow();
      long start = System.nanoTime();
      boolean fits = new Solve(dev.placket.layout.solve.Fitter.fit(page.request()), 0).fits();
      double ms = (System.nanoTime() - start) / 1e6;
      out.println(fits ? ms : Double.NaN);
      out.flush();
      return 0;
    }
    Provenance.lines(0).forEach(l -> out.println("# " + l));
    List<Double> all = new ArrayList<>();
    for (ReferencePage page : pages) {
      if (page.flats().size() <= flats) {
        double ms = inNewJvm(page.id());
        all.add(ms);
        out.printf(Locale.ROOT, "%s\t%d\t%.1f%n", page.id(), page.flats().size(), ms);
        out.flush();
      }
    }
    out.println("first solve: " + Runs.spread(all));
    out.flush();
    return 0;
  }

  private double inNewJvm(String id) throws IOException {
    Path printed = Files.createTempFile("first", ".txt");
    try {
      Runs.java(
          printed,
          List.of(
              "-cp", Runs.classPath(), Benchmarks.class.getName(), "first", file, "--sheet", id));
      String text = Files.readString(printed).strip();
      return Double.parseDouble(text.substring(text.lastIndexOf('\n') + 1));
    } catch (NumberFormatException e) {
      throw new PageException(id + ": " + Files.readString(printed).strip());
    } finally {
      Files.delete(printed);
    }
  }
}
