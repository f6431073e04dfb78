package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.ScaleGroup;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Continues flats that may flow on further sheets of the same kind, in their order: the fewest
 * sheets on which all keep their least size, and on so many the largest common scale.
 *
 * <p>What fits on a sheet still fits once a flat is taken off it, so each sheet taking as many as
 * it can makes the fewest; that is proven where every refusal is. Then the breaks are moved so that
 * the smallest of the sheets' common scales is as large as it goes.
 */
public final class FurtherSheets {
  /** A group that several sheets share is held at a scale rounded down to so many digits. */
  private static final MathContext SHARED = new MathContext(7, RoundingMode.DOWN);

  private final FitRequest request;
  private final BooleanSupplier cancelled;
  private final List<Flat> fixed = new ArrayList<>();
  private final List<Flat> flowing = new ArrayList<>();
  private final FlowTargets targets;
  private final @Nullable Segment[][] known;
  private boolean proven = true;

  /**
   * Some neighbouring flats alone on a sheet, sizes as far as they go.
   *
   * @param scale in terms of all flats' common scale; 0 where they do not fit
   * @param bound no larger one is possible
   * @param refused why they do not fit, or null
   */
  private record Segment(double scale, double bound, @Nullable Conflict refused) {}

  private FurtherSheets(FitRequest request, BooleanSupplier cancelled) {
    this.request = request;
    this.cancelled = cancelled;
    request.flats().forEach(f -> (f.mayFlow() ? flowing : fixed).add(f));
    this.targets = new FlowTargets(request.flats());
    this.known = new Segment[flowing.size() + 2][flowing.size() + 1];
  }

  /**
   * The flats of the request on one sheet or more: those that may not flow on the first.
   *
   * <p>O(n²) fits for n flats that may flow, at most.
   *
   * @param request the sheet, which is also the kind of the further ones, and all flats
   */
  public static Flow fit(FitRequest request) {
    return fit(request, () -> false);
  }

  /**
   * As {@link #fit(FitRequest)}, ending early once the caller says so.
   *
   * @param request the sheet and all flats
   * @param cancelled asked now and then; true ends the search
   */
  public static Flow fit(FitRequest request, BooleanSupplier cancelled) {
    return new FurtherSheets(request, cancelled).run();
  }

  private Flow run() {
    List<Integer> ends = new ArrayList<>();
    int from = 0;
    do {
      boolean first = ends.isEmpty();
      int to = longest(first, from);
      boolean stuck = to < from || (to == from && !(first && !fixed.isEmpty()));
      if (stuck) {
        return new Flow(List.of(), null, 0, false, why(first, from));
      }
      ends.add(to);
      from = to;
    } while (from < flowing.size());
    boolean fewest = proven;
    int count = ends.size();
    ShareSheets share = new ShareSheets(count, flowing.size(), fixed.isEmpty(), this::scale);
    List<FlowSheet> sheets = sheets(share.ends());
    ShareSheets most = new ShareSheets(count, flowing.size(), fixed.isEmpty(), this::bound);
    return new Flow(sheets, scale(sheets), most.scale(), fewest, null);
  }

  /**
   * How far a sheet beginning there can go; before its beginning if not even what is fixed fits.
   */
  private int longest(boolean first, int from) {
    int to = from;
    if (first && !fixed.isEmpty() && !fits(true, 0, 0)) {
      return -1;
    }
    while (to < flowing.size() && fits(first, from, to + 1)) {
      to++;
    }
    return to;
  }

  private boolean fits(boolean first, int from, int to) {
    Conflict refused = segment(first, from, to).refused();
    proven &= refused == null || refused.proven();
    return refused == null;
  }

  private double scale(boolean first, int from, int to) {
    return segment(first, from, to).scale();
  }

  private double bound(boolean first, int from, int to) {
    return segment(first, from, to).bound();
  }

  private Segment segment(boolean first, int from, int to) {
    int row = first ? 0 : from + 1;
    Segment its = known[row][to];
    if (its == null) {
      its = solve(first, from, to);
      known[row][to] = its;
    }
    return its;
  }

