package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Budget;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.fit.FlowSheet;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Placement;
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
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Further sheets: by hand, and by every way to cut up to eight flats into runs. */
class FurtherSheetsTest {
  private static final Sheet SHEET = sheet(new Rect(10, 10, 210, 30));

  /** 200 by 120 inside the margins, less one labelled cell. */
  private static Sheet sheet(Rect cell) {
    return Sheet.open(
        "sheet",
        new PaperSize("small", Length.pt(220), Length.pt(140)),
        Margins.all(Length.pt(10)),
        List.of(new LabelledCell("header", cell)));
  }

  private static FitRequest on(List<Flat> flats) {
    return on(SHEET, flats);
  }

  private static FitRequest on(Sheet sheet, List<Flat> flats) {
    return FitRequest.of(
            sheet, flats, Spacing.NONE.withGap(Length.pt(10)).withClearance(Length.pt(0)))
        // Runs are cut by trying all ways, in which flats of one sheet stand in any order.
        .withRules(LeadRule.LISTED_IN_ORDER.takenFrom(LeadRule.ALL));
  }

  private static Flat flat(String id, Role role, double width, double height, double least) {
    return Flat.of(id, role, InkedBox.ofSize(width, height))
        .withShare(Math.max(width, height) / 100)
        .withLimits(new Limits(Length.pt(least), null))
        .withMayFlow(role == Role.STEP);
  }

  private static FlowResult checked(FitRequest request) {
    return checked(request, FurtherSheets.fit(request));
  }

  private static FlowResult checked(FitRequest request, FlowResult flow) {
    List<String> order = new ArrayList<>();
    for (FlowSheet s : flow.sheets()) {
      assertEquals(List.of(), Referee.check(s.request(), s.fit()));
      assertEquals(flow.sheets().size(), s.count());
      assertEquals(flow.sheets().indexOf(s) + 1, s.number());
      s.request().flats().stream().filter(Flat::mayFlow).forEach(f -> order.add(f.id()));
    }
    List<String> given = request.flats().stream().filter(Flat::mayFlow).map(Flat::id).toList();
    assertEquals(flow.conflict() == null ? given : List.of(), order);
    return flow;
  }

  @Test
  void whatFitsOnOneSheetStaysThere() {
    FitRequest request = on(List.of(flat("a", Role.STEP, 100, 50, 20)));
    FlowResult flow = checked(request);
    assertEquals(1, flow.sheets().size());
    assertEquals(Fitter.fit(request), flow.sheets().get(0).fit());
  }

