package dev.placket.layout.solve;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.fit.FlowSheet;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Continues flats that may flow on further sheets of the same kind, in their order: the fewest
 * sheets on which all keep their least size, and on so many the largest common scale.
 *
 * <p>What fits on a sheet still fits once a flat is taken off it, so each sheet taking as many as
 * it can makes the fewest; that is proven where the refusals are that it rests on. Then the breaks
 * are moved so that the smallest of the sheets' common scales is as large as it goes.
 */
public final class FurtherSheets {
  /** A group that several sheets share is held at a scale rounded down to so many digits. */
  private static final MathContext SHARED = new MathContext(7, RoundingMode.DOWN);

  private static final MathContext TWELVE = new MathContext(12, RoundingMode.DOWN);

  private final FitRequest request;
  private final List<Sheet> firsts;
  private final Sheet further;
  private final BooleanSupplier cancelled;
  private final List<Flat> fixed = new ArrayList<>();
  private final List<Flat> flowing = new ArrayList<>();
  private final FlowTargets targets;
  private final @Nullable Segment[][] known;

  /**
   * Some neighbouring flats alone on a sheet, sizes as far as they go.
   *
   * @param scale in terms of all flats' common scale; 0 where they do not fit
   * @param bound no larger one is possible
   * @param sheet the ruling on which they come out so large
   * @param refused why they do not fit, or null
   */
  private record Segment(double scale, double bound, Sheet sheet, @Nullable Conflict refused) {}

  private FurtherSheets(
      FitRequest request, List<Sheet> firsts, Sheet further, BooleanSupplier cancelled) {
    this.request = request.withFlats(HeldGroups.of(request.flats()));
    this.firsts = List.copyOf(firsts);
    this.further = further;
    this.cancelled = cancelled;
    this.request.flats().forEach(f -> (f.mayFlow() ? flowing : fixed).add(f));
    this.targets = new FlowTargets(this.request.flats());
    this.known = new Segment[flowing.size() + 2][flowing.size() + 1];
  }

  /**
   * The flats of the request on one sheet or more: those that may not flow on the first.
   *
   * <p>O(sheets × n × log n) fits for n flats that may flow, at most.
   *
   * @param request the sheet, which is also the kind of the further ones, and all flats
   */
  public static FlowResult fit(FitRequest request) {
    return fit(request, () -> false);
  }

  /**
   * As {@link #fit(FitRequest)}, ending early once the caller says so.
   *
   * @param request the sheet and all flats
   * @param cancelled polled during the search; true ends it
   */
  public static FlowResult fit(FitRequest request, BooleanSupplier cancelled) {
    return fit(request, List.of(request.sheet()), request.sheet(), cancelled);
  }

  /**
   * As {@link #fit(FitRequest)}, where the first sheet may be ruled in several ways and further
   * ones in another: the first takes the ruling on which its flats come out largest.
   *
   * <p>What is proven stays proven: a run of flats fits on a first sheet if it fits on any of its
   * rulings, and so each sheet taking as many as it can still makes the fewest.
   *
   * @param request all flats, and what is asked of them; its sheet is the ruling that a conflict
   *     refers to
   * @param firsts the rulings of the first sheet, one or more; one that lacks a window of a flat is
   *     not taken for that flat
   * @param further the ruling of all further sheets, with every window of flats that may flow
   * @param cancelled polled during the search; true ends it
   */
  public static FlowResult fit(
      FitRequest request, List<Sheet> firsts, Sheet further, BooleanSupplier cancelled) {
    return new FurtherSheets(request, firsts, further, cancelled).run();
  }

  private FlowResult run() {
    List<Integer> ends = new ArrayList<>();
    int from = 0;
    do {
      boolean first = ends.isEmpty();
      int to = longest(first, from);
      boolean stuck = to < from || (to == from && !(first && !fixed.isEmpty()));
      if (stuck) {
        return new FlowResult(List.of(), null, 0, false, why(first, from));
      }
      ends.add(to);
      from = to;
    } while (from < flowing.size());
    int count = ends.size();
    ShareSheets share = new ShareSheets(count, flowing.size(), fixed.isEmpty(), this::scale);
    List<FlowSheet> sheets = sheets(share.ends());
    ShareSheets most = new ShareSheets(count, flowing.size(), fixed.isEmpty(), this::bound);
    return new FlowResult(sheets, scale(sheets), most.scale(), fewest(count), null);
  }

  /**
   * How far a sheet beginning there can go; before its beginning if not even what is fixed fits.
   */
  private int longest(boolean first, int from) {
    if (first && !fixed.isEmpty() && segment(true, 0, 0).refused() != null) {
      return -1;
    }
    return reach(from, to -> segment(first, from, to).refused() == null);
  }

