package dev.placket.pictures.shape;

import java.awt.Shape;

/** Clips whose paths cross so often that cutting their areas would take all memory. */
public final class TooManyCrossings extends RuntimeException {
  /** Each pair takes about a kilobyte while areas are cut, as measured. */
  private static final long MOST = 100_000;

  private static final long serialVersionUID = 1;

  private TooManyCrossings() {
    super("clips that cross more than " + MOST + " times");
  }

  /** Throws this where the areas of two paths must not be cut. */
  public static void check(Shape a, Shape b) {
    if (BoxPairs.of(MOST, a, b) > MOST) {
      throw new TooManyCrossings();
    }
  }
}
