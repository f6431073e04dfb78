package dev.placket.demo.console;

import dev.placket.packs.report.TextLines;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What the report is written for.
 *
 * @param width the most columns of a line, 40 to 80
 * @param strong whether headings may be set strong
 */
public record Terminal(int width, boolean strong) {
  /** What no terminal shows: 80 columns, nothing but letters. */
  public static final Terminal PLAIN = new Terminal(80, false);

  private static final int LEAST = 40;
  private static final int PATIENCE = 300;

  /** What this process writes to. */
  public static Terminal here() {
    Map<String, String> env = System.getenv();
    boolean seen = interactive();
    boolean stated = columns(env.get("COLUMNS")) > 0;
    return of(env, seen, seen && !stated ? measured() : 0);
  }

  /**
   * By what the surroundings say.
   *
   * @param env COLUMNS is the width, as POSIX has it; NO_COLOR, not empty, or a TERM that is dumb
   *     or unknown leave letters alone
   * @param seen whether it is a terminal
   * @param measured its columns; 0 for unknown
   */
  public static Terminal of(Map<String, String> env, boolean seen, int measured) {
    int stated = columns(env.get("COLUMNS"));
    int columns = stated > 0 ? stated : measured > 0 ? measured : PLAIN.width;
    String term = env.getOrDefault("TERM", "dumb");
    boolean strong = seen && env.getOrDefault("NO_COLOR", "").isEmpty() && !term.equals("dumb");
    return new Terminal(Math.max(LEAST, Math.min(PLAIN.width, columns)), strong);
  }

  /** Lines for it. */
  public TextLines lines() {
    return new TextLines(width, strong);
  }

  /** Whether somebody sits before it; from JDK 22 on there is a console where nobody does. */
  static boolean interactive() {
    Object console = System.console();
    if (console == null || Runtime.version().feature() < 22) {
      return console != null;
    }
    try {
      return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  /** The columns of the terminal at the standard input, as POSIX's stty says; 0 for unknown. */
  private static int measured() {
    try {
      Process stty =
          new ProcessBuilder("stty", "size")
              .redirectInput(ProcessBuilder.Redirect.INHERIT)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!stty.waitFor(PATIENCE, TimeUnit.MILLISECONDS)) {
        stty.destroy();
        return 0;
      }
      byte[] said = stty.getInputStream().readAllBytes();
      String[] rowsAndColumns = new String(said, StandardCharsets.US_ASCII).strip().split(" ");
      return rowsAndColumns.length == 2 ? columns(rowsAndColumns[1]) : 0;
    } catch (IOException e) {
      return 0;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return 0;
    }
  }

  private static int columns(@Nullable String text) {
    try {
      return text == null ? 0 : Math.max(0, Integer.parseInt(text.strip()));
    } catch (NumberFormatException e) {
      return 0;
    }
  }
}
