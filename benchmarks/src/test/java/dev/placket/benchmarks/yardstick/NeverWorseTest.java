package dev.placket.benchmarks.yardstick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.benchmarks.pages.PageFile;
import dev.placket.benchmarks.pages.ReferencePage;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.solve.Fitter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** At order share 0 the fitter is never worse than shelves, skyline and maximal rectangles. */
class NeverWorseTest {
  /** The yardsticks stop at 1e-7, and our scale is rounded down for the written file. */
  private static final double NEAR = 1e-6;

  static Stream<ReferencePage> sheets() {
    return Stream.concat(
        PageFile.builtIn("pages").stream(), PageFile.builtIn("pages-hard").stream());
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void atLeastTheBestOfTheGreedyWays(ReferencePage page) {
    FitRequest request = page.request();
    Fit fit = (Fit) Fitter.fit(request);
    assertEquals(List.of(), Referee.check(request, fit));
    double scale = fit.proof().scale().doubleValue();
    for (Yardstick y : Yardstick.GREEDY) {
      double other = y.pack(page).scale();
      assertTrue(scale >= other * (1 - NEAR), page.id() + " " + y.name() + " " + other);
      assertTrue(fit.proof().bound() >= other * (1 - NEAR), page.id() + " bound");
    }
  }
}
