package dev.placket.benchmarks.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** libvips by its command line; what starting it costs is taken off. */
public final class Vips {
  private static final int RUNS = 9;
  private static final int MANY = 401;
  private final Path work;
  private final boolean installed;

  /** libvips working in a folder. */
  public Vips(Path work) {
    this.work = work;
    this.installed =
        Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
            .anyMatch(p -> Files.isExecutable(Path.of(p, "vipsheader")));
  }

  /** Whether there is one to compare with. */
  public boolean installed() {
    return installed;
  }

  /** Its version, or that it is missing. */
  public String version() {
    return installed ? run(List.of("vips", "--version")) : "libvips is not installed";
  }

  /** Writes a picture anew in the format of another name. */
  public Path convert(Path from, String name, String... options) {
    Path to = work.resolve(name);
    List<String> command = new ArrayList<>(List.of("vips", "copy", from.toString()));
    command.add(to + (options.length == 0 ? "" : "[" + String.join(",", options) + "]"));
    run(command);
    return to;
  }

  /**
   * Microseconds for one header: a call with many files, less one with a single file. Each has a
   * name of its own, since libvips remembers what it has opened.
   */
  public @Nullable Double header(Path file) {
    if (!installed) {
      return null;
    }
    List<String> all = new ArrayList<>(List.of("vipsheader"));
    for (int i = 0; i < MANY; i++) {
      Path link = work.resolve(i + "-" + file.getFileName());
      try {
        Files.createLink(link, file);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      all.add(link.toString());
    }
    return (median(all) - median(all.subList(0, 2))) / (MANY - 1);
  }

  /** Microseconds for its trim of a picture mapped into memory, less the start of the program. */
  public @Nullable Double trim(Path mapped) {
    return installed
        ? median(List.of("vips", "find_trim", mapped.toString()))
            - median(List.of("vips", "--version"))
        : null;
  }

  private double median(List<String> command) {
    double[] times = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      run(command);
      times[i] = (System.nanoTime() - start) / 1e3;
    }
    Arrays.sort(times);
    return times[RUNS / 2];
  }

  private String run(List<String> command) {
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
}
