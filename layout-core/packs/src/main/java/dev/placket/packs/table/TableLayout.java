package dev.placket.packs.table;

import dev.placket.layout.units.Length;
import dev.placket.packs.description.PackColumn.Align;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A table laid for a width: its columns, the heights of its rows, the lines of its values. */
public final class TableLayout {
  /** Rows are at least this high, so that a pencil has room. */
  public static final Length LEAST_ROW = Length.mm(5.5);

  private static final double INSET = TextBlock.INSET.pt();

  private final TableText table;
  private final Lettering lettering;
  private final Length step;
  private final List<Double> edges;
  private final List<List<List<String>>> rows = new ArrayList<>();
  private final List<List<String>> headings = new ArrayList<>();
  private final List<Decimals> decimals = new ArrayList<>();
  private final List<Align> aligns = new ArrayList<>();

  private TableLayout(TableText table, Length step, List<Double> edges, Lettering lettering) {
    this.table = table;
    this.step = step;
    this.edges = edges;
    this.lettering = lettering;
    for (int c = 0; c < table.columns().size(); c++) {
      headings.add(lettering.wrap(table.columns().get(c).heading(), Lettering.CAPTION, room(c)));
      decimals.add(new Decimals(table.values(c), step, lettering));
      aligns.add(ColumnWidths.align(table, c));
    }
    for (List<String> row : table.rows()) {
      List<List<String>> lines = new ArrayList<>();
      for (int c = 0; c < row.size(); c++) {
        boolean text = !table.columns().get(c).windows() && !row.get(c).isBlank();
        lines.add(text ? lettering.wrap(row.get(c), step, room(c)) : List.of());
      }
      rows.add(lines);
    }
  }

  /**
   * Lays a table at the largest of its heights at which every word goes into its column.
   *
   * @param width in points
   * @throws IllegalArgumentException naming the value that does not go in, or the widths that are
   *     too long together
   */
  public static TableLayout of(TableText table, double width, Lettering lettering) {
    String tooLong = "";
    for (Length step : table.steps()) {
      List<Double> edges = new ColumnWidths(table, step, lettering).edges(width);
      TableLayout laid = new TableLayout(table, step, edges, lettering);
      String over = laid.tooLong();
      if (over == null) {
        return laid;
      }
      tooLong = over;
    }
    throw new IllegalArgumentException(
        "'" + LanguageMarks.without(tooLong) + "' is wider than its column");
  }

  private @Nullable String tooLong() {
    for (int c = 0; c < headings.size(); c++) {
      for (String line : headings.get(c)) {
        if (lettering.width(line, Lettering.CAPTION) > room(c)) {
          return line;
        }
      }
      for (List<List<String>> row : rows) {
        for (String line : row.get(c)) {
          if (lettering.width(line, step) > room(c)) {
            return line;
          }
        }
      }
    }
    return null;
  }

  /** The height of capitals that was taken. */
  public Length step() {
    return step;
  }

  TableText table() {
    return table;
  }

  /** The edges of the columns from 0, in points. */
  List<Double> edges() {
    return edges;
  }

  /** How many rows from one on go into a height, under their headings. */
  public int rowsWithin(int from, double height) {
    double used = headingHeight();
    int n = 0;
    while (from + n < rows.size() && used + rowHeight(from + n) <= height + 1e-6) {
      used += rowHeight(from + n);
      n++;
    }
    return n;
  }

  /** How many rows there are. */
  public int rows() {
    return rows.size();
  }

  /** The height of all rows under their headings, in points. */
  public double height() {
    return headingHeight() + height(0);
  }

  /** The height of the rows from one on, without headings, in points. */
  public double height(int from) {
    double height = 0;
    for (int r = from; r < rows.size(); r++) {
      height += rowHeight(r);
    }
    return height;
  }

  double headingHeight() {
    int most = headings.stream().mapToInt(List::size).max().orElse(1);
    return height(most, Lettering.CAPTION);
  }

  double rowHeight(int row) {
    int most = rows.get(row).stream().mapToInt(List::size).max().orElse(1);
    double height = height(Math.max(1, most), step);
    return holdsWindow(row) ? Math.max(height, table.windowRow().pt()) : height;
  }

  private boolean holdsWindow() {
    return IntStream.range(0, rows.size()).anyMatch(this::holdsWindow);
  }

  private boolean holdsWindow(int row) {
    for (int c = 0; c < table.columns().size(); c++) {
      if (table.columns().get(c).windows() && !table.rows().get(row).get(c).isBlank()) {
        return true;
      }
    }
    return false;
  }

  private double height(int lines, Length capitals) {
    double block = capitals.pt() + (lines - 1) * lettering.leading(capitals).pt();
    return Math.max(LEAST_ROW.pt(), block + 2 * INSET);
  }

  private double room(int column) {
    return edges.get(column + 1) - edges.get(column) - 2 * INSET;
  }

  /** The headings, the table's left edge and the top of the headings given. */
  List<TextRun> headingRuns(int column, double left, double top) {
    List<TextRun> runs = new ArrayList<>();
    boolean strong = table.columns().get(column).strong();
    Align align = aligns.get(column);
    double base = top + INSET + Lettering.CAPTION.pt();
    for (String line : headings.get(column)) {
      double width = lettering.width(line, Lettering.CAPTION);
      double x = left + edges.get(column) + INSET + share(align) * (room(column) - width);
      runs.addAll(lettering.line(line, x, base, Lettering.CAPTION, strong));
      base += lettering.leading(Lettering.CAPTION).pt();
    }
    return runs;
  }

  /** The lines of a value: from the top of its row; in the middle where the table has windows. */
  List<TextRun> valueRuns(int row, int column, double left, double top) {
    List<TextRun> runs = new ArrayList<>();
    List<String> lines = rows.get(row).get(column);
    double leading = lettering.leading(step).pt();
    double block = step.pt() + (lines.size() - 1) * leading;
    double air = holdsWindow() ? (rowHeight(row) - block) / 2 : INSET;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      double base = top + air + step.pt() + i * leading;
      boolean strong = table.columns().get(column).strong();
      runs.addAll(lettering.line(line, left + lineLeft(column, line), base, step, strong));
    }
    return isReversed(row, column) ? runs.stream().map(TextRun::reversed).toList() : runs;
  }

  /** Whether a value is set in white on black. */
  boolean isReversed(int row, int column) {
    return table.reversed().contains(new TableText.At(row, column));
  }

  private double lineLeft(int column, String line) {
    Align align = aligns.get(column);
    if (align == Align.DECIMAL && Decimals.isNumber(line)) {
      return decimals.get(column).left(line, edges.get(column), edges.get(column + 1));
    }
    double spare = room(column) - lettering.width(line, step);
    return edges.get(column) + INSET + share(align) * spare;
  }

  private static double share(Align align) {
    return switch (align) {
      case LEFT -> 0;
      case CENTRE, DECIMAL -> 0.5;
      case RIGHT -> 1;
    };
  }
}
