package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.FlatShape;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.plan.ShapedOutcome;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Footprints against trial of all: each choice solved by {@link BruteForce} alone. */
class ChooseShapesTest {
  private static FlatShape shape(Random random, SmallSheet.Item item) {
    double strip = random.nextInt(3) * 25;
    double least = random.nextBoolean() ? 0 : 30 + random.nextInt(150);
    return new FlatShape(
        Surround.caption(Length.pt(strip), Length.pt(least)),
        Length.pt(random.nextInt(3) == 0 ? item.longest() * item.least() * 1.2 : 0));
  }

  private static SmallSheet.Item with(SmallSheet.Item i, FlatShape s) {
    double least = Math.max(i.least(), s.least().pt() / i.longest());
    return new SmallSheet.Item(
        i.width(),
        i.height(),
        i.perT(),
        least,
        i.greatest(),
        s.surround().bottom().pt(),
        s.surround().leastWidth().pt(),
        i.heldX(),
        i.heldY(),
        i.back());
  }

  @Property(tries = 60)
  void noChoiceIsLargerThanTheOneTaken(@ForAll long seed) {
    SmallSheet sheet = SmallSheet.of(seed);
    Random random = new Random(seed);
    Map<String, List<FlatShape>> shapes = new TreeMap<>();
    List<Flat> flats = sheet.request().flats();
    for (int i = 0; i < Math.min(2, flats.size()); i++) {
      SmallSheet.Item item = sheet.items().get(i);
      List<FlatShape> its = new ArrayList<>();
      its.add(new FlatShape(flats.get(i).surround(), Length.ZERO));
      its.add(shape(random, item));
      its.add(shape(random, item));
      Flat flat = flats.get(i);
      its.removeIf(s -> !s.suits(flat));
      shapes.put(flats.get(i).id(), its);
    }
    double most = Double.NaN;
    for (List<FlatShape> choice : choices(flats, shapes)) {
      List<SmallSheet.Item> items = new ArrayList<>(sheet.items());
      for (int i = 0; i < choice.size(); i++) {
        items.set(i, with(items.get(i), choice.get(i)));
      }
      double its =
          BruteForce.largest(
              new SmallSheet(
                  sheet.request(),
                  items,
                  sheet.walls(),
                  sheet.gaps(),
                  sheet.frame(),
                  sheet.rules()));
      most = Double.isNaN(most) || its > most ? its : most;
    }
    ShapedOutcome made = Planner.plan(sheet.request(), shapes, 0);
    if (Double.isNaN(most)) {
      assertTrue(made.outcome() instanceof Conflict);
    } else {
      Fit fit = (Fit) made.outcome();
      assertEquals(1, fit.proof().scale().doubleValue() / most, 1e-5);
      assertTrue(fit.proof().bound() >= most * (1 - 1e-5), "the bound is that of all");
    }
  }

  private static List<List<FlatShape>> choices(
      List<Flat> flats, Map<String, List<FlatShape>> shapes) {
    List<List<FlatShape>> choices = List.of(List.of());
    for (Flat flat : flats) {
      List<FlatShape> its = shapes.get(flat.id());
      if (its != null) {
        List<List<FlatShape>> longer = new ArrayList<>();
        for (List<FlatShape> before : choices) {
          for (FlatShape shape : its) {
            List<FlatShape> one = new ArrayList<>(before);
            one.add(shape);
            longer.add(one);
          }
        }
        choices = longer;
      }
    }
    return choices;
  }

  /**
   * A lane of 40 beside it or of 30 below: in 100 by 50, 10 by 10 is 5 times or 2 times as large.
   */
  @Test
  void theLaneGoesWhereThereIsRoom() {
    Flat flat = Flat.of("front", Role.FRONT, InkedBox.ofSize(10, 10));
    Sheet sheet =
        Sheet.open(
            "wide",
            new PaperSize("wide", Length.pt(100), Length.pt(50)),
            Margins.all(Length.ZERO),
            List.of());
    FitRequest request = FitRequest.of(sheet, List.of(flat), Spacing.NONE).withGrowth(false);
    FlatShape below = new FlatShape(Surround.caption(Length.pt(30), Length.ZERO), Length.ZERO);
    FlatShape beside =
        new FlatShape(
            new Surround(Length.ZERO, Length.ZERO, Length.pt(40), Length.ZERO, Length.ZERO),
            Length.ZERO);
    ShapedOutcome made = Planner.plan(request, Map.of("front", List.of(below, beside)), 0);
    assertEquals(Map.of("front", 1), made.shapes());
    assertEquals(5, ((Fit) made.outcome()).proof().scale().doubleValue(), 1e-6);
    assertThrows(
        IllegalArgumentException.class, () -> Planner.plan(request, Map.of("front", List.of()), 0));
    // 2 is less than 5 by three fifths: for that share, the one named first.
    made = Planner.plan(request, Map.of("front", List.of(below, beside)), 0.61);
    assertEquals(Map.of("front", 0), made.shapes());
    assertEquals(5, ((Fit) made.outcome()).proof().bound(), 1e-6);
    made = Planner.plan(request, Map.of("front", List.of(below, beside)), 0.59);
    assertEquals(Map.of("front", 1), made.shapes());
  }
}