  /** Whether it is known that one sheet fewer does not hold them. */
  private boolean fewest(int count) {
    int most = 0;
    for (int sheet = 1; sheet < count; sheet++) {
      boolean first = sheet == 1;
      int from = most;
      most = reach(from, to -> !provenRefused(segment(first, from, to)));
    }
    return most < flowing.size() || count == 1;
  }

  private static boolean provenRefused(Segment its) {
    return its.refused() != null && its.refused().proven();
  }

  /** The last number up to which something holds that, once it fails, fails for all more. */
  private int reach(int from, IntPredicate holds) {
    int yes = from;
    int no = from + 1;
    while (no <= flowing.size() && holds.test(no)) {
      yes = no;
      no = Math.min(from + 2 * (no - from), Math.max(no + 1, flowing.size()));
    }
    while (no - yes > 1) {
      int middle = (yes + no) / 2;
      if (holds.test(middle)) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return yes;
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
      Segment shorter = to > from ? known[row][to - 1] : null;
      its = shorter != null && provenRefused(shorter) ? shorter : solve(first, from, to);
      known[row][to] = its;
    }
    return its;
  }

  /** The run on the ruling on which it comes out largest. */
  private Segment solve(boolean first, int from, int to) {
    List<Flat> flats = flats(first, from, to);
    Segment best = null;
    double bound = 0;
    for (Sheet sheet : first ? firsts : List.of(further)) {
      if (hasWindows(sheet, flats)) {
        Segment its = solve(on(sheet, flats));
        bound = Math.max(bound, its.bound());
        best = best == null || better(its, best) ? its : best;
      }
    }
    if (best == null) {
      throw new IllegalArgumentException(
          "no ruling has the windows of flats " + from + " to " + to);
    }
    return new Segment(best.scale(), bound, best.sheet(), best.refused());
  }

  /** The larger; among refusals one that is not proven, since it leaves the question open. */
  private static boolean better(Segment its, Segment best) {
    Conflict mine = its.refused();
    Conflict other = best.refused();
    return other == null
        ? its.scale() > best.scale()
        : mine == null || (other.proven() && !mine.proven());
  }

  private static boolean hasWindows(Sheet sheet, List<Flat> flats) {
    List<String> names = sheet.windows().stream().map(SheetWindow::name).toList();
    return flats.stream().allMatch(f -> names.containsAll(f.windows()));
  }

  private Segment solve(FitRequest asked) {
    FitRequest plain = asked.withOrder(Order.NONE).withGrowth(false);
    Outcome outcome = Fitter.solve(plain, cancelled, false);
    if (outcome instanceof Conflict c) {
      return new Segment(0, c.proven() ? 0 : Double.MAX_VALUE, asked.sheet(), c);
    }
    Proof proof = ((Fit) outcome).proof();
    double unit = targets.atOne(plain.flats());
    return new Segment(
        proof.scale().doubleValue() / unit, proof.bound() / unit, asked.sheet(), null);
  }

  /** The flats from there to before there, and on the first sheet those that may not flow. */
  private List<Flat> flats(boolean first, int from, int to) {
    List<Flat> flats = new ArrayList<>();
    for (Flat f : request.flats()) {
      int at = flowing.indexOf(f);
      if (at < 0 ? first : at >= from && at < to) {
        flats.add(f);
      }
    }
    return flats.size() == request.flats().size() ? flats : targets.keep(flats);
  }

  private FitRequest on(Sheet sheet, List<Flat> flats) {
    return new FitRequest(
        sheet,
        flats,
        request.spacing(),
        request.rules(),
        request.order(),
        request.growth(),
        request.budget());
  }

  private Conflict why(boolean first, int from) {
    int to = first && !fixed.isEmpty() ? 0 : from + 1;
    Segment its = segment(first, from, to);
    Outcome outcome = Fitter.fit(on(its.sheet(), flats(first, from, to)), cancelled);
    return outcome instanceof Conflict c
        ? c
        : Objects.requireNonNull(its.refused(), "refused and yet placed");
  }

  private List<FlowSheet> sheets(int[] ends) {
    List<FitRequest> requests = new ArrayList<>();
    int from = 0;
    double least = Double.MAX_VALUE;
    for (int to : ends) {
      boolean first = requests.isEmpty();
      requests.add(on(segment(first, from, to).sheet(), flats(first, from, to)));
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
      BigDecimal atOne = BigDecimal.valueOf(targets.atOne(its.flats()));
      BigDecimal scale = fit.proof().scale().divide(atOne, TWELVE);
      return new FlowSheet(k + 1, requests.size(), its, fit, scale);
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
      flats.add(f.withHeld(f.held().atScale(rounded)));
    }
    return its.withFlats(flats);
  }

  private static boolean same(Flat f, @Nullable ScaleGroup group) {
    ScaleGroup its = f.group();
    return group != null && its != null && its.name().equals(group.name());
  }

  private static BigDecimal scale(List<FlowSheet> sheets) {
    return sheets.stream().map(FlowSheet::scale).min(BigDecimal::compareTo).orElseThrow();
  }
}
