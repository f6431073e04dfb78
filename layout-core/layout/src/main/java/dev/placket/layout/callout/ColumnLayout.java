package dev.placket.layout.callout;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Places the labels of a column and draws their leaders, the shortest that do not cross. */
public final class ColumnLayout {
  /** Up to so many labels the order is the best there is; beyond, any without crossings. */
  public static final int EXACT = 15;

  private ColumnLayout() {}

  /**
   * The labels in their places; null if they are taller than the column, or if no order without
   * crossings was found. Inclined leaders take that angle of 30, 45 and 60 degrees at which they
   * are shortest. Gaps are even where that leaves no crossing; else labels stand as near to their
   * spots as they can.
   *
   * <p>O(2^n n) for n labels up to {@link #EXACT}, then O(n^4).
   *
   * @param column the room, at one side of all spots
   * @param labels what stands in it, in any order
   * @param style how leaders run
   */
  public static @Nullable LaidColumn lay(
      LabelColumn column, List<CalloutLabel> labels, LeaderStyle style) {
    if (labels.isEmpty()) {
      return new LaidColumn(List.of(), 0, 0, 0);
    }
    LabelColumn right = column.right() ? column : mirrored(column);
    List<CalloutLabel> its =
        column.right() ? labels : labels.stream().map(ColumnLayout::mirrored).toList();
    for (LabelStack stack : LabelStack.within(right, its)) {
      LaidColumn best = shortest(stack, style, right.clear());
      if (best != null) {
        return column.right() ? best : mirrored(best);
      }
    }
    return null;
  }

  private static @Nullable LaidColumn shortest(
      LabelStack stack, LeaderStyle style, List<ClearDisc> clear) {
    LaidColumn best = null;
    for (LeaderPath path : LeaderPath.of(style)) {
      LaidColumn laid = laid(stack, path, clear);
      if (laid != null && (best == null || laid.length() < best.length())) {
        best = laid;
      }
    }
    return best;
  }

  private static @Nullable LaidColumn laid(
      LabelStack stack, LeaderPath path, List<ClearDisc> clear) {
    if (stack.count() > EXACT) {
      LongStack many = new LongStack(stack, path, clear);
      int[] order = many.run();
      return order == null ? null : laid(stack, path, order, many.bound());
    }
    StackOrder search = new StackOrder(stack, path, clear);
    int[] order = search.run();
    return order == null ? null : laid(stack, path, order, search.bound());
  }

  private static LaidColumn laid(LabelStack stack, LeaderPath path, int[] order, double bound) {
    List<LaidCallout> laid = new ArrayList<>();
    double length = 0;
    double top = stack.top();
    for (int slot = 0; slot < order.length; slot++) {
      int label = order[slot];
      CalloutLabel its = stack.labels().get(label);
      laid.add(new LaidCallout(its.id(), top, stack.leaders(path, label, top)));
      length += stack.length(path, label, top);
      top = stack.below(label, top, slot);
    }
    return new LaidColumn(laid, path.degrees(), length, Math.min(bound, length));
  }

  private static LabelColumn mirrored(LabelColumn c) {
    List<ClearDisc> clear =
        c.clear().stream().map(d -> new ClearDisc(mirrored(d.middle()), d.radius())).toList();
    return new LabelColumn(true, -c.edge(), c.top(), c.bottom(), c.gap(), clear);
  }

  private static CalloutLabel mirrored(CalloutLabel l) {
    return new CalloutLabel(l.id(), mirrored(l.spots()), l.height(), l.port());
  }

  private static LaidColumn mirrored(LaidColumn laid) {
    List<LaidCallout> all =
        laid.callouts().stream()
            .map(
                c ->
                    new LaidCallout(
                        c.id(), c.top(), c.leaders().stream().map(ColumnLayout::mirrored).toList()))
            .toList();
    return new LaidColumn(all, laid.degrees(), laid.length(), laid.bound());
  }

  private static List<PlanePoint> mirrored(List<PlanePoint> all) {
    return all.stream().map(ColumnLayout::mirrored).toList();
  }

  private static PlanePoint mirrored(PlanePoint p) {
    return new PlanePoint(-p.x(), p.y());
  }
}
