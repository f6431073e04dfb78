package dev.placket.packs.report;

import dev.placket.layout.density.PixelSize;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Numbers as a reader sees them, the same on every machine. */
public final class Figures {
  private static final int GROUP = 3;

  /** So many names stand in one line. */
  private static final int NAMES = 4;

  private Figures() {}

  /** With so many decimals. */
  public static String fixed(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** With so many decimals, rounded up: for what is stated as a maximum. */
  static String up(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.CEILING).toPlainString();
  }

  /** With at most so many decimals, none of them a zero at the end. */
  public static String trimmed(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    BigDecimal stripped = rounded.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }

  /** Pixels to ask for, as in {@code 1,180 × 1,460}. */
  static String pixels(PixelSize size) {
    return grouped(size.width()) + " × " + grouped(size.height());
  }

  /** Bytes as kB, or as MB from a million on, as in {@code 41 kB} and {@code 1.2 MB}. */
  static String bytes(long bytes) {
    return bytes < 999_500
        ? Math.max(1, (bytes + 500) / 1000) + " kB"
        : fixed(bytes / 1e6, 1) + " MB";
  }

  /** The first few of these, and how many more there are. */
  static String some(List<String> names) {
    if (names.size() <= NAMES + 1) {
      return String.join(", ", names);
    }
    return String.join(", ", names.subList(0, NAMES)) + " and " + (names.size() - NAMES) + " more";
  }

  private static String grouped(int value) {
    StringBuilder digits = new StringBuilder(Integer.toString(value));
    for (int at = digits.length() - GROUP; at > 0; at -= GROUP) {
      digits.insert(at, ',');
    }
    return digits.toString();
  }
}
