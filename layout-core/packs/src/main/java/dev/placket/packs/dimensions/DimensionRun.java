package dev.placket.packs.dimensions;

/** Which way a measure runs between its two spots. */
public enum DimensionRun {
  /** The shortest way. */
  STRAIGHT,
  /** Across the sheet, at the height of the first spot. */
  LEVEL,
  /** Down the sheet, below the first spot. */
  UPRIGHT,
  /** Along a line of the drawing. */
  ALONG
}
