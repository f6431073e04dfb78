package dev.placket.demo.result;

import dev.placket.layout.image.PrintLimits;
import dev.placket.layout.image.PrintedDetail;
import java.util.List;
import java.util.Locale;

/** Says in words what of a picture is too fine to print. */
public final class FineWords {
  private FineWords() {}

  /** One sentence for each thing that is finer than the limits. */
  public static List<String> of(PrintedDetail printed, PrintLimits limits) {
    return printed.under(limits).stream().map(FineWords::sentence).toList();
  }

  private static String sentence(PrintedDetail.Warning w) {
    String sizes = mm(w.printed().mm()) + ", under " + mm(w.least().mm());
    return switch (w.kind()) {
      case LINE -> "finest line prints at " + sizes + ": it may break up; draw it broader";
      case LETTERING -> "smallest lettering prints at " + sizes + ": it is hard to read";
      case GAP -> "stitches print " + sizes + " apart: they may close up; space them out";
    };
  }

  private static String mm(double length) {
    return String.format(Locale.ROOT, "%.2f mm", length);
  }
}
