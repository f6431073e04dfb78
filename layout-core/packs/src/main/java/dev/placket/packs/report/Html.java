package dev.placket.packs.report;

import dev.placket.packs.output.Visible;

/** Text as HTML wants it. */
final class Html {
  private Html() {}

  /** Text for between tags or within quotes. */
  static String text(String text) {
    return Visible.line(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
