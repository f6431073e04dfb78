package dev.placket.layout.check;

import static dev.placket.layout.check.HandMade.BACK;
import static dev.placket.layout.check.HandMade.DETAIL;
import static dev.placket.layout.check.HandMade.FRONT;
import static dev.placket.layout.check.HandMade.SWATCH;
import static dev.placket.layout.check.HandMade.assertBroken;
import static dev.placket.layout.check.HandMade.at;
import static dev.placket.layout.check.HandMade.change;
import static dev.placket.layout.check.HandMade.d;
import static dev.placket.layout.check.HandMade.fit;
import static dev.placket.layout.check.HandMade.moveTo;
import static dev.placket.layout.check.HandMade.request;
import static dev.placket.layout.check.HandMade.rescale;
import static dev.placket.layout.check.HandMade.with;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** How large flats are: groups, the common scale, limits, what is capped and what is held. */
class RefereeScaleTest {
  @Test
  void refusesOneScaleOfAGroupChanged() {
    assertBroken(request(), rescale(fit(), "back", "0.599999999"), "scale group", "common scale");
    assertBroken(request(), rescale(fit(), "back", "0.600000001"), "scale group", "common scale");
    // One unit in the twelfth digit passes as rounding of a common scale, but never in a ratio.
    assertBroken(request(), rescale(fit(), "back", "0.599999999999"), "scale group");
  }

  @Test
  void aGroupMayHaveARatioThatDoesNotDivide() {
    // Scale 1.2 over ratio 0.7 has no end; rounded down to twelve digits it is 1.71428571428.
    FitRequest sevenths =
        with(with(request(), FRONT.withGroup("body", 0.7)), BACK.withGroup("body", 0.35));
    Fit exact = rescale(rescale(fit(), "front", "1.199999999996"), "back", "0.599999999998");
    assertBroken(sevenths, exact);
    assertBroken(sevenths, rescale(exact, "back", "0.599999999999"), "scale group");
    assertBroken(
        sevenths,
        rescale(rescale(fit(), "front", "1.19999999996"), "back", "0.59999999998"),
        "common scale");
  }

  @Test
  void refusesAFlatSmallerThanTheCommonScaleAsksFor() {
    assertBroken(request(), rescale(fit(), "detail", "1.43999999999"));
    assertBroken(request(), rescale(fit(), "detail", "1.43999999998"), "common scale");
    assertBroken(request(), rescale(fit(), "detail", "1.4"), "common scale");
    assertBroken(request().withGrowth(true), rescale(fit(), "detail", "1.4"), "common scale");
  }

  @Test
  void aTargetThatIsAHairAboveADigitMayRoundToTheDigitBelow() {
    // The share asks for 1.44 + 2e-16 exactly; a double of it may be 1.44 - 2e-16.
    FitRequest hair = with(request(), DETAIL.withShare(0.30000000000000004));
    assertBroken(hair, rescale(fit(), "detail", "1.43999999999"));
    assertBroken(hair, rescale(fit(), "detail", "1.43999999998"), "common scale");
  }

  @Test
  void refusesAFlatLargerThanTheCommonScaleAsksForUnlessItMayGrow() {
    Fit grown = moveTo(rescale(fit(), "detail", "1.6"), "detail", "350", "65.9");
    assertBroken(request(), grown, "common scale");
    assertBroken(request().withGrowth(true), grown);
  }

  @Test
  void refusesAnotherCommonScaleThanTheProofStates() {
    Fit claims = new Fit(fit().placements(), new Proof(d("1.21"), 2, 1, false), List.of());
    assertBroken(request(), claims, "common scale");
  }

  @Test
  void aViewGrowsToNoMoreThanThirteenTenths() {
    FitRequest one = request().withFlats(List.of(FRONT)).withGrowth(true);
    assertBroken(one, fit("1", at("front", "1.3", "60", "110")));
    assertBroken(one, fit("1", at("front", "1.31", "60", "110")), "common scale");
  }

  @Test
  void refusesUnderTheLeastSize() {
    // The detail's 72 pt; a least of 72.002 would ask for scale 1.44004.
    FitRequest least = with(request(), limited(DETAIL, 72.002, null));
    assertBroken(least, fit(), "least size", "common scale");
    Fit atLeast = moveTo(rescale(fit(), "detail", "1.44004"), "detail", "264", "65.8984");
    assertBroken(least, atLeast);
    assertBroken(least, rescale(atLeast, "detail", "1.44003999999"), "least size");
  }

  @Test
  void refusesAboveTheGreatestSize() {
    FitRequest greatest = with(request(), limited(DETAIL, 0, 71.998));
    assertBroken(greatest, capped(fit(), "detail"), "greatest size", "common scale");
    Fit kept = capped(rescale(fit(), "detail", "1.43996"), "detail");
    assertBroken(greatest, kept);
    assertBroken(greatest, rescale(kept, "detail", "1.43996000001"), "greatest size");
  }

  @Test
  void growthKeepsTheGreatestSize() {
    Fit grown = moveTo(rescale(fit(), "detail", "1.6"), "detail", "350", "65.9");
    FitRequest greatest = with(request(), limited(DETAIL, 0, 80.0)).withGrowth(true);
    assertBroken(greatest, grown);
    FitRequest less = with(request(), limited(DETAIL, 0, 79.0)).withGrowth(true);
    assertBroken(less, grown, "greatest size", "common scale");
  }

