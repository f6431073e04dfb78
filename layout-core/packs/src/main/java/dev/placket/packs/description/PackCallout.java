package dev.placket.packs.description;

import dev.placket.layout.callout.LeaderEnd;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A text tied to one spot of a flat or several.
 *
 * @param points of the flat, or elements of its drawing; a leader for each
 * @param text what it says; empty where the mark stands alone; null for the name of the detail, or
 *     none without one
 * @param mark what stands in a ring before the text, as a number; empty for none; {@link #ASKING}
 *     for one that is to be assigned
 * @param detail the flat that shows the spot larger, which gets the mark into its caption; empty
 *     for none
 * @param region the radius of the ring round each spot, in the drawing's own units; null for none
 * @param end what leaders have at the spot; null for a dot, or nothing at a ring
 */
public record PackCallout(
    List<String> points,
    @Nullable Words text,
    String mark,
    String detail,
    @Nullable Double region,
    @Nullable LeaderEnd end) {
  /** Instead of a mark: one is to be assigned. */
  public static final String ASKING = "new";

  /** Copies the list. */
  public PackCallout {
    points = List.copyOf(points);
  }

  /** Whether it waits for a mark. */
  public boolean asks() {
    return mark.equals(ASKING);
  }
}
