package dev.placket.benchmarks.yardstick;

import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.layout.units.Rect;
import java.util.List;

/**
 * A sheet at one common scale with the gap made to vanish: flats, labelled cells and the container
 * reach right and down by one gap, so that keeping the gap is not overlapping.
 *
 * @param inside the container, from (0, 0)
 * @param walls labelled cells, moved with the container
 * @param sizes of the flats at this scale, as boxes from (0, 0)
 */
record Room(Rect inside, List<Rect> walls, List<Rect> sizes) {
  static Room of(ReferencePage page, double scale) {
    double g = page.gap();
    Rect in = page.inside();
    List<Rect> walls =
        page.labelled().stream()
            .map(
                b ->
                    new Rect(
                        b.left() - in.left(),
                        b.top() - in.top(),
                        b.right() - in.left() + g,
                        b.bottom() - in.top() + g))
            .toList();
    List<Rect> sizes =
        page.flats().stream()
            .map(f -> new Rect(0, 0, f.width() * scale + g, f.height() * scale + g))
            .toList();
    return new Room(new Rect(0, 0, in.width() + g, in.height() + g), walls, sizes);
  }

  /** A placed box back on the sheet, without its gap. */
  static Rect onSheet(ReferencePage page, Rect placed) {
    Rect in = page.inside();
    return new Rect(
        placed.left() + in.left(),
        placed.top() + in.top(),
        placed.right() + in.left() - page.gap(),
        placed.bottom() + in.top() - page.gap());
  }

  /** The flat of that number with its top left corner there. */
  Rect at(int flat, double left, double top) {
    return Rect.ofSize(left, top, sizes.get(flat).right(), sizes.get(flat).bottom());
  }

  /** Whether the box lies inside and meets neither wall nor any of the others. */
  boolean free(Rect box, List<Rect> others) {
    return inside.contains(box) && clear(box, walls) && clear(box, others);
  }

  static boolean clear(Rect box, List<Rect> others) {
    for (Rect o : others) {
      if (box.overlaps(o)) {
        return false;
      }
    }
    return true;
  }
}
