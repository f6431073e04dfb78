package dev.placket.pictures.prepare;

/** Finds pixels that were only repeated: then nothing changes between most neighbouring lines. */
final class RepeatedPixels {
  /** Lines further apart than this say nothing: there is no ink between them. */
  private static final int NEAR = 6;

  private static final int ENOUGH = 40;

  private int last = -1;
  private long gaps;
  private int count;

  /** Takes a place along an axis at which something changes; in order. */
  void change(int at) {
    if (last >= 0 && at - last <= NEAR) {
      gaps += at - last;
      count++;
    }
    last = at;
  }

  /** The mean number of lines that are alike, at least 1; 1 if too few were seen to tell. */
  double repeats() {
    return count < ENOUGH ? 1 : (double) gaps / count;
  }
}
