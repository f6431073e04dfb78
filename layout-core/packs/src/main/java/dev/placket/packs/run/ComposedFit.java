package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.fit.FlowSheet;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.flat.FlatShape;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.plan.ShapedOutcome;
import dev.placket.packs.compose.ComposedSheet;
import dev.placket.packs.dimensions.DimensionPlan;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.Placing;
import dev.placket.packs.report.Further;
import dev.placket.packs.run.PackFit.One;
import dev.placket.packs.text.Lettering;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Fits one sheet with the room that its callouts and lines of measure need. */
final class ComposedFit {
  private final ComposedSheet sheet;
  private final FlatSet set;
  private final FitRequest request;
  private final LayCallouts callouts;

  private ComposedFit(ComposedSheet sheet, Lettering lettering) {
    this.sheet = sheet;
    this.set = new FlatSet(sheet.items(), sheet.ratios());
    this.request =
        FitRequest.of(sheet.page().sheet(), set.flats(), sheet.spacing()).withRules(sheet.rules());
    this.callouts = new LayCallouts(lettering);
  }

  /**
   * On the sheet, or over as many of the same kind as it takes.
   *
   * @param narrow whether callouts may have narrow lanes; not where scales come out smaller in the
   *     end, as shared or round ones do
   */
  static List<One> of(ComposedSheet sheet, Lettering lettering, boolean narrow) {
    if (sheet.items().isEmpty()) {
      return List.of(new One(sheet.id(), sheet, null, null, null));
    }
    return new ComposedFit(sheet, lettering).fit(narrow);
  }

  /**
   * With the fewest lanes for measures with which no lines meet and no code covers the drawing, or
   * with which that is so for most.
   */
  private List<One> fit(boolean narrow) {
    if (!narrow) {
      return fit(false, FlatShapes.atAnySize(sheet.items()));
    }
    Map<String, Integer> from = new TreeMap<>();
    List<One> best = fit(true, new FlatShapes(sheet.items(), from));
    int least = Integer.MAX_VALUE;
    double bound = 0;
    List<One> made = best;
    while (made.size() == 1 && made.get(0).outcome() instanceof Fit fit) {
      bound = Math.max(bound, fit.proof().bound());
      FitRequest its = Objects.requireNonNull(made.get(0).request());
      Map<String, Integer> before = Map.copyOf(from);
      int faults = faults(new ShapedOutcome(its, Map.of(), fit), from);
      if (faults < least) {
        best = made;
        least = faults;
      }
      if (faults == 0 || from.equals(before)) {
        break;
      }
      made = fit(true, new FlatShapes(sheet.items(), from));
    }
    return least == Integer.MAX_VALUE ? best : List.of(bounded(best.get(0), bound));
  }

  /** The faults of a fit's measures; lanes that have some are not offered again. */
  private int faults(ShapedOutcome shaped, Map<String, Integer> from) {
    List<PlacedFlat> bare = placed(shaped);
    List<PlacedFlat> called = callouts.on(bare);
    LayDimensions measures =
        new LayDimensions(callouts.lettering(), new ArrayList<>(), new ArrayList<>());
    int faults = 0;
    for (PlacedFlat flat : called == null ? bare : called) {
      int its = measures.faultsOn(flat);
      DimensionPlan plan = flat.item().spots().dimensions();
      int next = plan.chosen(flat.flat()) + 1;
      if (its > 0 && next < plan.options().size()) {
        from.put(flat.flat().id(), next);
      }
      faults += its;
    }
    return faults;
  }

  private static One bounded(One one, double bound) {
    FitRequest its = Objects.requireNonNull(one.request());
    Outcome outcome = Objects.requireNonNull(one.outcome());
    Outcome all = new ShapedOutcome(its, Map.of(), outcome).boundedBy(bound).outcome();
    return new One(one.id(), one.sheet(), its, all, one.further());
  }

  private List<One> fit(boolean narrow, FlatShapes shapes) {
    Map<String, List<FlatShape>> roomy = shapes.all(true);
    Map<String, List<FlatShape>> tight = shapes.all(false);
    if (tight.containsValue(List.<FlatShape>of())) {
      // Beside a flat held so small its labels never stand; the flats alone may fit or not.
      Outcome bare = Planner.plan(request);
      Conflict none = new Conflict(List.of(), List.of(), true, false, 0);
      return List.of(one(request, bare instanceof Conflict c ? c : none));
    }
    ShapedOutcome shaped =
        narrow || roomy.containsValue(List.<FlatShape>of())
            ? planned(tight, roomy)
            : Planner.plan(request, roomy, LayCallouts.SHARE);
    if (shaped.outcome() instanceof Fit || !sheet.further()) {
      return List.of(one(shaped.request(), shaped.outcome()));
    }
    return over(Planner.planSheets(shaped.request()), shaped.request());
  }

  /**
   * With narrow lanes, where the leaders can be drawn as they are wanted; else with wide ones,
   * unless those do not fit.
   */
  private ShapedOutcome planned(
      Map<String, List<FlatShape>> tight, Map<String, List<FlatShape>> roomy) {
    ShapedOutcome narrow = Planner.plan(request, tight, LayCallouts.SHARE);
    if (tight.equals(roomy) || narrow.outcome() instanceof Fit && isAsWanted(narrow)) {
      return narrow;
    }
    if (roomy.containsValue(List.<FlatShape>of())) {
      return narrow;
    }
    ShapedOutcome wide = Planner.plan(request, roomy, LayCallouts.SHARE);
    boolean both = wide.outcome() instanceof Fit && narrow.outcome() instanceof Fit;
    if (narrow.outcome() instanceof Fit fit) {
      // With narrow lanes the scale may be larger, for all that is known.
      wide = wide.boundedBy(fit.proof().bound());
    }
    boolean neither = !(wide.outcome() instanceof Fit) && !(narrow.outcome() instanceof Fit);
    if (both) {
      // Straight leaders are drawn only where no lane lets them incline.
      return isAsWanted(wide) || !isLaid(narrow) ? wide : narrow;
    }
    return neither && sheet.further() ? wide : narrow;
  }

  private boolean isAsWanted(ShapedOutcome shaped) {
    return callouts.asWanted(placed(shaped));
  }

  private boolean isLaid(ShapedOutcome shaped) {
    return callouts.on(placed(shaped)) != null;
  }

  private List<PlacedFlat> placed(ShapedOutcome shaped) {
    Fit fit = (Fit) shaped.outcome();
    return Placing.of(set.of(shaped.request().flats()), fit, DensityTargets.DEFAULT);
  }

  private List<One> over(FlowResult flow, FitRequest its) {
    Conflict conflict = flow.conflict();
    if (conflict != null) {
      return List.of(one(its, conflict));
    }
    List<One> all = new ArrayList<>();
    for (FlowSheet each : flow.sheets()) {
      String id = each.number() == 1 ? sheet.id() : sheet.id() + "-" + each.number();
      all.add(new One(id, sheet, each.request(), each.fit(), Further.of(each, flow)));
    }
    return all;
  }

  private One one(FitRequest its, Outcome outcome) {
    return new One(sheet.id(), sheet, its, outcome, null);
  }
}
