package dev.placket.packs.description;

import dev.placket.packs.history.LogEntry;
import dev.placket.packs.history.PackHistory;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the log of a pack. */
final class LogNode {
  private static final List<String> KEYS = List.of("revision", "date", "by", "sheet", "what");

  private final NodeValues values;

  LogNode(NodeValues values) {
    this.values = values;
  }

  PackHistory history(@Nullable PackNode node) {
    List<LogEntry> log = values.list(node, "entries, each with revision and what", this::entry);
    return log.isEmpty() ? PackHistory.NONE : new PackHistory(log, Map.of());
  }

  private LogEntry entry(PackNode node) {
    Entries e = new Entries(node, "the entry of the log", KEYS, values.faults());
    return new LogEntry(
        values.text(e.need("revision"), ""),
        values.text(e.get("date"), ""),
        values.text(e.get("by"), ""),
        values.text(e.get("sheet"), ""),
        values.text(e.need("what"), ""));
  }
}
