package dev.placket.layout.solve.order;

import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Shapes;

/** Whether an arrangement that is known keeps another plan with the same anchors as well. */
public final class Keeps {
  private Keeps() {}

  /**
   * Whether options, ties and the order of reading are kept, to within the search's rounding.
   *
   * @param from the plan that the arrangement keeps
   * @param plan the other plan
   */
  public static boolean plan(Model model, Plan from, Plan plan, Arrangement at) {
    if (!java.util.Arrays.equals(from.anchorX(), plan.anchorX())
        || !java.util.Arrays.equals(from.anchorY(), plan.anchorY())) {
      return false;
    }
    double slack = model.span * 1e-12;
    Shapes s = new Shapes(model, plan.anchorX(), plan.anchorY()).at(at.t());
    for (int b = 1; b < model.n; b++) {
      for (int a = 0; a < b; a++) {
        double gap = model.gap[a][b] - slack;
        double dx = at.x()[b] - at.x()[a];
        double dy = at.y()[b] - at.y()[a];
        int may = plan.options()[Model.pair(a, b)];
        boolean apart =
            ((may & Model.A_LEFT) != 0 && s.right[a] + s.left[b] + gap <= dx)
                || ((may & Model.B_LEFT) != 0 && s.right[b] + s.left[a] + gap <= -dx)
                || ((may & Model.A_ABOVE) != 0 && s.down[a] + s.up[b] + gap <= dy)
                || ((may & Model.B_ABOVE) != 0 && s.down[b] + s.up[a] + gap <= -dy);
        if (!apart) {
          return false;
        }
      }
    }
    for (Plan.Reads r : plan.reads()) {
      if (at.y()[r.first()] - at.y()[r.second()] > r.below()) {
        return false;
      }
    }
    return tied(plan.tiesX(), at.x(), slack) && tied(plan.tiesY(), at.y(), slack);
  }

  private static boolean tied(int[][] ties, double[] at, double slack) {
    for (int[] t : ties) {
      if (Math.abs(at[t[0]] - at[t[1]]) > slack) {
        return false;
      }
    }
    return true;
  }
}
