package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A flat hangs under the lower outline of all before it, where it comes out highest; room above
 * that outline is lost.
 */
final class Skyline implements Greedy {
  @Override
  public @Nullable List<Rect> place(Room room, int[] order) {
    List<Rect> placed = new ArrayList<>();
    for (int flat : order) {
      Rect best = null;
      for (double left : lefts(room, placed)) {
        Rect spot = under(room, placed, room.at(flat, left, 0));
        if (spot != null && (best == null || spot.top() < best.top())) {
          best = spot;
        }
      }
      if (best == null) {
        return null;
      }
      placed.add(best);
    }
    return placed;
  }

  private static List<Double> lefts(Room room, List<Rect> placed) {
    List<Double> lefts = new ArrayList<>(List.of(0.0));
    room.walls().forEach(w -> lefts.add(w.right()));
    placed.forEach(p -> lefts.add(p.right()));
    return lefts.stream().filter(x -> x >= 0).sorted().toList();
  }

  private static @Nullable Rect under(Room room, List<Rect> placed, Rect flat) {
    double top = 0;
    for (Rect p : placed) {
      if (p.left() < flat.right() && flat.left() < p.right()) {
        top = Math.max(top, p.bottom());
      }
    }
    Rect spot = Rect.ofSize(flat.left(), top, flat.width(), flat.height());
    while (room.inside().contains(spot)) {
      double next = spot.top();
      for (Rect wall : room.walls()) {
        if (wall.overlaps(spot)) {
          next = Math.max(next, wall.bottom());
        }
      }
      if (next == spot.top()) {
        return spot;
      }
      spot = Rect.ofSize(flat.left(), next, flat.width(), flat.height());
    }
    return null;
  }
}
