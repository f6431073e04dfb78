package dev.placket.layout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published packings: squared rectangle and square, Korf's least rectangles, Hopper and Turton's
 * packings without waste (sources in {@code reference/README.md}). Each must be reached, at a scale
 * of exactly 1, and it must be known that there is nothing larger.
 */
class RectangleOracleTest {
  private static final double CLOSE = 1e-6;

  static Stream<RectangleOracle> oracles() {
    List<RectangleOracle> all = new ArrayList<>(RectangleOracle.leastRectangles());
    all.add(RectangleOracle.squaredRectangle());
    all.add(RectangleOracle.squaredSquare());
    RectangleOracle.hopperTurton().stream().filter(o -> !o.name().equals("C2_2")).forEach(all::add);
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("oracles")
  void theScaleIsOneAndKnownToBeTheLargest(RectangleOracle oracle) {
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(oracle.request()));
    double scale = fit.proof().scale().doubleValue();
    assertEquals(List.of(), Referee.check(oracle.request(), fit));
    assertTrue(scale <= 1, () -> "larger than the whole: " + scale);
    assertTrue(scale >= 1 - CLOSE, () -> "not filled: " + scale);
    assertTrue(fit.proof().proven(), () -> "not proven: " + fit.proof());
  }

  /**
   * C2_2 with its 25 pieces is not filled within the default budget; what is said of it is true.
   */
  @ParameterizedTest
  @MethodSource("hard")
  void whatIsSaidOfAHardOneIsTrue(RectangleOracle oracle) {
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(oracle.request()));
    assertEquals(List.of(), Referee.check(oracle.request(), fit));
    assertTrue(fit.proof().scale().doubleValue() <= 1, () -> "more than all: " + fit.proof());
    assertTrue(fit.proof().bound() >= 1 - CLOSE, () -> "a false bound: " + fit.proof());
  }

  static Stream<RectangleOracle> hard() {
    return RectangleOracle.hopperTurton().stream().filter(o -> o.name().equals("C2_2"));
  }
}
