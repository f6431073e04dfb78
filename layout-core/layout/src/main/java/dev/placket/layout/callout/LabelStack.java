package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Labels of a column that lies right of the spots, with the places that they stand in.
 *
 * @param labels in any order
 * @param edge where leaders end
 * @param top of the first label
 * @param gap between labels
 */
record LabelStack(List<CalloutLabel> labels, double edge, double top, double gap) {
  /**
   * The stack that takes its middle from the spots and is as tall as they are apart, as far as the
   * column has room; null if it is too tall for the column.
   */
  static @org.jspecify.annotations.Nullable LabelStack within(
      LabelColumn column, List<CalloutLabel> labels) {
    double heights = labels.stream().mapToDouble(CalloutLabel::height).sum();
    int gaps = labels.size() - 1;
    double room = column.bottom() - column.top();
    double least = heights + gaps * column.gap();
    if (least > room) {
      return null;
    }
    double first = spots(labels).mapToDouble(PlanePoint::y).min().orElse(0);
    double last = spots(labels).mapToDouble(PlanePoint::y).max().orElse(0);
    double wanted = last - first + heights / labels.size();
    double tall = Math.min(room, Math.max(least, wanted));
    double gap = gaps == 0 ? column.gap() : column.gap() + (tall - least) / gaps;
    double taken = gaps == 0 ? heights : tall;
    double top = (first + last - taken) / 2;
    double within = Math.max(column.top(), Math.min(top, column.bottom() - taken));
    return new LabelStack(labels, column.edge(), within, gap);
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

  /** The top of the label below one that stands there. */
  double below(int label, double itsTop) {
    return itsTop + labels.get(label).height() + gap;
  }
}
