package dev.placket.layout.solve.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.ReadRequest;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.ProveScale;
import dev.placket.layout.solve.search.StepCounter;
import dev.placket.layout.solve.stretch.PairRelations;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What makes growth the lexicographic max-min of an order (Bertsekas and Gallager, Data Networks,
 * from memory): no flat could be larger unless one that grew no more than it were smaller. Checked
 * with longest paths of this test's own.
 */
class GrowOnTest {
  /** In points, on the shorter side. */
  private static final double MORE = 0.01;

  /** What rounding may have taken, as a share of a scale. */
  private static final double SHRUNK = 1e-7;

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5, 6, 8, 10})
  void nobodyCouldBeLargerUnlessOneThatGrewNoMoreWereSmaller(int n) {
    for (long seed = 1; seed <= 20; seed++) {
      check(seed, n);
    }
  }

  private static void check(long seed, int n) {
    FitRequest request = random(new Random(seed * 1000 + n), n);
    Model model = new ReadRequest(request).read().get(0);
    Plan plan = Plan.free(model);
    Best best = new ProveScale(model, new StepCounter(3000, () -> false)).run();
    FinishExactly.Finished done =
        Objects.requireNonNull(
            new FinishExactly(model, plan).finish(Objects.requireNonNull(best.arrangement())));
    GrowOn growth = new GrowOn(model, plan, done, GrowOn.caps(model, done.commons()));
    List<Placement> grown = growth.placements();
    String place = "seed " + seed + " n " + n;
    assertTrue(growth.exact(), place);
    double[] before = scales(done.placements());
    double[] after = scales(grown);
    assertTrue(keeps(request, growth.relations(), after, 1e-6), place);
    for (int k = 0; k < n; k++) {
      double[] tried = new double[n];
      double factor = after[k] / before[k];
      for (int j = 0; j < n; j++) {
        boolean more = after[j] / before[j] > factor * (1 + 1e-6);
        tried[j] = more ? before[j] * (1 - SHRUNK) : after[j] * (1 - SHRUNK);
      }
      InkedBox ink = request.flats().get(k).ink();
      tried[k] = after[k] + MORE / Math.min(ink.width(), ink.height());
      assertFalse(keeps(request, growth.relations(), tried, 0), place + " flat " + k);
    }
  }

  private static double[] scales(List<Placement> placements) {
    return placements.stream().mapToDouble(p -> p.scale().doubleValue()).toArray();
  }

  /** Whether flats of these scales keep an order, by pushing each as far left and up as it goes. */
  private static boolean keeps(FitRequest request, PairRelations r, double[] scale, double slack) {
    return keeps(request, r, scale, slack, true) && keeps(request, r, scale, slack, false);
  }

  private static boolean keeps(
      FitRequest request, PairRelations r, double[] scale, double slack, boolean onX) {
    int n = scale.length;
    double gap = request.spacing().gap().pt();
    double[] at = (onX ? r.fromX() : r.fromY()).clone();
    double[] size = new double[n];
    for (int i = 0; i < n; i++) {
      InkedBox ink = request.flats().get(i).ink();
      size[i] = scale[i] * (onX ? ink.width() : ink.height());
    }
    for (int round = 0; round < n; round++) {
      for (int j = 1; j < n; j++) {
        for (int i = 0; i < j; i++) {
          int side = r.sides()[j * (j - 1) / 2 + i];
          if (side == (onX ? 1 : 4)) {
            at[j] = Math.max(at[j], at[i] + size[i] + gap);
          } else if (side == (onX ? 2 : 8)) {
            at[i] = Math.max(at[i], at[j] + size[j] + gap);
          }
        }
      }
    }
    for (int i = 0; i < n; i++) {
      if (at[i] + size[i] > (onX ? r.toX() : r.toY())[i] + slack) {
        return false;
      }
    }
    return true;
  }

  private static FitRequest random(Random random, int n) {
    List<LabelledCell> cells = new ArrayList<>();
    for (int c = 0; c < random.nextInt(4); c++) {
      double left = random.nextInt(400);
      double top = random.nextInt(300);
      Rect box = new Rect(left, top, left + 30 + random.nextInt(90), top + 20 + random.nextInt(60));
      cells.add(new LabelledCell("cell" + c, box));
    }
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      InkedBox ink = InkedBox.ofSize(20 + random.nextInt(80), 20 + random.nextInt(80));
      flats.add(Flat.of("flat" + i, Role.STEP, ink).withShare(0.1 + random.nextInt(90) / 100.0));
    }
    Sheet sheet =
        Sheet.open(
            "random",
            new PaperSize("random", Length.pt(500), Length.pt(380)),
            Margins.all(Length.pt(10)),
            cells);
    FitRequest request =
        FitRequest.of(sheet, flats, Spacing.NONE.withGap(Length.pt(6)).withClearance(Length.pt(3)));
    assertEquals(n, request.flats().size());
    return request.withRules(LeadRule.NONE).withOrder(Order.NONE);
  }
}
