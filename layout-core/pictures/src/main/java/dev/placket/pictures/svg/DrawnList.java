package dev.placket.pictures.svg;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is drawn right, by element, attribute or property, and class of value: a file of lines,
 * apart by tabs, whose head says how to read it.
 */
final class DrawnList {
  private static final String FILE = "drawn.tsv";

  private final Map<String, List<Entry>> byName = new HashMap<>();
  private final Map<String, Set<String>> groups = new HashMap<>();
  private final Map<String, String> notes = new HashMap<>();

  private DrawnList() {}

  /** Read once, when first asked for, and never changed. */
  private static final class Shipped {
    static final DrawnList LIST = read();
  }

  /** The list of this library. */
  static DrawnList shipped() {
    return Shipped.LIST;
  }

  private static DrawnList read() {
    try (InputStream in = DrawnList.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException(FILE + " is missing from the library");
      }
      DrawnList list = new DrawnList();
      String[] lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n");
      for (int i = 0; i < lines.length; i++) {
        if (!lines[i].isBlank() && !lines[i].startsWith("#")) {
          list.add(lines[i].split("\t"), i + 1);
        }
      }
      return list;
    } catch (IOException e) {
      throw new IllegalStateException(FILE + ": cannot be read", e);
    }
  }

  private void add(String[] cells, int line) {
    if (cells[0].equals("@group")) {
      groups.put(cells[1], Set.of(cells[2].split(" +")));
    } else if (cells[0].equals("@note")) {
      notes.put(cells[1], cells[2]);
    } else {
      String besides = cells[3].equals("-") ? null : cells[3];
      ValueClass values = new ValueClass(cells[2], group("colours"));
      Set<String> elements = elements(cells[0]);
      for (String name : cells[1].split(" +")) {
        byName
            .computeIfAbsent(name, n -> new ArrayList<>())
            .add(new Entry(elements, name, values, besides, cells[4], line));
      }
    }
  }

  private Set<String> elements(String written) {
    Set<String> all = new HashSet<>();
    for (String word : written.split(" +")) {
      all.addAll(groups.getOrDefault(word, Set.of(word)));
    }
    return all;
  }

  /** The words of a group; none if there is no such group. */
  Set<String> group(String name) {
    return groups.getOrDefault(name, Set.of());
  }

  /** All lines for an attribute or property, in their order; none if it is on no line. */
  List<Entry> of(String name) {
    return byName.getOrDefault(name, List.of());
  }

  /** The text of a note. */
  String note(String key) {
    String text = notes.get(key);
    if (text == null) {
      throw new IllegalStateException("no such note: " + key);
    }
    return text;
  }

  /** Every line, for tests. */
  List<Entry> entries() {
    return byName.values().stream().flatMap(List::stream).toList();
  }
}
