package dev.placket.packs.issue;

import dev.placket.packs.issue.Change.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What differs between two issues, by their {@code fit.json}.
 *
 * <p>Sheets, flats, cells and callouts are matched by identifiers, rows by their first value and,
 * where several have it, by their order among these. Two issues without a change say the same.
 */
final class Changes {
  /** A flat that moves or grows by less, in points or as a share, has not. */
  private static final double SAME = 0.05;

  private static final double SAME_SIZE = 1e-6;

  private final List<Change> found = new ArrayList<>();

  private Changes() {}

  /** All changes, in the order of their kinds, then of the sheets. */
  static List<Change> between(JsonTree before, JsonTree after) {
    Changes changes = new Changes();
    changes.fields(before.get("pack"), after.get("pack"));
    changes.points(before.get("measurements"), after.get("measurements"));
    changes.cells("", SheetCells.ofBands(before), SheetCells.ofBands(after));
    changes.sheets(before.get("sheets").by("id"), after.get("sheets").by("id"));
    changes.found.sort(Comparator.comparing(Change::kind));
    Set<String> points = new LinkedHashSet<>();
    changes.found.stream().filter(c -> c.kind() == Kind.POINT).forEach(c -> points.add(c.what()));
    return changes.found.stream().filter(c -> !isOfPoint(c, points)).toList();
  }

  /** Whether a value of a table is that of a point of measure, which is listed as such. */
  private static boolean isOfPoint(Change change, Set<String> points) {
    String what = change.what();
    int table = what.indexOf(", ");
    return change.kind() == Kind.ROW && table >= 0 && points.contains(what.substring(table + 2));
  }

  private void add(Kind kind, String sheet, String what, String before, String after) {
    if (!before.equals(after)) {
      found.add(new Change(kind, sheet, what, before, after));
    }
  }

  private static Set<String> names(Map<String, ?> before, Map<String, ?> after) {
    Set<String> names = new LinkedHashSet<>(before.keySet());
    names.addAll(after.keySet());
    return names;
  }

  private static JsonTree of(Map<String, JsonTree> map, String name) {
    return map.getOrDefault(name, new JsonTree(""));
  }

  private void fields(JsonTree before, JsonTree after) {
    for (String name : names(before.fields(), after.fields())) {
      if (!name.equals("title")) {
        add(Kind.FIELD, "", name, before.get(name).text(), after.get(name).text());
      }
    }
  }

  private void points(JsonTree before, JsonTree after) {
    Map<String, JsonTree> old = before.get("points").by("point");
    Map<String, JsonTree> now = after.get("points").by("point");
    for (String code : names(old, now)) {
      JsonTree a = of(old, code);
      JsonTree b = of(now, code);
      if (!old.containsKey(code) || !now.containsKey(code)) {
        add(Kind.POINT, "", code, a.get("name").text(), b.get("name").text());
        continue;
      }
      add(Kind.POINT, "", code + ", name", a.get("name").text(), b.get("name").text());
      add(Kind.POINT, "", code + ", tolerance", tolerance(a), tolerance(b));
      Map<String, JsonTree> sizes = a.get("values").by("size");
      Map<String, JsonTree> others = b.get("values").by("size");
      for (String size : names(sizes, others)) {
        String was = of(sizes, size).get("value").text();
        add(Kind.POINT, "", code + ", " + size, was, of(others, size).get("value").text());
      }
    }
  }

  private static String tolerance(JsonTree point) {
    String plus = point.get("plus").text();
    String minus = point.get("minus").text();
    return plus.equals(minus) ? plus : "+" + plus + " -" + minus;
  }

  private void sheets(Map<String, JsonTree> before, Map<String, JsonTree> after) {
    for (String id : names(before, after)) {
      JsonTree old = of(before, id);
      JsonTree now = of(after, id);
      add(Kind.SHEET, id, "name", old.get("name").text(), now.get("name").text());
      if (before.containsKey(id) && after.containsKey(id)) {
        sheet(id, old, now);
      }
    }
    List<String> kept = before.keySet().stream().filter(after::containsKey).toList();
    List<String> order = after.keySet().stream().filter(before::containsKey).toList();
    add(Kind.SHEET, "", "order", String.join(", ", kept), String.join(", ", order));
  }

