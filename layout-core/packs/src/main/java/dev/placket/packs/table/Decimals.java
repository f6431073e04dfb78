package dev.placket.packs.table;

import dev.placket.layout.units.Length;
import dev.placket.packs.text.Lettering;
import java.util.List;
import java.util.regex.Pattern;

/** Where the decimal mark of a column stands, so that the column's block lies in its middle. */
final class Decimals {
  private static final Pattern NUMBER = Pattern.compile("[-+−–±]?[0-9]+([.,][0-9]+)?");
  private static final Pattern MARK = Pattern.compile("[.,]");

  private final double before;
  private final double after;
  private final Length step;
  private final Lettering lettering;

  Decimals(List<String> values, Length step, Lettering lettering) {
    this.step = step;
    this.lettering = lettering;
    double left = 0;
    double right = 0;
    for (String value : values) {
      if (isNumber(value)) {
        String whole = whole(value);
        left = Math.max(left, lettering.width(whole, step));
        right = Math.max(right, lettering.width(value.substring(whole.length()), step));
      }
    }
    before = left;
    after = right;
  }

  static boolean isNumber(String value) {
    return NUMBER.matcher(value).matches();
  }

  /** What the block needs across, in points. */
  double width() {
    return before + after;
  }

  /** Where a number begins whose column runs from one edge to the other. */
  double left(String value, double columnLeft, double columnRight) {
    double mark = (columnLeft + columnRight) / 2 + (before - after) / 2;
    return mark - lettering.width(whole(value), step);
  }

  private static String whole(String value) {
    return MARK.split(value, 2)[0];
  }
}
