package dev.placket.packs.description;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** How a description spells lengths, sizes and words, so that reading gives the same value. */
final class Spelled {
  private Spelled() {}

  /** In the first of mm, in and pt that gives the same length with few decimals. */
  static String length(Length length) {
    String mm = decimals(length.mm());
    if (Length.mm(Double.parseDouble(mm)).equals(length)) {
      return mm + "mm";
    }
    String in = decimals(length.in());
    if (Length.in(Double.parseDouble(in)).equals(length)) {
      return in + "in";
    }
    return new BigDecimal(Double.toString(length.pt())).toPlainString() + "pt";
  }

  static String track(GridTrack track) {
    if (track instanceof GridTrack.Auto) {
      return "auto";
    }
    return track instanceof GridTrack.Fixed f
        ? length(f.length())
        : number(((GridTrack.Share) track).fr()) + "fr";
  }

  static String number(double value) {
    String plain = new BigDecimal(Double.toString(value)).toPlainString();
    return plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain;
  }

  /** The word of a constant, as in {@code top-left}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Constants by their words. */
  static <E extends Enum<E>> Map<String, E> words(E[] constants) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E each : constants) {
      words.put(word(each), each);
    }
    return words;
  }

  private static String decimals(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_EVEN);
    BigDecimal plain = rounded.stripTrailingZeros();
    return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
  }
}
