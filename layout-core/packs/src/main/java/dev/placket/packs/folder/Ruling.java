package dev.placket.packs.folder;

import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;

/** The drawn lines between cells: each shared edge once, in the longest pieces. */
public final class Ruling {
  static final Length FRAME = Length.mm(0.5);
  static final Length CELLS = Length.mm(0.25);

  private Ruling() {}

  /**
   * The frame and the edges of all boxes inside it; edges on the frame are the frame's. The frame's
   * sides run on by half their width, so that its corners are whole.
   */
  public static List<Rule> of(Rect frame, Collection<Rect> boxes) {
    TreeMap<Double, List<double[]>> upright = new TreeMap<>();
    TreeMap<Double, List<double[]>> level = new TreeMap<>();
    for (Rect b : boxes) {
      add(upright, b.left(), b.top(), b.bottom());
      add(upright, b.right(), b.top(), b.bottom());
      add(level, b.top(), b.left(), b.right());
      add(level, b.bottom(), b.left(), b.right());
    }
    upright.remove(frame.left());
    upright.remove(frame.right());
    level.remove(frame.top());
    level.remove(frame.bottom());
    List<Rule> rules = new ArrayList<>(frameRules(frame));
    upright.forEach(
        (x, runs) ->
            joined(runs).forEach(r -> rules.add(new Rule(new Rect(x, r[0], x, r[1]), CELLS))));
    level.forEach(
        (y, runs) ->
            joined(runs).forEach(r -> rules.add(new Rule(new Rect(r[0], y, r[1], y), CELLS))));
    return List.copyOf(rules);
  }

  private static List<Rule> frameRules(Rect f) {
    return List.of(
        new Rule(new Rect(f.left(), f.top(), f.right(), f.top()), FRAME),
        new Rule(new Rect(f.right(), f.top(), f.right(), f.bottom()), FRAME),
        new Rule(new Rect(f.left(), f.bottom(), f.right(), f.bottom()), FRAME),
        new Rule(new Rect(f.left(), f.top(), f.left(), f.bottom()), FRAME));
  }

  private static void add(TreeMap<Double, List<double[]>> at, double line, double a, double b) {
    at.computeIfAbsent(line, k -> new ArrayList<>()).add(new double[] {a, b});
  }

  private static List<double[]> joined(List<double[]> runs) {
    runs.sort((p, q) -> Double.compare(p[0], q[0]));
    List<double[]> joined = new ArrayList<>();
    for (double[] run : runs) {
      double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && run[0] <= last[1]) {
        last[1] = Math.max(last[1], run[1]);
      } else {
        joined.add(run.clone());
      }
    }
    return joined;
  }
}
