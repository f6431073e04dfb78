package dev.placket.packs.issue;

import dev.placket.packs.history.LogEntry;
import dev.placket.packs.history.PackHistory;
import dev.placket.packs.issue.Change.Kind;
import dev.placket.packs.revision.Marked;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The history of a pack with a further revision: entries of its log from the changes, in plain
 * words, and the revision of each sheet.
 *
 * <p>Where the description has entries for a revision, these stand instead.
 */
final class LogRows {
  /** Longer texts are cut: the whole of them stands on the sheet. */
  private static final int LONGEST = 60;

  /** How much of a long text stands before its first difference. */
  private static final int BEFORE = 12;

  private static final String ARROW = " \u2192 ";

  private final JsonTree before;
  private final JsonTree after;
  private final String revision;

  private LogRows(JsonTree before, JsonTree after) {
    this.before = before;
    this.after = after;
    this.revision = after.get("pack").get("revision").text();
  }

  /**
   * The history.
   *
   * @param stated the entries that the description has
   * @param before the issue before
   * @param after the pack that is issued
   * @param changes from one to the other
   * @param marked what is marked on its sheets
   */
  static PackHistory of(
      List<LogEntry> stated,
      JsonTree before,
      JsonTree after,
      List<Change> changes,
      List<Marked> marked) {
    LogRows rows = new LogRows(before, after);
    List<LogEntry> log = rows.log(stated, changes);
    return new PackHistory(log, rows.sheets(changes, marked));
  }

  private List<LogEntry> log(List<LogEntry> stated, List<Change> changes) {
    Set<String> own = new LinkedHashSet<>();
    stated.forEach(e -> own.add(e.revision()));
    List<LogEntry> log = new ArrayList<>();
    for (JsonTree e : before.get("history").get("log").items()) {
      LogEntry entry =
          new LogEntry(
              e.get("revision").text(),
              e.get("date").text(),
              e.get("by").text(),
              e.get("sheet").text(),
              e.get("what").text());
      if (!own.contains(entry.revision())) {
        log.add(entry);
      }
    }
    log.addAll(stated);
    if (!own.contains(revision)) {
      log.addAll(entries(changes));
    }
    return log;
  }

  /** An entry for each change of the garment; one for all values of a point of measure. */
  private List<LogEntry> entries(List<Change> changes) {
    Map<String, StringBuilder> points = new LinkedHashMap<>();
    List<LogEntry> entries = new ArrayList<>();
    for (Change change : changes) {
      if (change.kind() == Kind.POINT) {
        String code = change.what().replaceAll(", .*", "");
        String part = change.what().equals(code) ? "" : change.what().substring(code.length() + 2);
        StringBuilder text = points.computeIfAbsent(code, c -> new StringBuilder(c + ": "));
        text.append(text.length() == code.length() + 2 ? "" : "; ");
        text.append((part + " " + values(change)).strip());
      } else if (isOfGarment(change)) {
        entries.add(entry(change.sheet(), words(change)));
      }
    }
    points.values().forEach(text -> entries.add(entry("", text.toString())));
    return entries;
  }

  private boolean isOfGarment(Change change) {
    return switch (change.kind()) {
      case FIELD -> !OwnFields.NAMES.contains(change.what());
      case CELL, ROW -> OwnFields.isOther(before, after, change.before(), change.after());
      case SHEET, FLAT, CALLOUT, POINT -> true;
      case SIZE, PLACE, FILE -> false;
    };
  }

  private LogEntry entry(String sheet, String what) {
    JsonTree pack = after.get("pack");
    return new LogEntry(
        revision, pack.get("date").text(), pack.get("issuedBy").text(), name(sheet), what);
  }

  private String name(String sheet) {
    for (JsonTree tree : List.of(after, before)) {
      JsonTree its = tree.get("sheets").by("id").get(sheet);
      if (its != null && !sheet.isEmpty()) {
        return its.get("name").text();
      }
    }
    return "";
  }

  private String words(Change change) {
    String what = flat(change.what());
    return switch (change.kind()) {
      case SHEET ->
          change.added()
              ? "new sheet"
              : change.removed() ? "sheet removed" : what + changed(change);
      case CELL -> of(change, "cells", "cell", what) + changed(change);
      case ROW -> what.substring(what.indexOf(", ") + 2) + changed(change);
      case FLAT ->
          what.endsWith(", caption") || !what.contains(", ")
              ? of(change, "placements", "flat", what) + changed(change)
              : of(change, "placements", "flat", what).replaceFirst(", ", ": ") + " changed";
      case CALLOUT -> callout(change);
      default -> what + changed(change);
    };
  }

  /** A cell or a flat by its caption, where it has one. */
  private String of(Change change, String list, String field, String what) {
    String id = what.replaceAll(", .*", "");
    JsonTree sheet = after.get("sheets").by("id").get(change.sheet());
    JsonTree its = sheet == null ? null : sheet.get(list).by(field).get(id);
    String caption = its == null ? "" : flat(its.get("caption").text());
    return caption.isEmpty() ? what : caption + what.substring(id.length());
  }

  private static String callout(Change change) {
    String was = change.before().replaceAll(" @ .*", "");
    String is = change.after().replaceAll(" @ .*", "");
    return was.equals(is)
        ? "callout " + change.what() + " moved"
        : "callout " + changed(new Change(change.kind(), "", "", was, is)).substring(2);
  }

  private static String changed(Change change) {
    return ": " + values(change);
  }

  private static String values(Change change) {
    String was = flat(change.before());
    String is = flat(change.after());
    if (change.added()) {
      return "new, " + cut(is);
    }
    if (change.removed()) {
      return "removed, was " + cut(was);
    }
    if (Math.max(was.length(), is.length()) <= LONGEST) {
      return was + ARROW + is;
    }
    int same = 0;
    while (same < Math.min(was.length(), is.length()) && was.charAt(same) == is.charAt(same)) {
      same++;
    }
    // From a word or two before the first difference.
    int from = was.lastIndexOf(' ', Math.max(0, same - BEFORE)) + 1;
    String left = from == 0 ? "" : "\u2026 ";
    return left + cut(was.substring(from)) + ARROW + left + cut(is.substring(from));
  }

  /** On one line. */
  private static String flat(String text) {
    return text.strip().replaceAll("\\s*\\n\\s*", " / ");
  }

  private static String cut(String line) {
    return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1).strip() + "\u2026";
  }

  /** A sheet keeps its revision until something on it changes. */
  private Map<String, String> sheets(List<Change> changes, List<Marked> marked) {
    Set<String> changed = new LinkedHashSet<>();
    changes.stream()
        .filter(c -> isOfGarment(c) && !c.sheet().isEmpty())
        .forEach(c -> changed.add(c.sheet()));
    marked.forEach(m -> changed.add(m.sheet()));
    Map<String, JsonTree> known = before.get("history").get("sheets").fields();
    Set<String> old = before.get("sheets").by("id").keySet();
    String last = before.get("pack").get("revision").text();
    Map<String, String> sheets = new LinkedHashMap<>();
    for (String id : after.get("sheets").by("id").keySet()) {
      boolean kept = old.contains(id) && !changed.contains(id);
      JsonTree its = known.get(id);
      sheets.put(id, kept ? its == null ? last : Objects.requireNonNull(its).text() : revision);
    }
    return sheets;
  }
}
