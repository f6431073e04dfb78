package dev.placket.demo.prepare;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.prepare.Weighing;
import dev.placket.pictures.prepare.WeightCurve;
import dev.placket.pictures.prepare.WeightPlan;
import java.util.ArrayList;
import java.util.List;

/** Lowers densities, never under the soft limit, to keep all copies together under a size limit. */
record WeightKeeper(List<Job> jobs, List<WeightCurve> curves, DensityTargets targets) {
  static WeightKeeper of(List<Job> jobs) throws Refusal {
    double aim = jobs.stream().mapToDouble(Job::density).max().orElse(1);
    double soft = Math.min(aim, DensityTargets.DEFAULT.soft());
    DensityTargets targets = new DensityTargets(soft, aim, aim);
    List<WeightCurve> curves = new ArrayList<>();
    for (Job job : jobs) {
      try {
        curves.add(Weighing.of(job.of(job.read()), targets, job::weight));
      } catch (PictureException e) {
        throw Refusal.input(e.fault());
      }
    }
    return new WeightKeeper(jobs, curves, targets);
  }

  WeightPlan plan(long limit) {
    return WeightPlan.choose(curves, 0, limit, targets);
  }

  List<Job> kept(WeightPlan plan) {
    List<Job> kept = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      kept.add(jobs.get(i).at(Math.min(jobs.get(i).density(), plan.densities().get(i))));
    }
    return kept;
  }
}
