package dev.placket.packs.dimensions;

import java.util.Comparator;

/**
 * How good places of lines and codes are; less is better, what is named first counts first.
 *
 * @param meetings pairs of lines that meet, or run side by side too close
 * @param covered 1 if a code covers lines of the drawing without need
 * @param lanes lines that lie outside
 * @param rank which ones: those that the list names earlier count more
 * @param crossings of extension lines, and of leaders
 * @param extension the length of all extension lines
 */
record Score(int meetings, int covered, int lanes, long rank, int crossings, double extension)
    implements Comparable<Score> {
  static final Score NONE = new Score(0, 0, 0, 0, 0, 0);

  private static final double SAME = 1e-9;

  private static final Comparator<Score> ORDER =
      Comparator.comparingInt(Score::meetings)
          .thenComparingInt(Score::covered)
          .thenComparingInt(Score::lanes)
          .thenComparingLong(Score::rank)
          .thenComparingInt(Score::crossings);

  @Override
  public int compareTo(Score other) {
    int first = ORDER.compare(this, other);
    if (first != 0 || Math.abs(extension - other.extension) < SAME) {
      return first;
    }
    return Double.compare(extension, other.extension);
  }

  Score covering() {
    return new Score(meetings, 1, lanes, rank, crossings, extension);
  }
}
