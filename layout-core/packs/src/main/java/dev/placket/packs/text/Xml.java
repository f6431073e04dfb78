package dev.placket.packs.text;

/** Text as XML and HTML take it. */
public final class Xml {
  private Xml() {}

  /**
   * The text for between tags or within double quotes; a blank stands for what XML 1.0 has no place
   * for (section 2.2), and for line ends, which attributes do not keep.
   */
  public static String escaped(String text) {
    StringBuilder b = new StringBuilder(text.length());
    text.codePoints().forEach(c -> add(b, c));
    return b.toString();
  }

  private static void add(StringBuilder b, int sign) {
    switch (sign) {
      case '&' -> b.append("&amp;");
      case '<' -> b.append("&lt;");
      case '>' -> b.append("&gt;");
      case '"' -> b.append("&quot;");
      default -> b.appendCodePoint(isAllowed(sign) ? sign : ' ');
    }
  }

  private static boolean isAllowed(int sign) {
    boolean half = Character.getType(sign) == Character.SURROGATE;
    return sign >= ' ' && !half && sign != 0xFFFE && sign != 0xFFFF;
  }
}
