package dev.placket.benchmarks.yardstick;

import dev.placket.benchmarks.pages.ReferencePage;
import java.util.List;

/** A way of packing that others know, to measure the fitter against. */
public interface Yardstick {
  /** What the tables call it. */
  String name();

  /**
   * The largest common scale this way reaches on the sheet, as a valid arrangement.
   *
   * @param page any sheet
   */
  Packing pack(ReferencePage page);

  /** The greedy ways that the fitter must never be worse than. */
  List<Yardstick> GREEDY =
      List.of(
          new ByOrders("shelves", new Shelves()),
          new ByOrders("skyline", new Skyline()),
          new ByOrders("maximal rectangles", new MaximalRectangles()));
}
