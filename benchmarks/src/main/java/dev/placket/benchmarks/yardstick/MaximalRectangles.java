package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A flat goes to the top left of the maximal empty rectangle that it fills best: least left over on
 * its shorter side, then on its longer.
 */
final class MaximalRectangles implements Greedy {
  @Override
  public @Nullable List<Rect> place(Room room, int[] order) {
    FreeRectangles free = new FreeRectangles(room);
    List<Rect> placed = new ArrayList<>();
    for (int flat : order) {
      Rect best = null;
      double bestShort = Double.POSITIVE_INFINITY;
      double bestLong = Double.POSITIVE_INFINITY;
      for (Rect f : free.all()) {
        Rect spot = room.at(flat, f.left(), f.top());
        double across = f.right() - spot.right();
        double down = f.bottom() - spot.bottom();
        double shorter = Math.min(across, down);
        double longer = Math.max(across, down);
        boolean better = shorter < bestShort || (shorter == bestShort && longer < bestLong);
        if (f.contains(spot) && better) {
          best = spot;
          bestShort = shorter;
          bestLong = longer;
        }
      }
      if (best == null) {
        return null;
      }
      placed.add(best);
      free.take(best);
    }
    return placed;
  }
}
