package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;

/**
 * A range that stays uncovered, and why.
 *
 * @param range its cells
 * @param why what makes it so
 * @param text what it shows, empty for nothing
 */
public record Mark(CellRange range, Why why, String text) {
  /** Why a range stays uncovered. */
  public enum Why {
    /** It holds text. */
    TEXT,
    /** It holds a number, a date or a truth value. */
    NUMBER,
    /** It holds a formula. */
    FORMULA,
    /** What is typed into it is checked, so it is there to be filled in. */
    TO_FILL_IN,
    /** A comment is tied to it. */
    COMMENT,
    /** Its ground is not white. */
    FILL,
    /** It belongs to a table. */
    TABLE,
    /** Text of another cell runs into it. */
    TEXT_RUNS_IN,
    /** A picture or shape of the workbook lies on it. */
    DRAWN_ON,
    /** The description says so. */
    NAMED
  }
}
