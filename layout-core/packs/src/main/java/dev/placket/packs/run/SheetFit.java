package dev.placket.packs.run;

import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.FlowResult;
import dev.placket.layout.fit.FlowSheet;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Fits a set of flats onto the built-in sheet, with the line between its windows where the flats
 * come out largest.
 */
final class SheetFit {
  /** The line is tried in places this far apart, and no window is narrower than the least. */
  private static final Length STEP = Length.mm(5);

  /** Of those places every third is tried for the first of several sheets. */
  private static final int SOME = 3;

  private static final Length LEAST_WINDOW = Length.mm(40);

  /** On small sheets a window is at least this share of all there is, and at least so wide. */
  private static final double LEAST_SHARE = 0.25;

  /** Paper counts as larger from here on. */
  private static final double ANY_LARGER = 1.001;

  private static final Length LEAST_ON_SMALL = Length.mm(25);

  private final FlatSheet sheet;
  private final FlatSet flats;
  private final Units units;

  private double dividePrice;

  SheetFit(FlatSheet sheet, FlatSet flats, Units units) {
    this.units = units;
    this.sheet = sheet;
    this.flats = flats;
  }

  /**
   * What came out.
   *
   * @param divide where the window of details begins
   * @param request what was asked
   * @param fit the answer, which the referee passed
   * @param further which sheet of several it is; null where all are on one
   */
  record Placed(double divide, FitRequest request, Fit fit, @Nullable Further further) {}

  /**
   * The sheets, mostly one: what is no view goes on further ones where there is no room at its
   * least size.
   *
   * @throws Refusal if nothing fits
   */
  List<Placed> fit() throws Refusal {
    double length = sheet.windowsLength();
    if (!flats.hasDetails()) {
      return List.of(at(length));
    }
    if (!flats.hasViews()) {
      return Planner.attempt(request(0)) instanceof Fit ? List.of(at(0)) : flow(List.of(page(0)));
    }
    Double divide = bestDivide(length);
    if (divide != null) {
      return List.of(at(divide));
    }
    List<Sheet> firsts = new ArrayList<>(List.of(page(length)));
    List<Double> divides = divides(length);
    for (int i = 0; i < divides.size(); i += SOME) {
      firsts.add(page(divides.get(i)));
    }
    return flow(firsts);
  }

  /** Over as many sheets as it takes, the first ruled in one of these ways. */
  private List<Placed> flow(List<Sheet> firsts) throws Refusal {
    FitRequest all = request(flats.hasViews() ? sheet.windowsLength() * 2 / 3 : 0);
    FlowResult flow = Planner.planSheets(all, firsts, page(0));
    Conflict conflict = flow.conflict();
    if (conflict != null) {
      throw noRoom(all, conflict);
    }
    List<Placed> placed = new ArrayList<>();
    for (FlowSheet s : flow.sheets()) {
      Placed its = new Placed(0, s.request(), s.fit(), Further.of(s, flow));
      placed.add(s.number() == 1 && flats.hasViews() ? first(its) : its);
    }
    return placed;
  }

  /**
   * The first sheet with the line between its windows where all stand in line, if that is cheap.
   */
  private Placed first(Placed its) throws Refusal {
    SheetFit alone = new SheetFit(sheet, flats.of(its.request().flats()), units);
    Placed again = alone.fit().get(0);
    dividePrice = alone.dividePrice;
    Further further = Objects.requireNonNull(its.further());
    return new Placed(
        again.divide(), again.request(), again.fit(), further.at(again.fit().proof().scale()));
  }

  /** The places of the line, from the end. */
  private static List<Double> divides(double length) {
    List<Double> divides = new ArrayList<>();
    double least = Math.min(LEAST_WINDOW.pt(), Math.max(LEAST_ON_SMALL.pt(), LEAST_SHARE * length));
    for (double details = least; details <= length - least; details += STEP.pt()) {
      divides.add(length - details);
    }
    return divides;
  }

  /**
   * Where all come out largest; where they also stand in line, if that costs no more than order
   * may. Null where they have no room wherever it stands.
   */
  private @Nullable Double bestDivide(double length) throws Refusal {
    Double best = null;
    double largest = 0;
    Double bestInLine = null;
    double largestInLine = 0;
    double bound = 0;
    for (double at : divides(length)) {
      if (Planner.attempt(request(at)) instanceof Fit fit) {
        double scale = fit.proof().scale().doubleValue();
        bound = Math.max(bound, fit.proof().bound());
        if (scale > largest) {
          largest = scale;
          best = at;
        }
        if (scale > largestInLine && inLine(fit)) {
          largestInLine = scale;
          bestInLine = at;
        }
      }
    }
    if (best == null) {
      return null;
    }
    boolean inLine = largestInLine >= (1 - Order.DEFAULT.share()) * bound;
    dividePrice = inLine ? 1 - largestInLine / largest : 0;
    return inLine ? bestInLine : best;
  }

  /**
   * The part of the scale, of the largest that was found for any place of the line between the
   * windows, that was given up for a place where all stand in line; 0 before {@link #fit()}.
   */
  double dividePrice() {
    return dividePrice;
  }

  private static boolean inLine(Fit fit) {
    return fit.order().stream()
        .filter(s -> s.wish() == OrderWish.LEVEL_VIEWS || s.wish() == OrderWish.DETAILS_IN_LINE)
        .allMatch(OrderStep::kept);
  }

  private Placed at(double divide) throws Refusal {
    FitRequest request = request(divide);
    Outcome outcome = Planner.plan(request);
    if (outcome instanceof Conflict conflict) {
      throw noRoom(request, conflict);
    }
    return new Placed(divide, request, (Fit) outcome, null);
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
      double length = larger.sheet.windowsLength();
      double divide = flats.hasDetails() ? (flats.hasViews() ? length * 2 / 3 : 0) : length;
      return Planner.attempt(larger.request(divide)) instanceof Fit;
    } catch (Refusal e) {
      return false;
    }
  }

  private Sheet page(double divide) throws Refusal {
    return sheet.page(divide).sheet();
  }

  private FitRequest request(double divide) throws Refusal {
    return FitRequest.of(page(divide), flats.flats(), SheetSpacing.DEFAULT);
  }
}
