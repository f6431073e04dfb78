package dev.placket.layout.callout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.units.PlanePoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * The order of labels against trial of all orders, and leaders against a crossing test of its own.
 */
class ColumnLayoutTest {
  /** Spots and ports of four instances, with their least total length by trial of all orders. */
  private record Instance(double[][] spots, double edge, double[] ports, double least) {}

  // The straight totals of reference/boundary_labelling.json, found by exhaustion.
  private static final List<Instance> KNOWN =
      List.of(
          new Instance(
              new double[][] {{2, 1}, {5, 6}, {3, 8}}, 10, new double[] {2, 5, 8}, 20.161277262),
          new Instance(
              new double[][] {{1, 9}, {4, 2}, {6, 7}, {3, 5}, {8, 4}},
              12,
              new double[] {1, 3, 5, 7, 9},
              38.185363374),
          new Instance(
              new double[][] {{2, 10}, {3, 11}, {4, 12}, {5, 10.5}, {6, 11.5}, {7, 13}, {8, 9.5}},
              15,
              new double[] {2, 5, 8, 11, 14, 17, 20},
              77.722473529),
          new Instance(
              new double[][] {{9, 1}, {8, 3}, {7, 5}, {6, 7}, {5, 9}, {4, 11}, {3, 13}, {2, 15}},
              14,
              new double[] {1, 3, 5, 7, 9, 11, 13, 15},
              68));

  @Test
  void theShortestStraightLeadersAreThoseFoundByTrialOfAll() {
    for (Instance known : KNOWN) {
      // Enlarged, so that the instances' units are far above the width of a dot.
      double by = 40;
      double pitch = (known.ports[1] - known.ports[0]) * by;
      List<CalloutLabel> labels = new ArrayList<>();
      for (double[] s : known.spots) {
        labels.add(
            new CalloutLabel("c" + labels.size(), new PlanePoint(s[0] * by, s[1] * by), pitch, 0));
      }
      LabelStack stack =
          new LabelStack(
              labels,
              known.edge * by,
              known.ports[0] * by,
              Collections.nCopies(labels.size() - 1, 0.0));
      StackOrder search = new StackOrder(stack, LeaderPath.STRAIGHT, List.of());
      assertNotNull(search.run());
      assertEquals(known.least, search.length() / by, 1e-6);
      assertEquals(search.length(), search.bound(), 1e-6);
    }
  }

