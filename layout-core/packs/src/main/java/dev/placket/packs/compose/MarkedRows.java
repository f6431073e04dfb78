package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackCallout;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.Words;
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

  private final Map<String, PackCallout> meanings = new LinkedHashMap<>();
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
                          String path = this.sheet + "/flats/" + flat + "/callouts/" + callout;
                          note(said, path + "/mark");
                        }));
  }

  private void note(PackCallout said, String path) {
    if (said.asks()) {
      add(
          path,
          "the mark 'new', which has no code yet",
          "a code, as 9 or D1; the command 'number' assigns it");
    } else if (!said.mark().isEmpty()) {
      callouts.putIfAbsent(said.mark(), path);
      PackCallout before = meanings.putIfAbsent(said.mark(), said);
      if (before != null && !alike(before, said)) {
        add(path, "the mark '" + said.mark() + "' for a second text", "one text for a mark");
      }
    }
  }

  /** Whether two callouts with one mark say the same; that of a detail is checked elsewhere. */
  private static boolean alike(PackCallout a, PackCallout b) {
    Words text = a.text();
    Words other = b.text();
    return text == null || other == null || text.blank() || other.blank() || text.equals(other);
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
