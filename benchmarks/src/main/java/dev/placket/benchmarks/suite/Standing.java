package dev.placket.benchmarks.suite;

/** How one drawing of the suite comes out. */
public enum Standing {
  /** At most 0.2 % of the pixels are wrong. */
  RIGHT("right"),
  /** The same, with a note. */
  RIGHT_NOTED("right with a note"),
  /** More than 0.2 % and at most 1 % are wrong, and there is no note. */
  CLOSE("between 0.2 and 1 % wrong, no note"),
  /** The same, with a note. */
  CLOSE_NOTED("between 0.2 and 1 % wrong, with a note"),
  /** More than 1 % are wrong, and a note says that something is missing. */
  NOTED("noted and wrong"),
  /** More than 1 % are wrong without a note, and the second renderer agrees with the reference. */
  SILENT("SILENT AND WRONG"),
  /** The same, but the second renderer disagrees with the reference as well, or is missing. */
  OPEN("wrong without a note, open: the second renderer disagrees as well"),
  /** Refused with a reason. */
  REFUSED("refused"),
  /** Anything else that ended the reading, a run without an end among it. */
  CRASHED("crashed");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /** In words, for a table. */
  public String words() {
    return words;
  }
}
