package dev.placket.packs.compose;

import dev.placket.layout.units.Rect;
import dev.placket.packs.description.CheckPart;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.RevisionPart;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.description.Words;
import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.table.Csv;
import dev.placket.packs.table.TableLayout;
import dev.placket.packs.table.TablePiece;
import dev.placket.packs.table.TableText;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.fault.Remedy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads and lays the tables of a sheet, and parts what is too long for its area. */
final class SheetTables {
  private final Described described;
  private final TableFile files;
  private final Lettering lettering;
  private final PackText text;
  private final Set<String> shrunk;
  private final int mostRows;
  private final @Nullable MeasuredList measured;
  private final @Nullable CheckTables checks;
  private final @Nullable ColourBook colours;
  private final MaterialBook materials;
  private final Map<String, @Nullable SetTable> sets = new HashMap<>();

  /** The sample that the tables of the sheet list; null for none. */
  private final @Nullable String sample;

  SheetTables(
      Described described,
      TableFile files,
      Lettering lettering,
      PackText text,
      Set<String> shrunk,
      int mostRows,
      @Nullable MeasuredList measured,
      @Nullable CheckTables checks,
      @Nullable ColourBook colours,
      MaterialBook materials,
      @Nullable String sample) {
    this.colours = colours;
    this.materials = materials;
    this.measured = measured;
    this.checks = checks;
    this.sample = sample;
    this.described = described;
    this.files = files;
    this.lettering = lettering;
    this.text = text;
    this.shrunk = shrunk;
    this.mostRows = mostRows;
  }

  /**
   * A table with its values and its text.
   *
   * @param filled the values
   * @param text the text
   */
  record SetTable(FilledTable filled, TableText text) {}

  /**
   * A table with its values and its text; null where they cannot be read or set. It is read once,
   * so that a slip is noted once.
   *
   * @param width the room that it has, in points
   */
  @Nullable SetTable set(PackTable table, String path, double width) {
    if (!sets.containsKey(path)) {
      FilledTable filled = filled(table, path, width);
      TableText set = filled == null ? null : text(filled, path);
      sets.put(path, filled == null || set == null ? null : new SetTable(filled, set));
    }
    return sets.get(path);
  }

  /** The height that a table needs for all its rows, in points; 0 where it cannot be set. */
  double height(PackTable table, String path, double width) {
    SetTable set = set(table, path, width);
    try {
      return set == null ? 0 : TableLayout.of(set.text(), width, lettering).height();
    } catch (IllegalArgumentException e) {
      // A value that is too wide is noted where the table is laid.
      return 0;
    }
  }

  /** With the values of its file, of its points or of a check; null where they cannot be read. */
  private @Nullable FilledTable filled(PackTable table, String path, double width) {
    CheckPart part = table.check();
    if (part != null) {
      return check(table, part, path, width);
    }
    PackTable filled = ofValues(table, path);
    return filled == null ? null : FilledTable.of(filled);
  }

  private @Nullable FilledTable check(PackTable table, CheckPart part, String path, double width) {
    TextPosition place = described.places().of(path + "/check");
    if (sample == null) {
      described
          .faults()
          .add(place, "a table of a check on a sheet without check", "the sheet's key check");
      return null;
    }
    if (checks == null || !checks.checks().containsKey(sample)) {
      return null;
    }
    FilledTable wide = checks.filled(table, part, sample, true);
    FilledTable filled = fits(wide, path, width) ? wide : checks.filled(table, part, sample, false);
    return few(filled.table().rows().size(), place) ? filled : null;
  }

