package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;

/** The maximal empty rectangles of a room, kept while boxes are taken out of it. */
final class FreeRectangles {
  private List<Rect> free;

  FreeRectangles(Room room) {
    free = List.of(room.inside());
    room.walls().forEach(this::take);
  }

  /** All maximal empty rectangles; they overlap one another. */
  List<Rect> all() {
    return free;
  }

  /** Takes a box out: each rectangle it meets leaves up to four narrower ones. */
  void take(Rect box) {
    List<Rect> parts = new ArrayList<>();
    for (Rect f : free) {
      if (f.overlaps(box)) {
        split(f, box, parts);
      } else {
        parts.add(f);
      }
    }
    free = maximal(parts);
  }

  private static void split(Rect f, Rect box, List<Rect> parts) {
    if (box.left() > f.left()) {
      parts.add(new Rect(f.left(), f.top(), box.left(), f.bottom()));
    }
    if (box.right() < f.right()) {
      parts.add(new Rect(box.right(), f.top(), f.right(), f.bottom()));
    }
    if (box.top() > f.top()) {
      parts.add(new Rect(f.left(), f.top(), f.right(), box.top()));
    }
    if (box.bottom() < f.bottom()) {
      parts.add(new Rect(f.left(), box.bottom(), f.right(), f.bottom()));
    }
  }

  private static List<Rect> maximal(List<Rect> parts) {
    List<Rect> kept = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      boolean inside = false;
      for (int j = 0; j < parts.size() && !inside; j++) {
        boolean same = parts.get(i).equals(parts.get(j));
        inside = j != i && parts.get(j).contains(parts.get(i)) && (!same || j < i);
      }
      if (!inside) {
        kept.add(parts.get(i));
      }
    }
    return kept;
  }
}