  @Test
  void cappedIsTold() {
    Fit silent = change(fit(), "swatch", p -> at("swatch", "1", "50", "105.5"));
    assertBroken(request(), silent, "capped");
    assertBroken(request(), capped(fit(), "detail"), "capped");
  }

  @Test
  void theGroupOfACappedFlatIsHeldDownWithIt() {
    // The back may be 200 pt long, so its group is held to 5/6 of its aim: 1 and 0.5.
    FitRequest both = with(request(), limited(BACK, 0, 200.0));
    Fit held = capped(rescale(rescale(fit(), "front", "1"), "back", "0.5"), "back");
    assertBroken(both, held);
    assertBroken(both, capped(held, "front"));
    assertBroken(both, capped(fit(), "back"), "greatest size", "common scale");
  }

  @Test
  void whatIsHeldStandsWhereItIsHeld() {
    FitRequest held =
        with(request(), SWATCH.withHeld(new Held(Length.pt(200.1234567), Length.pt(500.5), 0.8)));
    Fit there = rescale(moveTo(fit(), "swatch", "200.123457", "500.5"), "swatch", "0.8");
    assertBroken(held, there);
    assertBroken(held, moveTo(there, "swatch", "200.123458", "500.5"), "held");
    assertBroken(held, moveTo(there, "swatch", "200.123456", "500.5"), "held");
    assertBroken(held, moveTo(there, "swatch", "200.123457", "500.502"), "held");
    assertBroken(held, rescale(there, "swatch", "0.800000001"), "held");
    assertBroken(held, rescale(there, "swatch", "0.799999999999"), "held");
  }

  @Test
  void halfAStepOfAHeldEdgeMayRoundEitherWay() {
    FitRequest held =
        with(request(), SWATCH.withHeld(new Held(Length.pt(200.0000005), null, null)));
    assertBroken(held, moveTo(fit(), "swatch", "200", "500"));
    assertBroken(held, moveTo(fit(), "swatch", "200.000001", "500"));
    assertBroken(held, moveTo(fit(), "swatch", "200.000002", "500"), "held");
  }

  @Test
  void aHeldScaleIsRoundedDown() {
    FitRequest held = with(request(), SWATCH.withHeld(new Held(null, null, 0.1234567890129)));
    assertBroken(held, rescale(fit(), "swatch", "0.123456789012"));
    assertBroken(held, rescale(fit(), "swatch", "0.123456789013"), "held");
  }

  @Test
  void aHeldScaleInAGroupLosesNoMoreThanItsCommonScaleDoes() {
    // 1.2 over 0.7 rounded down to twelve digits, times 0.7; the digit less is one unit too many.
    FitRequest held =
        with(
            with(request(), FRONT.withGroup("body", 0.7).withHeld(new Held(null, null, 1.2))),
            BACK.withGroup("body", 0.35));
    assertBroken(
        held, rescale(rescale(fit(), "front", "1.199999999996"), "back", "0.599999999998"));
    assertBroken(
        held,
        rescale(rescale(fit(), "front", "1.199999999989"), "back", "0.5999999999945"),
        "held");
  }

  @Test
  void withoutAFrontTheFirstViewLeads() {
    // The side leads at scale 2; the step aims at 0.3 × 100 over 60 drawing units, so at 1.
    Flat step = Flat.of("step", Role.STEP, InkedBox.ofSize(60, 30));
    Flat side = Flat.of("side", Role.SIDE, InkedBox.ofSize(50, 100));
    FitRequest two = request().withFlats(List.of(step, side));
    assertBroken(two, fit("2", at("step", "1", "60", "450"), at("side", "2", "160", "120")));
    assertBroken(
        two,
        fit("2", at("step", "1.2", "60", "450"), at("side", "2", "160", "120")),
        "common scale");
  }

  @Test
  void aGroupWithoutTheLeadAimsByItsFirstMember() {
    // 0.15 × 200 over 30 is 1 for the first; the second has 2/3 of that whatever its own share.
    Flat one = Flat.of("cloth", Role.SWATCH, InkedBox.ofSize(30, 30)).withGroup("cloths", 3);
    Flat two = Flat.of("lining", Role.SWATCH, InkedBox.ofSize(10, 10)).withGroup("cloths", 2);
    FitRequest request = request().withFlats(List.of(FRONT, one, two.withShare(0.9)));
    Fit thirds =
        fit(
            "1.2",
            at("front", "1.2", "50", "145.5"),
            at("cloth", "1.2", "200", "145.5"),
            at("lining", "0.8", "250", "145.5"));
    assertBroken(request, thirds);
    assertBroken(request, rescale(thirds, "lining", "0.7"), "scale group", "common scale");
  }

  private static Flat limited(Flat flat, double least, @Nullable Double greatest) {
    return flat.withLimits(
        new Limits(Length.pt(least), greatest == null ? null : Length.pt(greatest)));
  }

  private static Fit capped(Fit fit, String flat) {
    return change(fit, flat, p -> new Placement(p.flat(), p.scale(), p.left(), p.top(), true));
  }
}
