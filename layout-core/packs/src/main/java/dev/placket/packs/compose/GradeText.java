package dev.placket.packs.compose;

import dev.placket.packs.measure.GradeRule;
import dev.placket.packs.measure.MeasureText;
import dev.placket.packs.measure.MeasureUnit;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Grade rules as they are written: {@code 2.5, XL 3} is 2.5 from size to size, and 3 from the one
 * before XL outward; {@code add 5, 0.5} begins 5 above the sample size.
 */
final class GradeText {
  private static final String ADD = "add ";

  private GradeText() {}

  /**
   * The rule of a group.
   *
   * @throws IllegalArgumentException saying what of the text is no rule
   */
  static GradeRule parse(String text, MeasureUnit unit, List<String> sizes) {
    BigDecimal add = BigDecimal.ZERO;
    BigDecimal step = null;
    Map<String, BigDecimal> from = new LinkedHashMap<>();
    for (String each : text.split("[,;]")) {
      String part = each.strip();
      String size = sizes.stream().filter(s -> part.startsWith(s + " ")).findFirst().orElse("");
      if (part.startsWith(ADD)) {
        add = MeasureText.parse(part.substring(ADD.length()), unit);
      } else if (step == null) {
        step = MeasureText.parse(part, unit);
      } else if (size.isEmpty()) {
        throw new IllegalArgumentException("'" + part + "', which begins with no size");
      } else if (from.put(size, MeasureText.parse(part.substring(size.length()), unit)) != null) {
        throw new IllegalArgumentException("the size '" + size + "' twice");
      }
    }
    if (step == null) {
      throw new IllegalArgumentException("'" + text + "', which has no step");
    }
    return new GradeRule(add, step, from);
  }
}
