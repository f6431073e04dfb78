package dev.placket.layout.solve.model;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.ReadingOrder;
import dev.placket.layout.fit.Requirement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Targets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads a request into the arrays that the search works on, and collects what contradicts itself.
 */
public final class ReadRequest {
  /** How far a detail is held under a view, in points: the rule asks for "under". */
  private static final double UNDER = 0.001;

  private final FitRequest request;
  private final List<Flat> flats;
  private final int n;
  private final int[] classOf;
  private final List<Requirement> contradictions = new ArrayList<>();

  /** A reading of one request. */
  public ReadRequest(FitRequest request) {
    this.request = request;
    this.flats = request.flats();
    this.n = flats.size();
    this.classOf = classes();
  }

  /** Demands that contradict one another before anything is placed; empty if there are none. */
  public List<Requirement> contradictions() {
    return contradictions;
  }

  /**
   * The request as arrays, once for each range of t that limits and rules allow, the highest first;
   * empty if they contradict one another.
   */
  public List<Model> read() {
    Scales scales = scales();
    List<double[]> ranges = contradictions.isEmpty() ? scales.allowed() : List.of();
    if (ranges.isEmpty()) {
      contradictIn(scales);
      return List.of();
    }
    Model whole =
        new Model(request, flats, scales, spaces(), gaps(), options(), twins(), ranges.get(0));
    return new HeldUnderCaption(whole).split(ranges);
  }

  private int[] classes() {
    Map<String, Integer> groups = new TreeMap<>();
    int[] of = new int[n];
    int next = 0;
    for (int i = 0; i < n; i++) {
      var group = flats.get(i).group();
      Integer known = group == null ? null : groups.get(group.name());
      of[i] = known == null ? next++ : known;
      if (group != null) {
        groups.put(group.name(), of[i]);
      }
    }
    return of;
  }

  private double ratio(int i) {
    var group = flats.get(i).group();
    return group == null ? 1 : group.ratio();
  }

  /** The longest side at common scale 1 of the flat's class. */
  private double longest(int i) {
    return flats.get(i).ink().longestSide() * ratio(i);
  }

  private Scales scales() {
    int count = Arrays.stream(classOf).max().orElse(-1) + 1;
    double[] ratio = new double[n];
    double[] base = new double[count];
    double[] least = new double[count];
    double[] greatest = new double[count];
    double[] floor = new double[count];
    Arrays.fill(greatest, Double.POSITIVE_INFINITY);
    double[] atOne = Targets.scales(flats);
    for (int i = 0; i < n; i++) {
      Flat f = flats.get(i);
      int k = classOf[i];
      ratio[i] = ratio(i);
      base[k] = base[k] == 0 ? atOne[i] / ratio[i] : base[k];
      least[k] = Math.max(least[k], f.limits().least().pt() / longest(i));
      greatest[k] = Math.min(greatest[k], f.limits().greatestPt() / longest(i));
    }
    holdScales(least, greatest);
    List<Scales.Cap> caps = new ArrayList<>();
    addFront(caps);
    addDetails(caps, floor);
    return new Scales(
        classOf, ratio, base, least, greatest, floor, caps.toArray(new Scales.Cap[0]));
  }

  private void holdScales(double[] least, double[] greatest) {
    for (int i = 0; i < n; i++) {
      Double held = flats.get(i).held().scale();
      if (held != null) {
        int k = classOf[i];
        double common = held / ratio(i);
        if (common < least[k] * (1 - 1e-12) || common > greatest[k] * (1 + 1e-12)) {
          contradict(Requirement.Kind.HELD, i);
        }
        least[k] = common;
        greatest[k] = common;
      }
    }
    for (int k = 0; k < least.length; k++) {
      if (least[k] > greatest[k] * (1 + 1e-12)) {
        contradict(Requirement.Kind.SCALE_GROUP, members(k));
      }
    }
  }

  private void addFront(List<Scales.Cap> caps) {
    int front = first(Role.FRONT);
    if (!request.rules().contains(LeadRule.FRONT_LARGEST) || front < 0) {
      return;
    }
    for (int i = 0; i < n; i++) {
      if (classOf[i] != classOf[front]) {
        caps.add(
            new Scales.Cap(classOf[i], classOf[front], longest(front) / longest(i), 0, i, front));
      } else if (ratio(i) > ratio(front)) {
        contradict(Requirement.Kind.FRONT_LARGEST, front, i);
      }
    }
  }

