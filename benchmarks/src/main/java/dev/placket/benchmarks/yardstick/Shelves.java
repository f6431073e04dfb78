package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows from the top: a flat stands on the topmost shelf that has room for it, right of what stands
 * there; a new shelf opens under the deepest flat so far, or under a wall.
 */
final class Shelves implements Greedy {
  private static final class Shelf {
    final double top;
    double depth;
    double used;

    Shelf(double top, double depth) {
      this.top = top;
      this.depth = depth;
    }
  }

  @Override
  public @Nullable List<Rect> place(Room room, int[] order) {
    List<Shelf> shelves = new ArrayList<>();
    List<Rect> placed = new ArrayList<>();
    for (int flat : order) {
      Rect spot = onOpenShelf(room, shelves, flat);
      if (spot == null) {
        spot = onNewShelf(room, shelves, flat);
      }
      if (spot == null) {
        return null;
      }
      placed.add(spot);
    }
    return placed;
  }

  private static @Nullable Rect onOpenShelf(Room room, List<Shelf> shelves, int flat) {
    for (int i = 0; i < shelves.size(); i++) {
      Shelf shelf = shelves.get(i);
      Rect spot = leftmost(room, flat, shelf.used, shelf.top);
      boolean last = i == shelves.size() - 1;
      if (spot != null && (last || spot.height() <= shelf.depth)) {
        shelf.used = spot.right();
        shelf.depth = Math.max(shelf.depth, spot.height());
        return spot;
      }
    }
    return null;
  }

  private static @Nullable Rect onNewShelf(Room room, List<Shelf> shelves, int flat) {
    Shelf last = shelves.isEmpty() ? new Shelf(0, 0) : shelves.get(shelves.size() - 1);
    double under = last.top + last.depth;
    List<Double> tops = new ArrayList<>(List.of(under));
    room.walls().stream().map(Rect::bottom).filter(b -> b > under).sorted().forEach(tops::add);
    for (double top : tops) {
      Rect spot = leftmost(room, flat, 0, top);
      if (spot != null) {
        Shelf shelf = new Shelf(top, spot.height());
        shelf.used = spot.right();
        shelves.add(shelf);
        return spot;
      }
    }
    return null;
  }

  private static @Nullable Rect leftmost(Room room, int flat, double from, double top) {
    Rect spot = room.at(flat, from, top);
    while (room.inside().contains(spot)) {
      double next = spot.left();
      for (Rect wall : room.walls()) {
        if (wall.overlaps(spot)) {
          next = Math.max(next, wall.right());
        }
      }
      if (next == spot.left()) {
        return spot;
      }
      spot = room.at(flat, next, top);
    }
    return null;
  }
}
