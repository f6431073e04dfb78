package dev.placket.demo;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * A call of the command in this process.
 *
 * @param code its exit code
 * @param out the report
 * @param err the messages
 */
public record Run(int code, String out, String err) {
  /** Calls the command. */
  public static Run of(Object... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] words = java.util.Arrays.stream(args).map(String::valueOf).toArray(String[]::new);
    int code =
        Main.run(
            words,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
