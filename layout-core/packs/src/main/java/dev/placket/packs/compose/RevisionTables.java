package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.RevisionPart;
import dev.placket.packs.description.Words;
import dev.placket.packs.history.LogEntry;
import dev.placket.packs.language.StockPhrase;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The tables of revisions: the log, and the sheets with the revision of each. */
final class RevisionTables {
  private final Pack pack;

  RevisionTables(Pack pack) {
    this.pack = pack;
  }

  /** The table with its columns and rows. */
  PackTable filled(PackTable table, RevisionPart part, Headings headings) {
    return part == RevisionPart.LOG ? log(table, headings) : sheets(table, headings);
  }

  private PackTable log(PackTable table, Headings headings) {
    List<LogEntry> log = pack.history().log();
    List<PackColumn> columns = new ArrayList<>();
    List<Function<LogEntry, String>> values = new ArrayList<>();
    column(columns, headings.of(StockPhrase.REVISION), false);
    values.add(LogEntry::revision);
    optional(columns, values, headings.of(StockPhrase.DATE), LogEntry::date);
    optional(columns, values, headings.of(StockPhrase.ISSUED_BY), LogEntry::by);
    optional(columns, values, headings.of(StockPhrase.SHEET), LogEntry::sheet);
    column(columns, headings.of(StockPhrase.CHANGED), true);
    values.add(LogEntry::what);
    List<List<Words>> rows = new ArrayList<>();
    for (LogEntry entry : log) {
      rows.add(values.stream().map(v -> Words.of(v.apply(entry))).toList());
    }
    return table.with(columns, rows);
  }

  /** A column that is left out where no entry fills it. */
  private void optional(
      List<PackColumn> columns,
      List<Function<LogEntry, String>> values,
      Words heading,
      Function<LogEntry, String> value) {
    if (pack.history().log().stream().anyMatch(e -> !value.apply(e).isBlank())) {
      column(columns, heading, false);
      values.add(value);
    }
  }

  private PackTable sheets(PackTable table, Headings headings) {
    List<PackColumn> columns = new ArrayList<>();
    column(columns, headings.of(StockPhrase.SHEET), true);
    column(columns, headings.of(StockPhrase.REVISION), false);
    Words all = pack.fields().getOrDefault("revision", Words.NONE);
    List<List<Words>> rows = new ArrayList<>();
    pack.sheets()
        .forEach(
            (id, sheet) -> {
              String its = pack.history().sheets().get(id);
              rows.add(List.of(sheet.name(), its == null ? all : Words.of(its)));
            });
    return table.with(columns, rows);
  }

  private static void column(List<PackColumn> columns, Words heading, boolean rest) {
    GridTrack width = rest ? new GridTrack.Share(1) : null;
    columns.add(new PackColumn(heading, width, PackColumn.Align.LEFT, false, false));
  }
}
