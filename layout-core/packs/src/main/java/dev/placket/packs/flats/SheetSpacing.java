package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.units.Length;
import java.util.List;

/** The default spacing of flats on every kind of sheet, by common practice. */
public final class SheetSpacing {
  /** From ink to any labelled cell or rule. */
  public static final Length CLEARANCE = Length.mm(3);

  /** Between two flats. */
  public static final Length GAP = Length.mm(5);

  /** Between front and back, which are read as a pair. */
  public static final Spacing.PairGap VIEWS_GAP =
      new Spacing.PairGap(Role.FRONT, Role.BACK, Length.mm(8));

  /** All of them. */
  public static final Spacing DEFAULT =
      Spacing.NONE.withGap(GAP).withClearance(CLEARANCE).withPairs(List.of(VIEWS_GAP));

  private SheetSpacing() {}
}
