package dev.placket.packs.description;

import dev.placket.layout.units.Length;
import dev.placket.packs.text.Lettering;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a table. */
final class TableReader {
  private static final List<String> KEYS =
      List.of(
          "columns",
          "rows",
          "csv",
          "measures",
          "check",
          "colourways",
          "materials",
          "revisions",
          "sample",
          "size",
          "least",
          "window-row");
  private static final List<String> MADE =
      List.of("measures", "check", "colourways", "materials", "revisions");
  private static final List<String> COLUMN =
      List.of("heading", "width", "align", "windows", "marks");
  private static final Map<String, PackColumn.Align> ALIGNS =
      Spelled.words(PackColumn.Align.values());

  private static final Map<String, CheckPart> PARTS = Spelled.words(CheckPart.values());

  private static final Map<String, RevisionPart> REVISIONS = Spelled.words(RevisionPart.values());

  private final NodeValues values;

  TableReader(NodeValues values) {
    this.values = values;
  }

  PackTable table(String name, PackNode node) {
    Entries e = new Entries(node, "table " + name, KEYS, values.faults());
    PackNode rows = e.get("rows");
    PackNode csv = e.get("csv");
    List<String> sources = MADE.stream().filter(key -> e.get(key) != null).toList();
    boolean made = !sources.isEmpty();
    if (!made && (rows == null) == (csv == null)) {
      values
          .faults()
          .add(
              node.mark(),
              "table " + name + (rows == null ? " without rows" : " with both rows and csv"),
              "either rows or csv");
    } else if (sources.size() > 1) {
      values
          .faults()
          .add(node.mark(), "table " + name + " with " + String.join(" and ", sources), "either");
    } else if (made && (rows != null || csv != null || e.get("columns") != null)) {
      values
          .faults()
          .add(
              node.mark(),
              "table " + name + " with values of its own beside " + sources.get(0),
              sources.get(0) + " alone");
    }
    List<PackColumn> columns =
        values.list(
            csv == null && !made ? e.need("columns") : e.get("columns"), "columns", this::column);
    List<List<Words>> read = values.list(rows, "rows, each a list of values", n -> row(n, columns));
    Length size = values.choice(e.get("size"), SheetReader.HEIGHTS, "the height of capitals");
    Length least = values.choice(e.get("least"), SheetReader.HEIGHTS, "the height of capitals");
    Length windowRow = values.length(e.get("window-row"), 5);
    return new PackTable(
        columns,
        read,
        csv == null ? null : values.text(csv, ""),
        values.oneOrMore(e.get("measures"), "codes of points of measure, or all"),
        values.choice(e.get("check"), PARTS, "the table of a check"),
        values.oneOrMore(e.get("colourways"), "codes of colourways, or all"),
        values.oneOrMore(e.get("materials"), "numbers of materials, or all"),
        values.choice(e.get("revisions"), REVISIONS, "the table of revisions"),
        values.text(e.get("sample"), ""),
        size == null ? Lettering.VALUE : size,
        least == null ? Lettering.CAPTION : least,
        windowRow == null ? PackTable.USUAL_WINDOW_ROW : windowRow);
  }

  private PackColumn column(PackNode node) {
    if (node instanceof PackNode.Text text) {
      return PackColumn.of(text.value());
    }
    Entries e = new Entries(node, "the column", COLUMN, values.faults());
    return new PackColumn(
        values.words(e.need("heading"), Words.NONE),
        values.track(e.get("width")),
        values.choice(e.get("align"), ALIGNS, "the alignment"),
        values.flag(e.get("windows"), false),
        values.flag(e.get("marks"), false));
  }

  private List<Words> row(PackNode node, List<PackColumn> columns) {
    List<Words> row = values.list(node, "values, one for each column", n -> words(n));
    if (node instanceof PackNode.Items items && items.items().size() != columns.size()) {
      values
          .faults()
          .add(
              node.mark(),
              "a row of " + items.items().size() + " values",
              columns.size() + ", one for each column");
    }
    return row;
  }

  private @Nullable Words words(PackNode node) {
    return values.words(node);
  }
}
