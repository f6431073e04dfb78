package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * Which flats of one role or list do not stand on the sheet in the order in which they were given.
 *
 * <p>A flat stands before another if it lies wholly above it, or left of it without the other lying
 * wholly above. Footprints count, so captions do. Views are compared within a list alone.
 *
 * @param breaks the pairs out of order, in the order of the request
 * @param inColumns whether all stand in order where columns are read one after the other: above, or
 *     wholly left
 */
public record ReadingOrder(List<OutOfOrder> breaks, boolean inColumns) {
  /** Copies the list. */
  public ReadingOrder {
    breaks = List.copyOf(breaks);
  }

  /**
   * Two flats that stand out of order.
   *
   * @param first the identifier of the flat that was given first
   * @param second the identifier of the flat that was given later and does not stand after it
   */
  public record OutOfOrder(String first, String second) {}

  /** Whether the order of two flats matters: of one list, or of one role and no views. */
  public static boolean matters(Flat a, Flat b) {
    boolean alike = !a.role().isView() && a.role() == b.role();
    return a.windows().equals(b.windows()) && (areOfOneList(a, b) || alike);
  }

  private static boolean areOfOneList(Flat a, Flat b) {
    return a.list() != null && a.list().equals(b.list());
  }

  /**
   * Whether the order of two flats is a rule: flats of one list, and swatches and steps, belong to
   * lists that are printed in their order. A flat that is held where it is stands there by request.
   */
  public static boolean isListed(Flat a, Flat b) {
    boolean unlisted = a.list() == null && b.list() == null;
    return matters(a, b)
        && (areOfOneList(a, b) || unlisted && (a.role() == Role.SWATCH || a.role() == Role.STEP))
        && !a.held().any()
        && !b.held().any();
  }

  /**
   * The order of flats as they are placed. O(n²).
   *
   * @param flats the flats of the request
   * @param placements one for each flat, in the same order
   */
  public static ReadingOrder of(List<Flat> flats, List<Placement> placements) {
    List<ExactBox> boxes = new ArrayList<>();
    for (int i = 0; i < flats.size(); i++) {
      boxes.add(PlacedBoxes.footprint(flats.get(i), placements.get(i)));
    }
    List<OutOfOrder> breaks = new ArrayList<>();
    boolean inColumns = true;
    for (int j = 1; j < flats.size(); j++) {
      for (int i = 0; i < j; i++) {
        if (!matters(flats.get(i), flats.get(j))) {
          continue;
        }
        ExactBox a = boxes.get(i);
        ExactBox b = boxes.get(j);
        if (!(isAbove(a, b) || (isLeft(a, b) && !isAbove(b, a)))) {
          breaks.add(new OutOfOrder(flats.get(i).id(), flats.get(j).id()));
        }
        inColumns &= isLeft(a, b) || (isAbove(a, b) && !isLeft(b, a));
      }
    }
    return new ReadingOrder(breaks, inColumns);
  }

  /** Whether all flats stand in order. */
  public boolean isKept() {
    return breaks.isEmpty();
  }

  private static boolean isAbove(ExactBox a, ExactBox b) {
    return a.bottom().compareTo(b.top()) <= 0;
  }

  private static boolean isLeft(ExactBox a, ExactBox b) {
    return a.right().compareTo(b.left()) <= 0;
  }
}
