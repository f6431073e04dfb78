package dev.placket.packs.revision;

import java.util.Map;

/**
 * Something on a sheet that a revision changed.
 *
 * @param kind what it is
 * @param sheet the identifier of its sheet; empty for every sheet that has it
 * @param name a cell, a table, or a flat
 * @param row the row of the table, from 0; else 0
 * @param part the identifier of the callout; else empty
 * @param before what was there before, by the column of the table or 0; empty texts for nothing
 */
public record Marked(
    Kind kind, String sheet, String name, int row, String part, Map<Integer, String> before) {
  /** What a changed thing is. */
  public enum Kind {
    /** A labelled cell. */
    CELL,
    /** A row of a table. */
    ROW,
    /** A flat: it is new, drawn otherwise, or called otherwise. */
    FLAT,
    /** A callout of a flat. */
    CALLOUT
  }

  /** Copies the map. */
  public Marked {
    before = Map.copyOf(before);
  }

  /** A changed cell with what it said before. */
  public static Marked cell(String sheet, String name, String before) {
    return new Marked(Kind.CELL, sheet, name, 0, "", Map.of(0, before));
  }

  /** A changed row with what its columns said before. */
  public static Marked row(String sheet, String table, int row, Map<Integer, String> before) {
    return new Marked(Kind.ROW, sheet, table, row, "", before);
  }

  /** A changed flat. */
  public static Marked flat(String sheet, String flat) {
    return new Marked(Kind.FLAT, sheet, flat, 0, "", Map.of());
  }

  /** A changed callout. */
  public static Marked callout(String sheet, String flat, String callout) {
    return new Marked(Kind.CALLOUT, sheet, flat, 0, callout, Map.of());
  }

  /** What a report calls it. */
  public String called() {
    return switch (kind) {
      case CELL -> "cell " + name;
      case ROW -> "row " + (row + 1) + " of table " + name;
      case FLAT -> "flat " + name;
      case CALLOUT -> "callout " + part + " of flat " + name;
    };
  }
}
