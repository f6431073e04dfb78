package dev.placket.layout.flat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Scales at common scale 1, by hand; the shares of roles are common practice. */
class TargetsTest {
  private static final Flat FRONT = flat("front", Role.FRONT, 50, 200);

  @Test
  void theFrontIsOneAndOthersAreSharesOfItsLongestSide() {
    // Longest sides of 170, 60, 30 and 80 of 200, over 100, 120, 30 and 40 drawing units.
    assertArrayEquals(
        new double[] {1, 1.7, 0.5, 1, 2},
        Targets.scales(
            List.of(
                FRONT,
                flat("back", Role.BACK, 100, 40),
                flat("pocket", Role.DETAIL, 120, 7),
                flat("cloth", Role.SWATCH, 30, 30),
                flat("print", Role.ARTWORK, 40, 10))),
        1e-15);
  }

  @ParameterizedTest
  @EnumSource(Role.class)
  void everyRoleHasItsShare(Role role) {
    double share =
        switch (role) {
          case FRONT -> 1;
          case BACK, SIDE, INSIDE -> 0.85;
          case DETAIL, STEP -> 0.3;
          case SWATCH -> 0.15;
          case ARTWORK -> 0.4;
          case PHOTO -> 0.5;
        };
    assertEquals(share, role.share());
    assertEquals(share, flat("x", role, 1, 1).share());
  }

  @Test
  void withoutAViewNobodyLeads() {
    // All details aim at 120, the longest side of the first; a swatch at half of it, 0.15 to 0.3.
    assertArrayEquals(
        new double[] {1, 3, 12, 2},
        Targets.scales(
            List.of(
                flat("cuff", Role.DETAIL, 120, 7),
                flat("collar", Role.DETAIL, 40, 30),
                flat("tab", Role.DETAIL, 5, 10),
                flat("cloth", Role.SWATCH, 30, 30))),
        1e-15);
  }

  @Test
  void aGroupWithTheFrontKeepsItsRatiosToIt() {
    // The front has ratio 0.8, so the common scale of the group is 1.25 at scale 1.
    assertArrayEquals(
        new double[] {0.625, 1, 1.25},
        Targets.scales(
            List.of(
                flat("back", Role.BACK, 9, 9).withGroup("g", 0.5),
                FRONT.withGroup("g", 0.8),
                flat("side", Role.SIDE, 9, 9).withGroup("g", 1))),
        1e-15);
  }

  @Test
  void anotherGroupAimsByItsFirstMember() {
    // 0.15 × 200 over 10 is 3 at ratio 2; the second at ratio 1 has half, whatever its own share.
    assertArrayEquals(
        new double[] {1, 3, 1.5},
        Targets.scales(
            List.of(
                FRONT,
                flat("a", Role.SWATCH, 10, 10).withGroup("h", 2),
                flat("b", Role.SWATCH, 99, 99).withGroup("h", 1).withShare(1))),
        1e-15);
  }

  @Test
  void theFirstFrontLeadsElseTheFirstViewElseTheFirst() {
    Flat detail = flat("detail", Role.DETAIL, 10, 10);
    Flat back = flat("back", Role.BACK, 10, 10);
    Flat second = flat("front 2", Role.FRONT, 10, 10);
    assertEquals(FRONT, Targets.lead(List.of(detail, back, FRONT, second)));
    assertEquals(back, Targets.lead(List.of(detail, back, flat("side", Role.SIDE, 1, 1))));
    assertEquals(detail, Targets.lead(List.of(detail, flat("cloth", Role.SWATCH, 1, 1))));
    // A second front aims at the first one's whole length: 200 over 10.
    assertArrayEquals(new double[] {1, 20}, Targets.scales(List.of(FRONT, second)));
  }

  private static Flat flat(String id, Role role, double width, double height) {
    return Flat.of(id, role, InkedBox.ofSize(width, height));
  }
}
