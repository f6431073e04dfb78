package dev.placket.pictures.svg.rewrite;

/**
 * The data of a path, smooth curves whose control point the engine mistakes written in full, and
 * closed subpaths without a length left open.
 */
final class PathRewriter {
  private static final String NOT_CUBIC = "QqTtZz";
  private static final String NOT_QUADRATIC = "CcSsZz";

  private final NumberScan scan;
  private final String data;
  private final StringBuilder out = new StringBuilder();
  private char before;
  private double x;
  private double y;
  private double startX;
  private double startY;

  /** Whether all points of the subpath so far are its start. */
  private boolean dot;

  private PathRewriter(String data) {
    this.data = data;
    this.scan = new NumberScan(data);
  }

  /** The same path; what follows a fault stays as it is. */
  static String of(String data) {
    return new PathRewriter(data).written();
  }

  private String written() {
    char command = 0;
    scan.skip();
    while (!scan.ended()) {
      final int from = scan.at();
      boolean named = Character.isLetter(scan.next());
      if (named) {
        command = scan.next();
        scan.step();
      } else if (command == 'M' || command == 'm') {
        // Further pairs of numbers are lines (SVG 2, 9.3.3).
        command = command == 'M' ? 'L' : 'l';
      }
      int count = PathText.numbers(command);
      if (count == 0 && !named || !segment(command, count)) {
        return out.append(data, from, data.length()).toString();
      }
      scan.skip();
    }
    return out.toString();
  }

  /** Writes one segment; whether its numbers are all there. */
  private boolean segment(char command, int count) {
    StringBuilder numbers = new StringBuilder();
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      scan.skip();
      int from = scan.at();
      boolean flag = (command == 'A' || command == 'a') && (i == 3 || i == 4);
      if (!(flag ? scan.flag() : scan.number())) {
        return false;
      }
      String number = data.substring(from, scan.at());
      values[i] = Double.parseDouble(number);
      numbers.append(' ').append(number);
    }
    boolean relative = Character.isLowerCase(command);
    String here = relative ? "0 0" : x + " " + y;
    if ((command == 'S' || command == 's') && NOT_CUBIC.indexOf(before) >= 0) {
      out.append(relative ? 'c' : 'C').append(here);
    } else if ((command == 'T' || command == 't') && NOT_QUADRATIC.indexOf(before) >= 0) {
      out.append(relative ? 'q' : 'Q').append(here);
    } else if (dot && (command == 'Z' || command == 'z')) {
      scan.skip();
      boolean ends = scan.ended() || scan.next() == 'M' || scan.next() == 'm';
      out.append(ends ? "l0 0" : "l0 0m0 0");
    } else {
      out.append(command);
    }
    out.append(numbers);
    before = command;
    dot = command == 'M' || command == 'm' || dot && stays(command, values, relative);
    move(command, values, relative);
    return true;
  }

  /** Whether all points of a segment are the current point. */
  private boolean stays(char command, double[] values, boolean relative) {
    double fromX = relative ? 0 : x;
    double fromY = relative ? 0 : y;
    return switch (command) {
      case 'Z', 'z', 'A', 'a' -> false;
      case 'H', 'h' -> values[0] == fromX;
      case 'V', 'v' -> values[0] == fromY;
      default -> {
        boolean all = true;
        for (int i = 0; i < values.length; i += 2) {
          all &= values[i] == fromX && values[i + 1] == fromY;
        }
        yield all;
      }
    };
  }

  private void move(char command, double[] values, boolean relative) {
    switch (command) {
      case 'Z', 'z' -> {
        x = startX;
        y = startY;
      }
      case 'H', 'h' -> x = values[0] + (relative ? x : 0);
      case 'V', 'v' -> y = values[0] + (relative ? y : 0);
      default -> {
        x = values[values.length - 2] + (relative ? x : 0);
        y = values[values.length - 1] + (relative ? y : 0);
      }
    }
    if (command == 'M' || command == 'm') {
      startX = x;
      startY = y;
    }
  }
}
