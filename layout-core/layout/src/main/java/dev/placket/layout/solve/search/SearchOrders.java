package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import org.jspecify.annotations.Nullable;

/**
 * Branches on the relative order of pairs until an arrangement above the threshold is found or it
 * is known that there is none.
 *
 * <p>A node first draws its conclusions. If then all flats can stand at their earliest anchors, it
 * is an arrangement: it is stretched, the threshold rises above it, and the search goes on in the
 * same tree. Otherwise two flats, or a flat and a wall, collide there; one of their options is
 * tried, and once its tree is empty it is refused and the node draws further conclusions. The
 * options of a pair cover all arrangements, so an empty tree proves that there is none.
 */
public final class SearchOrders {
  private final Model model;
  private final Best best;
  private final StepCounter steps;
  private final Shapes shapes;
  private final TightenBounds node;
  private final double[] areaWeight;
  private final byte[] allowed;
  private double[][] bounds = new double[64][];
  private byte[][] options = new byte[64][];
  private double threshold;
  private int version;
  private long left;

  /** A search for arrangements that keep a plan; those found go to {@code best}. */
  public SearchOrders(Model model, Plan plan, Best best, StepCounter steps) {
    this.model = model;
    this.best = best;
    this.steps = steps;
    this.shapes = new Shapes(model, plan.anchorX(), plan.anchorY());
    this.node = new TightenBounds(model, plan, shapes);
    this.allowed = plan.options();
    this.areaWeight = new double[node.optionCount];
  }

  /**
   * Searches for arrangements at a threshold or above.
   *
   * @param from the first threshold; it rises with each arrangement found
   * @param limit the most steps this run takes
   * @return the t above which there is provably none, or null if the steps ended first
   */
  public @Nullable Double run(double from, long limit) {
    threshold = Math.max(from, best.threshold());
    if (threshold > best.bound()) {
      return best.bound();
    }
    left = limit;
    version++;
    shapes.at(threshold);
    weigh();
    node.start();
    return dive(0) ? Double.valueOf(threshold) : null;
  }

  /** Large flats decide most, so pairs of them come first until the search knows better. */
  private void weigh() {
    double most = Double.MIN_NORMAL;
    for (int i = 0; i < model.n; i++) {
      most = Math.max(most, shapes.width(i) * shapes.height(i));
    }
    for (int b = 0; b < model.n; b++) {
      double areaB = shapes.width(b) * shapes.height(b) / most;
      for (int a = 0; a < b; a++) {
        areaWeight[Model.pair(a, b)] =
            1 + 8 * Math.min(areaB, shapes.width(a) * shapes.height(a) / most);
      }
      for (int w = 0; w < model.space[b].walls().length; w++) {
        areaWeight[node.wallBase[b] + w] = 1 + 4 * areaB;
      }
    }
  }

  /** True once the tree below is empty, false if the steps ended. */
  private boolean dive(int depth) {
    int seen = version;
    while (threshold <= best.bound()) {
      if (left-- <= 0 || !steps.take()) {
        return false;
      }
      if (seen != version) {
        seen = version;
        node.touchAll();
      }
      if (!node.tighten()) {
        return true;
      }
      int at = collision();
      if (at < 0) {
        found();
        continue;
      }
      int option = option(at);
      save(depth);
      node.take(at, option);
      touch(at);
      if (!dive(depth + 1)) {
        return false;
      }
      restore(depth);
      node.refuse(at, option);
      touch(at);
    }
    return true;
  }

  private void found() {
    Arrangement a = new Arrangement(threshold, node.lowX.clone(), node.lowY.clone());
    best.offer(a);
    threshold = Math.max(threshold * (1 + Best.STEP), best.threshold());
    shapes.at(threshold);
    version++;
  }

  private void touch(int at) {
    if (at < Model.pairs(model.n)) {
      int b = 1;
      while (Model.pair(0, b + 1) <= at) {
        b++;
      }
      node.touch(b);
      node.touch(at - Model.pair(0, b));
    } else {
      int i = 0;
      while (i + 1 < model.n && node.wallBase[i + 1] <= at) {
        i++;
      }
      node.touch(i);
    }
  }

  private void save(int depth) {
    if (depth >= bounds.length) {
      bounds = java.util.Arrays.copyOf(bounds, 2 * depth);
      options = java.util.Arrays.copyOf(options, 2 * depth);
    }
    int n = model.n;
    if (bounds[depth] == null) {
      bounds[depth] = new double[4 * n];
      options[depth] = new byte[node.optionCount];
    }
    System.arraycopy(node.lowX, 0, bounds[depth], 0, n);
    System.arraycopy(node.highX, 0, bounds[depth], n, n);
    System.arraycopy(node.lowY, 0, bounds[depth], 2 * n, n);
    System.arraycopy(node.highY, 0, bounds[depth], 3 * n, n);
    System.arraycopy(node.options, 0, options[depth], 0, node.optionCount);
  }

