package dev.placket.packs.callouts;

import dev.placket.layout.units.Length;
import dev.placket.packs.text.Lettering;
import java.util.List;

/**
 * The text of a callout, set in lines; all lengths in points.
 *
 * @param said what it is made of
 * @param lines the text; none where the ring stands alone
 * @param ring the width of its ring; 0 without one
 * @param width of the widest line, with the ring
 * @param height of all lines
 */
public record SetCallout(
    CalloutPlan.Said said, List<String> lines, double ring, double width, double height) {
  /** The height of capitals: the usual step of ISO 3098 for text on drawings. */
  static final Length CAPITALS = Lettering.VALUE;

  /** How high a ring is; it is wider where its mark is. */
  static final Length RING = Length.mm(5);

  /** From the letters of a mark to the ends of its ring. */
  private static final Length BESIDE_MARK = Length.mm(1.2);

  /** From a ring to the text. */
  static final Length AFTER_RING = Length.mm(1);

  /** Under a baseline, for descenders. */
  private static final Length DESCENT = Length.mm(0.8);

  /** Copies the lines. */
  public SetCallout {
    lines = List.copyOf(lines);
  }

  /**
   * A callout with lines no longer than the room, where single words allow it.
   *
   * @param room in points
   */
  static SetCallout of(CalloutPlan.Said said, double room, Lettering lettering) {
    String mark = said.mark();
    String text = said.text();
    double letters = lettering.width(mark, CAPITALS) + 2 * BESIDE_MARK.pt();
    double ring = mark.isEmpty() ? 0 : Math.max(RING.pt(), letters);
    double before = mark.isEmpty() || text.isBlank() ? ring : ring + AFTER_RING.pt();
    List<String> lines = text.isBlank() ? List.of() : lettering.wrap(text, CAPITALS, room - before);
    double widest = 0;
    for (String line : lines) {
      widest = Math.max(widest, lettering.width(line, CAPITALS));
    }
    double further = Math.max(0, lines.size() - 1) * lettering.leading(CAPITALS).pt();
    double tall = lines.isEmpty() ? 0 : CAPITALS.pt() + further + DESCENT.pt();
    double first = mark.isEmpty() ? 0 : Math.max(0, RING.pt() - CAPITALS.pt()) / 2;
    double high = mark.isEmpty() ? 0 : RING.pt();
    return new SetCallout(said, lines, ring, before + widest, Math.max(high, first + tall));
  }

  String id() {
    return said.id();
  }

  /** How far below its top the middle of its first line, and of its ring, is. */
  double port() {
    return ring == 0 ? CAPITALS.pt() / 2 : RING.pt() / 2;
  }
}
