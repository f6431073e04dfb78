package dev.placket.pictures.css;

/** Style sheets ask for more work than their budget allows. */
public final class TooManySteps extends Exception {
  private static final long serialVersionUID = 1;

  TooManySteps(long budget) {
    super("takes more than " + budget + " steps");
  }
}
