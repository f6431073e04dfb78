package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Growth on sheets whose answer is worked out by hand: strips one flat high. */
class GrowthTest {
  private static final double CLOSE = 1e-6;

  private static FitRequest strip(double width, double height, double gap, Flat... flats) {
    Sheet sheet =
        Sheet.open(
            "strip",
            new PaperSize("strip", Length.pt(width), Length.pt(height)),
            Margins.all(Length.ZERO),
            List.<LabelledCell>of());
    Spacing spacing = Spacing.NONE.withGap(Length.pt(gap));
    return FitRequest.of(sheet, List.of(flats), spacing)
        .withRules(LeadRule.NONE)
        .withOrder(Order.NONE)
        .withGrowth(true);
  }

  private static Flat square(String id, Role role, double side) {
    return Flat.of(id, role, InkedBox.ofSize(side, side)).withShare(side / 100);
  }

  private static Fit fit(FitRequest request) {
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(request));
    assertEquals(List.of(), Referee.check(request, fit));
    assertTrue(fit.proof().provenForOrder());
    return fit;
  }

  private static void assertScale(double expected, Fit fit, String flat) {
    assertEquals(expected, fit.placement(flat).scale().doubleValue(), CLOSE, flat);
  }

  @Test
  void whatIsBlockedStaysAndTheRestSharesTheRoomByOneFactor() {
    // The first is as high as the strip; 180 of its 290 points, less two gaps of 5, are left for
    // two of 50.
    FitRequest request =
        strip(
            290,
            100,
            5,
            square("a", Role.STEP, 100),
            square("b", Role.STEP, 50),
            square("c", Role.STEP, 50));
    Fit fit = fit(request);
    assertEquals(1, fit.proof().scale().doubleValue(), CLOSE);
    assertScale(1, fit, "a");
    assertScale(1.8, fit, "b");
    assertScale(1.8, fit, "c");
  }

  @Test
  void whoIsAtItsCapLeavesItsRoomToTheOthers() {
    Flat capped = square("b", Role.STEP, 50).withLimits(new Limits(Length.ZERO, Length.pt(70)));
    FitRequest request =
        strip(270, 100, 0, square("a", Role.STEP, 100), capped, square("c", Role.STEP, 50));
    Fit fit = fit(request);
    assertScale(1.4, fit, "b");
    assertScale(2, fit, "c");
  }

  @Test
  void unequalFactorsAreNotTradedForALargerSum() {
    // A slim one could grow much at little cost of width: max-min gives both the same factor.
    Flat wide = Flat.of("wide", Role.STEP, InkedBox.ofSize(80, 20)).withShare(0.8);
    Flat slim = Flat.of("slim", Role.STEP, InkedBox.ofSize(10, 20)).withShare(0.2);
    Fit fit = fit(strip(100 + 90 * 1.5, 100, 0, square("a", Role.STEP, 100), wide, slim));
    assertScale(1.5, fit, "wide");
    assertScale(1.5, fit, "slim");
  }

  @Test
  void viewsGrowToNoMoreThanThirteenTenths() {
    // The view leads; the other is twice as long and fills the strip.
    Flat twice = square("a", Role.STEP, 100).withShare(2);
    Fit fit = fit(strip(1000, 100, 0, twice, square("view", Role.SIDE, 50)));
    assertEquals(1, fit.proof().scale().doubleValue(), CLOSE);
    assertScale(1.3, fit, "view");
  }

  @Test
  void aScaleGroupGrowsAsOneAndStopsWithItsFirstBlockedMember() {
    Flat high = Flat.of("high", Role.STEP, InkedBox.ofSize(10, 80)).withGroup("g", 1);
    Flat low = Flat.of("low", Role.STEP, InkedBox.ofSize(10, 20)).withGroup("g", 1);
    FitRequest request =
        strip(1000, 100, 0, square("a", Role.STEP, 100), high.withShare(0.8), low.withShare(0.2));
    Fit fit = fit(request);
    assertScale(1.25, fit, "high");
    assertScale(1.25, fit, "low");
  }

  @Test
  void aDetailGrowsWithTheViewButNeverPastIt() {
    // Only width is short at first; the strip is high enough for the view to grow by 1.3.
    Flat front = Flat.of("front", Role.FRONT, InkedBox.ofSize(40, 100));
    Flat detail = square("detail", Role.DETAIL, 60).withShare(0.6);
    Flat stopper = Flat.of("stop", Role.STEP, InkedBox.ofSize(10, 90)).withShare(0.9);
    Length held = Length.pt(90);
    FitRequest request =
        strip(2000, 200, 0, front, detail, stopper.withLimits(new Limits(Length.ZERO, held)))
            .withRules(LeadRule.ALL);
    FitRequest capped =
        request.withFlats(
            List.of(
                front.withLimits(new Limits(Length.ZERO, Length.pt(100))),
                detail,
                stopper.withLimits(new Limits(Length.ZERO, held))));
    Fit fit = fit(capped);
    double view = fit.placement("front").scale().doubleValue() * 100;
    double its = fit.placement("detail").scale().doubleValue() * 60;
    assertEquals(100, view, CLOSE);
    assertEquals(100 - 0.001, its, 1e-5);
  }

  @Test
  void whatIsHeldInSizeDoesNotGrow() {
    Flat held = square("b", Role.STEP, 50).withHeld(new Held(null, null, 1.0));
    Fit fit =
        fit(strip(400, 100, 0, square("a", Role.STEP, 100), held, square("c", Role.STEP, 50)));
    assertScale(1, fit, "b");
    assertScale(2, fit, "c");
  }

  @Test
  void whatIsHeldInPlaceGrowsFromThere() {
    Flat held = square("b", Role.STEP, 50).withHeld(new Held(Length.pt(150), Length.pt(20), null));
    Fit fit = fit(strip(400, 100, 0, square("a", Role.STEP, 100), held));
    assertEquals(150, fit.placement("b").left().doubleValue(), 0);
    assertEquals(20, fit.placement("b").top().doubleValue(), 0);
    assertScale(1.6, fit, "b");
  }

  @Test
  void withoutGrowthNothingIsSaidOfIt() {
    FitRequest request = strip(300, 100, 0, square("a", Role.STEP, 100)).withGrowth(false);
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(request));
    assertFalse(fit.proof().provenForOrder());
  }

  @Test
  void withShareNoneTheAnswerIsTheLargestScaleToTheLastBit() {
    for (ReferenceSheet sheet : ReferenceSheet.all("pages.json").subList(0, 20)) {
      Order wishes = new Order(0, Order.DEFAULT.wishes());
      assertEquals(
          Fitter.fit(sheet.request()), Fitter.fit(sheet.request().withOrder(wishes)), sheet.id());
    }
  }
}
