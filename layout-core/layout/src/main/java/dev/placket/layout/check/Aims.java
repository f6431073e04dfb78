package dev.placket.layout.check;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Role;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The sets of flats whose scales hang together, and the scale each set aims at, worked out anew in
 * fractions.
 *
 * <p>Common scale 1 is scale 1 of the leading flat: the first front, without one the first view,
 * without one the first flat. A set that does not hold the leading flat aims, with its first
 * member, at that one's share of the leading flat's longest side.
 */
final class Aims {
  /**
   * Flats with one scale among them: a scale group, or a flat that is in none.
   *
   * @param members in the order of the request
   * @param atOne the common scale of the set at common scale 1
   */
  record Set(List<Flat> members, Quotient atOne) {
    boolean holds(String id) {
      return members.stream().anyMatch(f -> f.id().equals(id));
    }
  }

  private Aims() {}

  static List<Set> of(List<Flat> flats) {
    Flat lead = lead(flats);
    List<Set> sets = new ArrayList<>();
    for (List<Flat> members : split(flats)) {
      sets.add(new Set(members, atOne(members, lead)));
    }
    return sets;
  }

  private static Flat lead(List<Flat> flats) {
    return first(
        flats, f -> f.role() == Role.FRONT, first(flats, f -> f.role().isView(), flats.get(0)));
  }

  private static Flat first(List<Flat> flats, Predicate<Flat> wanted, Flat otherwise) {
    return flats.stream().filter(wanted).findFirst().orElse(otherwise);
  }

  private static List<List<Flat>> split(List<Flat> flats) {
    List<List<Flat>> sets = new ArrayList<>();
    Map<String, List<Flat>> groups = new LinkedHashMap<>();
    for (Flat f : flats) {
      List<Flat> mine = f.group() == null ? null : groups.get(f.group().name());
      if (mine == null) {
        mine = new ArrayList<>();
        sets.add(mine);
        if (f.group() != null) {
          groups.put(f.group().name(), mine);
        }
      }
      mine.add(f);
    }
    return sets;
  }

  private static Quotient atOne(List<Flat> members, Flat lead) {
    if (members.stream().anyMatch(f -> f.id().equals(lead.id()))) {
      return Quotient.of(BigDecimal.ONE).per(Placed.ratio(lead));
    }
    Flat first = members.get(0);
    BigDecimal itsShare = lead.role().isView() ? BigDecimal.ONE : Exact.of(lead.share());
    return Quotient.of(Exact.of(first.share()).multiply(Placed.longestSide(lead)))
        .per(itsShare)
        .per(Placed.longestSide(first))
        .per(Placed.ratio(first));
  }
}
