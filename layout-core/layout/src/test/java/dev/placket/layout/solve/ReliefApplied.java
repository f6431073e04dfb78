package dev.placket.layout.solve;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What a relief says, done to a request by hand; for open sheets, and spacings without exceptions.
 */
final class ReliefApplied {
  private ReliefApplied() {}

  /** The request after that part of the relief. */
  static FitRequest to(FitRequest request, Relief relief, double part) {
    double by = relief.amount() * part;
    Spacing s = request.spacing();
    return switch (relief.kind()) {
      case LOWER_LEAST_SIZE ->
          flat(
              request,
              relief,
              f -> f.withLimits(new Limits(less(f.limits().least(), by), f.limits().greatest())));
      case CHANGE_RATIO ->
          flat(
              request,
              relief,
              f -> f.withGroup("views", Objects.requireNonNull(f.group()).ratio() + by));
      case LEAVE_OUT ->
          request.withFlats(
              request.flats().stream().filter(f -> !f.id().equals(relief.of())).toList());
      case LOWER_GAP ->
          spaced(request, Spacing.NONE.withGap(less(s.gap(), by)).withClearance(s.clearance()));
      case LOWER_CLEARANCE ->
          spaced(request, Spacing.NONE.withGap(s.gap()).withClearance(less(s.clearance(), by)));
      case SHORTEN_CELL -> request.withSheet(shortened(request.sheet(), relief, by));
      case NARROW_MARGIN -> request.withSheet(narrowed(request.sheet(), relief, by));
      case TURN_OFF ->
          request.withRules(
              request.rules().stream()
                  .filter(r -> !r.words().equals(relief.of()))
                  .collect(Collectors.toSet()));
      case LET_MOVE -> flat(request, relief, f -> f.withHeld(dev.placket.layout.flat.Held.NOTHING));
    };
  }

  private static FitRequest flat(FitRequest request, Relief relief, UnaryOperator<Flat> change) {
    return request.withFlats(
        request.flats().stream()
            .map(f -> f.id().equals(relief.of()) ? change.apply(f) : f)
            .toList());
  }

  private static FitRequest spaced(FitRequest q, Spacing spacing) {
    return new FitRequest(
        q.sheet(), q.flats(), spacing, q.rules(), q.order(), q.growth(), q.budget());
  }

  private static Sheet shortened(Sheet sheet, Relief relief, double by) {
    List<LabelledCell> cells =
        sheet.labelledCells().stream()
            .map(
                c ->
                    c.name().equals(relief.of())
                        ? new LabelledCell(c.name(), less(c.box(), relief, by))
                        : c)
            .toList();
    return Sheet.open(sheet.name(), sheet.paper(), sheet.margins(), cells);
  }

  private static Rect less(Rect b, Relief relief, double by) {
    return switch (Objects.requireNonNull(relief.edge())) {
      case LEFT -> new Rect(b.left() + by, b.top(), b.right(), b.bottom());
      case TOP -> new Rect(b.left(), b.top() + by, b.right(), b.bottom());
      case RIGHT -> new Rect(b.left(), b.top(), b.right() - by, b.bottom());
      case BOTTOM -> new Rect(b.left(), b.top(), b.right(), b.bottom() - by);
    };
  }

  private static Sheet narrowed(Sheet sheet, Relief relief, double by) {
    Margins m = sheet.margins();
    Margins less =
        switch (Objects.requireNonNull(relief.edge())) {
          case LEFT -> new Margins(m.top(), m.right(), m.bottom(), less(m.left(), by));
          case TOP -> new Margins(less(m.top(), by), m.right(), m.bottom(), m.left());
          case RIGHT -> new Margins(m.top(), less(m.right(), by), m.bottom(), m.left());
          case BOTTOM -> new Margins(m.top(), m.right(), less(m.bottom(), by), m.left());
        };
    return Sheet.open(sheet.name(), sheet.paper(), less, sheet.labelledCells());
  }

  private static Length less(Length length, double by) {
    return Length.pt(Math.max(0, length.pt() - by));
  }
}
