package dev.placket.benchmarks.order;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.plan.Planner;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a person does who rules a line between views and details: an upright or level line every 5
 * mm, each page fitted, and the best page taken.
 *
 * @param request the page of that line
 * @param fit its flats
 */
public record LineByHand(FitRequest request, Fit fit) {
  private static final Length STEP = Length.mm(5);
  private static final double LEAST = Length.mm(25).pt();

  /**
   * The page with the largest common scale; among those in line, if that costs no more than order
   * may.
   *
   * @param open the page without a line
   * @return null if no line leaves all flats room
   */
  public static @Nullable LineByHand best(FitRequest open) {
    LineByHand best = null;
    LineByHand inLine = null;
    for (FitRequest ruled : ruled(open.withOrder(Order.DEFAULT))) {
      if (Planner.attempt(ruled) instanceof Fit fit) {
        LineByHand its = new LineByHand(ruled, fit);
        best = best == null || its.scale() > best.scale() ? its : best;
        if (its.isInLine()) {
          inLine = inLine == null || its.scale() > inLine.scale() ? its : inLine;
        }
      }
    }
    boolean cheap =
        best != null
            && inLine != null
            && inLine.scale() >= best.scale() * (1 - open.order().share());
    return cheap ? inLine : best;
  }

  /** The largest common scale of any line, whatever the order. */
  public static double largest(FitRequest open) {
    double largest = 0;
    for (FitRequest ruled : ruled(open.withOrder(Order.NONE).withGrowth(false))) {
      if (Planner.attempt(ruled) instanceof Fit fit) {
        largest = Math.max(largest, fit.proof().scale().doubleValue());
      }
    }
    return largest;
  }

  /** The common scale. */
  public double scale() {
    return fit.proof().scale().doubleValue();
  }

  private boolean isInLine() {
    return fit.order().stream()
        .filter(s -> s.wish() == OrderWish.LEVEL_VIEWS || s.wish() == OrderWish.DETAILS_IN_LINE)
        .allMatch(OrderStep::kept);
  }

  private static List<FitRequest> ruled(FitRequest open) {
    List<FitRequest> all = new ArrayList<>();
    Rect inside = open.sheet().inside();
    for (boolean upright : new boolean[] {true, false}) {
      double from = upright ? inside.left() : inside.top();
      double to = upright ? inside.right() : inside.bottom();
      for (double at = from + LEAST; at < to - LEAST; at += STEP.pt()) {
        all.add(ruled(open, upright, at));
      }
    }
    return all;
  }

  private static FitRequest ruled(FitRequest open, boolean upright, double at) {
    Sheet s = open.sheet();
    Rect in = s.inside();
    List<Double> columns =
        upright ? List.of(in.left(), at, in.right()) : List.of(in.left(), in.right());
    List<Double> rows =
        upright ? List.of(in.top(), in.bottom()) : List.of(in.top(), at, in.bottom());
    GridArea after = upright ? new GridArea(1, 0, 2, 1) : new GridArea(0, 1, 1, 2);
    Rect line =
        upright ? new Rect(at, in.top(), at, in.bottom()) : new Rect(in.left(), at, in.right(), at);
    Sheet sheet =
        new Sheet(
            s.name(),
            s.paper(),
            s.margins(),
            new GridLines(columns, rows),
            List.of(
                new SheetWindow("views", new GridArea(0, 0, 1, 1)),
                new SheetWindow("details", after)),
            s.labelledCells(),
            List.of(new Rule(line, Order.PARTING_LINE)));
    List<Flat> flats =
        open.flats().stream()
            .map(f -> f.withWindows(List.of(f.role().isView() ? "views" : "details")))
            .toList();
    return new FitRequest(
        sheet, flats, open.spacing(), open.rules(), open.order(), open.growth(), open.budget());
  }
}
