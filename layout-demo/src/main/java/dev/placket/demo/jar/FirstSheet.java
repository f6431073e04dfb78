package dev.placket.demo.jar;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Learns which classes a first sheet takes, by making one. */
final class FirstSheet {
  private static final String LOADED = "classes.txt";

  private FirstSheet() {}

  /**
   * The names of the classes that were loaded, of the jar and of others.
   *
   * @param jar the command
   * @param flats a folder of flats
   * @throws IOException if the sheet cannot be made
   */
  static Set<String> classes(Path jar, Path flats) throws IOException {
    Path work = Files.createTempDirectory("placket");
    try {
      make(jar, flats, work);
      return read(work.resolve(LOADED));
    } finally {
      delete(work);
    }
  }

  private static void make(Path jar, Path flats, Path work) throws IOException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xlog:class+load:file=" + work.resolve(LOADED),
            "-jar",
            jar.toString(),
            "fit",
            flats.toString(),
            "--out",
            work.resolve("sheet").toString());
    Path said = work.resolve("said.txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      if (process.waitFor() != 0) {
        throw new IOException(command + ": " + Files.readString(said));
      }
    } catch (InterruptedException e) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw new IOException("stopped while a sheet was made", e);
    }
  }

  /** Lines as "[0.100s][info][class,load] the.Name source: ...". */
  private static Set<String> read(Path loaded) throws IOException {
    Set<String> names = new HashSet<>();
    for (String line : Files.readAllLines(loaded)) {
      String[] words = line.replaceFirst("^(\\[[^\\]]*\\])+ ", "").split(" ", 2);
      names.add(words[0]);
    }
    return names;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}
