package dev.placket.layout.fit;

import dev.placket.layout.units.Length;
import java.util.List;

/**
 * How much of the largest common scale may be given up for an ordered look, and for which wishes.
 *
 * @param share the part of the scale that may be given up, 0 to below 1; at 0 the largest scale
 *     stands to the last bit
 * @param wishes what is wanted, the more important first
 */
public record Order(double share, List<OrderWish> wishes) {
  /** The largest common scale and nothing else. */
  public static final Order NONE = new Order(0, List.of());

  /** All wishes but a parting line, for up to a tenth of the scale. */
  public static final Order DEFAULT =
      new Order(
          0.10,
          List.of(
              OrderWish.IN_ORDER,
              OrderWish.LEVEL_VIEWS,
              OrderWish.DETAILS_IN_LINE,
              OrderWish.FEW_EDGES,
              OrderWish.BALANCE));

  /** All wishes, the parting line first, for up to a tenth of the scale. */
  public static final Order PARTED = new Order(0.10, List.of(OrderWish.values()));

  /** The widest line that a parted sheet has room for between views and other flats. */
  public static final Length PARTING_LINE = Length.mm(0.25);

  /**
   * Copies the list and checks the share.
   *
   * @throws IllegalArgumentException if the share lies outside 0 to 1
   */
  public Order {
    wishes = List.copyOf(wishes);
    if (!(share >= 0) || share >= 1) {
      throw new IllegalArgumentException("the order share lies from 0 to below 1, not at " + share);
    }
  }
}
