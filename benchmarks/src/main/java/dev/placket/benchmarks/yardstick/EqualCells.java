package dev.placket.benchmarks.yardstick;

import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.pages.ReferencePage.Size;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What people do by hand: the largest empty rectangle, divided into rows and columns alike, each
 * flat in the middle of its own cell; the best of all divisions.
 */
public final class EqualCells implements Yardstick {
  @Override
  public String name() {
    return "equal cells";
  }

  @Override
  public Packing pack(ReferencePage page) {
    Room room = Room.of(page, 0);
    double gap = page.gap();
    Rect largest =
        new FreeRectangles(room)
            .all().stream()
                .max(Comparator.comparingDouble(b -> (b.width() - gap) * (b.height() - gap)))
                .orElse(new Rect(0, 0, 0, 0));
    int flats = page.flats().size();
    Packing best = Packing.NONE;
    for (int columns = 1; columns <= flats; columns++) {
      int rows = (flats + columns - 1) / columns;
      double scale = scale(page, largest.width() / columns, largest.height() / rows);
      if (scale > best.scale()) {
        best = new Packing(scale, boxes(page, scale, largest, columns, rows));
      }
    }
    return best;
  }

  private static double scale(ReferencePage page, double across, double down) {
    double scale = Double.POSITIVE_INFINITY;
    for (Size s : page.flats()) {
      scale = Math.min(scale, (across - page.gap()) / s.width());
      scale = Math.min(scale, (down - page.gap()) / s.height());
    }
    return scale;
  }

  private static List<Rect> boxes(
      ReferencePage page, double scale, Rect whole, int columns, int rows) {
    double across = whole.width() / columns;
    double down = whole.height() / rows;
    List<Rect> boxes = new ArrayList<>();
    for (Size s : page.flats()) {
      int row = boxes.size() / columns;
      int column = boxes.size() % columns;
      double w = s.width() * scale;
      double h = s.height() * scale;
      double left = whole.left() + column * across + (across - page.gap() - w) / 2;
      double top = whole.top() + row * down + (down - page.gap() - h) / 2;
      boxes.add(Rect.ofSize(left + page.inside().left(), top + page.inside().top(), w, h));
    }
    return boxes;
  }
}
