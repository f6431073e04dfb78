package dev.placket.layout.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.solve.Fitter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/** Whatever the fitter answers for a random sheet, the referee finds nothing in it. */
class FitterPropertyTest {
  /** The share of the planted scale that must be reached. */
  private static final double LEAST = 0.7;

  @Property(tries = 300, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void thePlantedArrangementStands(@ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int n) {
    Planted planted = Planted.of(seed, n);
    BigDecimal scale =
        new BigDecimal(planted.scale()).round(new MathContext(12, RoundingMode.DOWN));
    Fit fit = new Fit(planted.placements(), new Proof(scale, 10, 1, false), List.of());
    assertEquals(List.of(), Referee.check(planted.request(), fit));
  }

  @Property(tries = 60, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void aloneTheScaleCounts(@ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int n) {
    Planted planted = Planted.of(seed, n);
    Fit fit = refereed(planted.request().withOrder(Order.NONE).withGrowth(false));
    double scale = fit.proof().scale().doubleValue();
    assertTrue(scale >= LEAST * planted.scale(), () -> scale + " of " + planted.scale());
    // What is planted stands, so no sound bound lies below it.
    double bound = fit.proof().bound();
    assertTrue(bound >= planted.scale() * (1 - 1e-9), () -> bound + " of " + planted.scale());
  }

  @Property(tries = 60, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void withTheDefaultOrder(@ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int n) {
    Planted planted = Planted.of(seed, n);
    double scale = refereed(planted.request().withGrowth(false)).proof().scale().doubleValue();
    assertTrue(scale >= LEAST * planted.scale(), () -> scale + " of " + planted.scale());
  }

  @Property(tries = 60, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void withGrowth(@ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int n) {
    Planted planted = Planted.of(seed, n);
    double scale = refereed(planted.request().withGrowth(true)).proof().scale().doubleValue();
    assertTrue(scale >= LEAST * planted.scale(), () -> scale + " of " + planted.scale());
  }

  private static Fit refereed(FitRequest request) {
    Fit fit = assertInstanceOf(Fit.class, Fitter.fit(request));
    assertEquals(List.of(), Referee.check(request, fit));
    return fit;
  }
}
