package dev.placket.packs.run;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.packs.run.PackFit.One;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Scale groups that have one scale on all sheets of a pack: that of the sheet on which the group
 * comes out smallest, or the one that a flat of it is held at.
 */
final class OneScale {
  /** A shared scale is rounded down to so many digits, so that every sheet has room for it. */
  private static final MathContext SHARED = new MathContext(7, RoundingMode.DOWN);

  private static final MathContext TWELVE = new MathContext(12, RoundingMode.DOWN);

  private OneScale() {}

  /** The sheets with each of the groups at one scale; sheets without them stay as they are. */
  static List<One> across(List<String> groups, List<One> sheets) {
    List<One> all = sheets;
    for (String group : groups) {
      BigDecimal scale = scale(group, all);
      if (scale != null) {
        List<One> held = new ArrayList<>();
        for (One one : all) {
          held.add(held(group, scale, one));
        }
        all = held;
      }
    }
    return all;
  }

  /** The common scale of a group; null where it is on no more than one sheet. */
  private static @Nullable BigDecimal scale(String group, List<One> sheets) {
    BigDecimal least = null;
    int count = 0;
    for (One one : sheets) {
      Flat flat = first(group, one);
      if (flat != null && one.outcome() instanceof Fit fit) {
        count++;
        BigDecimal ratio = ratio(flat);
        Double stated = flat.held().scale();
        if (stated != null) {
          return BigDecimal.valueOf(stated).divide(ratio, TWELVE);
        }
        BigDecimal its = fit.placement(flat.id()).scale().divide(ratio, TWELVE).round(SHARED);
        least = least == null ? its : least.min(its);
      }
    }
    return count > 1 ? least : null;
  }

  private static One held(String group, BigDecimal scale, One one) {
    Flat flat = first(group, one);
    FitRequest request = one.request();
    if (flat == null || request == null || flat.held().scale() != null) {
      return one;
    }
    double its = scale.multiply(ratio(flat)).doubleValue();
    List<Flat> flats = new ArrayList<>();
    for (Flat f : request.flats()) {
      flats.add(f == flat ? f.withHeld(f.held().atScale(its)) : f);
    }
    return one.again(request.withFlats(flats));
  }

  /** The flat by which the group is held on a sheet: one that is held already, else the first. */
  private static @Nullable Flat first(String group, One one) {
    FitRequest request = one.request();
    Flat first = null;
    for (Flat f : request == null ? List.<Flat>of() : request.flats()) {
      ScaleGroup its = f.group();
      if (its != null && its.name().equals(group)) {
        first =
            first == null || (first.held().scale() == null && f.held().scale() != null) ? f : first;
      }
    }
    return first;
  }

  private static BigDecimal ratio(Flat flat) {
    ScaleGroup group = flat.group();
    return group == null ? BigDecimal.ONE : BigDecimal.valueOf(group.ratio());
  }
}
