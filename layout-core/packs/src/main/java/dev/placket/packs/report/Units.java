package dev.placket.packs.report;

import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** The unit in which a designer reads printed lengths. */
public enum Units {
  /** Millimetres. */
  MM("mm", 1, 2),
  /** Inches. */
  IN("in", 2, 4);

  /** The maximum of further decimals that keep two figures apart. */
  private static final int MORE = 3;

  /** The unit's sign. */
  private final String sign;

  /** Decimals of a size. */
  private final int decimals;

  /** Decimals of what is as fine as a line. */
  private final int fineDecimals;

  Units(String sign, int decimals, int fineDecimals) {
    this.sign = sign;
    this.decimals = decimals;
    this.fineDecimals = fineDecimals;
  }

  /** The unit's sign, as in {@code mm}. */
  public String sign() {
    return sign;
  }

  /** Width and height without the unit, as in {@code 104.1 × 123.2}; both in points. */
  public String size(double width, double height) {
    return figure(Length.pt(width), decimals) + " × " + figure(Length.pt(height), decimals);
  }

  /**
   * Both sides of a paper with the unit, as in {@code 297 × 210 mm} or {@code 8.5 × 11 in}: no
   * digits that say nothing.
   */
  public String paper(PaperSize paper) {
    return plain(paper.width()) + " × " + plain(paper.height()) + " " + sign;
  }

  private String plain(Length length) {
    BigDecimal figure = new BigDecimal(figure(length, decimals)).stripTrailingZeros();
    return figure.toPlainString();
  }

  /** A length with its unit, as in {@code 22.0 mm}. */
  public String length(Length length) {
    return figure(length, decimals) + " " + sign;
  }

  /** A length as fine as a line with its unit, as in {@code 0.18 mm}. */
  public String fine(Length length) {
    return figure(length, fineDecimals) + " " + sign;
  }

  /**
   * A length as fine as a line beside the limit that it stays under, as in {@code 0.176 mm, under
   * 0.18 mm}: with as many decimals as tell the two apart, within reason.
   */
  public String under(Length printed, Length limit) {
    String least = figure(limit, fineDecimals);
    int places = fineDecimals;
    while (places < fineDecimals + MORE
        && new BigDecimal(figure(printed, places)).compareTo(new BigDecimal(least)) >= 0) {
      places++;
    }
    return figure(printed, places) + " " + sign + ", under " + least + " " + sign;
  }

  /** A length of so many points with its unit, rounded up: what is to be made free is enough. */
  public String enough(double points) {
    return figure(Length.pt(points), decimals, RoundingMode.UP) + " " + sign;
  }

  private String figure(Length length, int places) {
    return figure(length, places, RoundingMode.HALF_UP);
  }

  private String figure(Length length, int places, RoundingMode rounding) {
    double value = this == MM ? length.mm() : length.in();
    return BigDecimal.valueOf(value).setScale(places, rounding).toPlainString();
  }
}
