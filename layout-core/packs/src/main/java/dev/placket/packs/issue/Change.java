package dev.placket.packs.issue;

/**
 * One thing that differs between two issues.
 *
 * @param kind what it is
 * @param sheet the identifier of its sheet; empty for the pack as a whole
 * @param what names it, as in {@code steps, 2, What is done}; lengths are in its texts, with units
 * @param before what it was; empty where it is new
 * @param after what it is; empty where it is gone
 */
public record Change(Kind kind, String sheet, String what, String before, String after) {
  /** What a change is one of, in the order in which changes are listed. */
  public enum Kind {
    /** A value of the header. */
    FIELD,
    /** A sheet that came or went, or is called otherwise. */
    SHEET,
    /** The text of a labelled cell. */
    CELL,
    /** A value of a table, or a row of it. */
    ROW,
    /** A flat that came or went, or is drawn otherwise. */
    FLAT,
    /** The text or the spots of a callout. */
    CALLOUT,
    /** A point of measure: a value or a tolerance. */
    POINT,
    /** The printed size of a flat. */
    SIZE,
    /** The place of a flat. */
    PLACE,
    /** A file that the issue was made from, by its digest. */
    FILE
  }

  /** Whether nothing like it was there before. */
  public boolean added() {
    return before.isEmpty() && !after.isEmpty();
  }

  /** Whether nothing like it is there any more. */
  public boolean removed() {
    return after.isEmpty() && !before.isEmpty();
  }
}
