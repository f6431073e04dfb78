package dev.placket.benchmarks;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Outcome;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.units.Box;
import java.util.ArrayList;
import java.util.List;

/** Checks a fit of a reference sheet: inside, apart, clear of cells. */
final class Violations {
  private static final double TOLERANCE = 1e-6;

  private Violations() {}

  static List<String> of(FitRequest request, Outcome outcome) {
    if (!(outcome instanceof Fit fit)) {
      return List.of();
    }
    List<String> found = new ArrayList<>();
    List<Box> boxes = new ArrayList<>();
    double gap = request.spacing().gap().pt() - TOLERANCE;
    for (Flat flat : request.flats()) {
      Placement p = fit.placement(flat.id());
      double scale = p.scale().doubleValue();
      Box box =
          Box.ofSize(
              p.left().doubleValue(),
              p.top().doubleValue(),
              scale * flat.ink().width(),
              scale * flat.ink().height());
      if (!request.sheet().inside().grown(TOLERANCE).contains(box)) {
        found.add(flat.id() + " runs into the margin");
      }
      for (LabelledCell c : request.sheet().labelledCells()) {
        if (c.box().separation(box) < request.spacing().clearance().pt() - TOLERANCE) {
          found.add(flat.id() + " is too near to " + c.name());
        }
      }
      if (boxes.stream().anyMatch(b -> b.separation(box) < gap)) {
        found.add(flat.id() + " is too near to another flat");
      }
      boxes.add(box);
    }
    return found;
  }
}
