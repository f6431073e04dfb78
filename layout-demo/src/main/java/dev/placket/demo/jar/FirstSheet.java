package dev.placket.demo.jar;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Learns which classes a first sheet takes, by making one. */
final class FirstSheet {
  private static final String OUT = "out.txt";
  private static final String MESSAGES = "messages.txt";

  private FirstSheet() {}

  /**
   * The names of the classes that were loaded, of the jar and of others, among other words.
   *
   * @param jar the command
   * @param flats a folder of flats
   * @throws IOException if the sheet cannot be made
   */
  static Set<String> classes(Path jar, Path flats) throws IOException {
    Path work = Files.createTempDirectory("placket");
    try {
      make(jar, flats, work);
      return words(work.resolve(OUT));
    } finally {
      delete(work);
    }
  }

  private static void make(Path jar, Path flats, Path work) throws IOException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-verbose:class",
            "-jar",
            jar.toString(),
            "fit",
            flats.toString(),
            "--out",
            work.resolve("sheet").toString());
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(work.resolve(OUT).toFile())
            .redirectError(work.resolve(MESSAGES).toFile())
            .start();
    try {
      if (process.waitFor() != 0) {
        throw new IOException(command + ": " + Files.readString(work.resolve(MESSAGES)));
      }
    } catch (InterruptedException e) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw new IOException("stopped while a sheet was made", e);
    }
  }

  /** Virtual machines tell of a class in lines of their own making, all with its name as a word. */
  private static Set<String> words(Path said) throws IOException {
    Set<String> words = new HashSet<>();
    // Every byte is a letter in it; the report between the lines may be in any encoding.
    for (String line : Files.readAllLines(said, StandardCharsets.ISO_8859_1)) {
      Collections.addAll(words, line.replace('/', '.').split(" "));
    }
    return words;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}
