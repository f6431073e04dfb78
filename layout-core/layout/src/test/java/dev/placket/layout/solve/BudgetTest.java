package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Budget;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Proof;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a larger budget may change, and what cancelling leaves. */
@Tag("long")
class BudgetTest {
  private static final double CLOSE = 1e-6;

  static Stream<ReferenceSheet> sheets() {
    return ReferenceSheet.both();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void moreStepsNeverMakeItWorse(ReferenceSheet sheet) {
    double scale = 0;
    double bound = Double.POSITIVE_INFINITY;
    for (long steps = 20; steps <= 6000; steps = steps * 7 / 4) {
      FitRequest request = sheet.request().withBudget(new Budget(steps));
      if (!(Fitter.fit(request) instanceof Fit fit)) {
        assertEquals(0, scale, "an arrangement was lost at " + steps + " steps");
        continue;
      }
      Proof proof = fit.proof();
      String at = " at " + steps + " steps: " + proof;
      assertEquals(List.of(), Referee.check(request, fit), at);
      assertTrue(proof.scale().doubleValue() >= scale, "smaller than " + scale + at);
      assertTrue(proof.bound() <= bound, "looser than " + bound + at);
      assertTrue(proof.bound() >= sheet.bestKnown() * (1 - CLOSE), "a false bound" + at);
      assertTrue(proof.steps() <= steps, "more steps than granted" + at);
      scale = proof.scale().doubleValue();
      bound = proof.bound();
    }
    assertTrue(scale > 0, "6000 steps place nothing");
  }

  @Test
  void cancellingLeavesTheBestSoFar() {
    ReferenceSheet sheet =
        sheets().filter(s -> s.flats() == 16 && !s.proven()).findFirst().orElseThrow();
    FitRequest request = sheet.request().withBudget(new Budget(1_000_000_000L));
    AtomicInteger asked = new AtomicInteger();
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(request, () -> asked.incrementAndGet() > 100));
    assertEquals(List.of(), Referee.check(request, fit));
    assertFalse(fit.proof().proven());
    assertTrue(fit.proof().bound() >= sheet.bestKnown() * (1 - CLOSE));
    assertTrue(fit.proof().steps() < 10_000, "went on for " + fit.proof().steps());
  }

  @Test
  void cancelledBeforeItBeganItClaimsNothing() {
    Conflict conflict =
        assertInstanceOf(
            Conflict.class, Fitter.fit(sheets().findFirst().orElseThrow().request(), () -> true));
    assertFalse(conflict.proven());
    assertFalse(conflict.provenMinimal());
  }

  @Test
  void theSameRequestGivesTheSameAnswer() {
    sheets()
        .filter(s -> s.flats() >= 10)
        .forEach(s -> assertEquals(Fitter.fit(s.request()), Fitter.fit(s.request()), s.id()));
  }
}
