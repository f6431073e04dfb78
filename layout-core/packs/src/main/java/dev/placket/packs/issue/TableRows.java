package dev.placket.packs.issue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows of a table in {@code fit.json}. */
final class TableRows {
  private TableRows() {}

  /** The rows by their first value and, where several have it, their order among these. */
  static Map<String, List<String>> named(JsonTree table) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (JsonTree row : table.get("rows").items()) {
      List<String> values = texts(row);
      String first = values.isEmpty() ? "" : values.get(0);
      String name = first;
      for (int n = 2; rows.containsKey(name); n++) {
        name = first + " (" + n + ")";
      }
      rows.put(name, values);
    }
    return rows;
  }

  static List<String> texts(JsonTree list) {
    return list.items().stream().map(JsonTree::text).toList();
  }
}
