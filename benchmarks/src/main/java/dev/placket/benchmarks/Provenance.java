package dev.placket.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Where figures come from: commit, machine, JVM. */
final class Provenance {
  private Provenance() {}

  /** One line for each, to stand over a table. */
  static List<String> lines(long seed) {
    return List.of(
        "commit " + commit() + ", seed " + seed,
        "machine "
            + processor()
            + ", "
            + Runtime.getRuntime().availableProcessors()
            + " cores, "
            + System.getProperty("os.name"),
        "JVM "
            + System.getProperty("java.vm.name")
            + " "
            + System.getProperty("java.runtime.version"));
  }

  private static String commit() {
    try {
      Process git =
          new ProcessBuilder("git", "describe", "--always", "--dirty", "--abbrev=10")
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      String text = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return git.waitFor() == 0 ? text.strip() : "unknown";
    } catch (IOException e) {
      return "unknown";
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return "unknown";
    }
  }

  private static String processor() {
    Path info = Path.of("/proc/cpuinfo");
    if (Files.isReadable(info)) {
      try (var lines = Files.lines(info)) {
        return lines
            .filter(l -> l.startsWith("model name"))
            .map(l -> l.substring(l.indexOf(':') + 1).strip())
            .findFirst()
            .orElse(System.getProperty("os.arch"));
      } catch (IOException e) {
        return System.getProperty("os.arch");
      }
    }
    return System.getProperty("os.arch");
  }
}
