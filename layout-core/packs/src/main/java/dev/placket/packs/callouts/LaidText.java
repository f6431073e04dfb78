package dev.placket.packs.callouts;

import dev.placket.layout.callout.LeaderEnd;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.TextRun;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A callout as it is drawn, in points on the sheet.
 *
 * @param id its identifier
 * @param box the label: text and ring
 * @param leaders one for each spot, from there to the label: two points, or three where it bends
 * @param end what leaders have at their spots
 * @param regions the boxes of circles round the spots; empty for none
 * @param runs the text, and what stands in the ring
 * @param ring the box of its ring, whose ends are round; null without one
 */
public record LaidText(
    String id,
    Rect box,
    List<List<PlanePoint>> leaders,
    LeaderEnd end,
    List<Rect> regions,
    List<TextRun> runs,
    @Nullable Rect ring) {
  /** The width of leaders and rings: a thin line of ISO 128. */
  public static final double LINE_MM = 0.18;

  /** Across the dot at a spot. */
  public static final double DOT_MM = 1;

  /** Copies the lists. */
  public LaidText {
    leaders = leaders.stream().map(List::copyOf).toList();
    regions = List.copyOf(regions);
    runs = List.copyOf(runs);
  }
}
