package dev.placket.layout.check;

import static dev.placket.layout.check.HandMade.BACK;
import static dev.placket.layout.check.HandMade.DETAIL;
import static dev.placket.layout.check.HandMade.SPACING;
import static dev.placket.layout.check.HandMade.assertBroken;
import static dev.placket.layout.check.HandMade.fit;
import static dev.placket.layout.check.HandMade.moveTo;
import static dev.placket.layout.check.HandMade.request;
import static dev.placket.layout.check.HandMade.with;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Spacing.PairGap;
import dev.placket.layout.flat.Spacing.RoleClearance;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where footprints may stand: margins, windows, clearance and gap. Positions worked by hand. */
class RefereeRoomTest {
  @Test
  void acceptsTheFitInWhichAllTouchesExactly() {
    assertBroken(request(), fit());
  }

  @Test
  void refusesOverTheMargin() {
    assertBroken(request(), moveTo(fit(), "front", "49.998", "145.5"), "margins", "window");
  }

  @Test
  void acceptsAgainstTheMarginAndRefusesBeyond() {
    // The swatch is 30 pt wide; the right margin starts at 550, the top one ends at 50.
    assertBroken(request(), moveTo(fit(), "swatch", "520", "50"));
    assertBroken(request(), moveTo(fit(), "swatch", "520.000001", "50"), "margins", "window");
    assertBroken(request(), moveTo(fit(), "swatch", "520", "49.999999"), "margins", "window");
    assertBroken(request(), moveTo(fit(), "swatch", "50", "720"));
    assertBroken(request(), moveTo(fit(), "swatch", "50", "720.000001"), "margins", "window");
  }

  @Test
  void acceptsDownToTheClosedCellAndRefusesBeyond() {
    // 57.6 pt of ink and 12 of caption above 400 leave a top of 330.4.
    assertBroken(request(), moveTo(fit(), "detail", "320", "330.4"));
    assertBroken(request(), moveTo(fit(), "detail", "320", "330.402"), "window");
  }

  @Test
  void refusesAcrossTheClosedCell() {
    assertBroken(request(), moveTo(fit(), "swatch", "280", "415"), "window");
  }

  @Test
  void refusesInsideTheClosedCell() {
    assertBroken(request(), moveTo(fit(), "swatch", "400", "410"), "window");
  }

  @Test
  void refusesStraddlingIntoAWindowTheFlatMayNotUse() {
    assertBroken(with(request(), DETAIL.withWindows(List.of("left", "right"))), fit());
    assertBroken(with(request(), DETAIL.withWindows(List.of("left"))), fit(), "window");
    assertBroken(with(request(), DETAIL.withWindows(List.of("right"))), fit(), "window");
  }

  @Test
  void theFootprintCountsNotTheInk() {
    // The ink starts at 300.5, but the caption is 9 pt wider on each side.
    FitRequest onlyRight = with(request(), DETAIL.withWindows(List.of("right")));
    assertBroken(onlyRight, moveTo(fit(), "detail", "300.5", "65.9"), "window");
    assertBroken(onlyRight, moveTo(fit(), "detail", "308.999999", "65.9"), "window");
    assertBroken(onlyRight, moveTo(fit(), "detail", "309", "65.9"));
  }

  @Test
  void windowsApartByATrackWithoutWidthAreNoOneRoom() {
    List<Double> columns = List.of(50.0, 300.0, 300.0, 550.0);
    FitRequest apart =
        request()
            .withSheet(
                HandMade.sheet(
                    columns,
                    List.of(
                        new SheetWindow("left", new GridArea(0, 0, 1, 2)),
                        new SheetWindow("right", new GridArea(2, 0, 3, 1)))));
    assertBroken(apart, fit(), "window");
    // Left and right of the line each for itself: from 300 on, and up to 300.
    assertBroken(apart, moveTo(fit(), "detail", "309", "65.9"));
    assertBroken(apart, moveTo(fit(), "detail", "219", "65.9"));
  }

  @Test
  void refusesNearTheLabelledCell() {
    // The cell ends at 150 and at 90; clearance 5. The rule below it ends at 150 too.
    assertBroken(request(), moveTo(fit(), "swatch", "155", "60"));
    assertBroken(request(), moveTo(fit(), "swatch", "154.998", "60"), "clearance");
  }

  @Test
  void refusesUponTheLabelledCell() {
    assertBroken(request(), moveTo(fit(), "swatch", "100", "55"), "clearance");
  }

