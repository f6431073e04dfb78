package dev.placket.demo.prepare;

import dev.placket.demo.Refusal;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.image.PictureException;
import dev.placket.layout.image.PictureReader;
import dev.placket.layout.image.PictureSource;
import dev.placket.layout.image.ReadLimits;
import dev.placket.layout.image.prepare.Weighing;
import dev.placket.layout.image.prepare.WeightCurve;
import dev.placket.layout.image.prepare.WeightPlan;
import java.util.ArrayList;
import java.util.List;

/** Lowers densities, never under the soft limit, so that all copies together keep a weight. */
final class WeightKeeper {
  private WeightKeeper() {}

  static WeightPlan plan(List<Job> jobs, long limit) throws Refusal {
    double soft = DensityTargets.DEFAULT.soft();
    List<WeightCurve> curves = new ArrayList<>();
    double aim = soft;
    for (Job job : jobs) {
      aim = Math.max(aim, job.density());
      try {
        curves.add(
            Weighing.of(
                PictureReader.read(PictureSource.of(job.file()), ReadLimits.DEFAULT),
                job.longest(),
                job.clearing(),
                soft));
      } catch (PictureException e) {
        throw Refusal.input(String.valueOf(e.getMessage()));
      }
    }
    return WeightPlan.choose(curves, 0, limit, new DensityTargets(soft, aim, aim));
  }

  static List<Job> kept(List<Job> jobs, WeightPlan plan) {
    List<Job> kept = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      kept.add(jobs.get(i).at(Math.min(jobs.get(i).density(), plan.densities().get(i))));
    }
    return kept;
  }
}
