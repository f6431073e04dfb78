package dev.placket.layout.callout;

import java.util.List;

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
    double first = labels.stream().mapToDouble(l -> l.spot().y()).min().orElse(0);
    double last = labels.stream().mapToDouble(l -> l.spot().y()).max().orElse(0);
    double wanted = last - first + heights / labels.size();
    double tall = Math.min(room, Math.max(least, wanted));
    double gap = gaps == 0 ? column.gap() : column.gap() + (tall - least) / gaps;
    double taken = gaps == 0 ? heights : tall;
    double top = (first + last - taken) / 2;
    double within = Math.max(column.top(), Math.min(top, column.bottom() - taken));
    return new LabelStack(labels, column.edge(), within, gap);
  }

  int count() {
    return labels.size();
  }

  /** Where the leader of a label ends whose top is there. */
  double port(int label, double itsTop) {
    return itsTop + labels.get(label).port();
  }

  /** The top of the label below one that stands there. */
  double below(int label, double itsTop) {
    return itsTop + labels.get(label).height() + gap;
  }
}