  private static List<CalloutLabel> random(Random random, int count) {
    List<CalloutLabel> labels = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      PlanePoint spot = new PlanePoint(random.nextDouble() * 150, 20 + random.nextDouble() * 260);
      double height = 9 + 9 * random.nextInt(3);
      labels.add(new CalloutLabel("c" + i, spot, height, 4.5));
    }
    return labels;
  }

  private static LabelColumn column(boolean right) {
    return new LabelColumn(right, right ? 190 : -40, 0, 300, 6, List.of());
  }

  @Property(tries = 2000)
  void noOrderIsShorterAndNothingCrosses(
      @ForAll @IntRange(min = 1, max = 7) int count, @ForAll int seed, @ForAll boolean straight) {
    shortest(column(true), random(new Random(seed), count), straight);
  }

  /** Labels with up to three spots each, and rings that leaders from outside keep out of. */
  @Property(tries = 2000)
  void severalLeadersOfOneLabelAndRingsAreHeeded(
      @ForAll @IntRange(min = 1, max = 7) int count, @ForAll int seed, @ForAll boolean straight) {
    Random random = new Random(seed);
    List<CalloutLabel> labels = new ArrayList<>();
    for (CalloutLabel l : random(random, count)) {
      List<PlanePoint> spots = new ArrayList<>(l.spots());
      for (int more = random.nextInt(3); more > 0; more--) {
        spots.add(new PlanePoint(random.nextDouble() * 150, 20 + random.nextDouble() * 260));
      }
      labels.add(new CalloutLabel(l.id(), spots, l.height(), l.port()));
    }
    List<ClearDisc> rings = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      PlanePoint middle =
          new PlanePoint(20 + random.nextDouble() * 110, 40 + random.nextDouble() * 220);
      rings.add(new ClearDisc(middle, 5 + random.nextDouble() * 15));
    }
    shortest(new LabelColumn(true, 190, 0, 300, 6, rings), labels, straight);
  }

  private static void shortest(LabelColumn column, List<CalloutLabel> labels, boolean straight) {
    LeaderStyle style = straight ? LeaderStyle.STRAIGHT : LeaderStyle.INCLINED;
    LaidColumn laid = ColumnLayout.lay(column, labels, style);
    double least = Double.POSITIVE_INFINITY;
    for (LabelStack stack : LabelStack.within(column, labels)) {
      for (int degrees : straight ? new int[] {0} : new int[] {30, 45, 60}) {
        least = Math.min(least, leastOfAllOrders(stack, column.clear(), degrees));
      }
      if (least < Double.POSITIVE_INFINITY) {
        break;
      }
    }
    if (laid != null) {
      assertEquals(least, laid.length(), 1e-6);
      assertTrue(laid.proven());
      assertEquals(laid.length(), drawn(laid), 1e-6);
      return;
    }
    assertEquals(Double.POSITIVE_INFINITY, least);
  }

  @Property(tries = 200)
  void aMirroredViewHasMirroredLeaders(
      @ForAll @IntRange(min = 1, max = 9) int count, @ForAll int seed) {
    List<CalloutLabel> labels = random(new Random(seed), count);
    List<CalloutLabel> mirrored =
        labels.stream()
            .map(
                l ->
                    new CalloutLabel(
                        l.id(),
                        new PlanePoint(150 - l.spots().get(0).x(), l.spots().get(0).y()),
                        l.height(),
                        l.port()))
            .toList();
    LaidColumn right = ColumnLayout.lay(column(true), labels, LeaderStyle.INCLINED);
    LaidColumn left = ColumnLayout.lay(column(false), mirrored, LeaderStyle.INCLINED);
    assertEquals(right == null, left == null);
    if (right != null && left != null) {
      assertEquals(right.degrees(), left.degrees());
      assertEquals(right.length(), left.length(), 1e-6);
      left.callouts()
          .forEach(
              c -> assertTrue(c.leaders().get(0).get(c.leaders().get(0).size() - 1).x() == -40));
    }
  }

  @Test
  void manyLabelsHaveAnOrderWithoutCrossings() {
    Random random = new Random(3);
    List<CalloutLabel> labels = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      PlanePoint spot = new PlanePoint(random.nextDouble() * 100, 20 + 26 * i + 8 * i % 5);
      labels.add(new CalloutLabel("c" + i, spot, 9, 4.5));
    }
    Collections.shuffle(labels, random);
    LabelColumn column = new LabelColumn(true, 190, 0, 700, 4, List.of());
    LaidColumn laid = ColumnLayout.lay(column, labels, LeaderStyle.INCLINED);
    assertNotNull(laid);
    assertEquals(0, crossings(laid));
    assertTrue(laid.bound() <= laid.length());
  }

  /** Of a thousand random ways to place labels apart and in order, none is nearer to the spots. */
  @Property(tries = 100)
  void labelsNearTheirSpotsAreMovedLeast(
      @ForAll @IntRange(min = 2, max = 6) int count, @ForAll int seed) {
    Random random = new Random(seed);
    List<CalloutLabel> labels = random(random, count);
    LabelStack stack = LabelStack.within(column(true), labels).get(1);
    List<CalloutLabel> sorted = new ArrayList<>(labels);
    sorted.sort(java.util.Comparator.comparingDouble(l -> l.spots().get(0).y()));
    double[] tops = new double[count];
    tops[0] = stack.top();
    for (int i = 1; i < count; i++) {
      double gap = stack.gaps().get(i - 1);
      assertTrue(gap >= 6 - 1e-9);
      tops[i] = tops[i - 1] + sorted.get(i - 1).height() + gap;
    }
    assertTrue(tops[0] >= -1e-9);
    assertTrue(tops[count - 1] + sorted.get(count - 1).height() <= 300 + 1e-9);
    double moved = moved(sorted, tops);
    for (int i = 0; i < 1000; i++) {
      double[] other = tops.clone();
      double by = 20 * Math.pow(0.5, i % 12);
      for (int k = 0; k < count; k++) {
        other[k] += random.nextBoolean() ? by * random.nextGaussian() : 0;
      }
      if (isApart(sorted, other)) {
        assertTrue(moved(sorted, other) >= moved - 1e-9);
      }
    }
  }

  private static double moved(List<CalloutLabel> sorted, double[] tops) {
    double sum = 0;
    for (int i = 0; i < tops.length; i++) {
      double off = tops[i] + sorted.get(i).port() - sorted.get(i).spots().get(0).y();
      sum += off * off;
    }
    return sum;
  }

  private static boolean isApart(List<CalloutLabel> sorted, double[] tops) {
    double last = -6;
    for (int i = 0; i < tops.length; i++) {
      if (tops[i] < last + 6) {
        return false;
      }
      last = tops[i] + sorted.get(i).height();
    }
    return last <= 300;
  }

  @Test
  void labelsTallerThanTheColumnHaveNoPlace() {
    LabelColumn column = new LabelColumn(true, 190, 0, 30, 4, List.of());
    List<CalloutLabel> labels = random(new Random(1), 4);
    assertNull(ColumnLayout.lay(column, labels, LeaderStyle.STRAIGHT));
  }

  @Test
  void labelsStandInTheColumnAndApart() {
    List<CalloutLabel> labels = random(new Random(5), 8);
    LaidColumn laid = ColumnLayout.lay(column(true), labels, LeaderStyle.STRAIGHT);
    assertNotNull(laid);
    double last = -6;
    Set<String> seen = new HashSet<>();
    for (LaidCallout c : laid.callouts()) {
      assertTrue(c.top() >= last + 6 - 1e-9, c.id());
      CalloutLabel its =
          labels.stream().filter(l -> l.id().equals(c.id())).findFirst().orElseThrow();
      last = c.top() + its.height();
      assertTrue(seen.add(c.id()));
    }
    assertTrue(last <= 300 + 1e-9);
    assertFalse(seen.size() < 8);
  }

  /** Trial of all orders, each drawn and measured here; infinite where all have a fault. */
  private static double leastOfAllOrders(LabelStack stack, List<ClearDisc> clear, int degrees) {
    int[] order = new int[stack.count()];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    double least = Double.POSITIVE_INFINITY;
    do {
      least = Math.min(least, length(stack, clear, order, degrees));
    } while (next(order));
    return least;
  }

  /** A leader, with the label that it belongs to. */
  private record Leader(int label, double[][] line) {
    double[] spot() {
      return line[0];
    }
  }

  private static double length(LabelStack stack, List<ClearDisc> clear, int[] order, int degrees) {
    double tan = degrees == 0 ? 0 : Math.tan(Math.toRadians(degrees));
    List<Leader> leaders = new ArrayList<>();
    double sum = 0;
    double top = stack.top();
    int slot = 0;
    for (int i : order) {
      CalloutLabel l = stack.labels().get(i);
      double port = top + l.port();
      for (PlanePoint spot : l.spots()) {
        double across = stack.edge() - spot.x();
        double run = degrees == 0 ? across : Math.abs(port - spot.y()) / tan;
        if (run > across + 1e-12) {
          return Double.POSITIVE_INFINITY;
        }
        leaders.add(
            new Leader(
                i,
                new double[][] {
                  {spot.x(), spot.y()}, {spot.x() + run, port}, {stack.edge(), port}
                }));
        sum += Math.hypot(run, port - spot.y()) + across - run;
      }
      top += l.height() + (slot < stack.gaps().size() ? stack.gaps().get(slot) : 0);
      slot++;
    }
    return isClear(leaders, clear) ? sum : Double.POSITIVE_INFINITY;
  }

  private static boolean isClear(List<Leader> leaders, List<ClearDisc> clear) {
    for (Leader leader : leaders) {
      for (Leader other : leaders) {
        if (leader.label != other.label
            && (near(leader.line, other.line) < 0.25
                || apart(leader.spot(), other.spot()) >= 4 && to(leader, other.spot()) < 2)) {
          return false;
        }
      }
      for (ClearDisc disc : clear) {
        double[] middle = {disc.middle().x(), disc.middle().y()};
        double reach = disc.radius() + 0.25;
        if (apart(leader.spot(), middle) >= reach && to(leader, middle) < reach) {
          return false;
        }
      }
    }
    return true;
  }

  private static double to(Leader leader, double[] spot) {
    return near(leader.line, new double[][] {spot, spot});
  }

  private static double apart(double[] a, double[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]);
  }

  private static double drawn(LaidColumn laid) {
    double sum = 0;
    for (LaidCallout c : laid.callouts()) {
      for (List<PlanePoint> leader : c.leaders()) {
        for (int i = 1; i < leader.size(); i++) {
          PlanePoint a = leader.get(i - 1);
          PlanePoint b = leader.get(i);
          sum += Math.hypot(a.x() - b.x(), a.y() - b.y());
        }
      }
    }
    return sum;
  }

  private static int crossings(LaidColumn laid) {
    int crossings = 0;
    List<double[][]> all =
        laid.callouts().stream()
            .map(
                c ->
                    c.leaders().get(0).stream()
                        .map(p -> new double[] {p.x(), p.y()})
                        .toArray(double[][]::new))
            .toList();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        crossings += near(all.get(i), all.get(j)) < 0.2 ? 1 : 0;
      }
    }
    return crossings;
  }

  /** The least distance of two polylines: from corners to segments, 0 where segments cross. */
  private static double near(double[][] a, double[][] b) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < a.length; i++) {
      for (int j = 1; j < b.length; j++) {
        // For segments without length, this method of Java's is of no use.
        boolean lines = !same(a[i - 1], a[i]) && !same(b[j - 1], b[j]);
        if (lines
            && java.awt.geom.Line2D.linesIntersect(
                a[i - 1][0],
                a[i - 1][1],
                a[i][0],
                a[i][1],
                b[j - 1][0],
                b[j - 1][1],
                b[j][0],
                b[j][1])) {
          return 0;
        }
        for (double[] p : List.of(a[i - 1], a[i])) {
          least = Math.min(least, toSegment(b[j - 1], b[j], p));
        }
        for (double[] p : List.of(b[j - 1], b[j])) {
          least = Math.min(least, toSegment(a[i - 1], a[i], p));
        }
      }
    }
    return least;
  }

  private static boolean same(double[] a, double[] b) {
    return a[0] == b[0] && a[1] == b[1];
  }

  private static double toSegment(double[] a, double[] b, double[] p) {
    return java.awt.geom.Line2D.ptSegDist(a[0], a[1], b[0], b[1], p[0], p[1]);
  }

  private static boolean next(int[] order) {
    int i = order.length - 2;
    while (i >= 0 && order[i] > order[i + 1]) {
      i--;
    }
    if (i < 0) {
      return false;
    }
    int j = order.length - 1;
    while (order[j] < order[i]) {
      j--;
    }
    swap(order, i, j);
    for (int a = i + 1, b = order.length - 1; a < b; a++, b--) {
      swap(order, a, b);
    }
    return true;
  }

  private static void swap(int[] order, int i, int j) {
    int kept = order[i];
    order[i] = order[j];
    order[j] = kept;
  }
}
