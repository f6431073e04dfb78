package dev.placket.layout.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.solve.Fitter;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * Whatever unit a sheet is measured in, its answer is the same: with every length multiplied (and
 * limits of density divided, which makes greatest sizes grow alike) the scale is multiplied.
 *
 * <p>What an answer may lose is the hair by which its scale gives way to positions on a grid of
 * 1e-9 pt; that the search ends within 4e-7 is the same at any size.
 */
class ScalingPropertyTest {
  private static final double EXACT = 1e-9;

  @Property(tries = 60, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void doubled(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int n) {
    scales(Planted.of(seed, n).request(), 2);
  }

  /** A factor that doubles do not hold exactly: from inches to centimetres. */
  @Property(tries = 60, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void fromInchesToCentimetres(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int n) {
    scales(Planted.of(seed, n).request(), 2.54);
  }

  @Property(tries = 30, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void drawnSmall(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int n) {
    scales(Planted.of(seed, n).request(), 0.3);
  }

  private static void scales(FitRequest request, double by) {
    FitRequest alone = request.withOrder(Order.NONE).withGrowth(false);
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(alone));
    Fit large = assertInstanceOf(Fit.class, Fitter.fit(new Scaled(by).of(alone)));
    double bound = fit.proof().bound() * by;
    assertEquals(bound, large.proof().bound(), EXACT * bound);
    double scale = fit.proof().scale().doubleValue() * by;
    assertEquals(scale, large.proof().scale().doubleValue(), EXACT * scale);
  }
}
