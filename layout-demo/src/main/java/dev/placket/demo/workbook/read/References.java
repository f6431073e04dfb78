package dev.placket.demo.workbook.read;

import dev.placket.demo.workbook.geometry.CellRange;
import java.util.ArrayList;
import java.util.List;

/**
 * Ranges in formulas of defined names, as in {@code 'Flat sheet'!$A$1:$H$40,'Flat sheet'!$J:$K}.
 */
final class References {
  private References() {}

  /** All ranges of a formula; what is no range is passed over. */
  static List<CellRange> ranges(String formula) {
    List<CellRange> ranges = new ArrayList<>();
    for (String piece : pieces(formula)) {
      try {
        ranges.add(CellRange.parse(piece.substring(piece.lastIndexOf('!') + 1)));
      } catch (IllegalArgumentException e) {
        // A range that was deleted, or a formula: it names no cells.
      }
    }
    return ranges;
  }

  /** A list of ranges parted by blanks. */
  static List<CellRange> list(String list) {
    List<CellRange> ranges = new ArrayList<>();
    for (String each : list.strip().split("\\s+")) {
      if (!each.isEmpty()) {
        ranges.add(CellRange.parse(each));
      }
    }
    return ranges;
  }

  /** Parted by commas that stand outside quoted names. */
  private static List<String> pieces(String formula) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < formula.length(); i++) {
      char c = formula.charAt(i);
      quoted ^= c == '\'';
      if (c == ',' && !quoted) {
        pieces.add(piece.toString());
        piece.setLength(0);
      } else {
        piece.append(c);
      }
    }
    pieces.add(piece.toString());
    return pieces;
  }
}
