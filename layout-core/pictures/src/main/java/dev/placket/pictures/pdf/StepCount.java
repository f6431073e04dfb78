package dev.placket.pictures.pdf;

/** Counts the operators that drawing a page takes, up to a limit. */
final class StepCount {
  /** A form is parsed each time it is drawn, which takes as long as so many plain operators. */
  private static final int FORM = 100;

  private long left;

  StepCount(long most) {
    this.left = most;
  }

  /**
   * One more operator.
   *
   * @throws TooManySteps past the limit
   */
  void next(String operator) {
    left -= operator.equals("Do") ? FORM : 1;
    if (left < 0) {
      throw new TooManySteps();
    }
  }

  /** Drawing the page takes more operators than the limit. */
  static final class TooManySteps extends RuntimeException {
    private static final long serialVersionUID = 1;

    TooManySteps() {
      super("too many steps", null, false, false);
    }
  }
}
