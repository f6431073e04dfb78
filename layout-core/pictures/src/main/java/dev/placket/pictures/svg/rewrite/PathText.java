package dev.placket.pictures.svg.rewrite;

/**
 * The data of a path up to its first fault (SVG 2, 9.5.4: "rendered up to the last correct
 * segment"), with spaces round the flags of arcs, which an older reader asks for.
 *
 * @param drawn the data that is drawn
 * @param faulty whether something after it is not
 */
record PathText(String drawn, boolean faulty) {
  private static final String COMMANDS = "MmLlHhVvCcSsQqTtAaZz";

  static PathText of(String data) {
    NumberScan scan = new NumberScan(data);
    StringBuilder out = new StringBuilder();
    boolean spaced = true;
    int end = 0;
    int kept = 0;
    char command = 0;
    boolean faulty = false;
    boolean comma = scan.skip();
    while (!scan.ended()) {
      boolean named = COMMANDS.indexOf(scan.next()) >= 0;
      if (named) {
        command = scan.next();
        out.append(command);
        scan.step();
      }
      // A comma stands between numbers alone.
      boolean begins = !(comma && named) && (kept > 0 || command == 'M' || command == 'm');
      boolean closes = command == 'Z' || command == 'z';
      if (!begins || (closes && !named) || command == 0) {
        faulty = true;
        break;
      }
      int group = group(scan, data, command, out);
      if (group == 0) {
        faulty = true;
        break;
      }
      spaced &= group == 1;
      end = scan.at();
      kept = out.length();
      comma = scan.skip();
    }
    return new PathText(spaced ? data.substring(0, end) : out.substring(0, kept), faulty);
  }

  /** 0 for a fault, 1 for a group as all read it, 2 for one with flags close together. */
  private static int group(NumberScan scan, String data, char command, StringBuilder out) {
    int spaced = 1;
    for (int i = 0; i < numbers(command); i++) {
      scan.skip();
      int from = scan.at();
      boolean flag = (command == 'A' || command == 'a') && (i == 3 || i == 4);
      if (!(flag ? scan.flag() : scan.number())) {
        return 0;
      }
      if (flag && !scan.ended() && scan.next() > ' ' && scan.next() != ',') {
        spaced = 2;
      }
      out.append(' ').append(data, from, scan.at());
    }
    return spaced;
  }

  /** The count of numbers of one segment of a command. */
  static int numbers(char command) {
    return switch (command) {
      case 'Z', 'z' -> 0;
      case 'H', 'h', 'V', 'v' -> 1;
      case 'S', 's', 'Q', 'q' -> 4;
      case 'C', 'c' -> 6;
      case 'A', 'a' -> 7;
      default -> 2;
    };
  }

  /** Pairs of numbers up to the first fault (SVG 2, 10.6). */
  static PathText points(String data) {
    NumberScan scan = new NumberScan(data);
    int end = 0;
    scan.skip();
    while (!scan.ended()) {
      boolean x = scan.number();
      scan.skip();
      if (!x || !scan.number()) {
        return new PathText(data.substring(0, end), true);
      }
      end = scan.at();
      scan.skip();
    }
    return new PathText(data.substring(0, end), false);
  }
}