  private Segment solve(boolean first, int from, int to) {
    FitRequest plain = on(first, from, to).withOrder(Order.NONE).withGrowth(false);
    Outcome outcome = Fitter.solve(plain, cancelled, false);
    if (outcome instanceof Conflict c) {
      return new Segment(0, c.proven() ? 0 : Double.MAX_VALUE, c);
    }
    Proof proof = ((Fit) outcome).proof();
    double unit = targets.atOne(plain.flats());
    return new Segment(proof.scale().doubleValue() / unit, proof.bound() / unit, null);
  }

  /** The flats from there to before there, and on the first sheet those that may not flow. */
  private FitRequest on(boolean first, int from, int to) {
    List<Flat> flats = new ArrayList<>();
    for (Flat f : request.flats()) {
      int at = flowing.indexOf(f);
      if (at < 0 ? first : at >= from && at < to) {
        flats.add(f);
      }
    }
    return flats.size() == request.flats().size()
        ? request
        : request.withFlats(targets.keep(flats));
  }

  private Conflict why(boolean first, int from) {
    int to = first && !fixed.isEmpty() ? 0 : from + 1;
    Outcome outcome = Fitter.fit(on(first, from, to), cancelled);
    return outcome instanceof Conflict c
        ? c
        : Objects.requireNonNull(segment(first, from, to).refused(), "refused and yet placed");
  }

  private List<FlowSheet> sheets(int[] ends) {
    List<FitRequest> requests = new ArrayList<>();
    int from = 0;
    double least = Double.MAX_VALUE;
    for (int to : ends) {
      boolean first = requests.isEmpty();
      requests.add(on(first, from, to));
      least = Math.min(least, scale(first, from, to));
      from = to;
    }
    double common = least;
    List<FitRequest> held = requests.stream().map(r -> holdShared(r, requests, common)).toList();
    return IntStream.range(0, held.size()).mapToObj(k -> sheet(k, held)).toList();
  }

  private FlowSheet sheet(int k, List<FitRequest> requests) {
    FitRequest its = requests.get(k);
    Outcome outcome = Fitter.fit(its, cancelled);
    if (!(outcome instanceof Fit)) {
      outcome = Fitter.fit(its.withOrder(Order.NONE).withGrowth(false), cancelled);
    }
    if (outcome instanceof Fit fit) {
      return new FlowSheet(k + 1, requests.size(), its, fit);
    }
    throw new IllegalStateException("sheet " + (k + 1) + " held its flats and no longer does");
  }

  /** A scale group that more than one sheet has keeps one scale on all of them. */
  private FitRequest holdShared(FitRequest its, List<FitRequest> all, double common) {
    List<Flat> flats = new ArrayList<>();
    for (Flat f : its.flats()) {
      ScaleGroup group = f.group();
      long on = all.stream().filter(r -> r.flats().stream().anyMatch(o -> same(o, group))).count();
      if (group == null || on < 2 || f.held().scale() != null) {
        flats.add(f);
        continue;
      }
      double scale = targets.groupScale(group.name(), common);
      double rounded = new BigDecimal(scale).round(SHARED).doubleValue() * group.ratio();
      flats.add(f.withHeld(new Held(f.held().left(), f.held().top(), rounded)));
    }
    return its.withFlats(flats);
  }

  private static boolean same(Flat f, @Nullable ScaleGroup group) {
    ScaleGroup its = f.group();
    return group != null && its != null && its.name().equals(group.name());
  }

  private BigDecimal scale(List<FlowSheet> sheets) {
    BigDecimal least = null;
    for (FlowSheet s : sheets) {
      BigDecimal its =
          s.fit()
              .proof()
              .scale()
              .divide(
                  BigDecimal.valueOf(targets.atOne(s.request().flats())),
                  new MathContext(12, RoundingMode.DOWN));
      least = least == null ? its : least.min(its);
    }
    return Objects.requireNonNull(least);
  }
}
