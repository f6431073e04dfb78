package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackTable;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Rows of a table and callouts of its sheet that share a mark: neither goes without the other. */
final class MarkedRows {
  private final Described described;
  private final String sheet;

  /** Where each mark of a callout stands in the description. */
  private final Map<String, String> callouts = new LinkedHashMap<>();

  private final Set<String> rows = new HashSet<>();
  private boolean marked;

  MarkedRows(Described described, String id, PackSheet sheet) {
    this.described = described;
    this.sheet = "sheets/" + id;
    sheet
        .flats()
        .forEach(
            (flat, its) ->
                its.spots()
                    .callouts()
                    .forEach(
                        (callout, said) -> {
                          if (!said.mark().isEmpty()) {
                            String path = this.sheet + "/flats/" + flat + "/callouts/" + callout;
                            callouts.putIfAbsent(said.mark(), path + "/mark");
                          }
                        }));
  }

  /** Notes the rows of a table that have no callout, and two rows of one mark. */
  void check(PackTable table, String path) {
    for (int column = 0; column < table.columns().size(); column++) {
      PackColumn its = table.columns().get(column);
      if (its.marks()) {
        marked = true;
        for (int row = 0; row < table.rows().size(); row++) {
          String mark =
              String.join("", table.rows().get(row).get(column).byLanguage().values()).strip();
          row(mark, path + (table.csv() == null ? "/rows/" + row : "/csv"));
        }
      }
    }
  }

  private void row(String mark, String path) {
    if (mark.isEmpty()) {
      return;
    }
    if (!rows.add(mark)) {
      add(path, "a second row with the mark '" + mark + "'", "one row for a mark");
    } else if (!callouts.containsKey(mark)) {
      described
          .faults()
          .unknown(
              described.places().of(path),
              "no callout of this sheet with the mark",
              mark,
              List.copyOf(callouts.keySet()));
    }
  }

  /** Notes the marked callouts without a row, where a table has a column of marks. */
  void checkCallouts() {
    if (!marked) {
      return;
    }
    callouts.forEach(
        (mark, path) -> {
          if (!rows.contains(mark)) {
            add(path, "the mark '" + mark + "' without a row", "a row in the table of marks");
          }
        });
  }

  private void add(String path, String found, String expected) {
    described.faults().add(described.places().of(path), found, expected);
  }
}
