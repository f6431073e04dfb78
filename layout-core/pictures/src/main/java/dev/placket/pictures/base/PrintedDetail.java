package dev.placket.pictures.base;

import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The finest things of a picture at its printed size; null for what it has not.
 *
 * @param line the finest line
 * @param lettering the capital height of the smallest lettering
 * @param gap the narrowest clear gap between stitches
 */
public record PrintedDetail(
    @Nullable Length line, @Nullable Length lettering, @Nullable Length gap) {
  /** What is too fine to print. */
  public enum Kind {
    /** A line that breaks up or vanishes. */
    LINE,
    /** Lettering too small to read. */
    LETTERING,
    /** A stitch line that closes up to a plain line. */
    GAP
  }

  /**
   * One thing too fine.
   *
   * @param kind which
   * @param printed how large it prints
   * @param least how large it should
   */
  public record Warning(Kind kind, Length printed, Length least) {}

  /** What is finer than the limits: line, lettering, gap in this order; often empty. */
  public List<Warning> under(PrintLimits limits) {
    List<Warning> warnings = new ArrayList<>();
    check(warnings, Kind.LINE, line, limits.line());
    check(warnings, Kind.LETTERING, lettering, limits.lettering());
    check(warnings, Kind.GAP, gap, limits.gap());
    return List.copyOf(warnings);
  }

  private static void check(
      List<Warning> warnings, Kind kind, @Nullable Length printed, Length least) {
    // A limit met to a millionth is met: lengths come from sums of doubles.
    if (printed != null && printed.pt() < least.pt() * (1 - 1e-6)) {
      warnings.add(new Warning(kind, printed, least));
    }
  }
}
