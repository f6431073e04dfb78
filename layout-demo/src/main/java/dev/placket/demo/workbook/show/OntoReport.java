package dev.placket.demo.workbook.show;

import dev.placket.demo.PlacedFlat;
import dev.placket.demo.folder.FlatFolder;
import dev.placket.demo.workbook.place.Anchored;
import dev.placket.demo.workbook.place.Fitted;
import dev.placket.layout.density.PrintState;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** What a designer reads after a run onto a workbook: at most 80 signs a line. */
public final class OntoReport {
  private static final double MM_PER_POINT = 25.4 / 72;
  private static final double LEAST_SHOWN = 0.0005;

  private final StringBuilder text = new StringBuilder();

  private OntoReport() {}

  /**
   * The report.
   *
   * @param onto the workbook that was read
   * @param folders the flats of each worksheet
   * @param fitted the worksheets in play
   * @param leeway pixels that readers may differ by
   * @param written where the files went
   */
  public static String of(
      Path onto, List<FlatFolder> folders, List<Fitted> fitted, int leeway, List<Path> written) {
    OntoReport report = new OntoReport();
    report.line("%s", "Onto " + onto);
    for (int i = 0; i < fitted.size(); i++) {
      report.worksheet(fitted.get(i), folders.get(i));
    }
    report.line("");
    report.line("No picture touches a labelled cell or another picture, even where a reader");
    report.line(
        "makes columns and rows %d pixel%s smaller, or wider by any amount.",
        leeway, leeway == 1 ? "" : "s");
    report.line("");
    written.forEach(f -> report.line("%s", "Written: " + f));
    return report.text.toString();
  }

  private void worksheet(Fitted fitted, FlatFolder folder) {
    line("");
    line(
        "Worksheet %s, %s, printed at %d %%",
        fitted.worksheet().name(),
        fitted.room().sheet().paper().name(),
        fitted.room().page().percent());
    fitted.worksheet().notes().forEach(n -> line("  note: %s", n));
    line(
        "  kept clear: %d ranges; largest blank window: %s",
        fitted.room().marks().size(), fitted.room().blank().get(0));
    if (!folder.leftAlone().isEmpty()) {
      line("  left alone, no picture: %s", String.join(", ", folder.leftAlone()));
    }
    for (Anchored picture : fitted.pictures()) {
      picture(picture);
    }
    double gap = fitted.fit().proof().gap();
    line(
        fitted.fit().proof().proven() || gap < LEAST_SHOWN
            ? "  nothing larger goes here"
            : String.format(Locale.ROOT, "  at most %.1f %%%% larger would go", gap * 100));
  }

  private void picture(Anchored picture) {
    PlacedFlat flat = picture.flat();
    var raster = flat.raster();
    line(
        "  %-24s %6.1f × %5.1f mm  %4.0f px/in  %-7s %5d kB",
        cut(flat.item().file().caption()),
        flat.ink().width().doubleValue() * MM_PER_POINT,
        flat.ink().height().doubleValue() * MM_PER_POINT,
        raster == null ? 0 : raster.density().least(),
        raster == null ? "" : state(raster.state()),
        (picture.png().length + 512) / 1024);
    if (raster != null && (raster.state() == PrintState.SOFT || flat.placement().capped())) {
      line(
          "    ask for %d × %d pixels to see it %s",
          raster.wanted().width(),
          raster.wanted().height(),
          raster.state() == PrintState.SOFT ? "sharp" : "larger");
    }
  }

  private static String state(PrintState state) {
    return switch (state) {
      case SOFT -> "S soft";
      case CRISP -> "C crisp";
      case HEAVY -> "H heavy";
      case SCALABLE -> "-";
    };
  }

  private static String cut(String name) {
    return name.length() <= 24 ? name : name.substring(0, 23) + "…";
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append(System.lineSeparator());
  }
}
