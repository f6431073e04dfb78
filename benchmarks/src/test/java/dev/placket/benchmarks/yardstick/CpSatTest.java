package dev.placket.benchmarks.yardstick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.benchmarks.pages.ReferencePage.Expected;
import dev.placket.benchmarks.pages.ReferencePage.Size;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.solve.Fitter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("long")
class CpSatTest {
  private static final int SMALL_SHEETS = 12;
  private static final int SMALL = 4;
  private static final double NEAR = 1e-6;

  /** Some seconds' work. */
  private final CpSat sat = CpSat.counting(20);

  @BeforeAll
  static void nativeSolver() {
    assumeTrue(CpSat.available(), "OR-Tools has no native solver for this machine");
  }

  static Stream<ReferencePage> smallSheets() {
    return PageFile.builtIn("pages").stream()
        .filter(p -> p.flats().size() <= SMALL)
        .limit(SMALL_SHEETS);
  }

  // By hand: two squares of 10 side by side with a gap of 4 in 104 by 50 stand at 5.
  @Test
  void bothWaysFindWhatIsKnownByHand() {
    Size square = new Size(10, 10);
    ReferencePage page =
        new ReferencePage("two", 124, 70, 10, 4, List.of(), List.of(square, square), null);
    for (CpSat.Answer answer : List.of(sat.once(page), sat.halving(page))) {
      assertTrue(answer.proven());
      assertTrue(answer.scale() <= 5 + NEAR && answer.bound() >= 5 - NEAR, answer.toString());
      assertEquals(0, answer.bound() / answer.scale() - 1, 0.0021);
    }
  }

  @ParameterizedTest
  @MethodSource("smallSheets")
  void itsIntervalMeetsOursAndTheKnownOne(ReferencePage page) {
    CpSat.Answer answer = sat.once(page);
    assertTrue(answer.scale() > 0, "walls that overlap leave nothing: " + answer);
    Fit fit = (Fit) Fitter.fit(page.request());
    double scale = fit.proof().scale().doubleValue();
    assertTrue(scale <= answer.bound() * (1 + NEAR), scale + " against " + answer);
    assertTrue(fit.proof().bound() >= answer.scale() * (1 - NEAR), fit.proof() + " " + answer);
    Expected known = page.expected();
    assertNotNull(known);
    assertTrue(known.bestKnown() <= answer.bound() * (1 + NEAR), known + " " + answer);
    assertTrue(known.bound() >= answer.scale() * (1 - NEAR), known + " " + answer);
  }
}
