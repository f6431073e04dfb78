package dev.placket.layout.solve.search;

import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;
import dev.placket.layout.solve.model.Space;
import java.util.Arrays;

/**
 * Draws conclusions at one threshold: bounds on the anchors and the options that pairs still have,
 * each tightened by the others until nothing changes.
 *
 * <p>Every conclusion holds for each arrangement at the threshold that keeps the node's decisions
 * and the refusals made above it. A refused option that would still have room says how far apart
 * the two stand at most.
 */
final class TightenBounds extends AnchorBounds {
  /**
   * The bits that tell which options were refused because their tree was empty. An option that is
   * merely not taken is not refused: both may hold.
   */
  static final int REFUSED = Model.ANY << 4;

  /**
   * Options left to pairs, then to flats against walls, at the current node; refused ones above.
   */
  byte[] options;

  /** Where the walls of each flat begin among the options. */
  final int[] wallBase;

  final int optionCount;
  final Shapes shapes;

  /** How often each constraint refused a node: where the trouble is. */
  final double[] weight;

  private final Model model;
  private final Plan plan;

  /** The order of reading, by the flats that it is about. */
  private final Plan.Reads[][] reads;

  private final double coarse;
  private int rounds;

  /** After so many rounds refusals are left aside: two that nearly agree may creep for long. */
  private final int patience;

  TightenBounds(Model model, Plan plan, Shapes shapes) {
    super(model.n, model.span * 1e-12);
    this.model = model;
    this.plan = plan;
    this.shapes = shapes;
    coarse = model.span * 1e-7;
    patience = 30 * model.n;
    wallBase = new int[model.n];
    int next = Model.pairs(model.n);
    for (int i = 0; i < model.n; i++) {
      wallBase[i] = next;
      next += model.space[i].walls().length;
    }
    reads = reads(model.n, plan);
    optionCount = next;
    weight = new double[next];
    options = new byte[next];
  }

  private static Plan.Reads[][] reads(int n, Plan plan) {
    Plan.Reads[][] reads = new Plan.Reads[n][];
    for (int i = 0; i < n; i++) {
      int its = i;
      reads[i] =
          Arrays.stream(plan.reads())
              .filter(r -> r.first() == its || r.second() == its)
              .toArray(Plan.Reads[]::new);
    }
    return reads;
  }

  /** Bounds of a root: frames and what is held, before any conclusion. */
  void start() {
    System.arraycopy(plan.options(), 0, options, 0, plan.options().length);
    for (int i = 0; i < model.n; i++) {
      Space s = model.space[i];
      for (int w = 0; w < s.walls().length; w++) {
        options[wallBase[i] + w] = Model.ANY;
      }
      double x = plan.heldX(model, i);
      double y = plan.heldY(model, i);
      lowX[i] = !Double.isNaN(x) ? x : s.left();
      highX[i] = !Double.isNaN(x) ? x : s.right();
      lowY[i] = !Double.isNaN(y) ? y : s.top();
      highY[i] = !Double.isNaN(y) ? y : s.bottom();
    }
    touchAll();
  }

  /** How many options are left. */
  int left(int at) {
    return Integer.bitCount(options[at] & Model.ANY);
  }

  /** Takes one option. */
  void take(int at, int option) {
    options[at] = (byte) ((options[at] & REFUSED) | option);
  }

  /** Refuses one option, whose tree is known to be empty. */
  void refuse(int at, int option) {
    options[at] = (byte) ((options[at] | option << 4) & ~option);
  }

  /** Draws all conclusions; false if the node holds no arrangement. */
  boolean tighten() {
    rounds = 0;
    for (int i = next(); i >= 0; i = next()) {
      if (!tighten(i)) {
        clear();
        return false;
      }
      rounds++;
    }
    return true;
  }

  private boolean tighten(int i) {
    if (!intoRooms(i)) {
      return false;
    }
    double[][] walls = model.space[i].walls();
    for (int w = 0; w < walls.length; w++) {
      if (!offWall(i, wallBase[i] + w, walls[w])) {
        return false;
      }
    }
    for (int j = 0; j < model.n; j++) {
      if (j != i && !apart(Math.min(i, j), Math.max(i, j))) {
        return false;
      }
    }
    return tied(i);
  }

  /**
   * A footprint lies in one of the maximal empty rectangles: bounds to what those together allow.
   */
  private boolean intoRooms(int i) {
    double lx = Double.POSITIVE_INFINITY;
    double ux = Double.NEGATIVE_INFINITY;
    double ly = Double.POSITIVE_INFINITY;
    double uy = Double.NEGATIVE_INFINITY;
    for (double[] r : model.space[i].rooms()) {
      double fromX = Math.max(lowX[i], r[0] + shapes.left[i]);
      double toX = Math.min(highX[i], r[2] - shapes.right[i]);
      double fromY = Math.max(lowY[i], r[1] + shapes.up[i]);
      double toY = Math.min(highY[i], r[3] - shapes.down[i]);
      if (fromX <= toX + slack && fromY <= toY + slack) {
        lx = Math.min(lx, fromX);
        ux = Math.max(ux, toX);
        ly = Math.min(ly, fromY);
        uy = Math.max(uy, toY);
      }
    }
    return lx < Double.POSITIVE_INFINITY
        && raiseX(i, lx)
        && lowerX(i, ux)
        && raiseY(i, ly)
        && lowerY(i, uy);
  }

