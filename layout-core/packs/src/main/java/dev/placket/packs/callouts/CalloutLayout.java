package dev.placket.packs.callouts;

import dev.placket.layout.callout.CalloutLabel;
import dev.placket.layout.callout.ClearDisc;
import dev.placket.layout.callout.ColumnLayout;
import dev.placket.layout.callout.LabelColumn;
import dev.placket.layout.callout.LaidCallout;
import dev.placket.layout.callout.LaidColumn;
import dev.placket.layout.callout.LeaderStyle;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Lays the labels and leaders of a placed flat. */
public final class CalloutLayout {
  /** From the end of a leader to its text; a ring is reached. */
  private static final Length AIR = Length.mm(0.8);

  private final CalloutOption option;
  private final Flat flat;
  private final Rect ink;
  private final double scale;
  private final Lettering lettering;

  private CalloutLayout(
      CalloutOption option, Flat flat, Rect ink, double scale, Lettering lettering) {
    this.option = option;
    this.flat = flat;
    this.ink = ink;
    this.scale = scale;
    this.lettering = lettering;
  }

  /**
   * The callouts of a flat in the order of its description; null if no order of the labels without
   * crossings was found, however they are divided.
   *
   * @param plan its ways, of which its footprint tells the one that was taken
   * @param flat as it was placed
   * @param ink where its ink lies
   * @param scale points to the drawing unit
   * @param style how leaders run
   */
  public static @Nullable List<LaidText> lay(
      CalloutPlan plan, Flat flat, Rect ink, double scale, LeaderStyle style, Lettering lettering) {
    return new CalloutLayout(plan.chosen(flat), flat, ink, scale, lettering).lay(style);
  }

  private @Nullable List<LaidText> lay(LeaderStyle style) {
    if (option.sides() != CalloutSides.BOTH) {
      return laid(Columns.of(option.sides(), option.callouts(), flat.points()), style);
    }
    int count = option.callouts().size();
    for (int off = 0; off <= count / 2; off++) {
      for (int left : new int[] {count / 2 - off, count / 2 + off}) {
        if (left >= 0 && left <= count) {
          List<LaidText> laid =
              laid(Columns.divided(option.callouts(), flat.points(), left), style);
          if (laid != null) {
            return laid;
          }
        }
      }
    }
    return null;
  }

  private @Nullable List<LaidText> laid(List<List<SetCallout>> columns, LeaderStyle style) {
    Map<String, LaidText> all = new TreeMap<>();
    for (boolean right : new boolean[] {false, true}) {
      List<SetCallout> its = columns.get(right ? 1 : 0);
      List<ClearDisc> others = new ArrayList<>();
      columns.get(right ? 0 : 1).forEach(c -> others.addAll(discs(c)));
      its.stream().filter(c -> c.said().region() > 0).forEach(c -> others.addAll(discs(c)));
      double edge = right ? ink.right() + option.lane() : ink.left() - option.lane();
      LabelColumn column =
          new LabelColumn(right, edge, ink.top(), ink.bottom(), CalloutPlan.GAP.pt(), others);
      List<CalloutLabel> labels =
          its.stream()
              .map(c -> new CalloutLabel(c.id(), starts(c, right), c.height(), c.port()))
              .toList();
      LaidColumn laid = ColumnLayout.lay(column, labels, style);
      if (laid == null) {
        return null;
      }
      for (LaidCallout one : laid.callouts()) {
        SetCallout set =
            its.stream().filter(c -> c.id().equals(one.id())).findFirst().orElseThrow();
        all.put(one.id(), text(set, one, edge, right));
      }
    }
    return option.callouts().stream().map(c -> Objects.requireNonNull(all.get(c.id()))).toList();
  }

  /** Its dots, or the rings round its spots. */
  private List<ClearDisc> discs(SetCallout callout) {
    List<ClearDisc> discs = new ArrayList<>();
    for (String point : callout.said().points()) {
      PlanePoint at = Objects.requireNonNull(flat.points().get(point));
      PlanePoint middle =
          new PlanePoint(
              ink.left() + (at.x() - flat.ink().left()) * scale,
              ink.top() + (at.y() - flat.ink().top()) * scale);
      discs.add(new ClearDisc(middle, callout.said().region() * scale));
    }
    return discs;
  }

  /** Where leaders start: at the side of a ring that faces the column, or at the spot. */
  private List<PlanePoint> starts(SetCallout callout, boolean right) {
    return discs(callout).stream()
        .map(
            d ->
                new PlanePoint(d.middle().x() + (right ? d.radius() : -d.radius()), d.middle().y()))
        .toList();
  }

  private List<Rect> regions(SetCallout callout) {
    return discs(callout).stream()
        .filter(d -> d.radius() > 0)
        .map(
            d ->
                new Rect(
                    d.middle().x() - d.radius(),
                    d.middle().y() - d.radius(),
                    d.middle().x() + d.radius(),
                    d.middle().y() + d.radius()))
        .toList();
  }

  private LaidText text(SetCallout set, LaidCallout at, double edge, boolean right) {
    double toward = right ? 1 : -1;
    double ring = set.ring();
    double port = at.top() + set.port();
    List<TextRun> runs = new ArrayList<>();
    Rect round = null;
    double inner = edge;
    if (ring > 0) {
      double middle = edge + toward * ring / 2;
      double half = SetCallout.RING.pt() / 2;
      round = new Rect(middle - ring / 2, port - half, middle + ring / 2, port + half);
      double width = lettering.width(set.said().mark(), SetCallout.CAPITALS);
      double left = middle - width / 2;
      double base = port + SetCallout.CAPITALS.pt() / 2;
      runs.addAll(lettering.line(set.said().mark(), left, base, SetCallout.CAPITALS, false));
      inner = edge + toward * (ring + SetCallout.AFTER_RING.pt());
    }
    double base = port + SetCallout.CAPITALS.pt() / 2;
    for (String line : set.lines()) {
      double width = lettering.width(line, SetCallout.CAPITALS);
      runs.addAll(
          lettering.line(line, right ? inner : inner - width, base, SetCallout.CAPITALS, false));
      base += lettering.leading(SetCallout.CAPITALS).pt();
    }
    double outer = edge + toward * set.width();
    Rect box =
        new Rect(Math.min(edge, outer), at.top(), Math.max(edge, outer), at.top() + set.height());
    List<List<PlanePoint>> leaders =
        at.leaders().stream().map(leader -> shortened(leader, ring > 0)).toList();
    return new LaidText(set.id(), box, leaders, set.said().end(), regions(set), runs, round);
  }

  /** A leader that leads to text ends a little before it. */
  private static List<PlanePoint> shortened(List<PlanePoint> leader, boolean ring) {
    if (ring) {
      return leader;
    }
    List<PlanePoint> points = new ArrayList<>(leader);
    PlanePoint end = points.get(points.size() - 1);
    PlanePoint before = points.get(points.size() - 2);
    double length = Math.hypot(end.x() - before.x(), end.y() - before.y());
    double share = length > AIR.pt() ? AIR.pt() / length : 0;
    points.set(
        points.size() - 1,
        new PlanePoint(
            end.x() + (before.x() - end.x()) * share, end.y() + (before.y() - end.y()) * share));
    return points;
  }
}
