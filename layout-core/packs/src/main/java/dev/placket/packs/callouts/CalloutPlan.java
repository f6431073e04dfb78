package dev.placket.packs.callouts;

import dev.placket.layout.callout.LeaderEnd;
import dev.placket.layout.callout.LeaderStyle;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.FlatShape;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.packs.text.Lettering;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The ways in which the labels of a flat may stand.
 *
 * @param style how leaders run; null for inclined ones where they can be drawn, else straight
 * @param tight one or more, with narrow lanes for leaders, which may not do
 * @param roomy the same with lanes as wide as inclined leaders ask for
 */
public record CalloutPlan(
    @Nullable LeaderStyle style, List<CalloutOption> tight, List<CalloutOption> roomy) {
  /** Most callouts of a flat: more than anyone reads beside one drawing. */
  public static final int MOST = 40;

  /** Between two labels. */
  static final Length GAP = Length.mm(2.5);

  private static final Length SHORT = Length.mm(30);
  private static final Length LONG = Length.mm(42);
  private static final Length LEAST_LANE = Length.mm(4);
  private static final Length MOST_LANE = Length.mm(22);

  /** Enough where most spots lie within the garment, so that leaders can incline there. */
  private static final Length TIGHT_LANE = Length.mm(6);

  /** Of the height of a stack: what an incline of 60 degrees needs for half of it. */
  private static final double LANE = 0.29;

  /** From spot to spot: a dot, and as much white as is seen. */
  private static final Length APART = Length.mm(LaidText.DOT_MM + 0.8);

  /** Nearer than this share of the longest side, two spots mean one. */
  private static final double ONE_SPOT = 0.015;

  /**
   * A callout before it is set.
   *
   * @param id its identifier
   * @param points the points of the flat that it belongs to; one or more
   * @param mark what stands in a ring before the text; empty for no ring
   * @param text with marks of languages; blank for none
   * @param region the radius of the ring round each point, in drawing units; 0 for none
   * @param end what its leaders have at the points
   */
  public record Said(
      String id, List<String> points, String mark, String text, double region, LeaderEnd end) {
    /** Copies the list. */
    public Said {
      points = List.copyOf(points);
    }

    /** How far across its points lie, on the average. */
    double across(Map<String, PlanePoint> places) {
      return points.stream()
          .mapToDouble(p -> Objects.requireNonNull(places.get(p)).x())
          .average()
          .orElseThrow();
    }
  }

  /** Copies the lists. */
  public CalloutPlan {
    tight = List.copyOf(tight);
    roomy = List.copyOf(roomy);
  }

  /**
   * The ways for a flat, which has its caption as its surround.
   *
   * @param style how leaders run; null for the usual
   */
  public static CalloutPlan of(
      Flat flat, List<Said> said, @Nullable LeaderStyle style, Lettering lettering) {
    List<CalloutOption> tight = new ArrayList<>();
    List<CalloutOption> roomy = new ArrayList<>();
    for (Length room : List.of(SHORT, LONG)) {
      List<SetCallout> set = new ArrayList<>();
      for (Said s : said) {
        set.add(SetCallout.of(s, room.pt(), lettering));
      }
      for (CalloutSides sides : sides(flat, set)) {
        if (sides != CalloutSides.BOTH || set.size() > 1) {
          tight.add(option(flat, sides, set, TIGHT_LANE.pt()));
          roomy.add(option(flat, sides, set, MOST_LANE.pt()));
        }
      }
    }
    return new CalloutPlan(
        style, tight.stream().distinct().toList(), roomy.stream().distinct().toList());
  }

  /** Both sides, then the one that most spots are nearer to. */
  private static List<CalloutSides> sides(Flat flat, List<SetCallout> set) {
    double middle = (flat.ink().left() + flat.ink().right()) / 2;
    double mean =
        set.stream().mapToDouble(c -> c.said().across(flat.points())).average().orElse(middle);
    return mean < middle
        ? List.of(CalloutSides.BOTH, CalloutSides.LEFT, CalloutSides.RIGHT)
        : List.of(CalloutSides.BOTH, CalloutSides.RIGHT, CalloutSides.LEFT);
  }

  private static CalloutOption option(
      Flat flat, CalloutSides sides, List<SetCallout> set, double most) {
    double width = set.stream().mapToDouble(SetCallout::width).max().orElse(0);
    double tall = 0;
    for (List<SetCallout> column : Columns.of(sides, set, flat.points())) {
      double gaps = Math.max(0, column.size() - 1) * GAP.pt();
      tall = Math.max(tall, column.stream().mapToDouble(SetCallout::height).sum() + gaps);
    }
    double lane = Math.max(LEAST_LANE.pt(), Math.min(most, LANE * tall));
    Length beside = Length.pt(lane + width);
    Length left = sides.left() ? beside : Length.ZERO;
    Length right = sides.right() ? beside : Length.ZERO;
    Surround own = flat.surround();
    // The caption stands under the middle of the ink, so that it needs both sides beside itself.
    Length wide = own.leastWidth().pt() > 0 ? own.leastWidth().plus(left).plus(right) : left;
    Surround all =
        new Surround(own.left().plus(left), own.top(), own.right().plus(right), own.bottom(), wide);
    double least =
        Math.max(tall * flat.ink().longestSide() / flat.ink().height(), leastForSpots(flat, set));
    FlatShape shape = new FlatShape(all, Length.pt(least));
    return new CalloutOption(sides, set, lane, width, shape);
  }

  /** The longest side at which dots of spots that lie close print apart, in points. */
  private static double leastForSpots(Flat flat, List<SetCallout> set) {
    List<PlanePoint> spots =
        set.stream()
            .filter(c -> c.said().region() == 0)
            .flatMap(c -> c.said().points().stream())
            .map(p -> Objects.requireNonNull(flat.points().get(p)))
            .toList();
    double longest = flat.ink().longestSide();
    double nearest = longest;
    for (PlanePoint a : spots) {
      for (PlanePoint b : spots) {
        double apart = Math.hypot(a.x() - b.x(), a.y() - b.y());
        if (apart > ONE_SPOT * longest) {
          nearest = Math.min(nearest, apart);
        }
      }
    }
    return APART.pt() * longest / nearest;
  }

  /**
   * The footprints, as the solver takes them.
   *
   * @param lanes whether lanes are as wide as inclined leaders ask for
   */
  public List<FlatShape> shapes(boolean lanes) {
    return (lanes ? roomy : tight).stream().map(CalloutOption::shape).toList();
  }

  private static boolean isBeside(Surround one, Surround other) {
    return one.left().equals(other.left()) && one.right().equals(other.right());
  }

  /** The way that a placed flat was given, by its footprint. */
  CalloutOption chosen(Flat placed) {
    return Stream.concat(tight.stream(), roomy.stream())
        .filter(o -> isBeside(o.shape().surround(), placed.surround()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no such footprint of " + placed.id()));
  }
}
