package dev.placket.layout.fit;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Says why nothing fits: the demands that cannot hold together, and for each cure its least amount.
 */
final class ExplainConflict {
  /**
   * A relief is found to this share of its largest amount, from above: the amount stated always
   * cures.
   */
  private static final int HALVINGS = 12;

  private final FitRequest request;
  private final Function<FitRequest, Outcome> solve;
  private boolean complete = true;
  private long steps;

  ExplainConflict(FitRequest request, Function<FitRequest, Outcome> solve) {
    this.request = request.withOrder(Order.NONE).withGrowth(false);
    this.solve = solve;
  }

  /** The conflict of a request that is known to have no fit, {@code proven} or not. */
  Conflict run(boolean proven, long stepsSoFar) {
    steps = stepsSoFar;
    List<Requirement> core =
        new PreferredConflict<Requirement>(
                kept -> Demands.empty(kept) || fits(Demands.only(request, kept)))
            .among(Demands.of(request));
    boolean minimal = complete && proven;
    return new Conflict(core, reliefs(core), proven, minimal, steps);
  }

  private List<Relief> reliefs(List<Requirement> core) {
    List<Relief> found = new ArrayList<>();
    for (Requirement demand : core) {
      switch (demand.kind()) {
        case LEAST_SIZE -> addForFlat(demand.of().get(0), found);
        case GAP ->
            add(found, Relief.Kind.LOWER_GAP, "gap", request.spacing().gap().pt(), this::lessGap);
        case CLEARANCE ->
            add(
                found,
                Relief.Kind.LOWER_CLEARANCE,
                "clearance",
                request.spacing().clearance().pt(),
                this::lessClearance);
        default -> {}
      }
    }
    for (MovedLine line : MovedLine.of(request.sheet())) {
      add(
          found,
          Relief.Kind.SHORTEN_CELL,
          line.cells(),
          line.most(),
          by -> request.withSheet(line.by(by)));
    }
    found.sort(Comparator.comparing((Relief r) -> r.unit()).thenComparingDouble(Relief::amount));
    return found;
  }

  private void addForFlat(String id, List<Relief> found) {
    Flat flat = request.flats().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    double least = flat.limits().least().pt();
    add(found, Relief.Kind.LOWER_LEAST_SIZE, id, least, by -> smaller(flat, by));
    List<Flat> others = request.flats().stream().filter(f -> f != flat).toList();
    if (others.isEmpty() || fits(request.withFlats(others))) {
      found.add(new Relief(Relief.Kind.LEAVE_OUT, id, 1, Relief.Unit.FLAT));
    }
  }

  private void add(
      List<Relief> found,
      Relief.Kind kind,
      String of,
      double most,
      DoubleFunction<FitRequest> relieved) {
    Double amount = most > 0 ? least(most, relieved) : null;
    if (amount != null) {
      found.add(new Relief(kind, of, amount, Relief.Unit.POINT));
    }
  }

  /**
   * The least amount up to {@code most} that makes it fit, from above; null if even that does not.
   */
  private @Nullable Double least(double most, DoubleFunction<FitRequest> relieved) {
    if (!fits(relieved.apply(most))) {
      return null;
    }
    double tooLittle = 0;
    double enough = most;
    for (int i = 0; i < HALVINGS || tooLittle < 0.9 * enough; i++) {
      double middle = (tooLittle + enough) / 2;
      if (i > 4 * HALVINGS) {
        break;
      }
      if (fits(relieved.apply(middle))) {
        enough = middle;
      } else {
        tooLittle = middle;
      }
    }
    return enough;
  }

  private boolean fits(FitRequest tried) {
    Outcome outcome = solve.apply(tried);
    if (outcome instanceof Conflict c) {
      steps += c.steps();
      complete &= c.proven();
      return false;
    }
    steps += ((Fit) outcome).proof().steps();
    return true;
  }

  private FitRequest smaller(Flat flat, double by) {
    Limits l = flat.limits();
    Limits lower = new Limits(Length.pt(Math.max(0, l.least().pt() - by)), l.greatest());
    return request.withFlats(
        request.flats().stream().map(f -> f == flat ? f.withLimits(lower) : f).toList());
  }

  private FitRequest lessGap(double by) {
    Spacing s = request.spacing();
    return spaced(
        new Spacing(
            Length.pt(Math.max(0, s.gap().pt() - by)), s.clearance(), s.pairs(), s.roles()));
  }

  private FitRequest lessClearance(double by) {
    Spacing s = request.spacing();
    return spaced(
        new Spacing(
            s.gap(), Length.pt(Math.max(0, s.clearance().pt() - by)), s.pairs(), s.roles()));
  }

  private FitRequest spaced(Spacing spacing) {
    return new FitRequest(
        request.sheet(),
        request.flats(),
        spacing,
        request.rules(),
        request.order(),
        request.growth(),
        request.budget());
  }
}
