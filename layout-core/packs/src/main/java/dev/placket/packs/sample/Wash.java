package dev.placket.packs.sample;

/** Whether a sample was measured before or after it was washed. */
public enum Wash {
  /** As it came. */
  BEFORE,
  /** After a wash. */
  AFTER
}
