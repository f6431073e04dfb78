package dev.placket.pictures.prepare;

/** Finds pixels that were only repeated: then nothing changes between most neighbouring lines. */
final class RepeatedPixels {
  /** Lines further apart than this say nothing: there is no ink between them. */
  private static final int NEAR = 6;

  private static final int ENOUGH = 40;

  /** If all gaps are wider than near, the narrowest gives the period, up to this many pixels. */
  private static final int WIDEST = 64;

  private final int[] wide = new int[2 * WIDEST];
  private int last = -1;
  private long gaps;
  private int count;

  /** Takes a place along an axis at which something changes; in order. */
  void change(int at) {
    if (last >= 0 && at - last <= NEAR) {
      gaps += at - last;
      count++;
    } else if (last >= 0 && at - last < wide.length) {
      wide[at - last]++;
    }
    last = at;
  }

  /** The mean number of lines that are alike, at least 1; 1 if too few were seen to tell. */
  double repeats() {
    if (count > 0) {
      return count < ENOUGH ? 1 : (double) gaps / count;
    }
    int narrowest = NEAR + 1;
    while (narrowest <= WIDEST && wide[narrowest] == 0) {
      narrowest++;
    }
    return narrowest > WIDEST ? 1 : period(narrowest);
  }

  /** Gaps of one period are the narrowest, or one more where it is no whole number. */
  private double period(int narrowest) {
    int single = wide[narrowest] + wide[narrowest + 1];
    return single < ENOUGH ? 1 : narrowest + (double) wide[narrowest + 1] / single;
  }
}
