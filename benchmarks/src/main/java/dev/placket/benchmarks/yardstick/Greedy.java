package dev.placket.benchmarks.yardstick;

import dev.placket.layout.units.Rect;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A rule that places flats one after the other and never takes one up again. */
interface Greedy {
  /**
   * Places the flats in the order given.
   *
   * @param room the sheet at one scale
   * @param order the numbers of the flats
   * @return one box for each entry of the order, or null where one finds no place
   */
  @Nullable List<Rect> place(Room room, int[] order);
}
