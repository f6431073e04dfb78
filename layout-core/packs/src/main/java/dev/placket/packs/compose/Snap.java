package dev.placket.packs.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Grid lines along one axis: lines that are meant to be one become one number. */
final class Snap {
  private static final double SAME = 1e-6;

  private final TreeSet<Double> lines = new TreeSet<>();

  /** The line at a place: one that is there already within a millionth of a point, or a new one. */
  double line(double at) {
    Double below = lines.floor(at + SAME);
    if (below != null && below >= at - SAME) {
      return below;
    }
    lines.add(at);
    return at;
  }

  List<Double> lines(List<Double> at) {
    List<Double> snapped = new ArrayList<>();
    at.forEach(a -> snapped.add(line(a)));
    return snapped;
  }
}
