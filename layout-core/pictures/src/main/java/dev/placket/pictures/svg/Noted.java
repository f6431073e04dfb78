package dev.placket.pictures.svg;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Notes of one drawing, one for each kind, with how often and where first. */
final class Noted {
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, String> first = new LinkedHashMap<>();

  void add(String text, Element where) {
    counts.merge(text, 1, Integer::sum);
    first.computeIfAbsent(text, t -> place(where));
  }

  /** The texts: "blurs are left out; flatten them (3 times, first in 'shade')". */
  List<String> texts() {
    List<String> texts = new ArrayList<>();
    counts.forEach(
        (text, n) ->
            texts.add(
                text
                    + (n == 1 ? " (in " : " (" + n + " times, first in ")
                    + first.get(text)
                    + ")"));
    return texts;
  }

  /** The id of the element or of the nearest around it, else the kind of element. */
  private static String place(Element where) {
    Node n = where;
    while (n instanceof Element e) {
      String id = e.getAttribute("id");
      if (!id.isEmpty()) {
        return "'" + shortened(id) + "'";
      }
      n = e.getParentNode();
    }
    return "a <" + where.getLocalName() + "> without an id";
  }

  /** Words of a file, fit to stand in a note. */
  static String shortened(String words) {
    String line = words.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    return line.length() <= 40 ? line : line.substring(0, 37) + "...";
  }
}
