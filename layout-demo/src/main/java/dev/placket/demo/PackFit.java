package dev.placket.demo;

import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.pack.ComposedPack;
import dev.placket.demo.pack.ComposedSheet;
import dev.placket.demo.result.Further;
import dev.placket.demo.result.NoRoom;
import dev.placket.demo.result.SheetResult;
import dev.placket.layout.check.Breach;
import dev.placket.layout.check.Referee;
import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Fitter;
import dev.placket.layout.fit.Flow;
import dev.placket.layout.fit.FlowSheet;
import dev.placket.layout.fit.FurtherSheets;
import dev.placket.layout.fit.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The flats of a pack on its sheets.
 *
 * @param results one for each sheet, further sheets right after the one that they go on from
 * @param more how many further sheets a sheet has, by its identifier; none for most
 */
record PackFit(List<SheetResult> results, Map<String, Integer> more) {
  /** What is found while one sheet is fitted after the other. */
  private static final class Found {
    final List<SheetResult> results = new ArrayList<>();
    final Map<String, Integer> more = new LinkedHashMap<>();
    final List<String> noRoom = new ArrayList<>();
  }

  /**
   * Fits every sheet.
   *
   * @throws Refusal with exit code 4 naming every sheet without room
   */
  static PackFit of(ComposedPack pack) throws Refusal {
    Found found = new Found();
    for (ComposedSheet sheet : pack.sheets()) {
      if (sheet.items().isEmpty()) {
        found.results.add(SheetResult.bare(sheet.id(), sheet.page().sheet(), sheet.spacing()));
      } else {
        fit(sheet, found);
      }
    }
    if (!found.noRoom.isEmpty()) {
      throw Refusal.noRoom(found.noRoom, found.results).of(pack.title(), pack.fields());
    }
    return new PackFit(found.results, found.more);
  }

  private static void fit(ComposedSheet sheet, Found found) {
    FlatSet set = new FlatSet(sheet.items(), sheet.ratios());
    FitRequest request =
        FitRequest.of(sheet.page().sheet(), set.flats(), sheet.spacing()).withRules(sheet.rules());
    Outcome outcome = Fitter.fit(request);
    if (outcome instanceof Fit fit) {
      found.results.add(result(sheet.id(), set, request, fit));
    } else if (!sheet.further()) {
      noRoom(sheet, request, (Conflict) outcome, found);
    } else {
      flow(sheet, set, request, found);
    }
  }

  /** Over as many sheets of the same kind as it takes. */
  private static void flow(ComposedSheet sheet, FlatSet set, FitRequest request, Found found) {
    Flow flow = FurtherSheets.fit(request);
    Conflict conflict = flow.conflict();
    if (conflict != null) {
      noRoom(sheet, request, conflict, found);
      return;
    }
    for (FlowSheet each : flow.sheets()) {
      String id = each.number() == 1 ? sheet.id() : sheet.id() + "-" + each.number();
      FlatSet its = set.of(each.request().flats());
      SheetResult result = result(id, its, each.request(), each.fit());
      found.results.add(result.of(Further.of(each, flow)));
    }
    found.more.put(sheet.id(), flow.sheets().size() - 1);
  }

  private static SheetResult result(String id, FlatSet set, FitRequest request, Fit fit) {
    List<Breach> breaches = Referee.check(request, fit);
    if (!breaches.isEmpty()) {
      throw new IllegalStateException("the referee refuses the fit: " + breaches);
    }
    List<PlacedFlat> placed = Placing.of(set, fit, DensityTargets.DEFAULT);
    return SheetResult.of(id, request, fit, placed, json -> {});
  }

  private static void noRoom(
      ComposedSheet sheet, FitRequest request, Conflict conflict, Found found) {
    found.noRoom.add("sheet " + sheet.id() + " (" + sheet.name() + "):");
    found.noRoom.addAll(ConflictText.lines(request, conflict));
    found.results.add(SheetResult.noRoom(sheet.id(), request, new NoRoom(conflict, Map.of())));
  }
}
