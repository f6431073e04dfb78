package dev.placket.packs.issue;

import dev.placket.packs.revision.Marked;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What of a pack is marked as changed since the issue before, by their {@code fit.json}.
 *
 * <p>What is gone has no place on the sheets, and a new sheet is new as a whole: neither is marked.
 * Nor are size and place of flats, which change nothing of the garment.
 */
final class MarkedThings {
  private final JsonTree before;
  private final JsonTree after;
  private final List<Marked> found = new ArrayList<>();

  private MarkedThings(JsonTree before, JsonTree after) {
    this.before = before;
    this.after = after;
  }

  static List<Marked> between(JsonTree before, JsonTree after) {
    MarkedThings things = new MarkedThings(before, after);
    things.fields();
    things.cells("", SheetCells.ofBands(before), SheetCells.ofBands(after));
    Map<String, JsonTree> old = before.get("sheets").by("id");
    after
        .get("sheets")
        .by("id")
        .forEach(
            (id, sheet) -> {
              if (old.containsKey(id)) {
                things.sheet(id, old.get(id), sheet);
              }
            });
    return List.copyOf(things.found);
  }

  /** Cells of header and foot that fill in a changed field, on every sheet. */
  private void fields() {
    Map<String, JsonTree> old = before.get("pack").fields();
    Map<String, JsonTree> now = after.get("pack").fields();
    Map<String, JsonTree> cells = SheetCells.ofBands(after);
    now.forEach(
        (field, value) -> {
          String was = text(old, field);
          if (!OwnFields.NAMES.contains(field) && !was.equals(value.text())) {
            String braces = "{" + dashed(field) + "}";
            cells.forEach(
                (cell, c) -> {
                  if (c.get("text").text().contains(braces)) {
                    found.add(Marked.cell("", cell, was));
                  }
                });
          }
        });
  }

  private static String text(Map<String, JsonTree> fields, String name) {
    return fields.getOrDefault(name, new JsonTree("")).text();
  }

  /** A field as descriptions write it: {@code styleNumber} is {@code style-number} there. */
  private static String dashed(String field) {
    StringBuilder dashed = new StringBuilder();
    for (char c : field.toCharArray()) {
      if (Character.isUpperCase(c)) {
        dashed.append('-').append(Character.toLowerCase(c));
      } else {
        dashed.append(c);
      }
    }
    return dashed.toString();
  }

  private void cells(String sheet, Map<String, JsonTree> old, Map<String, JsonTree> now) {
    now.forEach(
        (cell, its) -> {
          JsonTree was = old.getOrDefault(cell, new JsonTree(""));
          String text = was.get("text").text();
          if (isOther(text, its.get("text").text())
              || isOther(was.get("caption").text(), its.get("caption").text())) {
            found.add(Marked.cell(sheet, cell, text));
          }
        });
  }

  private void sheet(String id, JsonTree old, JsonTree now) {
    cells(id, SheetCells.ofSheet(old), SheetCells.ofSheet(now));
    Map<String, JsonTree> tables = old.get("tables").by("table");
    now.get("tables")
        .by("table")
        .forEach(
            (table, its) -> table(id, table, tables.getOrDefault(table, new JsonTree("")), its));
    Map<String, JsonTree> flats = old.get("placements").by("flat");
    now.get("placements").by("flat").forEach((flat, its) -> flat(id, flat, flats.get(flat), its));
  }

  private boolean isOther(String was, String is) {
    return OwnFields.isOther(before, after, was, is);
  }

  private void table(String sheet, String table, JsonTree before, JsonTree after) {
    Map<String, List<String>> old = TableRows.named(before);
    Map<String, Integer> columns = new LinkedHashMap<>();
    List<String> headings = TableRows.texts(before.get("headings"));
    for (int i = 0; i < headings.size(); i++) {
      columns.putIfAbsent(headings.get(i), i);
    }
    List<String> now = TableRows.texts(after.get("headings"));
    int row = 0;
    for (var each : TableRows.named(after).entrySet()) {
      List<String> was = old.getOrDefault(each.getKey(), List.of());
      Map<Integer, String> changed = new TreeMap<>();
      for (int c = 0; c < each.getValue().size(); c++) {
        int from = c < now.size() ? columns.getOrDefault(now.get(c), -1) : c;
        // A column that came, or is headed otherwise, is new in every row; its heading says so.
        boolean known = from >= 0 && from < was.size();
        if (was.isEmpty() || known && !was.get(from).equals(each.getValue().get(c))) {
          changed.put(c, known ? was.get(from) : "");
        }
      }
      if (!changed.isEmpty()) {
        found.add(Marked.row(sheet, table, row, changed));
      }
      row++;
    }
  }

  private void flat(String sheet, String id, @Nullable JsonTree old, JsonTree now) {
    if (old == null) {
      found.add(Marked.flat(sheet, id));
      return;
    }
    List<Change> changes = Changes.ofFlat(sheet, id, old, now);
    if (changes.stream().anyMatch(c -> c.kind() == Change.Kind.FLAT)) {
      found.add(Marked.flat(sheet, id));
    }
    changes.stream()
        .filter(c -> c.kind() == Change.Kind.CALLOUT && !c.removed())
        .forEach(c -> found.add(Marked.callout(sheet, id, c.what())));
  }
}
