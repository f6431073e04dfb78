package dev.placket.layout.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Fitter;
import dev.placket.layout.fit.Order;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * Whatever unit a sheet is measured in, its answer is the same: with every length multiplied (and
 * limits of density divided, which makes greatest sizes grow alike) the scale is multiplied.
 *
 * <p>Factors are powers of two, so that the lengths themselves lose nothing. What an answer loses
 * is the hair by which its scale gives way to positions on a grid of 1e-6 pt, and that the search
 * ends within 4e-7; the second is the same at any size, the first falls as sheets grow. So the
 * bound and the scale of sheets drawn a thousand times larger agree to 1e-9, and the scale at true
 * size to the hair.
 */
class ScalingPropertyTest {
  private static final double EXACT = 1e-9;
  private static final double HAIR = 2e-8;

  @Property(tries = 40, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void atTrueSize(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int n) {
    scales(Planted.of(seed, n).request(), 2, HAIR);
  }

  @Property(tries = 40, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void drawnLarge(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int n) {
    scales(new Scaled(1024).of(Planted.of(seed, n).request()), 4, EXACT);
  }

  private static void scales(FitRequest request, double by, double close) {
    FitRequest alone = request.withOrder(Order.NONE).withGrowth(false);
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(alone));
    Fit large = assertInstanceOf(Fit.class, Fitter.fit(new Scaled(by).of(alone)));
    double bound = fit.proof().bound() * by;
    assertEquals(bound, large.proof().bound(), EXACT * bound);
    double scale = fit.proof().scale().doubleValue() * by;
    assertEquals(scale, large.proof().scale().doubleValue(), close * scale);
  }
}