  private void sheet(String id, JsonTree before, JsonTree after) {
    add(Kind.SHEET, id, "paper", paper(before), paper(after));
    cells(id, SheetCells.ofSheet(before), SheetCells.ofSheet(after));
    Map<String, JsonTree> tables = before.get("tables").by("table");
    Map<String, JsonTree> others = after.get("tables").by("table");
    for (String table : names(tables, others)) {
      table(id, table, of(tables, table), of(others, table));
    }
    flats(id, before.get("placements").by("flat"), after.get("placements").by("flat"));
  }

  private void cells(String sheet, Map<String, JsonTree> old, Map<String, JsonTree> now) {
    for (String cell : names(old, now)) {
      JsonTree a = of(old, cell);
      JsonTree b = of(now, cell);
      add(Kind.CELL, sheet, cell, text(a, "text"), text(b, "text"));
      add(Kind.CELL, sheet, cell + ", caption", text(a, "caption"), text(b, "caption"));
    }
  }

  private static String paper(JsonTree sheet) {
    return sheet.get("paper").get("name").text();
  }

  private void table(String sheet, String table, JsonTree before, JsonTree after) {
    List<String> was = TableRows.texts(before.get("headings"));
    List<String> is = TableRows.texts(after.get("headings"));
    add(Kind.ROW, sheet, table + ", headings", String.join(" | ", was), String.join(" | ", is));
    Map<String, List<String>> old = TableRows.named(before);
    Map<String, List<String>> now = TableRows.named(after);
    for (String name : names(old, now)) {
      List<String> a = old.getOrDefault(name, List.of());
      List<String> b = now.getOrDefault(name, List.of());
      if (!was.equals(is) || a.isEmpty() || b.isEmpty()) {
        add(Kind.ROW, sheet, table + ", " + name, String.join(" | ", a), String.join(" | ", b));
        continue;
      }
      for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
        String column = i < is.size() ? is.get(i) : "" + (i + 1);
        add(Kind.ROW, sheet, table + ", " + name + ", " + column, a.get(i), b.get(i));
      }
    }
  }

  private void flats(String sheet, Map<String, JsonTree> before, Map<String, JsonTree> after) {
    for (String id : names(before, after)) {
      JsonTree old = of(before, id);
      JsonTree now = of(after, id);
      if (!before.containsKey(id) || !after.containsKey(id)) {
        add(Kind.FLAT, sheet, id, old.get("source").text(), now.get("source").text());
        continue;
      }
      flat(sheet, id, old, now);
      place(sheet, id, old, now);
    }
  }

  private void flat(String sheet, String id, JsonTree old, JsonTree now) {
    add(Kind.FLAT, sheet, id + ", caption", caption(old), caption(now));
    if (!text(old, "digest").equals(text(now, "digest"))) {
      found.add(new Change(Kind.FLAT, sheet, id + ", drawing", drawing(old), drawing(now)));
    }
    drawnOtherwise(sheet, id, old, now);
    callouts(sheet, old, now);
  }

  /** What differs of a flat of both issues, but for its size and place. */
  static List<Change> ofFlat(String sheet, String id, JsonTree before, JsonTree after) {
    Changes changes = new Changes();
    changes.flat(sheet, id, before, after);
    return changes.found;
  }

  private static String caption(JsonTree flat) {
    return String.join(" / ", TableRows.texts(flat.get("lines")));
  }

  /** What differs though the file is the same: colours, hidden parts, lines, spots, measures. */
  private void drawnOtherwise(String sheet, String id, JsonTree before, JsonTree after) {
    boolean same = text(before, "digest").equals(text(after, "digest"));
    if (same && !text(before, "drawn").equals(text(after, "drawn"))) {
      String was = text(before, "drawn");
      String is = text(after, "drawn");
      found.add(
          new Change(Kind.FLAT, sheet, id + ", colours or hidden parts", start(was), start(is)));
    }
    add(
        Kind.FLAT,
        sheet,
        id + ", line weight",
        text(before, "lineWeight"),
        text(after, "lineWeight"));
    add(
        Kind.FLAT,
        sheet,
        id + ", layers",
        String.join(", ", TableRows.texts(before.get("layers"))),
        String.join(", ", TableRows.texts(after.get("layers"))));
    add(Kind.FLAT, sheet, id + ", lines of measure", measures(before), measures(after));
    Map<String, JsonTree> old = before.get("points").by("point");
    Map<String, JsonTree> now = after.get("points").by("point");
    for (String point : names(old, now)) {
      String was = old.containsKey(point) ? share(before, of(old, point)) : "";
      String is = now.containsKey(point) ? share(after, of(now, point)) : "";
      add(Kind.FLAT, sheet, id + ", point " + point, was, is);
    }
  }

  private static String measures(JsonTree flat) {
    return String.join(", ", flat.get("dimensions").by("point").keySet());
  }

  /** Where a point lies in the box of its flat, in hundredths of its sides. */
  private static String share(JsonTree flat, JsonTree point) {
    JsonTree box = flat.get("inkedBox");
    double left = box.get("left").number();
    double top = box.get("top").number();
    double across = (point.get("x").number() - left) / (box.get("right").number() - left);
    double down = (point.get("y").number() - top) / (box.get("bottom").number() - top);
    return String.format(java.util.Locale.ROOT, "%.1f %%, %.1f %%", 100 * across, 100 * down);
  }

  private static String start(String digest) {
    return digest.substring(0, Math.min(8, digest.length()));
  }

  private static String text(JsonTree flat, String field) {
    return flat.get(field).text();
  }

  /** Its file with the beginning of its digest, which shows that the file has changed. */
  private static String drawing(JsonTree flat) {
    return text(flat, "source") + " " + start(text(flat, "digest"));
  }

  private void callouts(String sheet, JsonTree before, JsonTree after) {
    Map<String, String> old = callouts(before);
    Map<String, String> now = callouts(after);
    for (String id : names(old, now)) {
      add(Kind.CALLOUT, sheet, id, old.getOrDefault(id, ""), now.getOrDefault(id, ""));
    }
  }

  /** What each says, at which points, and the radius of its rings in the drawing's units. */
  private static Map<String, String> callouts(JsonTree flat) {
    Map<String, String> all = new LinkedHashMap<>();
    for (JsonTree callout : flat.get("callouts").items()) {
      double ring = callout.get("ring").number() / flat.get("scale").number();
      String round =
          Double.isNaN(ring) ? "" : String.format(java.util.Locale.ROOT, " (ring %.4g)", ring);
      String at = " @ " + callout.get("point").text() + round;
      all.merge(
          callout.get("callout").text(),
          callout.get("text").text().isEmpty() ? "(mark)" + at : callout.get("text").text() + at,
          (a, b) -> a + at);
    }
    return all;
  }

  private void place(String sheet, String id, JsonTree before, JsonTree after) {
    double was = before.get("scale").number();
    double is = after.get("scale").number();
    if (Math.abs(is - was) > SAME_SIZE * was) {
      add(Kind.SIZE, sheet, id, size(before), size(after));
    }
    double x = middle(after, "left", "right") - middle(before, "left", "right");
    double y = middle(after, "top", "bottom") - middle(before, "top", "bottom");
    if (Math.sqrt(x * x + y * y) > SAME) {
      add(Kind.PLACE, sheet, id, spot(before), spot(after));
    }
  }

  private static double middle(JsonTree flat, String one, String other) {
    JsonTree box = flat.get("inkedBox");
    return (box.get(one).number() + box.get(other).number()) / 2;
  }

  private static String size(JsonTree flat) {
    JsonTree box = flat.get("inkedBox");
    return mm(box.get("right").number() - box.get("left").number())
        + " × "
        + mm(box.get("bottom").number() - box.get("top").number())
        + " mm";
  }

  private static String spot(JsonTree flat) {
    return mm(middle(flat, "left", "right")) + ", " + mm(middle(flat, "top", "bottom")) + " mm";
  }

  private static String mm(double points) {
    return String.format(java.util.Locale.ROOT, "%.1f", points * 25.4 / 72);
  }
}
