package dev.placket.packs.report;

import dev.placket.packs.text.Xml;
import dev.placket.pictures.fault.Visible;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Markup in the making. Text and values of attributes are always escaped: nothing here takes markup
 * as a string, but for the style sheet, which is ours.
 */
final class Html {
  private final StringBuilder markup = new StringBuilder("<!doctype html>\n");
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn
   */
  Html open(String name, String... attributes) {
    tag(name, attributes).append('>');
    open.push(name);
    return this;
  }

  /** Closes the innermost open element. */
  Html close() {
    markup.append("</").append(open.pop()).append('>');
    return this;
  }

  /** An element with nothing but text in it. */
  Html element(String name, String text, String... attributes) {
    return open(name, attributes).text(text).close();
  }

  /** An element of HTML that has no end. */
  Html single(String name, String... attributes) {
    tag(name, attributes).append('>');
    return this;
  }

  /** An empty element of SVG. */
  Html shape(String name, String... attributes) {
    tag(name, attributes).append("/>");
    return this;
  }

  /** Text, with signs that are not seen spelled out. */
  Html text(String text) {
    markup.append(escaped(text));
    return this;
  }

  /** The end of a line of the file. */
  Html line() {
    markup.append('\n');
    return this;
  }

  /** The style sheet, as it is. */
  Html style(String css) {
    open("style").line();
    markup.append(css);
    return close().line();
  }

  /** All of it. */
  @Override
  public String toString() {
    return markup.toString();
  }

  private StringBuilder tag(String name, String... attributes) {
    markup.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      markup.append(' ').append(attributes[i]);
      markup.append("=\"").append(escaped(attributes[i + 1])).append('"');
    }
    return markup;
  }

  private static String escaped(String text) {
    return Xml.escaped(Visible.line(text));
  }
}
