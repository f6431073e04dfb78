package dev.placket.packs.callouts;

/** Where labels stand beside a view. */
public enum CalloutSides {
  /** On both sides, half of them each. */
  BOTH,
  /** Right of the ink. */
  RIGHT,
  /** Left of the ink. */
  LEFT;

  boolean right() {
    return this != LEFT;
  }

  boolean left() {
    return this != RIGHT;
  }
}
