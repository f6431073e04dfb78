package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A flat goes to the topmost free spot, and there to the leftmost, holes included. */
final class TopLeft implements Greedy {
  @Override
  public @Nullable List<Rect> place(Room room, int[] order) {
    TreeSet<Double> lefts = new TreeSet<>(List.of(0.0));
    TreeSet<Double> tops = new TreeSet<>(List.of(0.0));
    for (Rect w : room.walls()) {
      lefts.add(Math.max(0, w.right()));
      tops.add(Math.max(0, w.bottom()));
    }
    List<Rect> placed = new ArrayList<>();
    for (int flat : order) {
      Rect spot = first(room, placed, flat, lefts, tops);
      if (spot == null) {
        return null;
      }
      placed.add(spot);
      lefts.add(spot.right());
      tops.add(spot.bottom());
    }
    return placed;
  }

  private static @Nullable Rect first(
      Room room, List<Rect> placed, int flat, TreeSet<Double> lefts, TreeSet<Double> tops) {
    for (double top : tops) {
      for (double left : lefts) {
        Rect spot = room.at(flat, left, top);
        if (room.free(spot, placed)) {
          return spot;
        }
      }
    }
    return null;
  }
}
