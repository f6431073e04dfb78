package dev.placket.demo.prepare;

import dev.placket.layout.density.DensityTargets;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.packs.report.FineWords;
import dev.placket.packs.report.FlatRow;
import dev.placket.packs.report.TextLines;
import dev.placket.pictures.PictureNote;
import dev.placket.pictures.PrintLimits;
import dev.placket.pictures.prepare.ResolvedShare;
import dev.placket.pictures.prepare.WeightPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a designer reads: each picture before and after, at most 80 signs a line. */
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
    List<Done> all = ready.done();
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
    long before = all.stream().mapToLong(Done::bytesBefore).sum();
    long after = all.stream().mapToLong(Done::bytesAfter).sum();
    table.line(String.format(Locale.ROOT, "%-21s %8s %8s", "Together", kilo(before), kilo(after)));
    WeightPlan plan = ready.plan();
    if (plan != null) {
      table.weight(plan, limit, all);
    }
    return table.text.toString();
  }

  private void weight(WeightPlan plan, long limit, List<Done> all) {
    double least = plan.densities().stream().mapToDouble(d -> d).max().orElse(0);
    line(
        String.format(
            Locale.ROOT,
            "Lowered to %.0f px/in for a weight of %s kB; foreseen %s kB",
            least,
            kilo(limit),
            kilo(Math.round(plan.total()))));
    long came = all.stream().mapToLong(Done::bytesAfter).sum();
    if (came > limit) {
      line("It cannot hold: over by " + kilo(came - limit) + " kB. Heaviest first:");
      all.stream()
          .sorted(Comparator.comparingLong(Done::bytesAfter).reversed())
          .limit(HEAVIEST)
          .forEach(
              d ->
                  line(
                      "    " + d.job().file().getFileName() + ", " + kilo(d.bytesAfter()) + " kB"));
    }
  }

  private void add(Done d) {
    line(
        String.format(
            Locale.ROOT,
            "%-21s %8s %8s %13s %13s %5.0f",
            cut(d.job().file().getFileName().toString()),
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
              "    enlarged before export: only about %.0f px/in of it are detail",
              Math.min(d.density().least(), d.resolved() * d.sourceDensity())));
    }
    FineWords.of(d.printed(), limits).forEach(w -> text.wrapped(UNDER, w));
  }

  private static List<String> steps(Done d) {
    List<String> steps = new ArrayList<>();
    PixelSize before = d.before();
    if (before == null) {
      steps.add("drawn at exactly its pixels");
    }
    if (d.cleared()) {
      steps.add(d.coloured() ? "ground of one colour cleared" : "white ground cleared");
    }
    if (before != null) {
      boolean same = before.equals(d.after());
      steps.add(same ? "no pixel changed in number" : "cropped to its ink, never enlarged");
    }
    steps.add(d.fewer() ? "PNG of few colours, a loss that is not seen" : "PNG without loss");
    return steps;
  }

  /** The pixels that the ink would need to reach the density aimed at. */
  private String wanted(Done d) {
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
