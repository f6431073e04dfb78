package dev.placket.packs.history;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The log of a pack and the revision of each of its sheets.
 *
 * @param log the entries, the earliest first
 * @param sheets the last revision that changed a sheet, by the sheet's identifier; a sheet that is
 *     not in it has the revision of the pack
 */
public record PackHistory(List<LogEntry> log, Map<String, String> sheets) {
  /** Nothing has been issued. */
  public static final PackHistory NONE = new PackHistory(List.of(), Map.of());

  /** Copies the collections. */
  public PackHistory {
    log = List.copyOf(log);
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
  }
}
