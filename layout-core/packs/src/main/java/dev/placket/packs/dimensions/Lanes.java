package dev.placket.packs.dimensions;

import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;

/**
 * How many lanes for lines of measure lie outside of the ink on each side.
 *
 * @param left for upright lines
 * @param top for level lines
 * @param right for upright lines
 * @param bottom for level lines, above the caption
 */
public record Lanes(int left, int top, int right, int bottom) {
  /** All lines lie on the drawing. */
  public static final Lanes NONE = new Lanes(0, 0, 0, 0);

  /** From the ink to the first lane, so that a code on it stands clear. */
  static final Length FIRST = Length.mm(4.5);

  /** From lane to lane. */
  static final Length NEXT = Length.mm(5);

  /** Beyond the last lane, for its codes. */
  private static final Length LAST = Length.mm(2.2);

  /** What lanes take on one side. */
  static Length depth(int lanes) {
    return lanes == 0 ? Length.ZERO : FIRST.plus(NEXT.times(lanes - 1.0)).plus(LAST);
  }

  /** Where a lane lies from the ink, in points. */
  static double away(int lane) {
    return FIRST.plus(NEXT.times(lane - 1.0)).pt();
  }

  /** The number of the lane that lies so far from the ink, in points; 0 for a line on the ink. */
  static int at(double away) {
    return away < FIRST.pt() / 2 ? 0 : 1 + (int) Math.round((away - FIRST.pt()) / NEXT.pt());
  }

  /** As many on each side as either has. */
  Lanes and(Lanes other) {
    return new Lanes(
        Math.max(left, other.left),
        Math.max(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** What stands round the ink with the lanes added. */
  public Surround around(Surround own) {
    Length across = depth(left).plus(depth(right));
    return new Surround(
        own.left().plus(depth(left)),
        own.top().plus(depth(top)),
        own.right().plus(depth(right)),
        own.bottom().plus(depth(bottom)),
        own.leastWidth().pt() > 0 ? own.leastWidth().plus(across) : own.leastWidth());
  }
}
