package dev.placket.layout.solve.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.solve.Fitter;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Order on small sheets whose ideal is worked out by hand. */
class OrderTest {
  private static final double EDGE = 1e-6;

  private static FitRequest sheet(double width, double height, double gap, List<Flat> flats) {
    Sheet sheet =
        Sheet.open(
            "small",
            new PaperSize("small", Length.pt(width), Length.pt(height)),
            Margins.all(Length.ZERO),
            List.of());
    return FitRequest.of(sheet, flats, Spacing.NONE.withGap(Length.pt(gap))).withGrowth(false);
  }

  /** Details all drawn at one scale: the first leads, each aims at its length over the first's. */
  private static List<Flat> details(double[]... sizes) {
    double lead = Math.max(sizes[0][0], sizes[0][1]);
    return Arrays.stream(sizes)
        .map(
            s ->
                Flat.of("d" + Arrays.asList(sizes).indexOf(s), Role.DETAIL, ink(s))
                    .withShare(Math.max(s[0], s[1]) / lead))
        .toList();
  }

  private static InkedBox ink(double[] size) {
    return InkedBox.ofSize(size[0], size[1]);
  }

  private static Fit fit(FitRequest request) {
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(request));
    assertEquals(List.of(), Referee.check(request, fit));
    return fit;
  }

  private static void assertAt(Fit fit, String flat, double left, double top) {
    assertEquals(left, fit.placement(flat).left().doubleValue(), EDGE, flat + " left");
    assertEquals(top, fit.placement(flat).top().doubleValue(), EDGE, flat + " top");
  }

  private static OrderStep step(Fit fit, OrderWish wish) {
    return fit.order().stream().filter(s -> s.wish() == wish).findFirst().orElseThrow();
  }

  @Test
  void twoViewsStandLevelInTheMiddle() {
    Flat front = Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 100)).withGroup("v", 1);
    Flat back = Flat.of("back", Role.BACK, InkedBox.ofSize(100, 80)).withGroup("v", 1);
    // 2 × 100 t + 20 = 400 across; 190 of 200 high, so 5 are left above and below.
    Fit fit = fit(sheet(400, 200, 20, List.of(front, back)));
    assertEquals(1.9, fit.proof().scale().doubleValue(), 1e-9);
    assertAt(fit, "front", 0, 5);
    assertAt(fit, "back", 210, 5 + 190 - 152);
    assertEquals(new OrderStep(OrderWish.LEVEL_VIEWS, true, 0), step(fit, OrderWish.LEVEL_VIEWS));
  }

  @Test
  void aNamedHeightIsLevelledCountedFromTheInk() {
    // The waists lie 40 under the ink's top in one, 60 in the other, whose ink begins at 7.
    Flat front =
        Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 100))
            .withGroup("v", 1)
            .withPoints(Map.of("waist", new PlanePoint(50, 40)), "waist");
    Flat back =
        Flat.of("back", Role.BACK, new InkedBox(3, 7, 103, 107))
            .withGroup("v", 1)
            .withPoints(Map.of("waist", new PlanePoint(50, 67)), "waist");
    // 60 t above the waist and 60 t below fill 120; across 780 are free beside 200 and a gap of 20.
    Order order = new Order(0.2, Order.DEFAULT.wishes());
    Fit fit = fit(sheet(1000, 120, 20, List.of(front, back)).withOrder(order));
    assertEquals(1, fit.proof().scale().doubleValue(), 1e-9);
    assertAt(fit, "front", 260, 20);
    assertAt(fit, "back", 640, 0);
    assertTrue(step(fit, OrderWish.LEVEL_VIEWS).kept());
  }

  @Test
  void levelViewsAreGivenUpWhereTheyCostMoreThanTheShare() {
    Flat front =
        Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 100))
            .withGroup("v", 1)
            .withPoints(Map.of("waist", new PlanePoint(50, 40)), "waist");
    Flat back =
        Flat.of("back", Role.BACK, InkedBox.ofSize(100, 100))
            .withGroup("v", 1)
            .withPoints(Map.of("waist", new PlanePoint(50, 60)), "waist");
    FitRequest request = sheet(1000, 120, 20, List.of(front, back));
    // The price is 1 - 1 / 1.2 = 0.1667.
    Fit poor = fit(request.withOrder(new Order(0.16, Order.DEFAULT.wishes())));
    assertFalse(step(poor, OrderWish.LEVEL_VIEWS).kept());
    Fit rich = fit(request.withOrder(new Order(0.17, Order.DEFAULT.wishes())));
    assertTrue(step(rich, OrderWish.LEVEL_VIEWS).kept());
    assertEquals(1 / 6.0, step(rich, OrderWish.LEVEL_VIEWS).price(), 1e-6);
  }

  @Test
  void detailsStandInOneColumn() {
    List<Flat> three = details(new double[] {60, 40}, new double[] {60, 40}, new double[] {60, 40});
    // 3 × 40 t + 2 × 10 = 170; 75 of 100 across.
    Fit fit = fit(sheet(100, 170, 10, three));
    assertAt(fit, "d0", 12.5, 0);
    assertAt(fit, "d1", 12.5, 60);
    assertAt(fit, "d2", 12.5, 120);
    fit.order().forEach(s -> assertTrue(s.kept() && s.price() < 1e-9, s.toString()));
  }

  @Test
  void rowsOfUnequalLengthWrapAndStandFlushLeft() {
    double[] narrow = {40, 40};
    List<Flat> four = details(narrow, narrow.clone(), narrow.clone(), new double[] {130, 40});
    // 3 × 40 + 2 × 10 = 140 across; 110 - 2 × 40 - 10 = 20 are left for three spaces.
    Fit fit = fit(sheet(140, 110, 10, four));
    double space = 20 / 3.0;
    assertAt(fit, "d0", 0, space);
    assertAt(fit, "d1", 50, space);
    assertAt(fit, "d2", 100, space);
    assertAt(fit, "d3", 0, 2 * space + 50);
    assertTrue(step(fit, OrderWish.DETAILS_IN_LINE).kept());
  }

  @Test
  void flatsInNoLineShareEdgesThatNearlyAgree() {
    List<Flat> three =
        details(new double[] {60, 100}, new double[] {36, 50}, new double[] {30, 50});
    Sheet sheet =
        Sheet.open(
            "small",
            new PaperSize("small", Length.pt(100), Length.pt(100)),
            Margins.all(Length.ZERO),
            List.of(new LabelledCell("stamp", new Rect(92, 60, 100, 100))));
    FitRequest request = FitRequest.of(sheet, three, Spacing.NONE).withGrowth(false);
    // At t = 1 the first fills the height and the others stand right of it, which no row or column
    // does. Spread alone evens out the spaces: three of 2 / 3 below, and what is then left of
    // 100 - 36 above. Middles in line: 60 t + 18 t = 92 - 15 t, t = 92 / 93.
    Fit plain = fit(request.withOrder(new Order(0.1, List.of(OrderWish.DETAILS_IN_LINE))));
    assertEquals(1, plain.proof().scale().doubleValue(), 1e-9);
    assertAt(plain, "d1", 62 + 1 / 3.0, 0);
    assertAt(plain, "d2", 61 + 1 / 3.0, 50);
    Fit fit = fit(request);
    double t = 92 / 93.0;
    assertEquals(t, fit.proof().scale().doubleValue(), 1e-9);
    assertFalse(step(fit, OrderWish.DETAILS_IN_LINE).kept());
    assertTrue(step(fit, OrderWish.FEW_EDGES).kept());
    assertEquals(1 / 93.0, step(fit, OrderWish.FEW_EDGES).price(), 1e-6);
    assertEquals(60 * t, fit.placement("d1").left().doubleValue(), EDGE);
    assertEquals(92 - 30 * t, fit.placement("d2").left().doubleValue(), EDGE);
  }

  @Test
  void flatsInWindowsOfTheirOwnStandInTheMiddleOfThem() {
    List<Flat> two = details(new double[] {100, 60}, new double[] {100, 30});
    Sheet sheet =
        new Sheet(
            "small",
            new PaperSize("small", Length.pt(200), Length.pt(100)),
            Margins.all(Length.ZERO),
            new GridLines(List.of(0.0, 100.0, 200.0), List.of(0.0, 40.0, 100.0)),
            List.of(
                new SheetWindow("left", new GridArea(0, 0, 1, 2)),
                new SheetWindow("right", new GridArea(1, 1, 2, 2))),
            List.of(),
            List.of());
    List<Flat> placed =
        List.of(two.get(0).withWindows(List.of("left")), two.get(1).withWindows(List.of("right")));
    Spacing none = Spacing.NONE;
    Fit fit = fit(FitRequest.of(sheet, placed, none).withGrowth(false));
    assertAt(fit, "d0", 0, 20);
    assertAt(fit, "d1", 100, 55);
  }

  @Test
  void detailsInNoLineStillComeAfterTheView() {
    List<Flat> flats = new ArrayList<>();
    flats.add(Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 50)));
    double[][] sizes = {{60, 98}, {36, 49}, {30, 49}};
    for (double[] s : sizes) {
      flats.add(
          Flat.of("d" + flats.size(), Role.DETAIL, ink(s)).withShare(Math.max(s[0], s[1]) / 100));
    }
    // The sheet is full at t = 1, the details above the front or under it.
    Fit fit = fit(sheet(100, 148, 0, flats));
    assertEquals(1, fit.proof().scale().doubleValue(), 1e-9);
    assertFalse(step(fit, OrderWish.DETAILS_IN_LINE).kept());
    assertAt(fit, "front", 0, 0);
    assertEquals(50, fit.placement("d1").top().doubleValue(), EDGE);
  }

  @Test
  void columnsOfAGridAreCentredAtTheirPrice() {
    List<Flat> four =
        details(
            new double[] {40, 30},
            new double[] {60, 30},
            new double[] {60, 30},
            new double[] {40, 30});
    // Rows alone: 100 t + 10 = 130, t = 1.2. With the centres of two columns at 30 t from the edges
    // and 50 t + 10 from one another: 110 t + 10 = 130, t = 12 / 11.
    FitRequest request = sheet(130, 100, 10, four);
    Fit fit = fit(request);
    double t = 12 / 11.0;
    double space = (90 - 60 * t) / 3;
    assertAt(fit, "d0", 10 * t, space);
    assertAt(fit, "d1", 130 - 60 * t, space);
    assertAt(fit, "d2", 0, 2 * space + 30 * t + 10);
    assertAt(fit, "d3", 130 - 50 * t, 2 * space + 30 * t + 10);
    assertEquals(0, step(fit, OrderWish.DETAILS_IN_LINE).price(), 1e-6);
    assertEquals(1 / 11.0, step(fit, OrderWish.FEW_EDGES).price(), 1e-6);
  }

  @Test
  void captionsOfARowHaveOneBaseline() {
    double[] high = {40, 60};
    List<Flat> three = details(new double[] {40, 30}, high, new double[] {50, 20});
    Fit fit = fit(sheet(400, 90, 10, three));
    // The caption hangs under the ink, so its baseline is level where the ink's bottoms are.
    double bottom = bottom(three, fit, 0);
    assertEquals(bottom, bottom(three, fit, 1), EDGE);
    assertEquals(bottom, bottom(three, fit, 2), EDGE);
  }

  private static double bottom(List<Flat> flats, Fit fit, int i) {
    return PlacedBoxes.ink(flats.get(i), fit.placements().get(i)).bottom().doubleValue();
  }

  @Test
  void aHeldDetailStaysWhereItIsAndTheOthersLineUpWithIt() {
    double[] size = {60, 40};
    List<Flat> three = details(size, size.clone(), size.clone());
    Flat held = three.get(1).withHeld(new Held(Length.pt(40), Length.pt(65), null));
    FitRequest request = sheet(300, 200, 10, List.of(three.get(0), held, three.get(2)));
    Fit fit = fit(request);
    assertAt(fit, "d1", 40, 65);
  }

  @Test
  void aHeldScaleIsKeptByOrder() {
    double[] size = {60, 40};
    List<Flat> three = details(size, size.clone(), size.clone());
    Flat held = three.get(2).withHeld(new Held(null, null, 0.5));
    Fit fit = fit(sheet(200, 100, 10, List.of(three.get(0), three.get(1), held)));
    assertEquals(0.5, fit.placement("d2").scale().doubleValue(), 0);
    assertTrue(step(fit, OrderWish.DETAILS_IN_LINE).kept());
  }

  @Test
  void balanceMovesTheInkTowardsTheMiddleButNeverCrowdsAnEdge() {
    // A large and a small one, far apart at their spaces of 100 each.
    List<Flat> two = details(new double[] {100, 100}, new double[] {20, 20});
    Fit even = fit(sheet(440, 100, 20, two).withOrder(Order.NONE));
    Fit balanced = fit(sheet(440, 100, 20, two));
    double before = even.placement("d0").left().doubleValue();
    double after = balanced.placement("d0").left().doubleValue();
    // All three spaces are even, the least of them at the edges: nothing may move.
    assertEquals(before, after, EDGE);
  }

  /** By hand: four details of 85 and three gaps fill 400; the views of 100 stand in its middle. */
  @Test
  void aLineWithTheDetailsDoesNotDragTheViewsToTheFoot() {
    List<Flat> flats = new ArrayList<>();
    for (String view : List.of("front", "back")) {
      flats.add(
          Flat.of(view, view.equals("front") ? Role.FRONT : Role.BACK, ink(new double[] {100, 100}))
              .withGroup("v", 1)
              .withLimits(new Limits(Length.pt(10), Length.pt(100))));
    }
    for (int d = 0; d < 4; d++) {
      flats.add(
          Flat.of("d" + d, Role.DETAIL, ink(new double[] {85, 85}))
              .withShare(0.85)
              .withLimits(new Limits(Length.pt(10), Length.pt(85))));
    }
    Fit fit = fit(sheet(325, 400, 20, flats));
    assertAt(fit, "front", 0, 150);
    assertAt(fit, "back", 120, 150);
    for (int d = 0; d < 4; d++) {
      assertAt(fit, "d" + d, 240, 105 * d);
    }
  }

  @Test
  void detailsStandRightOfTheViewsOrUnderThemNeverBetween() {
    Flat front = Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 100)).withGroup("v", 1);
    Flat back = Flat.of("back", Role.BACK, InkedBox.ofSize(100, 100)).withGroup("v", 1);
    Flat one = Flat.of("d0", Role.DETAIL, InkedBox.ofSize(40, 40)).withShare(0.4);
    Flat two = Flat.of("d1", Role.DETAIL, InkedBox.ofSize(40, 40)).withShare(0.4);
    // 100 + 10 + 100 across; 100 + 10 + 40 down: the details under the views, 55 apart.
    Fit fit = fit(sheet(210, 150, 10, List.of(one, front, two, back)));
    assertEquals(1, fit.proof().scale().doubleValue(), 1e-9);
    assertAt(fit, "front", 0, 0);
    assertAt(fit, "back", 110, 0);
    assertEquals(110, fit.placement("d0").top().doubleValue(), EDGE);
    assertEquals(110, fit.placement("d1").top().doubleValue(), EDGE);
    assertTrue(step(fit, OrderWish.DETAILS_IN_LINE).kept());
  }
}
