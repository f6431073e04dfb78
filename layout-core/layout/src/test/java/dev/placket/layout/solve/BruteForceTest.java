package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The largest common scale against brute force over relative orders. Ten thousand sheets are tried
 * by {@code mvn -pl layout-core/layout verify -Dplacket.smallSheets=10000 -Dtest=BruteForceTest}.
 */
class BruteForceTest {
  private static final double CLOSE = 1e-6;
  private static final int SHEETS = Integer.getInteger("placket.smallSheets", 600);

  @Test
  void theLargestCommonScaleIsFoundAndProven() {
    List<String> unproven = new ArrayList<>();
    int fitting = 0;
    for (int seed = 0; seed < SHEETS; seed++) {
      SmallSheet sheet = SmallSheet.of(seed);
      double largest = BruteForce.largest(sheet);
      String name = "seed " + seed + ", brute force " + largest;
      FitRequest request = sheet.request();
      Outcome outcome = Fitter.fit(request);
      if (Double.isNaN(largest)) {
        assertTrue(outcome instanceof Conflict, () -> name + ": " + outcome);
        if (!((Conflict) outcome).proven()) {
          unproven.add(name);
        }
        continue;
      }
      assertTrue(outcome instanceof Fit, () -> name + ": " + outcome);
      Fit fit = (Fit) outcome;
      fitting++;
      if (!fit.proof().proven()) {
        unproven.add(name + ", gap " + fit.proof().gap());
      }
      double scale = fit.proof().scale().doubleValue();
      assertEquals(List.of(), Referee.check(request, fit), name);
      assertTrue(scale <= largest * (1 + CLOSE), () -> name + ": scale " + scale);
      assertTrue(fit.proof().bound() >= largest * (1 - CLOSE), () -> name + ": " + fit.proof());
      assertTrue(
          !fit.proof().proven() || scale >= largest * (1 - CLOSE), () -> name + ": " + scale);
    }
    assertTrue(fitting > SHEETS / 2, "only " + fitting + " sheets of " + SHEETS + " can hold all");
    assertEquals(List.of(), unproven);
  }
}
