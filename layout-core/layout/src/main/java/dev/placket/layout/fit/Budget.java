package dev.placket.layout.fit;

/**
 * How long the search may go on, in steps of its own; never in time, so that any machine gives the
 * same answer.
 *
 * @param steps above zero; more steps never give a smaller scale nor a larger bound
 */
public record Budget(long steps) {
  /** Answers a common sheet in milliseconds. */
  public static final Budget DEFAULT = new Budget(20_000);

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if it is not above zero
   */
  public Budget {
    if (steps <= 0) {
      throw new IllegalArgumentException("a budget holds at least one step, not " + steps);
    }
  }
}
