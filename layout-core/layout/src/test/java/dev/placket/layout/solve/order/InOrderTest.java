package dev.placket.layout.solve.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Placement;
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
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Flats of one role in the order given. */
class InOrderTest {
  private static FitRequest request(List<Flat> flats, int width, int height) {
    PaperSize paper = new PaperSize("small", Length.pt(width), Length.pt(height));
    Sheet sheet = Sheet.open("open", paper, Margins.all(Length.pt(0)), List.of());
    return FitRequest.of(sheet, flats, Spacing.NONE.withGap(Length.pt(10)));
  }

  private static Flat flat(int number, Role role, int width, int height) {
    return Flat.of("f" + number, role, InkedBox.ofSize(width, height));
  }

  /** Three tall colourways 1, 2, 3: the largest scale alone does not care which stands first. */
  @Test
  void threeColourwaysStandAsTheTableListsThem() {
    List<Flat> flats = new ArrayList<>();
    for (int i = 1; i <= 3; i++) {
      flats.add(flat(i, Role.SWATCH, 50 + i, 150 - 20 * i));
    }
    Fit fit = (Fit) Fitter.fit(request(flats, 400, 200));
    for (int i = 0; i < 2; i++) {
      Placement a = fit.placements().get(i);
      Placement b = fit.placements().get(i + 1);
      assertTrue(a.left().compareTo(b.left()) < 0, a + " " + b);
    }
  }

  @Test
  void whatTheFitSaysIsTrueOfThePage() {
    Order order = new Order(0.3, Order.DEFAULT.wishes());
    int kept = 0;
    for (int seed = 0; seed < 40; seed++) {
      Random random = new Random(seed);
      List<Flat> flats = new ArrayList<>();
      int n = 3 + seed % 6;
      for (int i = 0; i < n; i++) {
        Role role = i > 0 && seed % 3 == 0 && i < 3 ? Role.SWATCH : Role.DETAIL;
        flats.add(flat(i, role, 20 + random.nextInt(80), 20 + random.nextInt(80)));
      }
      FitRequest request = request(flats, 420, 300).withOrder(order);
      Fit fit = (Fit) Fitter.fit(request);
      assertEquals(List.of(), Referee.check(request, fit));
      boolean inOrder = ReadingOrder.of(flats, fit.placements()).isKept();
      boolean said = fit.order().stream().anyMatch(s -> s.wish() == OrderWish.IN_ORDER && s.kept());
      assertEquals(inOrder, said, "seed " + seed);
      kept += inOrder ? 1 : 0;
      Fit free = (Fit) Fitter.fit(request.withOrder(Order.NONE));
      double share = fit.proof().scale().doubleValue() / free.proof().scale().doubleValue();
      assertTrue(share >= 0.7 * (1 - 1e-9), "seed " + seed + " gave up too much: " + share);
    }
    assertEquals(40, kept, "three tenths of the scale pay for the order of any of these");
  }
}
