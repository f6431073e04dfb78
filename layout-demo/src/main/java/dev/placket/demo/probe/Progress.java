package dev.placket.demo.probe;

import dev.placket.pictures.fault.Visible;
import java.io.PrintStream;
import java.nio.file.Path;

/** One line on a terminal that says which file is being read; nothing anywhere else. */
final class Progress {
  private static final int WIDTH = 79;

  private final PrintStream terminal;
  private final boolean shown;

  /**
   * Progress on a stream.
   *
   * @param shown whether the stream is a terminal
   */
  Progress(PrintStream terminal, boolean shown) {
    this.terminal = terminal;
    this.shown = shown;
  }

  void reading(int number, int of, Path file) {
    if (shown) {
      String line =
          "Reading "
              + number
              + " of "
              + of
              + ": "
              + Visible.line(String.valueOf(file.getFileName()));
      terminal.print("\r" + padded(line));
      terminal.flush();
    }
  }

  void done() {
    if (shown) {
      terminal.print("\r" + padded("") + "\r");
      terminal.flush();
    }
  }

  private static String padded(String line) {
    return line.length() >= WIDTH
        ? line.substring(0, WIDTH)
        : line + " ".repeat(WIDTH - line.length());
  }
}
