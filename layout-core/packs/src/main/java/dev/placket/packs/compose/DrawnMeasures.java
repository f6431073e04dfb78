package dev.placket.packs.compose;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.units.Length;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackMeasurements;
import dev.placket.packs.dimensions.MeasureLine;
import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.Rounding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Checks lines of measure against the list: each has its point there, and a drawing that states its
 * real size shows about the length of the sample size. No value is taken from a drawing.
 */
final class DrawnMeasures {
  /** A drawn length may be so far off before it is noted, as a share of the stated one. */
  private static final double OFF = 0.15;

  private final Described described;
  private final MeasuredList list;
  private final boolean asked;

  DrawnMeasures(Described described, MeasuredList list) {
    this.described = described;
    this.list = list;
    PackMeasurements said = described.pack().measurements();
    this.asked = said != null && said.checkDrawings();
  }

  /** What is noted on the flats of a sheet; codes that the list lacks are slips. */
  List<String> notes(String sheet, List<FlatSet.Item> items) {
    List<String> notes = new ArrayList<>();
    for (FlatSet.Item item : items) {
      for (MeasureLine dimension : item.spots().dimensions().lines()) {
        String path =
            "sheets/" + sheet + "/flats/" + item.flat().id() + "/dimensions/" + dimension.code();
        GradedPoint point = point(dimension.code());
        if (!list.lines().containsKey(dimension.code())) {
          described
              .faults()
              .unknown(
                  described.places().of(path),
                  "no point of measure",
                  dimension.code(),
                  list.lines().keySet());
        } else if (point != null && asked) {
          note(item.flat(), dimension, point, notes);
        }
      }
    }
    return notes;
  }

  private @Nullable GradedPoint point(String code) {
    return list.table().points().stream()
        .filter(p -> p.point().code().equals(code))
        .findFirst()
        .orElse(null);
  }

  private void note(Flat flat, MeasureLine dimension, GradedPoint point, List<String> notes) {
    Length unit = flat.unitLength();
    BigDecimal stated = point.values().get(list.table().sample());
    if (unit == null || stated == null || stated.signum() <= 0) {
      return;
    }
    double drawn = unit.times(dimension.length()).mm();
    if (Math.abs(drawn - stated.doubleValue()) > OFF * stated.doubleValue()) {
      Rounding shown = list.shown().get(0);
      notes.add(
          "point %s on %s: drawn %s, the list says %s; check the drawing."
              .formatted(
                  dimension.code(),
                  flat.id(),
                  text(shown, new BigDecimal(drawn).setScale(0, RoundingMode.HALF_EVEN)),
                  text(shown, stated)));
    }
  }

  private static String text(Rounding shown, BigDecimal mm) {
    return shown.text(shown.nearest(mm)) + " " + shown.unit().sign();
  }
}
