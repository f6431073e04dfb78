package dev.placket.demo;

import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.sheet.FlatSheet;
import dev.placket.layout.check.Breach;
import dev.placket.layout.check.Referee;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Fitter;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.units.Length;
import java.util.List;

/**
 * Fits a set of flats onto the built-in sheet, with the line between its windows where the flats
 * come out largest.
 */
final class SheetFit {
  /** From ink to any rule, as it looks right on a sheet. */
  private static final Length CLEARANCE = Length.mm(3);

  private static final Length GAP = Length.mm(5);
  private static final Length VIEWS_GAP = Length.mm(8);

  /** The line is tried in places this far apart, and no window is narrower than the least. */
  private static final Length STEP = Length.mm(5);

  private static final Length LEAST_WINDOW = Length.mm(40);

  private final FlatSheet sheet;
  private final FlatSet flats;

  private double dividePrice;

  SheetFit(FlatSheet sheet, FlatSet flats) {
    this.sheet = sheet;
    this.flats = flats;
  }

  /**
   * What came out.
   *
   * @param divide where the window of details begins
   * @param request what was asked
   * @param fit the answer, which the referee passed
   */
  record Placed(double divide, FitRequest request, Fit fit) {}

  /**
   * The fit.
   *
   * @throws Refusal with exit code 4 if nothing fits
   */
  Placed fit() throws Refusal {
    double width = sheet.windowsWidth();
    if (!flats.hasDetails()) {
      return at(width);
    }
    return flats.hasViews() ? at(bestDivide(width)) : at(0);
  }

  /**
   * Where all come out largest; where they also stand in line, if that costs no more than order
   * may.
   */
  private double bestDivide(double width) throws Refusal {
    double best = width * 2 / 3;
    double largest = 0;
    double bestInLine = best;
    double largestInLine = 0;
    double bound = 0;
    for (double details = LEAST_WINDOW.pt();
        details <= width - LEAST_WINDOW.pt();
        details += STEP.pt()) {
      if (Fitter.fit(request(width - details)) instanceof Fit fit) {
        double scale = fit.proof().scale().doubleValue();
        bound = Math.max(bound, fit.proof().bound());
        if (scale > largest) {
          largest = scale;
          best = width - details;
        }
        if (scale > largestInLine && inLine(fit)) {
          largestInLine = scale;
          bestInLine = width - details;
        }
      }
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
    Outcome outcome = Fitter.fit(request);
    if (outcome instanceof Conflict conflict) {
      throw new Refusal(Refusal.NO_ROOM, ConflictText.lines(request, conflict, flats.captions()));
    }
    Fit fit = (Fit) outcome;
    List<Breach> breaches = Referee.check(request, fit);
    if (!breaches.isEmpty()) {
      throw new IllegalStateException("the referee refuses the fit: " + breaches);
    }
    return new Placed(divide, request, fit);
  }

  private FitRequest request(double divide) throws Refusal {
    Spacing spacing =
        new Spacing(
            GAP,
            CLEARANCE,
            List.of(new Spacing.PairGap(Role.FRONT, Role.BACK, VIEWS_GAP)),
            List.of());
    return FitRequest.of(sheet.page(divide, "").sheet(), flats.flats(), spacing);
  }
}
