package dev.placket.packs.description;

/** A table of the check of a sample. */
public enum CheckPart {
  /** Stage, dates, verdict: one row. */
  HEADER,
  /** How many points are out of tolerance: a row for each size. */
  TOTALS,
  /** Asked, measured and difference: a row for each point of measure. */
  POINTS,
  /** Comments with who acts on them: a row for each. */
  COMMENTS
}
