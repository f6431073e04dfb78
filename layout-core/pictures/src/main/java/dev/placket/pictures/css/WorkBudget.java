package dev.placket.pictures.css;

/** A budget of work: tests of selectors on elements, and characters of values put together. */
final class WorkBudget {
  private final long budget;
  private long taken;

  WorkBudget(long budget) {
    this.budget = budget;
  }

  void take(long steps) throws TooManySteps {
    taken += steps;
    if (taken > budget) {
      throw new TooManySteps(budget);
    }
  }
}
