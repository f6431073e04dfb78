package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;

/**
 * How wide a line of a caption may be.
 *
 * @param views under a view
 * @param others under anything else
 */
public record CaptionRoom(Length views, Length others) {
  /** Where there is room for it. */
  public static final CaptionRoom USUAL = new CaptionRoom(Length.mm(80), Length.mm(40));

  /** Two views go beside one another on a narrow sheet, and three of the others. */
  private static final double VIEWS = 0.42;

  private static final double OTHERS = 0.28;

  /**
   * On a sheet.
   *
   * @param width between its margins
   */
  public static CaptionRoom on(Length width) {
    return new CaptionRoom(
        least(USUAL.views, width.times(VIEWS)), least(USUAL.others, width.times(OTHERS)));
  }

  private static Length least(Length a, Length b) {
    return a.compareTo(b) <= 0 ? a : b;
  }

  /** Under a flat of a role. */
  public Length of(Role role) {
    return role.isView() ? views : others;
  }
}
