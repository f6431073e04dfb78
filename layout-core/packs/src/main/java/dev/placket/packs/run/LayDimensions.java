package dev.placket.packs.run;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.dimensions.DimensionFrame;
import dev.placket.packs.dimensions.DimensionLayout;
import dev.placket.packs.dimensions.DimensionPlan;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.text.Lettering;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of measure of a sheet's flats.
 *
 * @param lettering for their codes
 * @param faults takes what cannot be drawn
 * @param notes takes what is drawn less well than asked
 */
record LayDimensions(Lettering lettering, List<Fault> faults, List<String> notes) {
  /** Leaders, and the rings round regions as polygons. */
  private static List<List<PlanePoint>> lines(List<LaidText> callouts) {
    List<List<PlanePoint>> lines = new ArrayList<>();
    for (LaidText callout : callouts) {
      lines.addAll(callout.leaders());
      for (Rect region : callout.regions()) {
        lines.add(ring(region));
      }
    }
    return lines;
  }

  private static List<PlanePoint> ring(Rect region) {
    double radius = region.width() / 2;
    double x = region.left() + radius;
    double y = region.top() + radius;
    // The corners of a regular octagon: roots are the same on every machine, sines are not.
    double part = radius * Math.sqrt(0.5);
    return List.of(
        new PlanePoint(x + radius, y),
        new PlanePoint(x + part, y + part),
        new PlanePoint(x, y + radius),
        new PlanePoint(x - part, y + part),
        new PlanePoint(x - radius, y),
        new PlanePoint(x - part, y - part),
        new PlanePoint(x, y - radius),
        new PlanePoint(x + part, y - part),
        new PlanePoint(x + radius, y));
  }

  List<PlacedFlat> on(List<PlacedFlat> flats, String sheet) {
    List<PlacedFlat> laid = new ArrayList<>();
    for (PlacedFlat flat : flats) {
      DimensionLayout.Result result = its(flat);
      if (!result.stuck().isEmpty()) {
        faults.add(
            Fault.content(
                    "",
                    "there is no clear place on "
                        + flat.flat().id()
                        + " for the code of the measure "
                        + result.stuck())
                .remedy("move its spots, or set beside")
                .remedy("show fewer measures on this flat")
                .in(sheet));
      }
      laid.add(flat.measured(result.dimensions()));
      note(result, sheet + ": " + flat.flat().id());
    }
    return laid;
  }

  private void note(DimensionLayout.Result result, String flat) {
    for (List<String> pair : result.meeting()) {
      notes.add(
          "%s: the lines of the measures %s meet; move a spot, or set beside."
              .formatted(flat, String.join(" and ", pair)));
    }
    if (!result.covering().isEmpty()) {
      notes.add(
          "%s: no clear place for the code of %s, which covers lines of the drawing."
              .formatted(flat, String.join(", ", result.covering())));
    }
  }

  /** How many lines of a flat meet others, or have codes that cover the drawing. */
  int faultsOn(PlacedFlat flat) {
    return its(flat).faults();
  }

  private DimensionLayout.Result its(PlacedFlat flat) {
    DimensionPlan plan = flat.item().spots().dimensions();
    DimensionFrame frame =
        plan.frame(
            flat::place,
            flat.ink().toBox(),
            flat.flat(),
            flat.placement().scale().doubleValue(),
            plan.lanes(flat.flat()),
            lines(flat.callouts()));
    return DimensionLayout.lay(plan.lines(), frame, lettering);
  }
}
