package dev.placket.packs.run;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.ScaleNote;
import dev.placket.packs.flats.ScaleSeries;
import dev.placket.packs.run.PackFit.One;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Brings a fitted sheet to round scales: first the views, then, in the room that these leave, the
 * details.
 *
 * <p>A flat goes down to the next round scale, never up; what is given up takes nothing from
 * others. What has no real length, what is held, and photographs, swatches, steps and colourways
 * stay as they are. A sheet that finds no arrangement at round scales stays as it was, too.
 */
final class RoundedFit {
  private final ScaleSeries scales;
  private final List<String> notes;

  /**
   * For the sheets of a pack.
   *
   * @param notes takes a line for each flat without a round scale
   */
  RoundedFit(ScaleSeries scales, List<String> notes) {
    this.scales = scales;
    this.notes = notes;
  }

  /** The sheet at round scales as far as they go. */
  One of(One one) {
    List<String> steps = new ArrayList<>();
    One views = held(one, f -> f.role().isView(), steps);
    One all = held(views, f -> f.role() == Role.DETAIL || f.role() == Role.ARTWORK, steps);
    if (!steps.isEmpty()) {
      notes.add("sheet " + one.id() + ": round scales: " + String.join(", ", steps) + ".");
    }
    return all;
  }

  private One held(One one, Predicate<Flat> which, List<String> steps) {
    FitRequest request = one.request();
    if (request == null || !(one.outcome() instanceof Fit fit)) {
      return one;
    }
    List<Flat> flats = new ArrayList<>();
    List<String> said = new ArrayList<>();
    for (Flat flat : request.flats()) {
      boolean free = which.test(flat) && isFree(flat, request) && leads(flat, request);
      Double scale = free ? round(flat, fit, said) : null;
      flats.add(scale == null ? flat : flat.withHeld(flat.held().atScale(scale)));
    }
    if (said.isEmpty()) {
      return one;
    }
    One rounded = one.again(request.withFlats(flats));
    if (rounded.outcome() instanceof Fit) {
      steps.addAll(said);
      return rounded;
    }
    notes.add("sheet " + one.id() + ": no arrangement at round scales was found.");
    return one;
  }

  /** Neither it nor its group is held. */
  private static boolean isFree(Flat flat, FitRequest request) {
    ScaleGroup group = flat.group();
    boolean held =
        group == null
            ? flat.held().scale() != null
            : request.flats().stream()
                .filter(f -> isIn(f, group))
                .anyMatch(f -> f.held().scale() != null);
    return !held && flat.list() == null && flat.unitLength() != null;
  }

  /** It holds all of its group: the front, else the first of the largest. */
  private static boolean leads(Flat flat, FitRequest request) {
    ScaleGroup group = flat.group();
    return group == null
        || request.flats().stream()
                .filter(f -> isIn(f, group))
                .reduce((a, b) -> rank(b) > rank(a) ? b : a)
                .orElse(flat)
            == flat;
  }

  private static double rank(Flat flat) {
    ScaleGroup group = flat.group();
    return flat.role() == Role.FRONT ? Double.MAX_VALUE : group == null ? 1 : group.ratio();
  }

  private static boolean isIn(Flat flat, ScaleGroup group) {
    ScaleGroup its = flat.group();
    return its != null && its.name().equals(group.name());
  }

  /** The held scale that is round, in points per drawing unit; null where the flat stays. */
  private @Nullable Double round(Flat flat, Fit fit, List<String> said) {
    Length unit = flat.unitLength();
    double unitPt = unit == null ? 1 : unit.pt();
    double scale = fit.placement(flat.id()).scale().doubleValue() / unitPt;
    double most = flat.role().isView() ? scales.most() : 1;
    Double round = scales.under(scale, most);
    double longest = round == null ? 0 : round * unitPt * flat.ink().longestSide();
    if (round == null || longest < flat.limits().least().pt()) {
      notes.add(
          flat.id() + ": no round scale under " + ScaleNote.scale(scale) + " that it may take.");
      return null;
    }
    said.add(
        flat.id() + " " + ScaleSeries.text(round) + " (fits at " + ScaleNote.scale(scale) + ")");
    return round * unitPt;
  }
}