  private boolean fits(FilledTable filled, String path, double width) {
    TableText set = text(filled, path);
    try {
      return set != null && TableLayout.of(set, width, lettering).rows() > 0;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private @Nullable PackTable ofValues(PackTable table, String path) {
    if (!table.measures().isEmpty()) {
      return measures(table, path);
    }
    if (!table.colourways().isEmpty()) {
      return colourways(table, path);
    }
    if (table.revisions() != null) {
      PackTable filled =
          new RevisionTables(described.pack())
              .filled(table, table.revisions(), new Headings(text.phrases()));
      return few(filled.rows().size(), described.places().of(path)) ? filled : null;
    }
    if (!table.materials().isEmpty()) {
      PackTable filled = materials.filled(table, path, new Headings(text.phrases()));
      return few(filled.rows().size(), described.places().of(path)) ? filled : null;
    }
    String csv = table.csv();
    if (csv == null) {
      return few(table.rows().size(), described.places().of(path)) ? table : null;
    }
    TextPosition place = described.places().of(path + "/csv");
    return files
        .records(csv, path + "/csv")
        .filter(records -> few(records.size() - 1, place))
        .map(records -> filled(table, records, csv, place))
        .orElse(null);
  }

  private @Nullable PackTable measures(PackTable table, String path) {
    TextPosition place = described.places().of(path + "/measures");
    if (described.pack().measurements() == null) {
      described
          .faults()
          .add(place, "a table of measures in a pack without measurements", "the key measurements");
    }
    if (measured == null) {
      return null;
    }
    for (String code : measured.unknown(table.measures())) {
      described.faults().unknown(place, "no point of measure", code, measured.lines().keySet());
    }
    PackTable filled = measured.filled(table);
    return few(filled.rows().size(), place) ? filled : null;
  }

  private @Nullable PackTable colourways(PackTable table, String path) {
    TextPosition place = described.places().of(path + "/colourways");
    if (colours == null) {
      described
          .faults()
          .add(place, "a table of colourways in a pack without them", "the key colourways");
      return null;
    }
    PackTable filled = colours.filled(table, path, new Headings(text.phrases()));
    return few(filled.rows().size(), place) ? filled : null;
  }

  private boolean few(int rows, TextPosition place) {
    if (rows > mostRows) {
      described
          .faults()
          .add(
              place,
              "a table of " + rows + " rows",
              mostRows + " at most",
              Remedy.of("split it").or("raise the limit", PackSetting.MAXIMUM_ROWS));
    }
    return rows <= mostRows;
  }

  private @Nullable PackTable filled(
      PackTable table, List<Csv.Row> records, String csv, TextPosition place) {
    List<PackColumn> columns = table.columns();
    List<String> headings = records.get(0).fields();
    if (columns.isEmpty()) {
      columns = headings.stream().map(PackColumn::of).toList();
    } else if (columns.size() != headings.size()) {
      described
          .faults()
          .add(
              place,
              csv + " with " + headings.size() + " values a line",
              columns.size() + ", one for each column");
      return null;
    }
    List<List<Words>> rows = new ArrayList<>();
    for (Csv.Row record : records.subList(1, records.size())) {
      rows.add(record.fields().stream().map(Words::of).toList());
    }
    return table.with(columns, rows);
  }

  /** A table with its text; null where a value cannot be set. */
  private @Nullable TableText text(FilledTable filled, String path) {
    PackTable table = filled.table();
    List<TableText.Column> columns = new ArrayList<>();
    String sample = text.beside(Words.of(table.sample()), path + "/sample");
    boolean found = sample.isBlank();
    boolean settable = true;
    for (int c = 0; c < table.columns().size(); c++) {
      PackColumn column = table.columns().get(c);
      String at = path + "/columns/" + c;
      String heading = text.setLines(column.heading(), at + "/heading");
      settable &= settable(heading, at);
      boolean strong =
          !sample.isBlank() && LanguageMarks.without(heading).lines().toList().contains(sample);
      found |= strong;
      columns.add(
          new TableText.Column(heading, column.width(), column.align(), column.windows(), strong));
    }
    if (!found) {
      List<String> known = columns.stream().map(c -> LanguageMarks.without(c.heading())).toList();
      described
          .faults()
          .unknown(described.places().of(path + "/sample"), "no column headed", sample, known);
    }
    List<List<String>> rows = new ArrayList<>();
    for (int r = 0; r < table.rows().size(); r++) {
      List<String> row = new ArrayList<>();
      for (int c = 0; c < table.rows().get(r).size(); c++) {
        String at = path + "/rows/" + r + "/" + c;
        Words value = table.rows().get(r).get(c);
        String set =
            isLiteral(table)
                ? text.setValue(value.byLanguage().getOrDefault("", ""))
                : text.setLines(value, at);
        settable &= settable(set, table.csv() == null ? at : path + "/csv");
        row.add(set);
      }
      rows.add(row);
    }
    boolean even = rows.stream().allMatch(r -> r.size() == columns.size());
    return settable && even && !columns.isEmpty()
        ? new TableText(
            columns,
            rows,
            filled.reversed(),
            Lettering.steps(rows.toString(), table.size(), table.least()),
            table.windowRow())
        : null;
  }

  /** Whether values stand as they are: braces in a file, and in the log, are no fields. */
  private static boolean isLiteral(PackTable table) {
    return table.csv() != null || table.revisions() == RevisionPart.LOG;
  }

  private boolean settable(String value, String path) {
    String fault = lettering.fault(value);
    if (fault != null) {
      described
          .faults()
          .add(described.places().of(path), fault, "letters that one of the fonts has");
    }
    return fault == null;
  }

  /**
   * The pieces of a table: the first in its area, further ones in all that a sheet has.
   *
   * @param between what header and foot leave of a sheet
   */
  List<TablePiece> pieces(
      TableText table, PackTable said, String name, Rect area, Rect between, String path) {
    List<TablePiece> pieces = new ArrayList<>();
    try {
      // Columns keep their widths on further sheets.
      TableLayout laid = TableLayout.of(table, area.width(), lettering);
      report(laid, said, path);
      Rect room = area;
      int from = 0;
      int last = 0;
      do {
        int n = laid.rowsWithin(from, room.height());
        if (n == 0 && laid.rows() > 0 && !pieces.isEmpty()) {
          add(path, "row " + (from + 1) + ", which is higher than a sheet", "fewer words in it");
          return List.of();
        }
        if (n > 0 || laid.rows() == 0) {
          pieces.add(TablePiece.of(laid, from, from + n, name, room));
        } else {
          pieces.add(TablePiece.NONE);
        }
        last = from;
        from += n;
        room = further(area, between);
      } while (from < table.rows().size());
      if (pieces.size() > 1) {
        reportFew(laid, last, name, path);
      }
    } catch (IllegalArgumentException e) {
      add(path, String.valueOf(e.getMessage()), "columns that hold their values in " + name);
    }
    return pieces;
  }

  /** Where a table continues: under the header of a further sheet, at the same width. */
  static Rect further(Rect area, Rect between) {
    double right = between.left() + area.width();
    boolean whole = right > between.right() - 1e-6;
    return new Rect(
        between.left(), between.top(), whole ? between.right() : right, between.bottom());
  }

  /** A last sheet with less than a fifth of the rows is likely not meant. */
  private void reportFew(TableLayout laid, int last, String name, String path) {
    int rows = laid.rows() - last;
    if (5 * rows < laid.rows()) {
      int line = described.places().of(path).line();
      shrunk.add(
          String.format(
              Locale.ROOT,
              "line %d: the last sheet of table %s has only %d of its %d rows; %.1f mm more height"
                  + " for it would avoid that sheet.",
              line,
              name,
              rows,
              laid.rows(),
              laid.height(last) * 25.4 / 72));
    }
  }

  private void report(TableLayout laid, PackTable said, String path) {
    if (laid.step().compareTo(said.size()) < 0) {
      int line = described.places().of(path).line();
      shrunk.add(
          "line " + line + ": the table is set at " + CellSetter.mm(laid.step()) + " to fit");
    }
  }

  private void add(String path, String found, String expected) {
    described.faults().add(described.places().of(path), found, expected);
  }
}
