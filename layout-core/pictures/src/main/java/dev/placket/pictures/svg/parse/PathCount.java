package dev.placket.pictures.svg.parse;

/**
 * Counts the segments of path data (SVG 2, 9.3.9) or of a list of points without building any, in
 * one pass. Data that breaks off or is wrong is counted as far as its signs go.
 */
final class PathCount {
  private static final String COMMANDS = "MmLlHhVvCcSsQqTtAaZz";

  private final String data;
  private int at;
  private long lines;
  private long smooth;
  private long arcs;

  private PathCount(String data) {
    this.data = data;
  }

  /**
   * Counts path data.
   *
   * @param data what a {@code d} states
   */
  static PathCount path(String data) {
    PathCount count = new PathCount(data);
    count.count('M');
    return count;
  }

  /** Counts points, which are drawn as lines. */
  static PathCount points(String data) {
    PathCount count = new PathCount(data);
    count.count('L');
    return count;
  }

  /** Moves, lines, curves with all their controls, and ends. */
  long lines() {
    return lines;
  }

  /** Curves that continue the one before ({@code S} and {@code T}). */
  long smooth() {
    return smooth;
  }

  /** Arcs. */
  long arcs() {
    return arcs;
  }

  private void count(char first) {
    char command = first;
    int numbers = 0;
    while (at < data.length()) {
      char c = data.charAt(at);
      if (COMMANDS.indexOf(c) >= 0) {
        at++;
        command = Character.toUpperCase(c);
        numbers = 0;
        if (command == 'Z') {
          lines++;
        }
      } else if (!number(command == 'A' && (numbers == 3 || numbers == 4))) {
        at++;
      } else if (++numbers == arguments(command)) {
        add(command);
        numbers = 0;
      }
    }
  }

  private void add(char command) {
    if (command == 'A') {
      arcs++;
    } else if (command == 'S' || command == 'T') {
      smooth++;
    } else {
      lines++;
    }
  }

  private static int arguments(char command) {
    return switch (command) {
      case 'H', 'V' -> 1;
      case 'C' -> 6;
      case 'S', 'Q' -> 4;
      case 'A' -> 7;
      default -> 2;
    };
  }

  /** Passes over a number, or a flag, which is one digit; false where there is none. */
  private boolean number(boolean flag) {
    int start = at;
    if (flag) {
      at += isDigit() ? 1 : 0;
      return at > start;
    }
    skip("+-");
    boolean any = digits();
    if (is('.')) {
      at++;
      any |= digits();
    }
    if (any && (is('e') || is('E'))) {
      at++;
      skip("+-");
      digits();
    }
    if (!any) {
      at = start;
    }
    return any;
  }

  private boolean digits() {
    int start = at;
    while (isDigit()) {
      at++;
    }
    return at > start;
  }

  private void skip(String signs) {
    if (at < data.length() && signs.indexOf(data.charAt(at)) >= 0) {
      at++;
    }
  }

  private boolean isDigit() {
    return at < data.length() && data.charAt(at) >= '0' && data.charAt(at) <= '9';
  }

  private boolean is(char c) {
    return at < data.length() && data.charAt(at) == c;
  }
}
