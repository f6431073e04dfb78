package dev.placket.layout.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.layout.flat.Spacing.PairGap;
import dev.placket.layout.flat.Spacing.RoleClearance;
import dev.placket.layout.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which distance holds between which roles. */
class SpacingTest {
  private static final Length MINUS = Length.pt(-1);
  private static final Spacing SPACING =
      Spacing.NONE
          .withGap(Length.pt(10))
          .withClearance(Length.pt(5))
          .withPairs(
              List.of(
                  new PairGap(Role.FRONT, Role.BACK, Length.pt(20)),
                  new PairGap(Role.BACK, Role.FRONT, Length.pt(99)),
                  new PairGap(Role.DETAIL, Role.DETAIL, Length.pt(3))))
          .withRoles(
              List.of(
                  new RoleClearance(Role.PHOTO, Length.pt(1)),
                  new RoleClearance(Role.PHOTO, Length.pt(99))));

  @Test
  void theFirstPairThatMatchesHoldsInEitherOrder() {
    assertEquals(Length.pt(20), SPACING.gap(Role.FRONT, Role.BACK));
    assertEquals(Length.pt(20), SPACING.gap(Role.BACK, Role.FRONT));
    assertEquals(Length.pt(3), SPACING.gap(Role.DETAIL, Role.DETAIL));
    assertEquals(Length.pt(10), SPACING.gap(Role.DETAIL, Role.FRONT));
    assertEquals(Length.pt(10), SPACING.gap(Role.FRONT, Role.FRONT));
  }

  @Test
  void theFirstRoleThatMatchesHolds() {
    assertEquals(Length.pt(1), SPACING.clearance(Role.PHOTO));
    assertEquals(Length.pt(5), SPACING.clearance(Role.FRONT));
  }

  @Test
  void noDistanceIsNegative() {
    Length ok = Length.pt(1);
    PairGap pair = new PairGap(Role.FRONT, Role.BACK, MINUS);
    RoleClearance role = new RoleClearance(Role.FRONT, MINUS);
    assertThrows(
        IllegalArgumentException.class, () -> Spacing.NONE.withGap(MINUS).withClearance(ok));
    assertThrows(
        IllegalArgumentException.class, () -> Spacing.NONE.withGap(ok).withClearance(MINUS));
    assertThrows(
        IllegalArgumentException.class,
        () -> Spacing.NONE.withGap(ok).withClearance(ok).withPairs(List.of(pair)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Spacing.NONE.withGap(ok).withClearance(ok).withRoles(List.of(role)));
  }
}
