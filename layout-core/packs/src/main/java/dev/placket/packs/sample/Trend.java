package dev.placket.packs.sample;

/** How a point stands against the last earlier round in which it was judged. */
public enum Trend {
  /** It was not judged before, or is not judged now. */
  NONE,
  /** Within tolerance in both rounds. */
  STILL_IN,
  /** Out of tolerance before, now within. */
  IN_AGAIN,
  /** Within tolerance before, now out. */
  NOW_OUT,
  /** Out of tolerance in both rounds. */
  STILL_OUT;

  static Trend of(Verdict before, Verdict now) {
    if (!isJudged(before) || !isJudged(now)) {
      return NONE;
    }
    if (now.isOut()) {
      return before.isOut() ? STILL_OUT : NOW_OUT;
    }
    return before.isOut() ? IN_AGAIN : STILL_IN;
  }

  /** Whether a verdict says in or out. */
  static boolean isJudged(Verdict verdict) {
    return verdict == Verdict.WITHIN || verdict.isOut();
  }
}
