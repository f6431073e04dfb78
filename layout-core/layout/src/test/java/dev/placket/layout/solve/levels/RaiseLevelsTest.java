package dev.placket.layout.solve.levels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.SizeLevel;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Targets;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.solve.Fitter;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;

/** Levels beside brute force over all relative orders of up to four flats. */
class RaiseLevelsTest {
  private static final double WIDTH = 300;
  private static final double HEIGHT = 200;
  private static final double GAP = 10;

  private static FitRequest request(List<Flat> flats) {
    PaperSize paper = new PaperSize("small", Length.pt(WIDTH), Length.pt(HEIGHT));
    Sheet sheet = Sheet.open("open", paper, Margins.all(Length.pt(0)), List.of());
    return FitRequest.of(sheet, flats, Spacing.NONE.withGap(Length.pt(GAP)))
        .withRules(LeadRule.NONE)
        .withOrder(Order.NONE);
  }

  private static List<Flat> flats(Random random, Role... roles) {
    List<Flat> flats = new ArrayList<>();
    for (Role role : roles) {
      InkedBox ink = InkedBox.ofSize(20 + random.nextInt(100), 20 + random.nextInt(100));
      flats.add(Flat.of(role.name() + flats.size(), role, ink).withShare(role.share()));
    }
    return flats;
  }

  @Test
  void noArrangementGivesALargerFactor() {
    int raised = 0;
    Role[][] kinds = {
      {Role.FRONT, Role.DETAIL, Role.DETAIL},
      {Role.FRONT, Role.SIDE, Role.DETAIL, Role.SWATCH},
      {Role.DETAIL, Role.DETAIL, Role.SWATCH, Role.SWATCH}
    };
    for (int seed = 0; seed < 45; seed++) {
      List<Flat> flats = flats(new Random(seed), kinds[seed % kinds.length]);
      FitRequest request = request(flats);
      Fit fit = (Fit) Fitter.fit(request);
      assertEquals(List.of(), Referee.check(request, fit));
      double[] targets = Targets.scales(flats);
      double[] scales = new double[flats.size()];
      double[] first = new double[flats.size()];
      for (int i = 0; i < scales.length; i++) {
        scales[i] = targets[i] * fit.proof().scale().doubleValue();
        first[i] = scales[i];
      }
      for (SizeLevel level : fit.levels()) {
        double[] from = scales.clone();
        double most = level.kind() == SizeLevel.Kind.VIEWS ? 1.3 : 1000;
        double best = largest(most, f -> fits(flats, raised(flats, from, first, level.kind(), f)));
        String name = "seed " + seed + ": " + level + ", brute force " + best;
        assertTrue(level.factor() <= best * (1 + 1e-6), name);
        assertTrue(level.bound() >= best * (1 - 1e-6), name);
        assertTrue(level.proven(), name);
        scales = raised(flats, from, first, level.kind(), level.factor());
        raised += level.factor() > 1.001 ? 1 : 0;
      }
      for (int i = 0; i < scales.length; i++) {
        double placed = fit.placements().get(i).scale().doubleValue();
        assertTrue(placed >= scales[i] * (1 - 1e-9), "seed " + seed + ": " + i + " lost size");
      }
    }
    assertTrue(raised > 30, "only " + raised + " levels were raised");
  }

  private static double[] raised(
      List<Flat> flats, double[] from, double[] first, SizeLevel.Kind kind, double factor) {
    double[] scales = from.clone();
    for (int i = 0; i < scales.length; i++) {
      if (kind(flats.get(i).role()) == kind) {
        scales[i] = from[i] * factor;
        if (kind == SizeLevel.Kind.VIEWS) {
          scales[i] = Math.min(scales[i], 1.3 * first[i]);
        }
      }
    }
    return scales;
  }

  private static SizeLevel.Kind kind(Role role) {
    return role.isView()
        ? SizeLevel.Kind.VIEWS
        : role == Role.SWATCH ? SizeLevel.Kind.SWATCHES : SizeLevel.Kind.DETAILS;
  }

  private static double largest(double most, DoublePredicate fits) {
    if (fits.test(most)) {
      return most;
    }
    double low = 1;
    double high = most;
    while (high - low > 1e-9 * high) {
      double middle = (low + high) / 2;
      if (fits.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Whether any of the four ways for each pair leaves both longest paths within the sheet. */
  private static boolean fits(List<Flat> flats, double[] scales) {
    int n = scales.length;
    double[] width = new double[n];
    double[] height = new double[n];
    for (int i = 0; i < n; i++) {
      width[i] = flats.get(i).ink().width() * scales[i];
      height[i] = flats.get(i).ink().height() * scales[i];
    }
    int pairs = n * (n - 1) / 2;
    for (int ways = 0; ways < 1 << 2 * pairs; ways++) {
      if (fits(width, ways, 0, WIDTH) && fits(height, ways, 2, HEIGHT)) {
        return true;
      }
    }
    return false;
  }

  private static boolean fits(double[] size, int ways, int first, double room) {
    int n = size.length;
    double[] at = new double[n];
    for (int round = 0; round <= n; round++) {
      boolean moved = false;
      int bit = 0;
      for (int j = 1; j < n; j++) {
        for (int i = 0; i < j; i++, bit += 2) {
          int way = (ways >> bit & 3) - first;
          int before = way == 0 ? i : j;
          int after = way == 0 ? j : i;
          if ((way == 0 || way == 1) && at[after] < at[before] + size[before] + GAP) {
            at[after] = at[before] + size[before] + GAP;
            moved = true;
          }
        }
      }
      if (!moved) {
        for (int i = 0; i < n; i++) {
          if (at[i] + size[i] > room * (1 + 1e-9)) {
            return false;
          }
        }
        return true;
      }
    }
    return false;
  }
}
