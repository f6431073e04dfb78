package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.stretch.PairRelations;
import java.util.Arrays;
import java.util.Random;

/**
 * Looks for a better arrangement near the best one: some flats are freed, the others keep their
 * relative order, and that much smaller tree is searched.
 *
 * <p>What it finds is an arrangement like any other; that it finds nothing proves nothing.
 */
final class LookAround {
  private static final long SEED = 2026;
  private static final int FEWEST = 3;

  private final Model model;
  private final Plan plan;
  private final Best best;
  private final StepCounter steps;
  private final Shapes shapes;
  private final Random random = new Random(SEED);
  private int size = FEWEST;

  LookAround(Model model, Plan plan, Best best, StepCounter steps) {
    this.model = model;
    this.plan = plan;
    this.best = best;
    this.steps = steps;
    this.shapes = new Shapes(model, plan.anchorX(), plan.anchorY());
  }

  /** Frees one set of flats after the other until that many steps are taken. */
  void run(long limit) {
    long end = steps.taken() + limit;
    while (steps.taken() < end && !best.proven() && !steps.over()) {
      Arrangement known = best.arrangement();
      if (known == null) {
        return;
      }
      Plan near = plan.withOptions(keptBy(known, freed(known)));
      new SearchOrders(model, near, best, steps).run(best.threshold(), 20L * model.n);
      boolean won = best.arrangement() != known;
      size = won ? FEWEST : size >= Math.max(FEWEST, model.n / 2) ? FEWEST : size + 1;
    }
  }

  /** Every other time neighbours of one flat, else any. */
  private boolean[] freed(Arrangement known) {
    boolean[] free = new boolean[model.n];
    int first = random.nextInt(model.n);
    free[first] = true;
    boolean near = random.nextBoolean();
    for (int count = 1; count < Math.min(size, model.n); count++) {
      free[near ? nearest(known, first, free) : any(free)] = true;
    }
    return free;
  }

  private int nearest(Arrangement known, int first, boolean[] free) {
    int chosen = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < model.n; i++) {
      double away =
          Math.abs(known.x()[i] - known.x()[first]) + Math.abs(known.y()[i] - known.y()[first]);
      if (!free[i] && away < least) {
        least = away;
        chosen = i;
      }
    }
    return chosen;
  }

  private int any(boolean[] free) {
    int i = random.nextInt(model.n);
    while (free[i]) {
      i = (i + 1) % model.n;
    }
    return i;
  }

  private byte[] keptBy(Arrangement known, boolean[] free) {
    shapes.at(known.t());
    byte[] sides = PairRelations.of(model, plan, shapes, known).sides();
    byte[] options = Arrays.copyOf(plan.options(), plan.options().length);
    for (int b = 1; b < model.n; b++) {
      for (int a = 0; a < b; a++) {
        if (!free[a] && !free[b]) {
          options[Model.pair(a, b)] = sides[Model.pair(a, b)];
        }
      }
    }
    return options;
  }
}
