package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Labels of a column that lies right of the spots, with the places that they stand in.
 *
 * @param labels in any order
 * @param edge where leaders end
 * @param top of the first label
 * @param gaps under each label but the last, from the top, whichever labels stand there
 */
record LabelStack(List<CalloutLabel> labels, double edge, double top, List<Double> gaps) {
  /** Copies the lists. */
  LabelStack {
    labels = List.copyOf(labels);
    gaps = List.copyOf(gaps);
  }

  /**
   * The stacks to be tried, in this order: one with even gaps, then one whose labels stand as near
   * to their spots as they can. None if the labels are too tall for the column.
   */
  static List<LabelStack> within(LabelColumn column, List<CalloutLabel> labels) {
    double heights = labels.stream().mapToDouble(CalloutLabel::height).sum();
    double least = heights + (labels.size() - 1) * column.gap();
    if (least > column.bottom() - column.top()) {
      return List.of();
    }
    LabelStack even = even(column, labels, heights, least);
    return labels.size() == 1 ? List.of(even) : List.of(even, near(column, labels, least));
  }

  /**
   * The stack that takes its middle from the spots and is as tall as they are apart, as far as the
   * column has room.
   */
  private static LabelStack even(
      LabelColumn column, List<CalloutLabel> labels, double heights, double least) {
    int gaps = labels.size() - 1;
    double first = spots(labels).mapToDouble(PlanePoint::y).min().orElse(0);
    double last = spots(labels).mapToDouble(PlanePoint::y).max().orElse(0);
    double wanted = last - first + heights / labels.size();
    double tall = Math.min(column.bottom() - column.top(), Math.max(least, wanted));
    double gap = gaps == 0 ? 0 : column.gap() + (tall - least) / gaps;
    double taken = gaps == 0 ? heights : tall;
    double top = (first + last - taken) / 2;
    double within = Math.max(column.top(), Math.min(top, column.bottom() - taken));
    return new LabelStack(labels, column.edge(), within, Collections.nCopies(gaps, gap));
  }

  /**
   * The stack in the order of the spots whose labels are moved least from level with them, by least
   * squares: neighbours that would overlap are pooled and share one shift (Ayer and others 1955).
   */
  private static LabelStack near(LabelColumn column, List<CalloutLabel> labels, double least) {
    List<CalloutLabel> sorted = new ArrayList<>(labels);
    sorted.sort(Comparator.comparingDouble(CalloutLabel::level));
    List<double[]> pools = new ArrayList<>();
    double offset = 0;
    for (CalloutLabel label : sorted) {
      double[] pool = {label.level() - label.port() - offset, 1};
      while (!pools.isEmpty() && pools.get(pools.size() - 1)[0] >= pool[0]) {
        double[] above = pools.remove(pools.size() - 1);
        double count = above[1] + pool[1];
        pool = new double[] {(above[0] * above[1] + pool[0] * pool[1]) / count, count};
      }
      pools.add(pool);
      offset += label.height() + column.gap();
    }
    double lowest = column.bottom() - least;
    List<Double> gaps = new ArrayList<>();
    double top = 0;
    double before = Double.NaN;
    for (double[] pool : pools) {
      double shift = Math.max(column.top(), Math.min(pool[0], lowest));
      for (int i = 0; i < pool[1]; i++) {
        if (Double.isNaN(before)) {
          top = shift;
        } else {
          gaps.add(column.gap() + shift - before);
        }
        before = shift;
      }
    }
    return new LabelStack(labels, column.edge(), top, gaps);
  }

  private static Stream<PlanePoint> spots(List<CalloutLabel> labels) {
    return labels.stream().flatMap(l -> l.spots().stream());
  }

  int count() {
    return labels.size();
  }

  /** The length of the leaders of a label whose top is there; infinite if one has no way. */
  double length(LeaderPath path, int label, double itsTop) {
    CalloutLabel its = labels.get(label);
    double sum = 0;
    for (PlanePoint spot : its.spots()) {
      sum += path.length(spot, edge, itsTop + its.port());
    }
    return sum;
  }

  /** The leaders of a label whose top is there. */
  List<List<PlanePoint>> leaders(LeaderPath path, int label, double itsTop) {
    CalloutLabel its = labels.get(label);
    List<List<PlanePoint>> leaders = new ArrayList<>();
    for (PlanePoint spot : its.spots()) {
      leaders.add(path.points(spot, edge, itsTop + its.port()));
    }
    return leaders;
  }

  /** The top of the label below one that stands there, under so many others. */
  double below(int label, double itsTop, int above) {
    double gap = above < gaps.size() ? gaps.get(above) : 0;
    return itsTop + labels.get(label).height() + gap;
  }
}
