package dev.placket.layout.solve.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.ReadingOrder;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.solve.Fitter;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal flats on an empty sheet: the scale is known by counting columns and rows. */
class PlaceInGridTest {
  private static final double WIDTH = 500;
  private static final double HEIGHT = 300;
  private static final double GAP = 10;

  private static FitRequest request(int n, double width, double height) {
    PaperSize paper = new PaperSize("p", Length.pt(WIDTH), Length.pt(HEIGHT));
    Sheet sheet = Sheet.open("open", paper, Margins.all(Length.pt(0)), List.of());
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      flats.add(Flat.of("s" + i, Role.SWATCH, InkedBox.ofSize(width, height)));
    }
    return FitRequest.of(sheet, flats, Spacing.NONE.withGap(Length.pt(GAP)));
  }

  /** Of all numbers of columns, with rows as needed, the one that leaves the largest cells. */
  private static double byCounting(int n, double width, double height) {
    double best = 0;
    for (int columns = 1; columns <= n; columns++) {
      int rows = (n + columns - 1) / columns;
      double onX = ((WIDTH + GAP) / columns - GAP) / width;
      double onY = ((HEIGHT + GAP) / rows - GAP) / height;
      best = Math.max(best, Math.min(onX, onY));
    }
    return best;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 7, 12, 20, 41, 60, 100})
  void theLargestGridIsFoundAndProven(int n) {
    for (double[] size : new double[][] {{40, 30}, {10, 33}, {90, 7}}) {
      FitRequest request = request(n, size[0], size[1]).withGrowth(false);
      Fit fit = (Fit) Fitter.fit(request.withOrder(Order.NONE));
      assertEquals(List.of(), Referee.check(request, fit));
      double largest = byCounting(n, size[0], size[1]);
      assertEquals(largest, fit.proof().scale().doubleValue(), 1e-9 * largest);
      assertTrue(fit.proof().proven());
      Fit ordered = (Fit) Fitter.fit(request);
      assertEquals(largest, ordered.proof().scale().doubleValue(), 1e-9 * largest);
      assertTrue(ReadingOrder.of(request.flats(), ordered.placements()).isKept());
    }
  }

  /** 20 of 40 by 30: 5 columns give min(94/40, 67.5/30), which is more than 4 or 6 give. */
  @Test
  void orderKeepsTheGridAndItsSize() {
    FitRequest request = request(20, 40, 30);
    Fit fit = (Fit) Fitter.fit(request);
    assertEquals(67.5 / 30, fit.proof().scale().doubleValue(), 1e-9);
    assertTrue(fit.order().stream().allMatch(s -> s.kept() && s.price() < 1e-9), "" + fit.order());
    assertEquals(5, fit.placements().stream().map(p -> p.left()).distinct().count());
    assertEquals(4, fit.placements().stream().map(p -> p.top()).distinct().count());
  }
}
