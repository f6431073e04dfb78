package dev.placket.pictures.prepare;

/**
 * How abrupt the edges along many lines of pixels are, walked side by side: each rise or fall from
 * one turn to the next with enough contrast, and nearly square to the walk, adds the sum of its
 * squared steps and the square of its whole.
 */
final class EdgeWidths {
  /** Contrast of an edge that counts, of 255. */
  private static final int CONTRAST = 100;

  private static final int LONGEST = 24;

  /** The slope beside an edge, over the edge, where the walk is not square to it any more. */
  private static final double ASLANT = 0.25;

  private final int[] whole;
  private final long[] squares;
  private final int[] length;
  private final double[] beside;
  private double steps;
  private double wholes;

  EdgeWidths(int lines) {
    this.whole = new int[lines];
    this.squares = new long[lines];
    this.length = new int[lines];
    this.beside = new double[lines];
  }

  /**
   * Takes the next step of a line.
   *
   * @param step the difference to the pixel before
   * @param aside the slope at right angles there
   */
  void step(int line, int step, double aside) {
    boolean goesOn = step != 0 && (step > 0 == whole[line] > 0 || whole[line] == 0);
    if (!goesOn) {
      end(line);
      if (step == 0) {
        return;
      }
    }
    whole[line] += step;
    squares[line] += (long) step * step;
    length[line]++;
    beside[line] += aside;
  }

  /** Ends the rise or fall of a line. */
  void end(int line) {
    int edge = Math.abs(whole[line]);
    if (edge >= CONTRAST && length[line] <= LONGEST && beside[line] <= ASLANT * edge) {
      steps += squares[line];
      wholes += (double) edge * edge;
    }
    whole[line] = 0;
    squares[line] = 0;
    length[line] = 0;
    beside[line] = 0;
  }

  /** Squared steps of all edges so far. */
  double steps() {
    return steps;
  }

  /** Squared wholes of all edges so far. */
  double wholes() {
    return wholes;
  }
}
