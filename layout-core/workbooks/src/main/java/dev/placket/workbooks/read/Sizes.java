package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.Tracks;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Gathers the sizes of columns or rows, in whatever order they are stated. Where one is stated
 * twice, the smaller counts: what fits into it fits into the larger one, too.
 */
final class Sizes {
  private record Stated(int first, int end, long size) {}

  private final String what;
  private final Collection<String> notes;
  private final List<Stated> all = new ArrayList<>();
  private boolean rising = true;

  /**
   * Gathers.
   *
   * @param what columns or rows, in words
   * @param notes takes what is out of order
   */
  Sizes(String what, Collection<String> notes) {
    this.what = what;
    this.notes = notes;
  }

  /**
   * States the size of some tracks.
   *
   * @param first from 0
   * @param end the first that is not meant, above {@code first}
   * @param size in EMU, 0 for hidden ones
   */
  void add(int first, int end, long size) {
    rising &= all.isEmpty() || all.get(all.size() - 1).end <= first;
    all.add(new Stated(first, end, size));
  }

  /**
   * All tracks.
   *
   * @param other the size of tracks that are not stated
   * @param count how many tracks there are
   */
  Tracks tracks(long other, int count) {
    if (!rising) {
      notes.add(
          "its "
              + what
              + " are stated out of order or twice; where two sizes are stated for one, the"
              + " smaller is taken");
    }
    Tracks.Builder builder = new Tracks.Builder(other, count);
    (rising ? all : apart()).forEach(s -> builder.add(s.first, s.end, s.size));
    return builder.build();
  }

  /** In order, and each track once, of the least size stated. O(n log n). */
  private List<Stated> apart() {
    List<Stated> byFirst = new ArrayList<>(all);
    byFirst.sort(Comparator.comparingInt(Stated::first));
    PriorityQueue<Stated> open =
        new PriorityQueue<>(Comparator.comparingLong(Stated::size).thenComparingInt(Stated::end));
    List<Stated> apart = new ArrayList<>();
    int at = 0;
    int next = 0;
    while (next < byFirst.size() || !open.isEmpty()) {
      if (open.isEmpty()) {
        at = Math.max(at, byFirst.get(next).first);
      }
      while (next < byFirst.size() && byFirst.get(next).first <= at) {
        open.add(byFirst.get(next++));
      }
      Stated least = open.element();
      int stop = next < byFirst.size() ? byFirst.get(next).first : Integer.MAX_VALUE;
      int end = Math.min(least.end, stop);
      if (end > at) {
        apart.add(new Stated(at, end, least.size));
        at = end;
      }
      int from = at;
      while (!open.isEmpty() && open.element().end <= from) {
        open.remove();
      }
    }
    return apart;
  }
}
