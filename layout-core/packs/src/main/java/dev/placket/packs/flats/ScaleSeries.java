package dev.placket.packs.flats;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Scales that a factory reads without a calculator.
 *
 * @param series printed length over real length, as 0.1 for 1:10
 * @param most what of the scale of views may be given up for a round one, as a share of it; details
 *     go down to the next round one whatever it takes
 */
public record ScaleSeries(List<Double> series, double most) {
  /**
   * ISO 5455 from 50:1 to 1:50, and between its steps 1:2.5, 1:4, 1:8, 1:12, 1:15, 1:25 and what
   * they are upside down, as drawings of garments have them by common practice.
   */
  public static final List<Double> USUAL =
      List.of(
          50.0, 25.0, 20.0, 15.0, 12.0, 10.0, 8.0, 5.0, 4.0, 2.5, 2.0, 1.0, 1 / 2.0, 1 / 2.5,
          1 / 4.0, 1 / 5.0, 1 / 8.0, 1 / 10.0, 1 / 12.0, 1 / 15.0, 1 / 20.0, 1 / 25.0, 1 / 50.0);

  /** Scales this near to each other print alike: less than a hundredth of a millimetre on paper. */
  private static final double SAME = 2e-5;

  /** Copies the series. */
  public ScaleSeries {
    series = List.copyOf(series);
  }

  /**
   * The largest of the series that is not above a scale; null where it gives up too much.
   *
   * @param atMost what may be given up, as a share of the scale
   */
  public @Nullable Double under(double scale, double atMost) {
    double best = 0;
    for (double each : series) {
      if (each <= scale * (1 + SAME)) {
        best = Math.max(best, each);
      }
    }
    return best > 0 && best >= scale * (1 - atMost) ? best : null;
  }

  /** A scale of the series in figures, as in {@code 1:2.5} or {@code 1:3.75}, not rounded. */
  public static String text(double scale) {
    String over = figure(scale);
    String under = figure(1 / scale);
    boolean enlarged = scale > 1 && over.length() <= under.length();
    return enlarged ? over + ":1" : "1:" + under;
  }

  private static String figure(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_EVEN);
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** The longest of its figures. */
  String widest() {
    return series.stream()
        .map(ScaleSeries::text)
        .max(Comparator.comparingInt(String::length))
        .orElse("");
  }

  /** Whether a scale is one of the series. */
  public boolean has(double scale) {
    return series.stream().anyMatch(each -> Math.abs(each - scale) <= SAME * each);
  }
}
