package dev.placket.layout.image.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.image.Picture;
import dev.placket.layout.image.PictureReader;
import dev.placket.layout.image.PictureSource;
import dev.placket.layout.image.Raster;
import dev.placket.layout.image.ReadLimits;
import dev.placket.layout.units.Length;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The weight of a pack: kept with the least density as high as possible, and foreseen. */
class WeightPlanTest {
  private static final DensityTargets TARGETS = DensityTargets.DEFAULT;

  /** Grows with its square: 10 bytes at each of so many hundred pixels per inch squared. */
  private static WeightCurve square(double bytesAt200, double most) {
    return new WeightCurve(0, bytesAt200 / 40_000, 2, most);
  }

  @Test
  void whatFitsTakesTheAim() {
    WeightPlan plan = WeightPlan.choose(List.of(square(400, 900)), 100, 500, TARGETS);
    assertEquals(List.of(200.0), plan.densities());
    assertEquals(500, plan.total(), 1e-9);
    assertEquals(0, plan.over());
  }

  @Test
  void theLeastDensityIsAsHighAsPossible() {
    // By hand: 2 · 400 (d/200)² + 100 of the small one = 676, so (d/200)² = 0.72.
    List<WeightCurve> all = List.of(square(400, 900), square(400, 900), square(100 / 0.36, 120));
    WeightPlan plan = WeightPlan.choose(all, 0, 676, TARGETS);
    assertEquals(200 * Math.sqrt(0.72), plan.densities().get(0), 1e-6);
    assertEquals(plan.densities().get(0), plan.densities().get(1));
    assertEquals(120, plan.densities().get(2), "it has no more pixels");
    assertEquals(676, plan.total(), 1e-6);
  }

  @Test
  void whatCannotHoldSaysByHowMuchAndWhichWeighMost() {
    List<WeightCurve> all = List.of(square(400, 900), square(1600, 900), square(400, 900));
    // At 150 they weigh 0.5625 of it: 225 + 900 + 225 = 1350.
    WeightPlan plan = WeightPlan.choose(all, 50, 1000, TARGETS);
    assertEquals(400, plan.over(), 1e-6);
    assertEquals(List.of(1, 0, 2), plan.heaviest());
    assertEquals(150, plan.densities().get(0), 1e-9);
  }

  @Property(tries = 200)
  void neverOverTheLimitIfItCanHoldAndNeverUnderTheSoftOne(
      @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 1, max = 5000) Integer> weights,
      @ForAll @IntRange(min = 100, max = 20_000) int limit) {
    List<WeightCurve> all = weights.stream().map(w -> square(w, 1000)).toList();
    WeightPlan plan = WeightPlan.choose(all, 0, limit, TARGETS);
    double sum = weights.stream().mapToDouble(w -> w).sum();
    boolean canHold = sum * 0.5625 <= limit;
    assertEquals(canHold, plan.over() <= 1e-6 * limit);
    for (double d : plan.densities()) {
      assertTrue(d >= 150 - 1e-9 && d <= 200);
      // One per cent more would not hold, unless it is at the aim.
      assertTrue(d > 199.99 || !canHold || sum * Math.pow(1.01 * d / 200, 2) > limit);
    }
  }

  @Test
  void whatComesOutIsWithinATenthOfWhatWasForeseen() throws Exception {
    List<Picture> pictures = new ArrayList<>();
    for (String name : new String[] {"front.svg", "back.svg", "pocket-detail.svg"}) {
      Path file =
          Path.of(
              System.getProperty("placket.root", "."), "layout-demo/src/demo/mg-3107/flats", name);
      pictures.add(PictureReader.read(PictureSource.of(file), ReadLimits.DEFAULT));
    }
    byte[] large =
        Preparing.drawing((dev.placket.layout.image.Drawing) pictures.get(0), Length.mm(180), 400)
            .png();
    pictures.add(
        (Raster) PictureReader.read(PictureSource.of("large.png", large), ReadLimits.DEFAULT));
    for (double chosen : new double[] {150, 175, 200}) {
      double foreseen = 0;
      double came = 0;
      for (Picture p : pictures) {
        foreseen += Weighing.of(p, Length.mm(180), Clearing.FROM_BORDER, 150).bytes(chosen);
        came +=
            p instanceof Raster r
                ? Preparing.raster(r, Length.mm(180), chosen, Clearing.FROM_BORDER).png().length
                : Preparing.drawing((dev.placket.layout.image.Drawing) p, Length.mm(180), chosen)
                    .png()
                    .length;
      }
      assertEquals(came, foreseen, 0.1 * came, "at " + chosen);
    }
  }
}
