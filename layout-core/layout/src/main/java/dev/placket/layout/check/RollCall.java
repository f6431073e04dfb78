package dev.placket.layout.check;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.flat.Flat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Every flat is placed exactly once, at a scale above zero and at a position to 1e-9 pt. */
final class RollCall {
  private static final int POSITION_DECIMALS = 9;

  private RollCall() {}

  /** The flats that stand on the sheet, in the order of the request. */
  static List<Placed> take(List<Flat> flats, Fit fit, Breaches breaches) {
    List<Placed> placed = new ArrayList<>();
    for (Flat flat : flats) {
      List<Placement> its =
          fit.placements().stream().filter(p -> p.flat().equals(flat.id())).toList();
      if (its.size() != 1) {
        breaches.add("placed once", "flat " + flat.id() + " is placed " + its.size() + " times");
      }
      its.stream().filter(p -> isSound(p, breaches)).forEach(p -> placed.add(Placed.of(flat, p)));
    }
    Set<String> known = flats.stream().map(Flat::id).collect(Collectors.toSet());
    for (Placement p : fit.placements()) {
      if (!known.contains(p.flat())) {
        breaches.add("placed once", "flat " + p.flat() + " was not asked for");
      }
    }
    return placed;
  }

  private static boolean isSound(Placement p, Breaches breaches) {
    if (decimals(p.left()) > POSITION_DECIMALS || decimals(p.top()) > POSITION_DECIMALS) {
      breaches.add(
          "rounding", p.flat() + " stands at " + p.left() + ", " + p.top() + ": finer than 1e-9");
    }
    if (p.scale().signum() <= 0) {
      breaches.add("scale", p.flat() + " has scale " + p.scale());
      return false;
    }
    return true;
  }

  private static int decimals(BigDecimal number) {
    return number.stripTrailingZeros().scale();
  }
}
