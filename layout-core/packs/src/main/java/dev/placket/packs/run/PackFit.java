package dev.placket.packs.run;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.plan.Planner;
import dev.placket.packs.compose.ComposedPack;
import dev.placket.packs.compose.ComposedSheet;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.ScaleSeries;
import dev.placket.packs.json.NoRoomRefusal;
import dev.placket.packs.json.TextsJson;
import dev.placket.packs.page.SheetTexts;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.placed.Placing;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Further;
import dev.placket.packs.report.NoRoom;
import dev.placket.packs.report.NoRoomText;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.report.Units;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The flats of a pack on its sheets.
 *
 * @param results one for each sheet, further sheets right after the one that they go on from
 * @param more how many further sheets a sheet has, by its identifier; none for most
 * @param notes what is drawn less well than asked
 */
record PackFit(List<SheetResult> results, Map<String, Integer> more, List<String> notes) {
  /**
   * One sheet, fitted or not.
   *
   * @param id its identifier
   * @param sheet how it is composed
   * @param request what was asked; null where it has no flats
   * @param outcome the answer; null where it has no flats
   * @param further which of several sheets it is; null where it stands alone
   */
  record One(
      String id,
      ComposedSheet sheet,
      @Nullable FitRequest request,
      @Nullable Outcome outcome,
      @Nullable Further further) {
    /** The same sheet asked otherwise. */
    One again(FitRequest other) {
      return new One(id, sheet, other, Planner.plan(other), further);
    }
  }

  /**
   * Fits every sheet.
   *
   * @param lettering for the labels of callouts
   * @param units the unit of lengths
   * @throws NoRoomRefusal naming every sheet without room
   */
  static PackFit of(ComposedPack pack, Lettering lettering, Units units) throws Refusal {
    ScaleSeries rounding = pack.rounding();
    List<One> sheets = new ArrayList<>();
    Map<String, Integer> more = new LinkedHashMap<>();
    for (ComposedSheet sheet : pack.sheets()) {
      List<One> its =
          ComposedFit.of(sheet, lettering, pack.oneScale().isEmpty() && rounding == null);
      sheets.addAll(its);
      if (its.size() > 1) {
        more.put(sheet.id(), its.size() - 1);
      }
    }
    List<SheetResult> results = new ArrayList<>();
    List<Fault> noRoom = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    for (One shared : OneScale.across(pack.oneScale(), sheets)) {
      One one = rounding == null ? shared : rounded(shared, rounding, lettering, notes);
      results.add(result(one, noRoom, notes, lettering, units));
    }
    if (!noRoom.isEmpty()) {
      throw new NoRoomRefusal(noRoom, results);
    }
    return new PackFit(results, more, notes);
  }

  /** At round scales, unless the leaders of its callouts can be drawn only without. */
  private static One rounded(One one, ScaleSeries scales, Lettering lettering, List<String> notes) {
    List<String> own = new ArrayList<>();
    One rounded = new RoundedFit(scales, own).of(one);
    if (isLaid(one, lettering) && !isLaid(rounded, lettering)) {
      notes.add("sheet " + one.id() + ": not at round scales, at which leaders would cross.");
      return one;
    }
    notes.addAll(own);
    return rounded;
  }

  private static boolean isLaid(One one, Lettering lettering) {
    FitRequest request = one.request();
    if (request == null || !(one.outcome() instanceof Fit fit)) {
      return true;
    }
    FlatSet all = new FlatSet(one.sheet().items(), one.sheet().ratios());
    List<PlacedFlat> bare = Placing.of(all.of(request.flats()), fit, DensityTargets.DEFAULT);
    return new LayCallouts(lettering).on(bare) != null;
  }

  /** Whether the flats of a sheet with callouts have room without them. */
  private static boolean fitsBare(One one, FlatSet all) {
    ComposedSheet sheet = one.sheet();
    if (FlatShapes.of(sheet.items()).all(false).isEmpty()) {
      return false;
    }
    FitRequest bare =
        FitRequest.of(sheet.page().sheet(), all.flats(), sheet.spacing()).withRules(sheet.rules());
    return Planner.attempt(bare) instanceof Fit;
  }

  /** The texts of a sheet, once where its flats continue on further sheets. */
  private static SheetTexts texts(One one) {
    return one.id().equals(one.sheet().id()) ? one.sheet().texts() : SheetTexts.NONE;
  }

  private static SheetResult result(
      One one, List<Fault> noRoom, List<String> notes, Lettering lettering, Units units) {
    ComposedSheet sheet = one.sheet();
    FitRequest request = one.request();
    Outcome outcome = one.outcome();
    if (request == null || outcome == null) {
      return SheetResult.bare(
          one.id(), sheet.page().sheet(), sheet.spacing(), TextsJson.of(texts(one)));
    }
    FlatSet all = new FlatSet(sheet.items(), sheet.ratios());
    if (outcome instanceof Conflict conflict) {
      List<Fault> faults =
          fitsBare(one, all)
              ? new ArrayList<>(List.of(LayCallouts.noRoom(sheet.items())))
              : new ArrayList<>(NoRoomText.faults(request, conflict, all, units));
      faults.set(0, faults.get(0).in("sheet " + one.id() + " (" + sheet.name() + ")"));
      noRoom.addAll(faults);
      return SheetResult.noRoom(one.id(), request, new NoRoom(conflict, Map.of()));
    }
    Fit fit = (Fit) outcome;
    List<PlacedFlat> bare =
        Placing.of(all.of(request.flats()), fit, DensityTargets.DEFAULT).stream()
            .map(f -> f.captioned(lettering))
            .toList();
    LayCallouts callouts = new LayCallouts(lettering);
    List<PlacedFlat> placed = callouts.on(bare);
    if (placed == null) {
      noRoom.add(callouts.fault(bare).in("sheet " + one.id() + " (" + sheet.name() + ")"));
      placed = bare;
    }
    String named = "sheet " + one.id() + " (" + sheet.name() + ")";
    placed = new LayDimensions(lettering, noRoom, notes).on(placed, named);
    SheetResult result = SheetResult.of(one.id(), request, fit, placed, TextsJson.of(texts(one)));
    Further further = one.further();
    return further == null ? result : result.of(further);
  }
}
