package dev.placket.benchmarks;

import dev.placket.benchmarks.pages.PageException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Runs of other programs on this JVM, each in a process and a folder of its own. */
final class Runs {
  private static final Path JAVA = Path.of(System.getProperty("java.home"));

  private Runs() {}

  /**
   * How one process ended.
   *
   * @param code its exit code
   * @param ms wall time from start to end, milliseconds
   */
  record Ended(int code, double ms) {}

  /** Runs java with these arguments; what it prints goes to the file. */
  static Ended java(Path printed, List<String> arguments) {
    List<String> command = new ArrayList<>();
    command.add(JAVA.resolve("bin").resolve("java").toString());
    command.addAll(arguments);
    return process(printed, "", command);
  }

  /** Runs a command that may be the launcher of placket, with these options for Java. */
  static Ended process(Path printed, String options, List<String> command) {
    try {
      ProcessBuilder builder = new ProcessBuilder(command);
      builder.environment().put("JAVA_HOME", JAVA.toString());
      builder.environment().put("PLACKET_JAVA_OPTS", options);
      builder.redirectErrorStream(true).redirectOutput(printed.toFile());
      long start = System.nanoTime();
      int code = builder.start().waitFor();
      return new Ended(code, (System.nanoTime() - start) / 1e6);
    } catch (IOException e) {
      throw new PageException(command.get(0) + ": cannot be run (" + e.getMessage() + ")");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new PageException("interrupted while running " + String.join(" ", command));
    }
  }

  /** The class path of these benchmarks. */
  static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(p -> Path.of(p).toAbsolutePath().toString())
        .reduce((a, b) -> a + File.pathSeparator + b)
        .orElse("");
  }

  /** Checks that a file or folder needed for a run is there. */
  static void need(Path path, String cure) {
    if (!Files.exists(path)) {
      throw new PageException(path + ": not there; " + cure);
    }
  }

  /** Exit codes of the command placket: 0 placed, 3 placed with something soft. */
  static boolean placed(int code) {
    return code == 0 || code == 3;
  }

  static double median(List<Double> values) {
    return values.stream().sorted().skip(values.size() / 2).findFirst().orElse(Double.NaN);
  }

  static String spread(List<Double> values) {
    return String.format(
        Locale.ROOT,
        "median %.0f ms (%.0f to %.0f)",
        median(values),
        values.stream().min(Comparator.naturalOrder()).orElse(Double.NaN),
        values.stream().max(Comparator.naturalOrder()).orElse(Double.NaN));
  }

  /** The least, the middle and the largest of some ratios. */
  static String ratios(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    return String.format(
        Locale.ROOT,
        "least %.2f, median %.2f, most %.2f",
        sorted.get(0),
        sorted.get(sorted.size() / 2),
        sorted.get(sorted.size() - 1));
  }

  static void delete(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    } catch (IOException e) {
      throw new PageException(folder + ": cannot be removed (" + e.getMessage() + ")");
    }
  }
}
