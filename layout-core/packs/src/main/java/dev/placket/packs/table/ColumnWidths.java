package dev.placket.packs.table;

import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.packs.description.PackColumn.Align;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock;
import java.util.ArrayList;
import java.util.List;

/** Finds the edges of a table's columns: stated widths, else what the values need. */
final class ColumnWidths {
  /** A column whose values are longer than this takes a share of what is left, and wraps. */
  private static final Length LONG = Length.mm(32);

  /** The width of a column of windows that states none. */
  private static final Length WINDOW = Length.mm(24);

  private final TableText table;
  private final Length step;
  private final Lettering lettering;

  ColumnWidths(TableText table, Length step, Lettering lettering) {
    this.table = table;
    this.step = step;
    this.lettering = lettering;
  }

  /**
   * The edges from 0, in points.
   *
   * @throws IllegalArgumentException if the stated widths are longer than the table's
   */
  List<Double> edges(double width) {
    List<GridTrack> tracks = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      GridTrack stated = table.columns().get(i).width();
      tracks.add(stated == null ? own(i) : stated);
    }
    if (tracks.stream().noneMatch(t -> t instanceof GridTrack.Share)) {
      widen(tracks);
    }
    return GridLines.lay(tracks, 0, width);
  }

  private GridTrack own(int column) {
    if (table.columns().get(column).windows()) {
      return new GridTrack.Fixed(WINDOW);
    }
    double needed = needed(column);
    if (align(table, column) == Align.DECIMAL) {
      // Columns of numbers are read across: all as wide as the widest.
      for (int other = 0; other < table.columns().size(); other++) {
        boolean alike = table.columns().get(other).width() == null;
        if (alike && align(table, other) == Align.DECIMAL) {
          needed = Math.max(needed, needed(other));
        }
      }
    }
    return needed > LONG.pt() ? new GridTrack.Share(1) : new GridTrack.Fixed(Length.pt(needed));
  }

  /** Columns that state no width share what would be left blank, in proportion. */
  private void widen(List<GridTrack> tracks) {
    for (int i = 0; i < tracks.size(); i++) {
      TableText.Column column = table.columns().get(i);
      if (column.width() == null
          && !column.windows()
          && tracks.get(i) instanceof GridTrack.Fixed f) {
        tracks.set(i, new GridTrack.Share(Math.max(1, f.length().pt())));
      }
    }
  }

  private double needed(int column) {
    double widest = 0;
    for (String word : table.columns().get(column).heading().split("\\s+")) {
      widest = Math.max(widest, lettering.width(word, Lettering.CAPTION));
    }
    List<String> values = table.values(column);
    if (align(table, column) == Align.DECIMAL) {
      widest = Math.max(widest, new Decimals(values, step, lettering).width());
    }
    for (String value : values) {
      for (String line : value.lines().toList()) {
        widest = Math.max(widest, lettering.width(line, step));
      }
    }
    return widest + 2 * TextBlock.INSET.pt() + 0.01;
  }

  /** The stated alignment; else by the decimal mark where most values are numbers, else left. */
  static Align align(TableText table, int column) {
    Align stated = table.columns().get(column).align();
    if (stated != null) {
      return stated;
    }
    List<String> values = table.values(column);
    long numbers = values.stream().filter(Decimals::isNumber).count();
    return 2 * numbers > values.size() ? Align.DECIMAL : Align.LEFT;
  }
}