  private void addDetails(List<Scales.Cap> caps, double[] floor) {
    if (!request.rules().contains(LeadRule.DETAILS_UNDER_VIEWS)) {
      return;
    }
    for (int d = 0; d < n; d++) {
      for (int v = 0; v < n; v++) {
        if (flats.get(d).role() != Role.DETAIL || !flats.get(v).role().isView()) {
          continue;
        }
        if (classOf[d] != classOf[v]) {
          double factor = longest(v) / longest(d);
          caps.add(new Scales.Cap(classOf[d], classOf[v], factor, UNDER / longest(d), d, v));
        } else if (longest(d) >= longest(v)) {
          contradict(Requirement.Kind.DETAILS_UNDER_VIEWS, d, v);
        } else {
          int k = classOf[d];
          floor[k] = Math.max(floor[k], UNDER / (longest(v) - longest(d)));
        }
      }
    }
  }

  private int first(Role role) {
    for (int i = 0; i < n; i++) {
      if (flats.get(i).role() == role) {
        return i;
      }
    }
    return -1;
  }

  private int[] members(int k) {
    return java.util.stream.IntStream.range(0, n).filter(i -> classOf[i] == k).toArray();
  }

  private void contradict(Requirement.Kind kind, int... of) {
    List<String> ids = Arrays.stream(of).mapToObj(i -> flats.get(i).id()).toList();
    contradictions.add(new Requirement(kind, ids));
  }

  /** Names what no t allows, if nothing has been named yet. */
  private void contradictIn(Scales scales) {
    if (!contradictions.isEmpty()) {
      return;
    }
    // Where the leading sizes are largest most is allowed; what fails there is at fault.
    scales.at(Math.min(1e9, scales.end()));
    for (Scales.Cap c : scales.caps) {
      if (scales.breaks(c)) {
        boolean detail = c.less() > 0;
        contradict(
            detail ? Requirement.Kind.DETAILS_UNDER_VIEWS : Requirement.Kind.FRONT_LARGEST,
            c.flat(),
            c.over());
      }
    }
    if (contradictions.isEmpty()) {
      int[] all = java.util.stream.IntStream.range(0, n).toArray();
      contradict(Requirement.Kind.LEAST_SIZE, all);
      contradict(Requirement.Kind.FRONT_LARGEST, all);
    }
  }

  private Space[] spaces() {
    Space[] spaces = new Space[n];
    for (int i = 0; i < n; i++) {
      Flat f = flats.get(i);
      for (int j = 0; j < i && spaces[i] == null; j++) {
        Flat o = flats.get(j);
        boolean same =
            o.windows().equals(f.windows())
                && request.spacing().clearance(o.role()).pt()
                    == request.spacing().clearance(f.role()).pt();
        spaces[i] = same ? spaces[j] : null;
      }
      if (spaces[i] == null) {
        spaces[i] = FindSpace.of(request.sheet(), f, request.spacing());
      }
    }
    return spaces;
  }

  private double[][] gaps() {
    double[][] gap = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        gap[i][j] = request.spacing().gap(flats.get(i).role(), flats.get(j).role()).pt();
      }
    }
    return gap;
  }

  private byte[] options() {
    byte[] options = new byte[Model.pairs(n)];
    Arrays.fill(options, (byte) Model.ANY);
    int front = first(Role.FRONT);
    if (request.rules().contains(LeadRule.FRONT_BEFORE_BACK) && front >= 0) {
      for (int i = 0; i < n; i++) {
        if (flats.get(i).role() == Role.BACK) {
          boolean isA = front < i;
          options[Model.pair(Math.min(front, i), Math.max(front, i))] =
              (byte) (isA ? Model.A_LEFT | Model.A_ABOVE : Model.B_LEFT | Model.B_ABOVE);
        }
      }
    }
    for (int b = 1; b < n; b++) {
      for (int a = 0; a < b; a++) {
        if (isListed(a, b)) {
          options[Model.pair(a, b)] &= Model.A_LEFT | Model.A_ABOVE;
        }
      }
    }
    return options;
  }

  private boolean isListed(int a, int b) {
    return request.rules().contains(LeadRule.LISTED_IN_ORDER)
        && ReadingOrder.isListed(flats.get(a), flats.get(b));
  }

  /** Neighbours in each run of flats that cannot be told apart. */
  private int[][] twins() {
    List<int[]> twins = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        if (areTwins(i, j) && !isListed(i, j)) {
          twins.add(new int[] {i, j});
          break;
        }
      }
    }
    return twins.toArray(new int[0][]);
  }

  private boolean areTwins(int i, int j) {
    Flat a = flats.get(i);
    Flat b = flats.get(j);
    boolean sameSize =
        classOf[i] == classOf[j]
            ? ratio(i) == ratio(j)
            : a.group() == null && b.group() == null && a.share() == b.share();
    Role lead = a.role();
    return sameSize
        && lead == b.role()
        && lead != Role.FRONT
        && Targets.lead(flats) != a
        && Targets.lead(flats) != b
        && a.ink().equals(b.ink())
        && a.surround().equals(b.surround())
        && a.limits().equals(b.limits())
        && a.windows().equals(b.windows())
        && !a.held().any()
        && !b.held().any();
  }
}
