package dev.placket.benchmarks.outside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Runs programs that may be installed or not. */
public final class OutsideProgram {
  private OutsideProgram() {}

  /** Whether one of this name can be run. */
  public static boolean installed(String name) {
    return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
        .anyMatch(p -> Files.isExecutable(Path.of(p, name)));
  }

  /** The first line that it prints about its version, or that it is missing. */
  public static String version(String name) {
    return installed(name)
        ? name + ": " + run(List.of(name, "--version")).lines().findFirst().orElse("")
        : name + " is not installed";
  }

  /** Microseconds from start to end, the median of some runs. */
  public static double median(int runs, List<String> command) {
    double[] times = new double[runs];
    for (int i = 0; i < runs; i++) {
      long start = System.nanoTime();
      run(command);
      times[i] = (System.nanoTime() - start) / 1e3;
    }
    Arrays.sort(times);
    return times[runs / 2];
  }

  /** Runs it and gives what it printed. */
  public static String run(List<String> command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (process.waitFor() != 0) {
        throw new IllegalStateException(command + ": " + said);
      }
      return said.strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** Whether it ends well within so many seconds; what it prints is dropped. */
  public static boolean ran(List<String> command, int seconds) {
    return ended(command, seconds, Redirect.DISCARD) == 0;
  }

  /** What it prints on standard output, or nothing where it ends badly or takes too long. */
  public static String said(List<String> command, int seconds) {
    Path file = null;
    try {
      file = Files.createTempFile("said", ".txt");
      return ended(command, seconds, Redirect.to(file.toFile())) == 0
          ? Files.readString(file, StandardCharsets.ISO_8859_1).strip()
          : "";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      delete(file);
    }
  }

  private static int ended(List<String> command, int seconds, Redirect out) {
    try {
      Process process =
          new ProcessBuilder(command).redirectOutput(out).redirectError(Redirect.DISCARD).start();
      if (process.waitFor(seconds, TimeUnit.SECONDS)) {
        return process.exitValue();
      }
      process.destroyForcibly();
      return -1;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static void delete(@Nullable Path file) {
    try {
      if (file != null) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
