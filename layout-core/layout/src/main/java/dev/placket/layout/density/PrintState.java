package dev.placket.layout.density;

/** What the effective print density of a picture means for the eye. */
public enum PrintState {
  /** Too few pixels for its printed size: it will look blurred. */
  SOFT,
  /** Enough pixels, and no more than are seen. */
  CRISP,
  /** More pixels than anybody sees; the file is larger for nothing. */
  HEAVY,
  /** Drawn with paths: sharp at any size. */
  SCALABLE
}
