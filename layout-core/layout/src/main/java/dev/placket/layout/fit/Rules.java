package dev.placket.layout.fit;

/**
 * Which of the rules that let the front lead are in force.
 *
 * @param frontLargest in the front's scale group no scale is above its own; outside it no longest
 *     side is
 * @param detailsUnderViews a detail's longest side is under that of every view on its sheet
 * @param frontBeforeBack the front is left of the back or above it, apart by the gap on that axis
 */
public record Rules(boolean frontLargest, boolean detailsUnderViews, boolean frontBeforeBack) {
  /** All in force: how a spec pack is read. */
  public static final Rules ALL = new Rules(true, true, true);

  /** None in force: plain pictures. */
  public static final Rules NONE = new Rules(false, false, false);
}
