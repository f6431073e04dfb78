package dev.placket.packs.run;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.flats.SheetSpacing;
import dev.placket.packs.folder.FlatSheet;
import dev.placket.packs.json.NoRoomRefusal;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.report.Further;
import dev.placket.packs.report.NoRoom;
import dev.placket.packs.report.NoRoomText;
import dev.placket.packs.report.SheetResult;
import dev.placket.packs.report.Units;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Fits a set of flats onto the built-in sheet, and onto further ones where one is too small. */
final class SheetFit {
  /** Paper counts as larger from here on. */
  private static final double ANY_LARGER = 1.001;

  private final FlatSheet sheet;
  private final FlatSet flats;
  private final Units units;

  SheetFit(FlatSheet sheet, FlatSet flats, Units units) {
    this.units = units;
    this.sheet = sheet;
    this.flats = flats;
  }

  /**
   * A sheet with its flats.
   *
   * @param request what was asked
   * @param fit the answer, which the referee passed
   * @param further which sheet of several it is; null where all are on one
   */
  record Placed(FitRequest request, Fit fit, @Nullable Further further) {}

  /**
   * The sheets, mostly one: flats that are no views continue on further sheets where there is no
   * room for them at their smallest size.
   *
   * @throws Refusal if nothing fits
   */
  List<Placed> fit() throws Refusal {
    FitRequest request = request();
    Outcome outcome = flats.hasDetails() ? Planner.attempt(request) : Planner.plan(request);
    if (outcome instanceof Fit fit) {
      return List.of(new Placed(request, fit, null));
    }
    if (outcome instanceof Conflict conflict && !flats.hasDetails()) {
      throw noRoom(request, conflict);
    }
    FlowResult flow = Planner.planSheets(request);
    Conflict conflict = flow.conflict();
    if (conflict != null) {
      throw noRoom(request, conflict);
    }
    return flow.sheets().stream()
        .map(s -> new Placed(s.request(), s.fit(), Further.of(s, flow)))
        .toList();
  }

  /** All flats on one sheet; null where they have no room on it. */
  @Nullable Placed onOne() throws Refusal {
    FitRequest request = request();
    return Planner.attempt(request) instanceof Fit fit ? new Placed(request, fit, null) : null;
  }

  private Refusal noRoom(FitRequest request, Conflict conflict) {
    return new NoRoomRefusal(
        NoRoomText.ofFolder(request, conflict, flats, roomy(), units),
        List.of(SheetResult.noRoom(null, request, new NoRoom(conflict, flats.captions()))));
  }

  /** The least of the named papers, the same way up, on which they have room; null if none has. */
  private @Nullable PaperSize roomy() {
    PaperSize paper = sheet.paper();
    boolean upright = paper.height().compareTo(paper.width()) > 0;
    double area = area(paper);
    return PaperSize.NAMED.stream()
        .filter(p -> area(p) > area * ANY_LARGER && area(p) <= area(PaperSize.A2) * ANY_LARGER)
        .sorted(Comparator.comparingDouble(SheetFit::area))
        .map(p -> upright ? p.portrait() : p.landscape())
        .filter(this::hasRoomOn)
        .findFirst()
        .orElse(null);
  }

  private static double area(PaperSize paper) {
    return paper.width().pt() * paper.height().pt();
  }

  /** Whether there is room for them in any of a few ways; which is best does not matter here. */
  private boolean hasRoomOn(PaperSize paper) {
    try {
      SheetFit larger = new SheetFit(sheet.on(paper), flats, units);
      return Planner.attempt(larger.request()) instanceof Fit;
    } catch (Refusal e) {
      return false;
    }
  }

  private FitRequest request() throws Refusal {
    Sheet page = sheet.page(1, 1).sheet();
    return FitRequest.of(page, flats.flats(), SheetSpacing.DEFAULT).withOrder(Order.PARTED);
  }
}