  private void restore(int depth) {
    int n = model.n;
    System.arraycopy(bounds[depth], 0, node.lowX, 0, n);
    System.arraycopy(bounds[depth], n, node.highX, 0, n);
    System.arraycopy(bounds[depth], 2 * n, node.lowY, 0, n);
    System.arraycopy(bounds[depth], 3 * n, node.highY, 0, n);
    System.arraycopy(options[depth], 0, node.options, 0, node.optionCount);
  }

  /** The colliding pair that is likeliest to refuse soon; -1 if nothing collides. */
  private int collision() {
    int chosen = -1;
    double most = 0;
    for (int b = 0; b < model.n; b++) {
      for (int a = 0; a < b; a++) {
        int at = Model.pair(a, b);
        if (node.left(at) > 1 && collide(a, b)) {
          double score = score(at);
          if (chosen < 0 || score > most) {
            most = score;
            chosen = at;
          }
        }
      }
      double[][] walls = model.space[b].walls();
      for (int w = 0; w < walls.length; w++) {
        int at = node.wallBase[b] + w;
        if (node.left(at) > 1 && onWall(b, walls[w])) {
          double score = score(at);
          if (chosen < 0 || score > most) {
            most = score;
            chosen = at;
          }
        }
      }
    }
    return chosen;
  }

  private double score(int at) {
    return (areaWeight[at] + node.weight[at]) / node.left(at);
  }

  /** Whether none of the options that the plan leaves to the pair holds at the earliest anchors. */
  private boolean collide(int a, int b) {
    int may = allowed[Model.pair(a, b)];
    double gap = model.gap[a][b] - node.slack;
    double dx = node.lowX[b] - node.lowX[a];
    double dy = node.lowY[b] - node.lowY[a];
    return ((may & Model.A_LEFT) == 0 || shapes.right[a] + shapes.left[b] + gap > dx)
        && ((may & Model.B_LEFT) == 0 || shapes.right[b] + shapes.left[a] + gap > -dx)
        && ((may & Model.A_ABOVE) == 0 || shapes.down[a] + shapes.up[b] + gap > dy)
        && ((may & Model.B_ABOVE) == 0 || shapes.down[b] + shapes.up[a] + gap > -dy);
  }

  private boolean onWall(int i, double[] w) {
    return node.lowX[i] + shapes.right[i] > w[0] + node.slack
        && node.lowX[i] - shapes.left[i] < w[2] - node.slack
        && node.lowY[i] + shapes.down[i] > w[1] + node.slack
        && node.lowY[i] - shapes.up[i] < w[3] - node.slack;
  }

  /** The option that leaves most room. */
  private int option(int at) {
    int m = node.options[at] & Model.ANY;
    int chosen = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int o = 1; o <= 8; o <<= 1) {
      if ((m & o) != 0) {
        double room = at < Model.pairs(model.n) ? pairRoom(at, o) : wallRoom(at, o);
        if (room > most) {
          most = room;
          chosen = o;
        }
      }
    }
    return chosen;
  }

  private double pairRoom(int at, int option) {
    int b = 1;
    while (Model.pair(0, b + 1) <= at) {
      b++;
    }
    int a = at - Model.pair(0, b);
    double gap = model.gap[a][b];
    return switch (option) {
      case 1 -> node.highX[b] - node.lowX[a] - shapes.right[a] - shapes.left[b] - gap;
      case 2 -> node.highX[a] - node.lowX[b] - shapes.right[b] - shapes.left[a] - gap;
      case 4 -> node.highY[b] - node.lowY[a] - shapes.down[a] - shapes.up[b] - gap;
      default -> node.highY[a] - node.lowY[b] - shapes.down[b] - shapes.up[a] - gap;
    };
  }

  private double wallRoom(int at, int option) {
    int i = 0;
    while (i + 1 < model.n && node.wallBase[i + 1] <= at) {
      i++;
    }
    double[] w = model.space[i].walls()[at - node.wallBase[i]];
    return switch (option) {
      case 1 -> w[0] - shapes.right[i] - node.lowX[i];
      case 2 -> node.highX[i] - w[2] - shapes.left[i];
      case 4 -> w[1] - shapes.down[i] - node.lowY[i];
      default -> node.highY[i] - w[3] - shapes.up[i];
    };
  }
}
