package dev.placket.layout.solve.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Budget;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Parting;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.solve.Fitter;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The line between views and other flats, beside sheets that are ruled by hand. */
class PartedTest {
  private static final double WIDTH = 300;
  private static final double HEIGHT = 200;
  private static final PaperSize PAPER =
      new PaperSize("small", Length.pt(WIDTH), Length.pt(HEIGHT));
  private static final Spacing SPACING =
      Spacing.NONE.withGap(Length.pt(10)).withClearance(Length.pt(6));
  private static final Order LINE = new Order(0.9, List.of(OrderWish.PARTED));

  private static FitRequest open(List<Flat> flats) {
    Sheet sheet = Sheet.open("open", PAPER, Margins.all(Length.pt(0)), List.of());
    return plain(FitRequest.of(sheet, flats, SPACING));
  }

  private static FitRequest plain(FitRequest request) {
    return request.withOrder(Order.NONE).withGrowth(false).withBudget(new Budget(100_000));
  }

  private static List<Flat> flats(Random random, int details) {
    List<Flat> flats = new ArrayList<>();
    InkedBox view = InkedBox.ofSize(60 + random.nextInt(80), 60 + random.nextInt(80));
    flats.add(Flat.of("front", Role.FRONT, view).withGroup("views", 1));
    flats.add(Flat.of("back", Role.BACK, view).withGroup("views", 0.85));
    for (int i = 0; i < details; i++) {
      InkedBox ink = InkedBox.ofSize(20 + random.nextInt(80), 20 + random.nextInt(80));
      flats.add(Flat.of("d" + i, Role.DETAIL, ink).withShare(0.3 + 0.1 * random.nextInt(3)));
    }
    return flats;
  }

  /** The same flats in two windows with a drawn line between, as a person rules a sheet. */
  private static double ruledAt(List<Flat> flats, boolean upright, double at) {
    GridLines lines =
        upright
            ? new GridLines(List.of(0.0, at, WIDTH), List.of(0.0, HEIGHT))
            : new GridLines(List.of(0.0, WIDTH), List.of(0.0, at, HEIGHT));
    GridArea before = new GridArea(0, 0, 1, 1);
    GridArea after = upright ? new GridArea(1, 0, 2, 1) : new GridArea(0, 1, 1, 2);
    Rect line = upright ? new Rect(at, 0, at, HEIGHT) : new Rect(0, at, WIDTH, at);
    Sheet sheet =
        new Sheet(
            "ruled",
            PAPER,
            Margins.all(Length.pt(0)),
            lines,
            List.of(new SheetWindow("views", before), new SheetWindow("details", after)),
            List.of(),
            List.of(new Rule(line, Order.PARTING_LINE)));
    List<Flat> its =
        flats.stream()
            .map(f -> f.withWindows(List.of(f.role().isView() ? "views" : "details")))
            .toList();
    return Fitter.attempt(plain(FitRequest.of(sheet, its, SPACING))) instanceof Fit fit
        ? fit.proof().scale().doubleValue()
        : 0;
  }

  /** Every point of the width and of the height is tried. */
  @Test
  void noLineSetByHandIsBetter() {
    int upright = 0;
    for (int seed = 1; seed <= 12; seed++) {
      List<Flat> flats = flats(new Random(seed), 1 + seed % 3);
      double byHand = 0;
      for (int at = 20; at < WIDTH - 20; at++) {
        byHand = Math.max(byHand, ruledAt(flats, true, at));
        byHand = Math.max(byHand, at < HEIGHT - 20 ? ruledAt(flats, false, at) : 0);
      }
      FitRequest request = open(flats);
      Fit free = (Fit) Fitter.fit(request);
      Fit fit = (Fit) Fitter.fit(request.withOrder(LINE));
      double scale = fit.proof().scale().doubleValue();
      assertTrue(scale >= byHand * (1 - 1e-6), "seed " + seed + ": " + scale + " < " + byHand);
      // A point of 300 is a third of a per cent, and a line between two of them gains less.
      assertTrue(scale <= byHand * 1.02, "seed " + seed + ": " + scale + " > " + byHand);
      OrderStep step = fit.order().get(0);
      assertTrue(step.kept());
      double lost = 1 - scale / free.proof().scale().doubleValue();
      assertEquals(lost, step.price(), 1e-6, "seed " + seed);
      assertTrue(fit.proof().bound() >= free.proof().scale().doubleValue(), "the bound is free");
      Parting parting = Parting.of(request, fit).orElseThrow();
      upright += parting.upright() ? 1 : 0;
      assertTrue(parting.to() - parting.from() >= 12 + Order.PARTING_LINE.pt() - 1e-6);
      assertRoomForTheLine(request, fit, parting);
    }
    assertTrue(upright > 0 && upright < 12, "both directions are the better one at times");
  }

  /** The referee passes the same placements on a sheet with the line drawn. */
  private static void assertRoomForTheLine(FitRequest request, Fit fit, Parting parting) {
    double at = parting.middle();
    Rect line = parting.upright() ? new Rect(at, 0, at, HEIGHT) : new Rect(0, at, WIDTH, at);
    Sheet s = request.sheet();
    Sheet ruled =
        new Sheet(
            s.name(),
            s.paper(),
            s.margins(),
            s.lines(),
            s.windows(),
            s.labelledCells(),
            List.of(new Rule(line, Order.PARTING_LINE)));
    assertEquals(List.of(), Referee.check(request.withSheet(ruled), fit));
  }

  /** Front and back fill the sheet but for a corner: no straight line leaves them their size. */
  @Test
  void aLineThatCostsMoreThanTheShareIsRelaxed() {
    InkedBox view = InkedBox.ofSize(100, 100);
    List<Flat> flats =
        List.of(
            Flat.of("front", Role.FRONT, view).withGroup("views", 1),
            Flat.of("back", Role.BACK, view).withGroup("views", 0.5),
            Flat.of("d", Role.DETAIL, InkedBox.ofSize(40, 40)).withShare(0.4));
    FitRequest request = open(flats);
    Fit fit = (Fit) Fitter.fit(request.withOrder(new Order(0.1, List.of(OrderWish.PARTED))));
    // The back stands right of the front and the detail under the back: the front has all 200.
    assertEquals(190 / 100.0, fit.proof().scale().doubleValue(), 0.05);
    assertFalse(fit.order().get(0).kept());
    assertEquals(Optional.empty(), Parting.of(request, fit));
  }

  @Test
  void withoutViewsThereIsNothingToPart() {
    Flat detail = Flat.of("d", Role.DETAIL, InkedBox.ofSize(40, 40));
    Fit fit = (Fit) Fitter.fit(open(List.of(detail)).withOrder(Order.PARTED));
    assertTrue(fit.order().stream().noneMatch(s -> s.wish() == OrderWish.PARTED));
  }
}
