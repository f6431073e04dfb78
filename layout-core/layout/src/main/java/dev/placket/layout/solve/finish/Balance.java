package dev.placket.layout.solve.finish;

import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.PlacedBoxes;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.solve.model.Arrangement;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Plan;
import dev.placket.layout.solve.model.Space;
import dev.placket.layout.solve.stretch.Chain;
import java.util.ArrayList;
import java.util.List;

/**
 * Balance: the centre of the ink, weighed by area, near the middle of the room that flats share.
 *
 * <p>Flats of one room move as one, and no farther than until the space at the outside is the least
 * space there is: evenness goes before balance, so nothing is pushed to an edge.
 */
public final class Balance {
  /** The centre may be off by this share of the room's width and height. */
  private static final double NEAR = 0.05;

  private Balance() {}

  /** Whether a request asks for it. */
  static boolean wanted(Model model) {
    Order order = model.request.order();
    return order.share() > 0 && order.wishes().contains(OrderWish.BALANCE);
  }

  /** Whether the ink of every room is centred in it, near enough. */
  public static boolean holds(Model model, List<Placement> placements) {
    for (List<Integer> room : rooms(model)) {
      double[] weights = new double[room.size()];
      double[] x = new double[room.size()];
      double[] y = new double[room.size()];
      for (int k = 0; k < weights.length; k++) {
        int i = room.get(k);
        var ink = PlacedBoxes.ink(model.flats.get(i), placements.get(i)).toBox();
        weights[k] = ink.width() * ink.height();
        x[k] = (ink.left() + ink.right()) / 2;
        y[k] = (ink.top() + ink.bottom()) / 2;
      }
      Space s = model.space[room.get(0)];
      double offX = Math.abs(mean(weights, x) - (s.left() + s.right()) / 2);
      double offY = Math.abs(mean(weights, y) - (s.top() + s.bottom()) / 2);
      if (offX > NEAR * (s.right() - s.left()) || offY > NEAR * (s.bottom() - s.top())) {
        return false;
      }
    }
    return true;
  }

  /**
   * How far the centre of the ink is from the middle of the room, in the room where that is most:
   * as a share of its width, and of its height, added up.
   *
   * @param a the anchors, spread
   * @param plan where they stand in the ink
   */
  public static double off(Model model, Arrangement a, Plan plan) {
    double most = 0;
    for (List<Integer> room : rooms(model)) {
      Space s = model.space[room.get(0)];
      double x = Math.abs(toMiddle(model, room, a.x(), plan, true)) / (s.right() - s.left());
      double y = Math.abs(toMiddle(model, room, a.y(), plan, false)) / (s.bottom() - s.top());
      most = Math.max(most, x + y);
    }
    return most;
  }

  /**
   * Moves the flats of each room along one axis, at the scales last worked out.
   *
   * @param chain the constraints of the axis
   * @param at the anchors, which are changed
   * @param plan where the anchors stand in the ink
   * @param onX whether the axis is x
   */
  static void move(Model model, Chain chain, double[] at, Plan plan, boolean onX) {
    for (List<Integer> room : rooms(model)) {
      boolean[] moves = new boolean[model.n];
      room.forEach(i -> moves[i] = true);
      double by = chain.freeMove(moves, at, toMiddle(model, room, at, plan, onX));
      room.forEach(i -> at[i] += by);
    }
  }

  /** From the centre of a room's ink to the middle of the room. */
  private static double toMiddle(
      Model model, List<Integer> room, double[] at, Plan plan, boolean onX) {
    double[] weights = new double[room.size()];
    double[] middles = new double[room.size()];
    for (int k = 0; k < weights.length; k++) {
      int i = room.get(k);
      var ink = model.flats.get(i).ink();
      double scale = model.scales.value[model.scales.classOf[i]] * model.scales.ratio[i];
      double size = scale * (onX ? ink.width() : ink.height());
      double anchor = onX ? plan.anchorX()[i] : plan.anchorY()[i];
      weights[k] = scale * scale * ink.width() * ink.height();
      middles[k] = at[i] + (0.5 - anchor) * size;
    }
    Space s = model.space[room.get(0)];
    double centre = onX ? (s.left() + s.right()) / 2 : (s.top() + s.bottom()) / 2;
    return centre - mean(weights, middles);
  }

  private static double mean(double[] weights, double[] values) {
    double sum = 0;
    double all = 0;
    for (int k = 0; k < weights.length; k++) {
      sum += weights[k] * values[k];
      all += weights[k];
    }
    return sum / all;
  }

  /** Flats by the room they use. */
  private static List<List<Integer>> rooms(Model model) {
    List<List<Integer>> rooms = new ArrayList<>();
    for (int i = 0; i < model.n; i++) {
      List<Integer> its = null;
      for (List<Integer> r : rooms) {
        if (model.sameWindows(r.get(0), i)) {
          its = r;
        }
      }
      if (its == null) {
        rooms.add(new ArrayList<>(List.of(i)));
      } else {
        its.add(i);
      }
    }
    return rooms;
  }
}
