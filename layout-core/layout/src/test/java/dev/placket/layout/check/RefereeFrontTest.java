package dev.placket.layout.check;

import static dev.placket.layout.check.HandMade.assertBroken;
import static dev.placket.layout.check.HandMade.at;
import static dev.placket.layout.check.HandMade.fit;
import static dev.placket.layout.check.HandMade.moveTo;
import static dev.placket.layout.check.HandMade.request;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The front leads: hard rule 4, each part and each part turned off. */
class RefereeFrontTest {
  private static final Flat FRONT = view("front", Role.FRONT, 100);
  private static final Set<LeadRule> BEFORE_ONLY = Set.of(LeadRule.FRONT_BEFORE_BACK);
  private static final Set<LeadRule> LARGEST_ONLY = Set.of(LeadRule.FRONT_LARGEST);
  private static final Set<LeadRule> DETAILS_ONLY = Set.of(LeadRule.DETAILS_UNDER_VIEWS);

  @Test
  void refusesTheBackBeforeTheFront() {
    Fit swapped = moveTo(moveTo(fit(), "back", "50", "145.5"), "front", "175.2", "145.5");
    assertBroken(request(), swapped, "front before back");
    assertBroken(request().withRules(LARGEST_ONLY), swapped);
  }

  @Test
  void acceptsTheFrontAboveTheBack() {
    // Front and back share x; the front ends at 100, so with the gap the back starts at 110.
    FitRequest two = open(FRONT, view("back", Role.BACK, 100)).withRules(BEFORE_ONLY);
    assertBroken(two, fit("1", at("front", "1", "0", "0"), at("back", "0.85", "0", "110")));
    assertBroken(
        two,
        fit("1", at("front", "1", "0", "0"), at("back", "0.85", "0", "109.999")),
        "front before back",
        "gap");
    assertBroken(
        two,
        fit("1", at("front", "1", "0", "95"), at("back", "0.85", "0", "0")),
        "front before back");
  }

  @Test
  void theFirstOfTwoFrontsLeads() {
    FitRequest three =
        open(FRONT, view("front 2", Role.FRONT, 100).withShare(1), view("back", Role.BACK, 100));
    Fit secondAfterBack =
        fit(
            "1",
            at("front", "1", "0", "0"),
            at("front 2", "1", "220", "0"),
            at("back", "0.85", "120", "0"));
    assertBroken(three, secondAfterBack);
    Fit firstAfterBack =
        fit(
            "1",
            at("front 2", "1", "0", "0"),
            at("front", "1", "220", "0"),
            at("back", "0.85", "120", "0"));
    assertBroken(three, firstAfterBack, "front before back");
  }

  @Test
  void noFlatIsLongerThanTheFront() {
    // A share of 1.01 makes it 101 pt long at scale 1.
    FitRequest two = open(FRONT, view("photo", Role.PHOTO, 50).withShare(1.01));
    Fit longer = fit("1", at("front", "1", "0", "0"), at("photo", "2.02", "200", "0"));
    assertBroken(two, longer, "front largest");
    assertBroken(two.withRules(BEFORE_ONLY), longer);
    FitRequest equal = open(FRONT, view("photo", Role.PHOTO, 50).withShare(1));
    assertBroken(equal, fit("1", at("front", "1", "0", "0"), at("photo", "2", "200", "0")));
  }

  @Test
  void inItsGroupTheScaleDecidesNotTheSide() {
    Flat front = FRONT.withGroup("g", 1);
    Fit longerBack = fit("1", at("front", "1", "0", "0"), at("back", "1", "200", "0"));
    assertBroken(open(front, view("back", Role.BACK, 150).withGroup("g", 1)), longerBack);
    Fit above = fit("1", at("front", "1", "0", "0"), at("back", "1.01", "200", "0"));
    FitRequest shorterBack = open(front, view("back", Role.BACK, 50).withGroup("g", 1.01));
    assertBroken(shorterBack, above, "front largest");
    assertBroken(shorterBack.withRules(BEFORE_ONLY), above);
  }

  @Test
  void anotherGroupIsMeasuredByItsSide() {
    FitRequest two =
        open(FRONT.withGroup("g", 1), view("side", Role.SIDE, 20).withGroup("h", 3).withShare(1));
    assertBroken(two, fit("1", at("front", "1", "0", "0"), at("side", "5", "200", "0")));
    FitRequest longer =
        open(FRONT.withGroup("g", 1), view("side", Role.SIDE, 20).withGroup("h", 3).withShare(1.2));
    assertBroken(
        longer, fit("1", at("front", "1", "0", "0"), at("side", "6", "200", "0")), "front largest");
  }

  @Test
  void aDetailIsShorterThanEveryView() {
    Flat side = view("side", Role.SIDE, 100).withShare(0.5);
    FitRequest under = open(FRONT, side, view("pocket", Role.DETAIL, 100).withShare(0.499));
    assertBroken(
        under.withRules(DETAILS_ONLY),
        fit(
            "1",
            at("front", "1", "0", "0"),
            at("side", "0.5", "200", "0"),
            at("pocket", "0.499", "300", "0")));
    FitRequest equal = open(FRONT, side, view("pocket", Role.DETAIL, 100).withShare(0.5));
    Fit same =
        fit(
            "1",
            at("front", "1", "0", "0"),
            at("side", "0.5", "200", "0"),
            at("pocket", "0.5", "300", "0"));
    assertBroken(equal.withRules(DETAILS_ONLY), same, "details under views");
    assertBroken(equal.withRules(LARGEST_ONLY), same);
  }

  @Test
  void onlyDetailsStayUnderViews() {
    Flat side = view("side", Role.SIDE, 100).withShare(0.3);
    FitRequest artwork = open(FRONT, side, view("print", Role.ARTWORK, 100));
    assertBroken(
        artwork,
        fit(
            "1",
            at("front", "1", "0", "0"),
            at("side", "0.3", "200", "0"),
            at("print", "0.4", "300", "0")));
  }

  private static Flat view(String id, Role role, double longest) {
    return Flat.of(id, role, InkedBox.ofSize(longest / 2, longest));
  }

  private static FitRequest open(Flat... flats) {
    PaperSize paper = new PaperSize("test", Length.pt(1000), Length.pt(1000));
    Sheet sheet = Sheet.open("plain", paper, Margins.all(Length.ZERO), List.of());
    return FitRequest.of(sheet, List.of(flats), HandMade.SPACING).withGrowth(false);
  }
}
