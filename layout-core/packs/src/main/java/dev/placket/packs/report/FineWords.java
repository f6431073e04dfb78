package dev.placket.packs.report;

import dev.placket.layout.density.EffectiveDensity;
import dev.placket.layout.units.Length;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.base.PrintedDetail;
import dev.placket.pictures.prepare.ResolvedShare;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts into words what in a picture is too fine to print. */
public final class FineWords {

  private FineWords() {}

  /** One sentence for each thing that is finer than the limits, in millimetres. */
  public static List<String> of(PrintedDetail printed, PrintLimits limits) {
    return of(printed, limits, Units.MM);
  }

  /** One sentence for each thing that is finer than the limits. */
  public static List<String> of(PrintedDetail printed, PrintLimits limits, Units units) {
    List<String> sentences = new ArrayList<>();
    for (PrintedDetail.Warning w : printed.under(limits)) {
      sentences.add(sentence(w, units));
    }
    return sentences;
  }

  /** How fine it prints, where anything of it is known. */
  public static Optional<String> all(PrintedDetail printed) {
    List<String> parts = new ArrayList<>();
    add(parts, "finest line ", printed.line());
    add(parts, "smallest lettering ", printed.lettering());
    add(parts, "narrowest stitch gap ", printed.gap());
    return parts.isEmpty() ? Optional.empty() : Optional.of("prints " + String.join(", ", parts));
  }

  private static void add(List<String> parts, String what, @Nullable Length length) {
    if (length != null) {
      parts.add(what + Units.MM.fine(length));
    }
  }

  /**
   * That a picture was enlarged before export, where it was.
   *
   * @param density its pixels per printed inch; null for a drawing
   * @param share the share of them that carries detail; null for a drawing
   */
  public static Optional<String> enlarged(
      @Nullable EffectiveDensity density, @Nullable Double share) {
    if (density == null || share == null || share >= ResolvedShare.ENLARGED) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "it was enlarged before export: of %.0f pixels per inch only about %.0f are detail;"
                + " export it again from the drawing",
            density.least(),
            ResolvedShare.resolved(density, share).least()));
  }

  /** One sentence of a thing that is finer than its limit. */
  static String sentence(PrintedDetail.Warning w, Units units) {
    String sizes = units.under(w.printed(), w.least());
    return switch (w.kind()) {
      case LINE -> "finest line prints at " + sizes + ": it may break up; draw it wider";
      case LETTERING -> "smallest lettering prints at " + sizes + ": it is hard to read";
      case GAP -> "stitches print " + sizes + " apart: they may merge; space them out";
    };
  }
}