  @Test
  void countsHalfTheWidthOfARule() {
    // Axis at 100, width 1, clearance 5: 105.5 touches, 105.498 does not keep.
    assertBroken(request(), moveTo(fit(), "swatch", "50", "105.498"), "clearance");
  }

  @Test
  void keepsClearOfEveryRule() {
    // Axis at 650, width 2, clearance 5: the swatch of 30 touches at 614.
    assertBroken(request(), moveTo(fit(), "swatch", "50", "614"));
    assertBroken(request(), moveTo(fit(), "swatch", "50", "614.002"), "clearance");
  }

  @Test
  void keepsClearOfEveryCell() {
    LabelledCell further = new LabelledCell("further", new Rect(200, 600, 300, 700));
    Sheet s = request().sheet();
    List<LabelledCell> cells = new ArrayList<>(s.labelledCells());
    cells.add(further);
    Sheet more =
        new Sheet(s.name(), s.paper(), s.margins(), s.lines(), s.windows(), cells, s.rules());
    FitRequest request = request().withSheet(more);
    // It begins at 200, clearance 5: the swatch of 30 touches at 165.
    assertBroken(request, moveTo(fit(), "swatch", "165", "650"));
    assertBroken(request, moveTo(fit(), "swatch", "165.002", "650"), "clearance");
  }

  @Test
  void clearanceMayDependOnTheRole() {
    Spacing wide =
        Spacing.NONE
            .withGap(SPACING.gap())
            .withClearance(SPACING.clearance())
            .withRoles(List.of(new RoleClearance(Role.SWATCH, Length.pt(5.001))));
    assertBroken(withSpacing(wide), fit(), "clearance");
  }

  @Test
  void refusesTwoFootprintsTooNear() {
    assertBroken(request(), moveTo(fit(), "detail", "264", "65.902"), "gap");
  }

  @Test
  void refusesTwoFootprintsOverOneAnother() {
    assertBroken(request(), moveTo(fit(), "swatch", "100", "200"), "gap");
  }

  @Test
  void gapIsMeasuredOnXOrOnYNotAcross() {
    // Beside the front by 10 on x; on y they overlap. Then 9.998 on both, whose diagonal is 14.1.
    FitRequest two = request();
    assertBroken(two, moveTo(moveTo(fit(), "back", "180", "400"), "swatch", "180", "200"));
    assertBroken(
        two, moveTo(moveTo(fit(), "back", "180", "400"), "swatch", "179.998", "395.498"), "gap");
  }

  @Test
  void gapMayDependOnThePairOfRoles() {
    Spacing wide = pair(new PairGap(Role.SWATCH, Role.FRONT, Length.pt(10.001)));
    assertBroken(withSpacing(wide), fit(), "gap");
    Spacing near = pair(new PairGap(Role.BACK, Role.DETAIL, Length.pt(4)));
    assertBroken(withSpacing(near), moveTo(fit(), "detail", "264", "71.9"));
    assertBroken(withSpacing(near), moveTo(fit(), "detail", "264", "71.901"), "gap");
  }

  @Test
  void everySideOfASurroundCounts() {
    Flat framed =
        BACK.withSurround(
            new Surround(Length.pt(1), Length.pt(2), Length.pt(3), Length.pt(4), Length.pt(0)));
    FitRequest request = with(request(), framed).withRules(LeadRule.NONE);
    // Left 1 off the front at 170 + 10, top 2 off the detail's 135.5 + 10, right 3 off the edge
    // 300.
    FitRequest left = with(request, framed.withWindows(List.of("left")));
    assertBroken(left, moveTo(fit(), "back", "181", "147.5"));
    assertBroken(left, moveTo(fit(), "back", "180.998", "147.5"), "gap");
    assertBroken(left, moveTo(fit(), "back", "181", "147.498"), "gap");
    assertBroken(left, moveTo(fit(), "back", "181.8", "147.5"));
    assertBroken(left, moveTo(fit(), "back", "181.802", "147.5"), "window");
    // Bottom 4 off the edge at 750: 240 high, so the top is at most 506.
    assertBroken(left, moveTo(fit(), "back", "181", "506"));
    assertBroken(left, moveTo(fit(), "back", "181", "506.002"), "margins", "window");
  }

  private static Spacing pair(PairGap pair) {
    return Spacing.NONE
        .withGap(SPACING.gap())
        .withClearance(SPACING.clearance())
        .withPairs(List.of(pair));
  }

  private static FitRequest withSpacing(Spacing spacing) {
    FitRequest r = request();
    return new FitRequest(
        r.sheet(), r.flats(), spacing, r.rules(), r.order(), r.growth(), r.budget());
  }
}
