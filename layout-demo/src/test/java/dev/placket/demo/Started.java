package dev.placket.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A process that ended.
 *
 * @param code its exit code
 * @param pid its identifier
 * @param out what it printed
 * @param err what it printed to standard error
 */
record Started(int code, long pid, String out, String err) {
  /**
   * Runs a command to its end.
   *
   * @param folder to work in
   * @param environment set beside what this process has; an empty value removes the name
   */
  static Started of(Path folder, Map<String, String> environment, List<String> command)
      throws IOException, InterruptedException {
    Path err = Files.createTempFile("err", ".txt");
    try {
      ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
      builder.environment().remove("PLACKET_JAVA_OPTS");
      builder.environment().putAll(environment);
      builder.environment().values().removeIf(String::isEmpty);
      Process process = builder.redirectError(err.toFile()).start();
      String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Started(process.waitFor(), process.pid(), out, Files.readString(err));
    } finally {
      Files.delete(err);
    }
  }
}
