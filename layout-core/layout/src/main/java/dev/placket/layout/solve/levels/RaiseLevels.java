package dev.placket.layout.solve.levels;

import dev.placket.layout.fit.Placement;
import dev.placket.layout.fit.SizeLevel;
import dev.placket.layout.flat.Role;
import dev.placket.layout.solve.finish.FinishExactly;
import dev.placket.layout.solve.finish.FinishExactly.Finished;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Scales;
import dev.placket.layout.solve.search.Best;
import dev.placket.layout.solve.search.ProveScale;
import dev.placket.layout.solve.search.StepCounter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Enlarges the flats of one kind after the other, each as far as any arrangement allows. */
public final class RaiseLevels {
  private static final long STEPS = 4000;

  private final Model model;
  private final Plan plan;
  private final Finished start;
  private final double[] cap;
  private final BooleanSupplier cancelled;
  private final double[] value;
  private final List<SizeLevel> levels = new ArrayList<>();
  private Arrangement at;
  private long steps;

  /**
   * Starts from a finished arrangement.
   *
   * @param model as searched
   * @param plan what the arrangement keeps
   * @param start at its rounded common scale
   * @param cap the largest common scale of each class
   * @param cancelled polled during the search; true ends it
   */
  public RaiseLevels(
      Model model, Plan plan, Finished start, double[] cap, BooleanSupplier cancelled) {
    this.model = model;
    this.plan = plan;
    this.start = start;
    this.cap = cap;
    this.cancelled = cancelled;
    this.value = Arrays.stream(start.commons()).mapToDouble(BigDecimal::doubleValue).toArray();
    this.at = new Arrangement(1, start.spread().x(), start.spread().y());
  }

  /** What was enlarged, by level; levels without flats that can be enlarged are left out. */
  public List<SizeLevel> levels() {
    return List.copyOf(levels);
  }

  /** The steps of the search. */
  public long steps() {
    return steps;
  }

  /**
   * The arrangement after all levels; the start where nothing could be enlarged, or where no
   * rounding of the result keeps all rules.
   */
  public Finished run() {
    for (SizeLevel.Kind kind : SizeLevel.Kind.values()) {
      raise(kind);
    }
    if (levels.stream().allMatch(l -> l.factor() == 1)) {
      return start;
    }
    double[] least = Arrays.stream(start.commons()).mapToDouble(BigDecimal::doubleValue).toArray();
    Scales scales = model.scales.following(value, least, value);
    Finished done = new FinishExactly(model.withScales(scales, 0), plan).finish(at);
    if (done == null) {
      levels.clear();
      return start;
    }
    return new Finished(start.scale(), cappedAsBefore(done), done.commons(), done.spread());
  }

  /** A flat is capped if its maximum size keeps it under its target. */
  private List<Placement> cappedAsBefore(Finished done) {
    List<Placement> all = new ArrayList<>();
    for (int i = 0; i < model.n; i++) {
      Placement p = done.placements().get(i);
      boolean capped = start.placements().get(i).capped();
      all.add(new Placement(p.flat(), p.scale(), p.left(), p.top(), capped));
    }
    return all;
  }

  private void raise(SizeLevel.Kind kind) {
    double[] most = value.clone();
    double upper = 1;
    for (int k = 0; k < value.length; k++) {
      if (kind(k) == kind && cap[k] > value[k]) {
        most[k] = cap[k];
        upper = Math.max(upper, cap[k] / value[k]);
      }
    }
    if (upper <= 1) {
      return;
    }
    Model raised = model.withScales(model.scales.following(value, value, most), 1);
    StepCounter counter = new StepCounter(STEPS, cancelled);
    Best best = new ProveScale(raised, plan, 1, upper, counter).from(at).run();
    steps += counter.taken();
    Arrangement found = best.arrangement();
    double factor = found == null ? 1 : Math.max(1, found.t());
    levels.add(new SizeLevel(kind, factor, Math.max(factor, best.bound())));
    if (found != null && factor > 1) {
      raised.scales.at(factor);
      for (int k = 0; k < value.length; k++) {
        value[k] = Math.max(value[k], raised.scales.value[k]);
      }
      at = new Arrangement(1, found.x(), found.y());
    }
  }

  /** The level of a class: that of its first view, else of its first flat. */
  private SizeLevel.Kind kind(int k) {
    SizeLevel.Kind kind = null;
    for (int i = 0; i < model.n; i++) {
      if (model.scales.classOf[i] == k) {
        Role role = model.flats.get(i).role();
        if (role.isView()) {
          return SizeLevel.Kind.VIEWS;
        }
        if (kind == null) {
          kind = role == Role.SWATCH ? SizeLevel.Kind.SWATCHES : SizeLevel.Kind.DETAILS;
        }
      }
    }
    return kind == null ? SizeLevel.Kind.DETAILS : kind;
  }
}
