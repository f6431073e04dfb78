package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Budget;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The reference sheets: the best scale known and a bound for each come from a trial solver and
 * agree with CP-SAT (OR-Tools, one worker, 60 s) wherever that finished.
 */
class ReferenceSheetsTest {
  private static final double CLOSE = 1e-6;

  static Stream<ReferenceSheet> sheets() {
    return ReferenceSheet.both();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void scaleAndBoundAgreeWithWhatIsKnown(ReferenceSheet sheet) {
    long steps = sheet.flats() <= 12 ? 2_000_000 : 50_000;
    FitRequest request = sheet.request().withBudget(new Budget(steps));
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(request));
    double scale = fit.proof().scale().doubleValue();
    assertEquals(List.of(), Referee.check(request, fit));
    assertTrue(fit.proof().bound() >= sheet.bestKnown() * (1 - CLOSE), "bound under a known fit");
    if (sheet.proven()) {
      assertTrue(scale <= sheet.bound() * (1 + CLOSE), "scale above a proven bound: " + scale);
    }
    if (sheet.flats() <= 12) {
      assertTrue(scale >= sheet.bestKnown() * (1 - CLOSE), "scale under the best: " + scale);
      assertTrue(fit.proof().proven(), "not proven: " + fit.proof().gap());
    }
  }
}
