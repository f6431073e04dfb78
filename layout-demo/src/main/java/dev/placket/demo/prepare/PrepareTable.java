package dev.placket.demo.prepare;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.packs.report.FineWords;
import dev.placket.packs.report.FlatRow;
import dev.placket.packs.report.TextLines;
import dev.placket.pictures.base.PictureNote;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.prepare.ResolvedShare;
import dev.placket.pictures.prepare.WeightPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Writes what a designer reads: each picture before and after, in lines of at most 80 columns. */
final class PrepareTable {
  private static final int WIDTH = 80;
  private static final int NAME = 21;
  private static final String UNDER = "    ";
  private static final int HEAVIEST = 3;

  private final DensityTargets targets;
  private final PrintLimits limits;
  private final TextLines text = new TextLines(WIDTH, false);

  private PrepareTable(DensityTargets targets, PrintLimits limits) {
    this.targets = targets;
    this.limits = limits;
  }

  static String of(PrepareRun.Ready ready, long limit, DensityTargets targets, PrintLimits limits) {
    List<PreparedPicture> all = ready.done();
    PrepareTable table = new PrepareTable(targets, limits);
    table.line(
        String.format(
            Locale.ROOT,
            "%-21s %8s %8s %13s %13s %5s",
            "Picture",
            "kB",
            "now",
            "pixels",
            "now",
            "px/in"));
    all.forEach(table::add);
    long before = all.stream().mapToLong(PreparedPicture::bytesBefore).sum();
    long after = all.stream().mapToLong(PreparedPicture::bytesAfter).sum();
    table.line(String.format(Locale.ROOT, "%-21s %8s %8s", "Together", kilo(before), kilo(after)));
    WeightPlan plan = ready.plan();
    if (plan != null) {
      table.weight(plan, limit, all);
    }
    return table.text.toString();
  }

  private void weight(WeightPlan plan, long limit, List<PreparedPicture> all) {
    double least = plan.densities().stream().mapToDouble(d -> d).max().orElse(0);
    line(
        String.format(
            Locale.ROOT,
            "Reduced to %.0f px/in for a size limit of %s kB; estimated %s kB",
            least,
            kilo(limit),
            kilo(Math.round(plan.total()))));
    long came = all.stream().mapToLong(PreparedPicture::bytesAfter).sum();
    if (came > limit) {
      line("Over the size limit by " + kilo(came - limit) + " kB. Largest first:");
      all.stream()
          .sorted(Comparator.comparingLong(PreparedPicture::bytesAfter).reversed())
          .limit(HEAVIEST)
          .forEach(
              d ->
                  line(
                      "    " + d.job().file().getFileName() + ", " + kilo(d.bytesAfter()) + " kB"));
    }
  }

  private void add(PreparedPicture d) {
    line(
        String.format(
            Locale.ROOT,
            "%-21s %8s %8s %13s %13s %5.0f",
            cut(d.job().name()),
            kilo(d.bytesBefore()),
            kilo(d.bytesAfter()),
            pixels(d.before()),
            pixels(d.after()),
            d.density().least()));
    for (PictureNote note : d.notes()) {
      text.wrapped(UNDER, (note.changesPicture() ? FlatRow.CHANGED : "") + note.text());
    }
    line("    " + String.join(", ", steps(d)));
    if (d.state(targets) == PrintState.SOFT) {
      line("    S soft: it will look blurred at this size; ask for " + wanted(d) + " pixels");
    }
    if (d.resolved() < ResolvedShare.ENLARGED) {
      line(
          String.format(
              Locale.ROOT,
              "    enlarged before export: only about %.0f px/in carry detail",
              Math.min(d.density().least(), d.resolved() * d.sourceDensity())));
    }
    FineWords.of(d.printed(), limits).forEach(w -> text.wrapped(UNDER, w));
  }

  private static List<String> steps(PreparedPicture d) {
    List<String> steps = new ArrayList<>();
    PixelSize before = d.before();
    if (before == null) {
      steps.add("rendered at the exact size");
    }
    if (d.cleared()) {
      steps.add(d.coloured() ? "single-colour background cleared" : "white background cleared");
    }
    if (before != null) {
      boolean same = before.equals(d.after());
      steps.add(same ? "same number of pixels" : "cropped to the drawing bounds");
    }
    steps.add(d.fewer() ? "PNG of few colours, visually lossless" : "lossless PNG");
    return steps;
  }

  /** The pixels that the drawing needs for the intended density. */
  private String wanted(PreparedPicture d) {
    double grow = targets.aim() / d.density().least();
    return String.format(
        Locale.ROOT,
        "%.0f × %.0f",
        Math.ceil(d.after().width() * grow),
        Math.ceil(d.after().height() * grow));
  }

  private static String pixels(@Nullable PixelSize size) {
    return size == null ? "-" : size.width() + " × " + size.height();
  }

  /** Thousands of bytes. */
  private static String kilo(long bytes) {
    return String.format(Locale.ROOT, "%,.1f", bytes / 1000.0);
  }

  private static String cut(String name) {
    return name.length() <= NAME ? name : name.substring(0, NAME - 1) + "…";
  }

  private void line(String words) {
    text.line(words);
  }
}
