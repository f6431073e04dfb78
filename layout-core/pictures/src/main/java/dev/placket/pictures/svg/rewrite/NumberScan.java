package dev.placket.pictures.svg.rewrite;

/** Numbers one after the other in the data of a path or in a list of points (SVG 2, 9.3.9). */
final class NumberScan {
  private final String text;
  private int at;

  NumberScan(String text) {
    this.text = text;
  }

  int at() {
    return at;
  }

  boolean ended() {
    return at >= text.length();
  }

  char next() {
    return text.charAt(at);
  }

  void step() {
    at++;
  }

  /** Passes over spaces, and over commas among them; whether there was a comma. */
  boolean skip() {
    boolean comma = false;
    while (!ended() && (next() == ',' || next() <= ' ')) {
      comma |= next() == ',';
      at++;
    }
    return comma;
  }

  /** Passes over a number; if there is none, stays and answers false. */
  boolean number() {
    int i = at;
    if (i < text.length() && (text.charAt(i) == '+' || text.charAt(i) == '-')) {
      i++;
    }
    int whole = digits(i);
    int end = whole;
    if (end < text.length() && text.charAt(end) == '.') {
      end = digits(end + 1);
      if (end == whole + 1 && whole == i) {
        return false;
      }
    } else if (whole == i) {
      return false;
    }
    at = exponent(end);
    return true;
  }

  private int exponent(int from) {
    if (from < text.length() && (text.charAt(from) == 'e' || text.charAt(from) == 'E')) {
      int i = from + 1;
      if (i < text.length() && (text.charAt(i) == '+' || text.charAt(i) == '-')) {
        i++;
      }
      int end = digits(i);
      return end > i ? end : from;
    }
    return from;
  }

  private int digits(int from) {
    int i = from;
    while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
      i++;
    }
    return i;
  }

  /** Passes over a flag of an arc, 0 or 1. */
  boolean flag() {
    if (ended() || (next() != '0' && next() != '1')) {
      return false;
    }
    at++;
    return true;
  }
}
