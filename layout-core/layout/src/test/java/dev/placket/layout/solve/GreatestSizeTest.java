package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.check.Referee;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A flat that stops at its greatest size is not above it, by the referee's exact arithmetic. */
class GreatestSizeTest {
  private static final int MOST_PIXELS = 4000;

  /** Room for 4000 pixels at 72 to the inch and a front above them. */
  private static final Sheet WALL =
      Sheet.open(
          "wall",
          new PaperSize("wall", Length.mm(12000), Length.mm(6000)),
          Margins.all(Length.mm(10)),
          List.<LabelledCell>of());

  private static final Spacing SPACING =
      Spacing.NONE.withGap(Length.mm(5)).withClearance(Length.mm(3));

  @ParameterizedTest
  @ValueSource(doubles = {72, 96, 150, 200, 300})
  void picturesOfEveryNumberOfPixels(double soft) {
    DensityTargets targets = new DensityTargets(soft, soft, soft);
    Flat front = Flat.of("front", Role.FRONT, InkedBox.ofSize(900, 1060));
    Map<Integer, String> wrong = new TreeMap<>();
    for (int side = 1; side <= MOST_PIXELS; side++) {
      Flat detail =
          Flat.of("detail", Role.DETAIL, InkedBox.ofSize(side, side * 0.787))
              .withLimits(new Limits(Length.ZERO, targets.greatestSide(side)));
      collect(wrong, side, FitRequest.of(WALL, List.of(front, detail), SPACING));
    }
    assertEquals(Map.of(), wrong);
  }

  /** One greatest size for all, in drawings of other units: each keeps it, and the front leads. */
  @ParameterizedTest
  @ValueSource(doubles = {50, 100, 101.6, 333})
  void severalOfOneGreatestSize(double mm) {
    Limits most = new Limits(Length.ZERO, Length.mm(mm));
    Flat front = Flat.of("front", Role.FRONT, InkedBox.ofSize(777, 1000)).withLimits(most);
    Map<Integer, String> wrong = new TreeMap<>();
    for (int units = 500; units <= 1500; units++) {
      InkedBox ink = InkedBox.ofSize(300, units);
      Flat side = Flat.of("side", Role.SIDE, ink).withLimits(most);
      Flat photo = Flat.of("photo", Role.PHOTO, ink).withLimits(most);
      collect(wrong, units, FitRequest.of(WALL, List.of(front, side, photo), SPACING));
    }
    assertEquals(Map.of(), wrong);
  }

  private static void collect(Map<Integer, String> wrong, int key, FitRequest request) {
    Outcome outcome = Fitter.fit(request);
    if (!(outcome instanceof Fit fit)) {
      wrong.put(key, outcome.toString());
    } else if (!Referee.check(request, fit).isEmpty()) {
      wrong.put(key, Referee.check(request, fit).toString());
    }
  }
}
