package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import java.util.ArrayList;
import java.util.List;

/**
 * Ranges in formulas of defined names, as in {@code 'Flat sheet'!$A$1:$H$40,'Flat sheet'!$J:$K}.
 */
final class NamedRanges {
  private NamedRanges() {}

  /**
   * A range of a formula.
   *
   * @param sheet the sheet it lies on; empty where the formula does not say
   * @param range its cells
   */
  record Reference(String sheet, CellRange range) {
    boolean on(String name) {
      return sheet.isEmpty() || sheet.equalsIgnoreCase(name);
    }
  }

  /** All ranges of a formula; what is no range is passed over. */
  static List<Reference> of(String formula) {
    List<Reference> references = new ArrayList<>();
    String bare = formula.strip();
    boolean union = bare.startsWith("(") && bare.endsWith(")");
    for (String piece : pieces(union ? bare.substring(1, bare.length() - 1) : bare)) {
      int mark = piece.lastIndexOf('!');
      try {
        CellRange range = CellRange.parse(piece.substring(mark + 1));
        references.add(new Reference(sheet(piece.substring(0, Math.max(0, mark)).strip()), range));
      } catch (IllegalArgumentException e) {
        // A range that was deleted, or a formula: it names no cells.
      }
    }
    return references;
  }

  /** The ranges of a formula on one sheet. */
  static List<CellRange> ranges(String formula, String sheet) {
    return of(formula).stream().filter(r -> r.on(sheet)).map(Reference::range).toList();
  }

  /** Without the quotes that a name with blanks has; one within is written twice. */
  private static String sheet(String name) {
    boolean quoted = name.length() > 1 && name.startsWith("'") && name.endsWith("'");
    return quoted ? name.substring(1, name.length() - 1).replace("''", "'") : name;
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