  private boolean offWall(int i, int at, double[] w) {
    int refused = options[at] & REFUSED;
    int m = options[at] & Model.ANY;
    double left = w[0] - shapes.right[i];
    double right = w[2] + shapes.left[i];
    double above = w[1] - shapes.down[i];
    double below = w[3] + shapes.up[i];
    if ((m & 1) != 0 && lowX[i] > left + slack) {
      m &= ~1;
    }
    if ((m & 2) != 0 && highX[i] < right - slack) {
      m &= ~2;
    }
    if ((m & 4) != 0 && lowY[i] > above + slack) {
      m &= ~4;
    }
    if ((m & 8) != 0 && highY[i] < below - slack) {
      m &= ~8;
    }
    options[at] = (byte) (refused | m);
    boolean held =
        switch (m) {
          case 0 -> false;
          case 1 -> lowerX(i, left);
          case 2 -> raiseX(i, right);
          case 4 -> lowerY(i, above);
          case 8 -> raiseY(i, below);
          default -> true;
        };
    held =
        held
            && ((refused & 0x10) == 0 || raiseX(i, left - coarse))
            && ((refused & 0x20) == 0 || lowerX(i, right + coarse))
            && ((refused & 0x40) == 0 || raiseY(i, above - coarse))
            && ((refused & 0x80) == 0 || lowerY(i, below + coarse));
    if (!held) {
      weight[at]++;
    }
    return held;
  }

  private boolean apart(int a, int b) {
    int at = Model.pair(a, b);
    int refused = options[at] & REFUSED;
    int m = options[at] & Model.ANY;
    double gap = model.gap[a][b];
    double ab = shapes.right[a] + shapes.left[b] + gap;
    double ba = shapes.right[b] + shapes.left[a] + gap;
    double aOverB = shapes.down[a] + shapes.up[b] + gap;
    double bOverA = shapes.down[b] + shapes.up[a] + gap;
    if ((m & 1) != 0 && lowX[a] + ab > highX[b] + slack) {
      m &= ~1;
    }
    if ((m & 2) != 0 && lowX[b] + ba > highX[a] + slack) {
      m &= ~2;
    }
    if ((m & 4) != 0 && lowY[a] + aOverB > highY[b] + slack) {
      m &= ~4;
    }
    if ((m & 8) != 0 && lowY[b] + bOverA > highY[a] + slack) {
      m &= ~8;
    }
    options[at] = (byte) (refused | m);
    boolean held =
        switch (m) {
          case 0 -> false;
          case 1 -> raiseX(b, lowX[a] + ab) && lowerX(a, highX[b] - ab);
          case 2 -> raiseX(a, lowX[b] + ba) && lowerX(b, highX[a] - ba);
          case 4 -> raiseY(b, lowY[a] + aOverB) && lowerY(a, highY[b] - aOverB);
          case 8 -> raiseY(a, lowY[b] + bOverA) && lowerY(b, highY[a] - bOverA);
          default -> true;
        };
    held =
        held
            && (rounds > patience
                || (((refused & 0x10) == 0 || nearX(a, b, ab + coarse))
                    && ((refused & 0x20) == 0 || nearX(b, a, ba + coarse))
                    && ((refused & 0x40) == 0 || nearY(a, b, aOverB + coarse))
                    && ((refused & 0x80) == 0 || nearY(b, a, bOverA + coarse))));
    if (!held) {
      weight[at]++;
    }
    return held;
  }

  /** Option "a left of b" is refused: b stands less than that right of a. */
  private boolean nearX(int a, int b, double reach) {
    return (highX[b] <= highX[a] + reach + coarse || lowerX(b, highX[a] + reach))
        && (lowX[a] >= lowX[b] - reach - coarse || raiseX(a, lowX[b] - reach));
  }

  private boolean nearY(int a, int b, double reach) {
    return (highY[b] <= highY[a] + reach + coarse || lowerY(b, highY[a] + reach))
        && (lowY[a] >= lowY[b] - reach - coarse || raiseY(a, lowY[b] - reach));
  }

  private boolean tied(int i) {
    for (int[] t : plan.tiesX()) {
      if (t[0] == i || t[1] == i) {
        double low = Math.max(lowX[t[0]], lowX[t[1]]);
        double high = Math.min(highX[t[0]], highX[t[1]]);
        boolean held =
            raiseX(t[0], low) && raiseX(t[1], low) && lowerX(t[0], high) && lowerX(t[1], high);
        if (!held) {
          return false;
        }
      }
    }
    for (int[] t : plan.tiesY()) {
      if (t[0] == i || t[1] == i) {
        double low = Math.max(lowY[t[0]], lowY[t[1]]);
        double high = Math.min(highY[t[0]], highY[t[1]]);
        boolean held =
            raiseY(t[0], low) && raiseY(t[1], low) && lowerY(t[0], high) && lowerY(t[1], high);
        if (!held) {
          return false;
        }
      }
    }
    for (Plan.Reads r : reads[i]) {
      if (!(raiseY(r.second(), lowY[r.first()] - r.below())
          && lowerY(r.first(), highY[r.second()] + r.below()))) {
        return false;
      }
    }
    for (int[] t : plan.twins()) {
      if ((t[0] == i || t[1] == i) && !(raiseX(t[1], lowX[t[0]]) && lowerX(t[0], highX[t[1]]))) {
        return false;
      }
    }
    return true;
  }
}
