package dev.placket.layout.callout;

import java.util.List;

/**
 * The room for labels beside a view, in printed points on the sheet.
 *
 * @param right whether it lies right of the spots; else left
 * @param edge where leaders end: the edge of the labels that faces the view
 * @param top no label reaches above this
 * @param bottom no label reaches below this
 * @param gap the least distance between two labels; not negative
 * @param clear spots of other labels and rings of all, which no leader touches that starts outside
 */
public record LabelColumn(
    boolean right, double edge, double top, double bottom, double gap, List<ClearDisc> clear) {
  /** Copies the list. */
  public LabelColumn {
    clear = List.copyOf(clear);
  }
}
