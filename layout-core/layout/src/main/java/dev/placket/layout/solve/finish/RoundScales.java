package dev.placket.layout.solve.finish;

import static dev.placket.layout.solve.finish.Footprint.exact;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.solve.model.Model;
import dev.placket.layout.solve.model.Scales;
import dev.placket.layout.units.Length;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * The common scales of all classes in decimals of twelve digits, so that limits and the front's
 * rules hold without any tolerance.
 */
final class RoundScales {
  static final int DIGITS = 12;
  static final MathContext DOWN = new MathContext(DIGITS, RoundingMode.DOWN);
  static final MathContext UP = new MathContext(DIGITS, RoundingMode.UP);

  /** One unit in the last digit, and what the doubles of the search add to it. */
  private static final BigDecimal UNIT_AND_NOISE = new BigDecimal("1.005");

  private final Model model;

  /** The greatest common scale of each class; null where nothing limits it. */
  private final @Nullable BigDecimal[] greatest;

  /** The longest side of each flat at common scale 1. */
  private final BigDecimal[] longest;

  RoundScales(Model model) {
    this.model = model;
    this.greatest = greatest(model);
    this.longest = model.flats.stream().map(RoundScales::longest).toArray(BigDecimal[]::new);
  }

  static BigDecimal ratio(Flat f) {
    return f.group() == null ? BigDecimal.ONE : exact(f.group().ratio());
  }

  /** The longest side at common scale 1. */
  private static BigDecimal longest(Flat f) {
    return ratio(f).multiply(Footprint.longest(f));
  }

  /** From the sizes themselves: as doubles, these scales may be a hair above them. */
  private static @Nullable BigDecimal[] greatest(Model model) {
    @Nullable BigDecimal[] greatest = new BigDecimal[model.scales.base.length];
    for (int i = 0; i < model.n; i++) {
      Flat f = model.flats.get(i);
      Length limit = f.limits().greatest();
      if (limit != null && f.held().scale() == null) {
        int k = model.scales.classOf[i];
        BigDecimal most = exact(limit.pt()).divide(longest(f), DOWN);
        BigDecimal known = greatest[k];
        greatest[k] = known == null ? most : known.min(most);
      }
    }
    return greatest;
  }

  /** The common scale of each class, or null if limits and rules then disagree. */
  BigDecimal @Nullable [] at(BigDecimal scale) {
    Scales s = model.scales;
    s.at(scale.doubleValue());
    BigDecimal[] commons = new BigDecimal[s.base.length];
    BigDecimal[] lost = new BigDecimal[s.base.length];
    for (int k = 0; k < commons.length; k++) {
      boolean least = s.value[k] <= s.least[k] && s.least[k] < s.greatest[k];
      BigDecimal due = exact(s.value[k]).round(least ? UP : DOWN);
      BigDecimal most = greatest[k];
      commons[k] = most == null ? due : due.min(most);
      lost[k] = unit(s.value[k]);
    }
    for (int round = 0; round <= commons.length; round++) {
      for (Scales.Cap c : s.caps) {
        keepUnder(c, commons, lost);
      }
    }
    return keepLimits(commons) && areNear(commons, lost) ? commons : null;
  }

  private static BigDecimal unit(double scale) {
    BigDecimal due = exact(scale);
    return UNIT_AND_NOISE.scaleByPowerOfTen(due.precision() - due.scale() - DIGITS);
  }

  /** What a class loses by rounding, those that stay under it lose as well. */
  private void keepUnder(Scales.Cap c, BigDecimal[] commons, BigDecimal[] lost) {
    BigDecimal room = commons[c.under()].multiply(longest[c.over()]);
    if (c.less() > 0) {
      room = room.subtract(new BigDecimal("0.000999"));
    }
    BigDecimal most = room.divide(longest[c.flat()], DOWN);
    if (most.compareTo(commons[c.of()]) < 0) {
      commons[c.of()] = most;
      lost[c.of()] =
          unit(model.scales.value[c.of()])
              .add(lost[c.under()].multiply(longest[c.over()]).divide(longest[c.flat()], UP));
    }
  }

  /** Whether each is what it was due to be, but for what rounding took. */
  private boolean areNear(BigDecimal[] commons, BigDecimal[] lost) {
    for (int k = 0; k < commons.length; k++) {
      if (exact(model.scales.value[k]).subtract(commons[k]).compareTo(lost[k]) > 0) {
        return false;
      }
    }
    return true;
  }

  private boolean keepLimits(BigDecimal[] commons) {
    for (int i = 0; i < model.n; i++) {
      Flat f = model.flats.get(i);
      if (f.held().scale() != null) {
        continue;
      }
      BigDecimal size = commons[model.scales.classOf[i]].multiply(longest[i]);
      boolean under = size.compareTo(exact(f.limits().least().pt())) < 0;
      if (size.signum() <= 0 || (under && !isFixed(i))) {
        return false;
      }
    }
    return true;
  }

  /** Whether least and greatest leave one size only, which twelve digits need not hit. */
  private boolean isFixed(int i) {
    int k = model.scales.classOf[i];
    return model.scales.least[k] >= model.scales.greatest[k] * (1 - 1e-11);
  }
}
