package dev.placket.benchmarks.reading;

import dev.placket.benchmarks.outside.OutsideProgram;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    this.installed = OutsideProgram.installed("vipsheader");
  }

  /** Whether there is one to compare with. */
  public boolean installed() {
    return installed;
  }

  /** Its version, or that it is missing. */
  public String version() {
    return installed
        ? OutsideProgram.run(List.of("vips", "--version"))
        : "libvips is not installed";
  }

  /** Writes a picture anew in the format of another name. */
  public Path convert(Path from, String name, String... options) {
    Path to = work.resolve(name);
    List<String> command = new ArrayList<>(List.of("vips", "copy", from.toString()));
    command.add(to + (options.length == 0 ? "" : "[" + String.join(",", options) + "]"));
    OutsideProgram.run(command);
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

  private static double median(List<String> command) {
    return OutsideProgram.median(RUNS, command);
  }
}