  @Test
  void fiveOfWhichTwoFitASheetTakeThreeSheets() {
    // 200 by 100 each: two squares of 90 fit, three do not.
    List<Flat> five = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      five.add(flat("s" + i, Role.STEP, 100, 100, 90));
    }
    FlowResult flow = checked(on(five));
    assertTrue(flow.provenFewest());
    assertEquals(List.of(2, 2, 1), sizes(flow, 5));
    // Two squares with 10 between them in 200 are 95 each.
    assertEquals(0.95, Objects.requireNonNull(flow.scale()).doubleValue(), 1e-6);
    assertEquals(0.95, flow.bound(), 2e-6);
  }

  /** How many each sheet holds, the larger first: any such order is as good. */
  private static List<Integer> sizes(FlowResult flow, int all) {
    List<Integer> sizes =
        flow.sheets().stream()
            .map(s -> s.request().flats().size())
            .sorted((a, b) -> b - a)
            .toList();
    assertEquals(all, sizes.stream().mapToInt(Integer::intValue).sum());
    return sizes;
  }

  @Test
  void whatMayNotFlowStaysOnTheFirstSheet() {
    Flat front = flat("front", Role.FRONT, 100, 50, 180);
    List<Flat> flats = List.of(flat("s0", Role.STEP, 100, 50, 100), front);
    FlowResult flow = checked(on(flats));
    assertEquals(2, flow.sheets().size());
    assertEquals("front", flow.sheets().get(0).request().flats().get(0).id());
    assertEquals("s0", flow.sheets().get(1).request().flats().get(0).id());
  }

  @Test
  void aFlatThatNoSheetHoldsIsTheConflict() {
    FlowResult flow =
        checked(on(List.of(flat("a", Role.STEP, 100, 50, 20), flat("b", Role.STEP, 100, 50, 201))));
    assertEquals(List.of(), flow.sheets());
    assertNull(flow.scale());
    Conflict conflict = assertNotNullConflict(flow);
    assertEquals(List.of("b"), conflict.requirements().get(0).of());
  }

  private static Conflict assertNotNullConflict(FlowResult flow) {
    assertNotNull(flow.conflict());
    return Objects.requireNonNull(flow.conflict());
  }

  @Test
  void aGroupOnSeveralSheetsKeepsOneScale() {
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      flats.add(flat("s" + i, Role.STEP, 100, 60 + 10 * i, 95).withGroup("all", i == 1 ? 0.9 : 1));
    }
    FlowResult flow = checked(on(flats));
    assertTrue(flow.sheets().size() > 1);
    double first = scale(flow, "s0");
    assertEquals(0.9 * first, scale(flow, "s1"), 1e-9 * first);
    assertEquals(first, scale(flow, "s2"), 1e-9 * first);
  }

  private static double scale(FlowResult flow, String id) {
    return placement(flow, id).scale().doubleValue();
  }

  private static Placement placement(FlowResult flow, String id) {
    return flow.sheets().stream()
        .flatMap(s -> s.fit().placements().stream())
        .filter(p -> p.flat().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void noWayToCutThemIntoRunsIsBetter() {
    for (int seed = 1; seed <= 12; seed++) {
      Random random = new Random(seed);
      int n = 3 + seed % 6;
      List<Flat> flats = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double width = 30 + random.nextInt(70);
        double height = 30 + random.nextInt(70);
        flats.add(flat("s" + i, Role.STEP, width, height, Math.max(width, height) * 0.7));
      }
      FlowResult flow = checked(on(flats));
      double[] best = byEveryCut(flats);
      assertEquals(best[0], flow.sheets().size(), "seed " + seed);
      // Order may cost a tenth of the scale, so the bound tells what was found without it.
      assertEquals(best[1], flow.bound(), 2e-6 * best[1], "seed " + seed);
      double scale = Objects.requireNonNull(flow.scale()).doubleValue();
      assertTrue(scale >= 0.9 * best[1] * (1 - 1e-6) && scale <= best[1] * (1 + 1e-6), "" + scale);
    }
  }

  /** The first sheet loses a corner or a side, further ones nearly nothing. */
  @Test
  void noWayToCutThemIsBetterWhereSheetsAreRuledDifferently() {
    List<Sheet> firsts =
        List.of(sheet(new Rect(10, 10, 120, 90)), sheet(new Rect(10, 10, 70, 130)));
    Sheet further = sheet(new Rect(10, 10, 210, 15));
    int[] taken = new int[2];
    for (int seed = 21; seed <= 32; seed++) {
      Random random = new Random(seed);
      int n = 3 + seed % 6;
      List<Flat> flats = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double width = 30 + random.nextInt(70);
        double height = 30 + random.nextInt(70);
        flats.add(flat("s" + i, Role.STEP, width, height, Math.max(width, height) * 0.6));
      }
      FitRequest request = on(firsts.get(0), flats).withBudget(new Budget(2_000_000));
      FlowResult flow = checked(request, FurtherSheets.fit(request, firsts, further, () -> false));
      double[] best = byEveryCut(flats, firsts, further);
      assertEquals(best[0], flow.sheets().size(), "seed " + seed);
      assertEquals(best[1], flow.bound(), 2e-6 * best[1], "seed " + seed);
      taken[firsts.indexOf(flow.sheets().get(0).request().sheet())]++;
      flow.sheets().stream().skip(1).forEach(s -> assertEquals(further, s.request().sheet()));
    }
    assertTrue(taken[0] > 0 && taken[1] > 0, "both rulings are the better one at times");
  }

  @Test
  void whatIsHeldStaysHeldOnWhicheverSheet() {
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      flats.add(flat("s" + i, Role.STEP, 100, 100, 50).withGroup("all", i == 2 ? 0.9 : 1));
    }
    // 200 by 100: two of 90 go on a sheet. One is held at 0.9 and by its left edge, another by its
    // top; the group follows the scale that is held.
    flats.set(0, flats.get(0).withHeld(new Held(Length.pt(115), null, 0.9)));
    flats.set(3, flats.get(3).withHeld(new Held(null, Length.pt(32), null)));
    FlowResult flow = checked(on(flats));
    assertEquals(2, flow.sheets().size());
    assertEquals(0.9, scale(flow, "s3"), 1e-12);
    assertEquals(0.81, scale(flow, "s2"), 1e-12);
    assertEquals(115, placement(flow, "s0").left().doubleValue());
    assertEquals(32, placement(flow, "s3").top().doubleValue());
  }

  /** The fewest runs that all fit, and the largest least scale on so many. */
  private static double[] byEveryCut(List<Flat> flats) {
    return byEveryCut(flats, List.of(SHEET), SHEET);
  }

  private static double[] byEveryCut(List<Flat> flats, List<Sheet> firsts, Sheet further) {
    int n = flats.size();
    double[][] scale = new double[n][n + 1];
    for (int from = 0; from < n; from++) {
      for (int to = from + 1; to <= n; to++) {
        for (Sheet sheet : from == 0 ? firsts : List.of(further)) {
          scale[from][to] = Math.max(scale[from][to], alone(sheet, flats, from, to));
        }
      }
    }
    double[] best = {Double.MAX_VALUE, 0};
    for (int cuts = 0; cuts < 1 << (n - 1); cuts++) {
      int sheets = 1 + Integer.bitCount(cuts);
      double least = Double.MAX_VALUE;
      int from = 0;
      for (int to = 1; to <= n; to++) {
        if (to == n || (cuts >> (to - 1) & 1) == 1) {
          least = Math.min(least, scale[from][to]);
          from = to;
        }
      }
      if (least > 0 && (sheets < best[0] || (sheets == best[0] && least > best[1]))) {
        best = new double[] {sheets, least};
      }
    }
    return best;
  }

  /** The scale of a run in terms of the first of all; 0 where it does not fit. */
  private static double alone(Sheet sheet, List<Flat> flats, int from, int to) {
    Flat lead = flats.get(0);
    Flat its = flats.get(from);
    // Without a view, longest sides are in the ratio of the shares.
    double target = its.share() / lead.share() * lead.ink().longestSide();
    FitRequest request = on(sheet, flats.subList(from, to)).withOrder(Order.NONE).withGrowth(false);
    if (!(Fitter.solve(request, () -> false, false) instanceof Fit fit)) {
      return 0;
    }
    return fit.proof().scale().doubleValue() * its.ink().longestSide() / target;
  }
}
