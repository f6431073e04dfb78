package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.fit.ReadingOrder;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The rule that swatches and steps stand in the order given. */
class ListedOrderTest {
  private static FitRequest request(List<Flat> flats) {
    PaperSize paper = new PaperSize("small", Length.pt(420), Length.pt(300));
    Sheet sheet = Sheet.open("open", paper, Margins.all(Length.pt(0)), List.of());
    return FitRequest.of(sheet, flats, Spacing.NONE.withGap(Length.pt(10)));
  }

  private static List<Flat> flats(long seed, int n, Role role) {
    Random random = new Random(seed);
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      InkedBox ink = InkedBox.ofSize(20 + random.nextInt(80), 20 + random.nextInt(80));
      flats.add(Flat.of("s" + i, role, ink));
    }
    return flats;
  }

  /** Whatever order may cost, and also where it may cost nothing. */
  @Test
  void isKeptOnEverySheet() {
    for (int seed = 0; seed < 30; seed++) {
      List<Flat> flats = flats(seed, 3 + seed % 7, seed % 2 == 0 ? Role.SWATCH : Role.STEP);
      for (Order order : List.of(Order.NONE, Order.DEFAULT)) {
        FitRequest request = request(flats).withOrder(order);
        Fit fit = (Fit) Fitter.fit(request);
        assertEquals(List.of(), Referee.check(request, fit), "seed " + seed);
        assertTrue(ReadingOrder.of(flats, fit.placements()).isKept(), "seed " + seed);
      }
    }
  }

  /** Colourways are fronts, all of one drawing: nothing but the list tells them apart. */
  @Test
  void frontsOfAListStandInItsOrder() {
    for (int n = 2; n <= 6; n++) {
      List<Flat> flats = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        Flat front = Flat.of("k" + i, Role.FRONT, InkedBox.ofSize(90, 110)).withGroup("ways", 1);
        flats.add(front.withList("colourways"));
      }
      FitRequest request =
          request(flats).withRules(LeadRule.FRONT_BEFORE_BACK.takenFrom(LeadRule.ALL));
      Fit fit = (Fit) Fitter.fit(request);
      assertEquals(List.of(), Referee.check(request, fit), n + " colourways");
      List<Placement> read = new ArrayList<>(fit.placements());
      // Rows from the top, from the left: as a person reads.
      read.sort(
          java.util.Comparator.comparingDouble((Placement p) -> p.top().doubleValue())
              .thenComparingDouble(p -> p.left().doubleValue()));
      assertEquals(
          flats.stream().map(Flat::id).toList(), read.stream().map(Placement::flat).toList());
      List<Flat> turned = new ArrayList<>(flats);
      Collections.reverse(turned);
      List<Placement> other = new ArrayList<>(fit.placements());
      Collections.reverse(other);
      Fit wrong = new Fit(other, fit.proof(), fit.order(), fit.levels());
      assertEquals(
          "listed in order",
          Referee.check(request.withFlats(turned), wrong).get(0).rule(),
          "the referee refuses the order turned round");
    }
  }

  /** Its bound covers all arrangements in order, and no arrangement without the rule is smaller. */
  @Test
  void costsWhatItMust() {
    int dearer = 0;
    for (int seed = 0; seed < 20; seed++) {
      List<Flat> flats = flats(seed, 4, Role.SWATCH);
      FitRequest plain = request(flats).withOrder(Order.NONE).withGrowth(false);
      Fit listed = (Fit) Fitter.fit(plain);
      Fit free = (Fit) Fitter.fit(plain.withRules(LeadRule.NONE));
      double scale = listed.proof().scale().doubleValue();
      double largest = free.proof().scale().doubleValue();
      assertTrue(scale <= largest * (1 + 1e-6), "seed " + seed);
      assertTrue(scale >= largest * 0.75, "seed " + seed + ": " + scale + " of " + largest);
      assertTrue(listed.proof().bound() >= scale, "seed " + seed);
      // The free one in order is one in order: then the rule costs nothing.
      if (ReadingOrder.of(flats, free.placements()).isKept()) {
        assertTrue(listed.proof().bound() >= largest * (1 - 1e-6), "seed " + seed);
      }
      dearer += scale < largest * 0.999 ? 1 : 0;
    }
    assertTrue(dearer > 0, "the rule is worth its price somewhere");
  }

  /** The referee refuses what the rule forbids, whoever placed it. */
  @Test
  void twoThatChangedPlacesAreRefused() {
    List<Flat> flats = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      flats.add(Flat.of("s" + i, Role.SWATCH, InkedBox.ofSize(40, 40)));
    }
    FitRequest request = request(flats);
    Fit fit = (Fit) Fitter.fit(request);
    List<Placement> placements = new ArrayList<>(fit.placements());
    Placement a = placements.get(0);
    Placement b = placements.get(1);
    placements.set(0, new Placement(a.flat(), a.scale(), b.left(), b.top(), a.capped()));
    placements.set(1, new Placement(b.flat(), b.scale(), a.left(), a.top(), b.capped()));
    Fit swapped = new Fit(Collections.unmodifiableList(placements), fit.proof(), fit.order());
    assertEquals(
        List.of("listed in order"),
        Referee.check(request, swapped).stream().map(r -> r.rule()).distinct().toList());
  }
}
