package dev.placket.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Paper;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Box;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Further sheets: by hand, and by every way to cut up to eight flats into runs. */
class FurtherSheetsTest {
  private static FitRequest on(List<Flat> flats) {
    Sheet sheet =
        Sheet.open(
            "sheet",
            new Paper("small", Length.pt(220), Length.pt(140)),
            Margins.all(Length.pt(10)),
            List.of(new LabelledCell("header", new Box(10, 10, 210, 30))));
    return FitRequest.of(sheet, flats, Spacing.of(Length.pt(10), Length.pt(0)));
  }

  private static Flat flat(String id, Role role, double width, double height, double least) {
    return Flat.of(id, role, InkedBox.ofSize(width, height))
        .withShare(Math.max(width, height) / 100)
        .withLimits(new Limits(Length.pt(least), null))
        .withMayFlow(role == Role.STEP);
  }

  private static Flow checked(FitRequest request) {
    Flow flow = FurtherSheets.fit(request);
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
    Flow flow = checked(request);
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
    Flow flow = checked(on(five));
    assertTrue(flow.provenFewest());
    assertEquals(List.of(2, 2, 1), sizes(flow, 5));
    // Two squares with 10 between them in 200 are 95 each.
    assertEquals(0.95, Objects.requireNonNull(flow.scale()).doubleValue(), 1e-6);
    assertEquals(0.95, flow.bound(), 2e-6);
  }

  /** How many each sheet holds, the larger first: any such order is as good. */
  private static List<Integer> sizes(Flow flow, int all) {
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
    Flow flow = checked(on(flats));
    assertEquals(2, flow.sheets().size());
    assertEquals("front", flow.sheets().get(0).request().flats().get(0).id());
    assertEquals("s0", flow.sheets().get(1).request().flats().get(0).id());
  }

  @Test
  void aFlatThatNoSheetHoldsIsTheConflict() {
    Flow flow =
        checked(on(List.of(flat("a", Role.STEP, 100, 50, 20), flat("b", Role.STEP, 100, 50, 201))));
    assertEquals(List.of(), flow.sheets());
    assertNull(flow.scale());
    Conflict conflict = assertNotNullConflict(flow);
    assertEquals(List.of("b"), conflict.requirements().get(0).of());
  }

  private static Conflict assertNotNullConflict(Flow flow) {
    assertNotNull(flow.conflict());
    return Objects.requireNonNull(flow.conflict());
  }

  @Test
  void aGroupOnSeveralSheetsKeepsOneScale() {
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      flats.add(flat("s" + i, Role.STEP, 100, 60 + 10 * i, 95).withGroup("all", i == 1 ? 0.9 : 1));
    }
    Flow flow = checked(on(flats));
    assertTrue(flow.sheets().size() > 1);
    double first = scale(flow, "s0");
    assertEquals(0.9 * first, scale(flow, "s1"), 1e-9 * first);
    assertEquals(first, scale(flow, "s2"), 1e-9 * first);
  }

  private static double scale(Flow flow, String id) {
    return flow.sheets().stream()
        .flatMap(s -> s.fit().placements().stream())
        .filter(p -> p.flat().equals(id))
        .findFirst()
        .orElseThrow()
        .scale()
        .doubleValue();
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
      Flow flow = checked(on(flats));
      double[] best = byEveryCut(flats);
      assertEquals(best[0], flow.sheets().size(), "seed " + seed);
      // Order may cost a tenth of the scale, so the bound tells what was found without it.
      assertEquals(best[1], flow.bound(), 2e-6 * best[1], "seed " + seed);
      double scale = Objects.requireNonNull(flow.scale()).doubleValue();
      assertTrue(scale >= 0.9 * best[1] * (1 - 1e-6) && scale <= best[1] * (1 + 1e-6), "" + scale);
    }
  }

  /** The fewest runs that all fit, and the largest least scale on so many. */
  private static double[] byEveryCut(List<Flat> flats) {
    int n = flats.size();
    double[][] scale = new double[n][n + 1];
    for (int from = 0; from < n; from++) {
      for (int to = from + 1; to <= n; to++) {
        scale[from][to] = alone(flats, from, to);
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

  /** The scale of a run in terms of the first of all, which leads; 0 where it does not fit. */
  private static double alone(List<Flat> flats, int from, int to) {
    List<Flat> run = flats.subList(from, to);
    Flat lead = flats.get(0);
    Flat its = run.get(0);
    double target = its.share() * lead.ink().longestSide();
    List<Flat> own =
        run.stream().map(f -> f.withShare(f == its ? f.share() : f.share() / its.share())).toList();
    // The lead itself aims at its own length, whatever its share says.
    boolean leads = from == 0;
    FitRequest request = on(leads ? run : own).withOrder(Order.NONE).withGrowth(false);
    if (!(Fitter.solve(request, () -> false, false) instanceof Fit fit)) {
      return 0;
    }
    double scale = fit.proof().scale().doubleValue();
    return leads ? scale : scale * its.ink().longestSide() / target;
  }
}
