package dev.placket.benchmarks.suite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Drawings that may differ without a note, each with its reason. */
public final class Exceptions {
  private Exceptions() {}

  /**
   * Reads a list: a line has a path inside the suite, a tab and the reason; lines that begin with
   * {@code #} and blank ones are passed over.
   *
   * @throws IllegalArgumentException if a line has no reason
   */
  public static Map<String, String> read(Path file) throws IOException {
    Map<String, String> reasons = new TreeMap<>();
    for (String line : Files.readAllLines(file)) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      String[] parts = line.split("\t", 2);
      if (parts.length < 2 || parts[1].isBlank()) {
        throw new IllegalArgumentException(file + ": '" + line + "' has no reason after a tab");
      }
      reasons.put(parts[0].strip(), parts[1].strip());
    }
    return reasons;
  }
}
