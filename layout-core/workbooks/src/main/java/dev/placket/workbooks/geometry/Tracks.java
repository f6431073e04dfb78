package dev.placket.workbooks.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongUnaryOperator;

/**
 * The widths of all columns or the heights of all rows of a worksheet, in EMU; hidden ones have
 * none. Kept as runs of equal neighbours, so a million rows cost nothing.
 */
public final class Tracks {
  /** Tracks from {@code first} to before {@code end}, all of one size, and where they begin. */
  private record Run(int first, int end, long size, long start) {
    long stop() {
      return start + (end - first) * size;
    }
  }

  private final List<Run> runs;

  private Tracks(List<Run> runs) {
    this.runs = List.copyOf(runs);
  }

  /** Gathers tracks from the first on. */
  public static final class Builder {
    private final List<Run> runs = new ArrayList<>();
    private final long other;
    private final int count;

    /**
     * Begins.
     *
     * @param other the size of tracks that are not named
     * @param count how many tracks there are
     */
    public Builder(long other, int count) {
      this.other = other;
      this.count = count;
    }

    /**
     * Names the size of some tracks.
     *
     * @param first from 0; not before the end of what was named last
     * @param end the first that is not meant
     * @param size in EMU, 0 for hidden ones
     * @throws IllegalArgumentException if they overlap what was named before, or are out of range
     */
    public Builder add(int first, int end, long size) {
      int from = next();
      if (first < from || end <= first || end > count || size < 0) {
        throw new IllegalArgumentException(
            "tracks " + (first + 1) + " to " + end + " after " + from + " of " + count);
      }
      if (first > from) {
        append(from, first, other);
      }
      append(first, end, size);
      return this;
    }

    /** All tracks. */
    public Tracks build() {
      if (next() < count) {
        append(next(), count, other);
      }
      return new Tracks(runs);
    }

    private int next() {
      return runs.isEmpty() ? 0 : runs.get(runs.size() - 1).end;
    }

    private void append(int first, int end, long size) {
      Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
      if (last != null && last.size == size) {
        runs.set(runs.size() - 1, new Run(last.first, end, size, last.start));
      } else {
        runs.add(new Run(first, end, size, last == null ? 0 : last.stop()));
      }
    }
  }

  /** How many tracks there are. */
  public int count() {
    return runs.get(runs.size() - 1).end;
  }

  /** The size of one track in EMU. */
  public long size(int track) {
    return runs.get(runOf(track)).size;
  }

  /** Where a track begins, in EMU from the first; for the count itself, where the last ends. */
  public long start(int track) {
    if (track == count()) {
      return runs.get(runs.size() - 1).stop();
    }
    Run run = runs.get(runOf(track));
    return run.start + (track - run.first) * run.size;
  }

  /** How long the tracks from one to before another are, in EMU. */
  public long between(int first, int end) {
    return start(end) - start(first);
  }

  /** The track with a size that holds a place; its left or upper edge belongs to it. */
  public int at(long place) {
    int low = 0;
    int high = runs.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (runs.get(middle).start <= place) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    while (low > 0 && runs.get(low).size == 0) {
      low--;
    }
    Run run = runs.get(low);
    long within = run.size == 0 ? 0 : (place - run.start) / run.size;
    return run.first + (int) Math.min(run.end - run.first - 1, Math.max(0, within));
  }

  /** The same tracks, each that is not hidden made larger by so many EMU, or smaller. */
  public Tracks changed(long by) {
    LongUnaryOperator change = size -> size == 0 ? 0 : Math.max(0, size + by);
    Builder builder = new Builder(0, count());
    runs.forEach(r -> builder.add(r.first, r.end, change.applyAsLong(r.size)));
    return builder.build();
  }

  private int runOf(int track) {
    if (track < 0 || track >= count()) {
      throw new IndexOutOfBoundsException("track " + track + " of " + count());
    }
    int low = 0;
    int high = runs.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (runs.get(middle).first <= track) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
