package dev.placket.demo.result;

import dev.placket.demo.PackWeight;
import dev.placket.demo.PlacedFlat;
import dev.placket.demo.RasterPrint;
import dev.placket.demo.folder.FlatFile;
import dev.placket.demo.folder.FlatFolder;
import dev.placket.demo.folder.FlatSet;
import dev.placket.demo.folder.ScaleNote;
import dev.placket.layout.density.PixelSize;
import dev.placket.layout.density.PrintState;
import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.image.PrintLimits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** What a designer reads after a run: at most 80 signs a line, no meaning by colour. */
public final class Report {
  private static final int WIDTH = 80;
  private static final double MM_PER_POINT = 25.4 / 72;

  private static final double LEAST_SHOWN = 0.0005;

  private final StringBuilder text = new StringBuilder();

  /**
   * The report of a run.
   *
   * @param title what was laid out
   * @param folder what was read
   * @param set how it was grouped
   * @param sheets what came of each sheet, mostly of one
   * @param dividePrice the part of the scale that the line between the windows of the first cost
   * @param weight what the file weighs
   * @param written where the files went
   */
  public static String of(
      String title,
      FlatFolder folder,
      FlatSet set,
      List<SheetResult> sheets,
      double dividePrice,
      PackWeight weight,
      List<Path> written) {
    Report report = new Report();
    report.line(title);
    report.line("");
    report.read(folder, set);
    for (SheetResult sheet : sheets) {
      report.further(sheet);
      report.placed(sheet.flats());
      Fit fit = Objects.requireNonNull(sheet.fit());
      report.quality(fit);
      report.divide(sheet == sheets.get(0) ? dividePrice : 0);
      report.growth(sheet.flats(), fit);
      if (sheets.size() > 1) {
        report.line("");
      }
    }
    WeightWords.of(weight).forEach(w -> report.wrapped("", w));
    report.files(written);
    return report.text.toString();
  }

  /**
   * The report of a pack.
   *
   * @param title what was laid out
   * @param sheets what came of each sheet
   * @param notes what the writer of the description should know
   * @param weight what the file weighs
   * @param written where the files went
   */
  public static String ofPack(
      String title,
      List<SheetResult> sheets,
      List<String> notes,
      PackWeight weight,
      List<Path> written) {
    Report report = new Report();
    report.line(title);
    report.line("");
    int number = 0;
    for (SheetResult sheet : sheets) {
      report.wrapped(
          "", "Sheet " + ++number + " of " + sheets.size() + ": " + sheet.sheet().name());
      report.further(sheet);
      Fit fit = sheet.fit();
      if (fit != null) {
        report.placed(sheet.flats());
        report.quality(fit);
      }
      report.line("");
    }
    if (!notes.isEmpty()) {
      report.line("In the description");
      notes.forEach(n -> report.wrapped("  ", n));
    }
    WeightWords.of(weight).forEach(w -> report.wrapped("", w));
    report.files(written);
    return report.text.toString();
  }

  private void read(FlatFolder folder, FlatSet set) {
    line("Read from " + folder.path());
    for (FlatFile f : folder.flats()) {
      String said = f.worded() ? "" : "  no role in its name, taken as a detail";
      line(String.format(Locale.ROOT, "  %-26s %-8s%s", cut(f.name(), 26), role(f), said));
      f.picture().notes().forEach(n -> wrapped("    ", n));
    }
    Map<String, Double> ratios = set.ratios();
    if (!ratios.isEmpty()) {
      List<String> parts = new ArrayList<>();
      ratios.forEach((id, ratio) -> parts.add(id + " at " + trimmed(ratio)));
      wrapped("  ", "Grouped at one scale, as drawn heights agree: " + String.join(", ", parts));
    }
    if (!folder.leftAlone().isEmpty()) {
      wrapped(
          "  ", "Left alone, not named as pictures are: " + String.join(", ", folder.leftAlone()));
    }
    line("");
  }

  private void placed(List<PlacedFlat> flats) {
    line("Placed                     role     printed mm     scale         px/in  state");
    for (PlacedFlat f : flats) {
      RasterPrint raster = f.raster();
      String size =
          String.format(
              Locale.ROOT,
              "%.1f × %.1f",
              f.ink().width().doubleValue() * MM_PER_POINT,
              f.ink().height().doubleValue() * MM_PER_POINT);
      PrintState state = raster == null ? PrintState.SCALABLE : raster.state();
      line(
          String.format(
                  Locale.ROOT,
                  "  %-24s %-8s %-14s %-13s %5s  %s",
                  cut(f.item().file().caption(), 24),
                  role(f.item().file()),
                  size,
                  ScaleNote.scale(f.garmentScale()),
                  raster == null
                      ? "-"
                      : String.format(Locale.ROOT, "%.0f", raster.density().least()),
                  state(state))
              .stripTrailing());
      if (raster != null) {
        advice(f, raster);
      }
      if (raster != null) {
        FineWords.enlarged(raster.density(), raster.resolvedShare())
            .ifPresent(w -> wrapped("    ", w));
      }
      FineWords.of(f.printed(), PrintLimits.DEFAULT).forEach(w -> wrapped("    ", w));
    }
    line("");
  }

  private void further(SheetResult sheet) {
    Further which = sheet.further();
    if (which == null) {
      return;
    }
    if (sheet.id() == null) {
      line("Sheet " + which.number() + " of " + which.count());
    }
    if (which.number() == 1) {
      String fewest = which.provenFewest() ? "; fewer do not hold them." : ".";
      wrapped(
          "",
          "Not all have room on one sheet at their least size: they go on over "
              + which.count()
              + " sheets"
              + fewest);
    }
  }

  private void advice(PlacedFlat flat, RasterPrint raster) {
    String ask = "ask for " + pixels(raster.wanted()) + " pixels";
    if (raster.state() == PrintState.SOFT) {
      wrapped("    ", "it will look blurred: " + ask);
    } else if (flat.placement().capped()) {
      wrapped("    ", "capped: held small so that it stays crisp; to see it larger " + ask);
    } else if (raster.state() == PrintState.HEAVY) {
      wrapped(
          "    ",
          "more pixels than anybody sees, embedded with "
              + pixels(new PixelSize(raster.image().getWidth(), raster.image().getHeight()))
              + "; next time "
              + ask);
    }
  }

  private void quality(Fit fit) {
    double gap = fit.proof().gap();
    wrapped(
        "",
        fit.proof().proven() || gap < LEAST_SHOWN
            ? "How near the largest: nothing larger goes on this sheet."
            : String.format(
                Locale.ROOT,
                "How near the largest: the drawings can be at most %.1f %% larger.",
                gap * 100));
    List<String> steps = new ArrayList<>();
    for (OrderStep step : fit.order()) {
      String price =
          !step.kept()
              ? "not kept"
              : step.price() < LEAST_SHOWN
                  ? "free"
                  : String.format(Locale.ROOT, "%.1f %% of scale", step.price() * 100);
      steps.add(wish(step.wish()) + ": " + price);
    }
    if (!steps.isEmpty()) {
      wrapped("", "Given up for order: " + String.join("; ", steps) + ".");
    }
  }

  private void divide(double price) {
    if (price >= LEAST_SHOWN) {
      String words =
          "The line between the windows stands where all are in line, for %.1f %% of scale.";
      wrapped("", String.format(Locale.ROOT, words, price * 100));
    }
  }

  private void growth(List<PlacedFlat> flats, Fit fit) {
    List<String> grown = new ArrayList<>();
    for (PlacedFlat f : flats) {
      if (f.growth() > 1 + LEAST_SHOWN) {
        String by = String.format(Locale.ROOT, "%.2f", f.growth());
        grown.add(f.item().file().caption() + " " + by + " times");
      }
    }
    if (!grown.isEmpty()) {
      String most = fit.proof().provenForOrder() ? ", which is the most in this order." : ".";
      wrapped("", "Grown into free room: " + String.join("; ", grown) + most);
    }
  }

  private void files(List<Path> written) {
    line("");
    written.forEach(f -> line("Written: " + f));
  }

  private static String wish(OrderWish wish) {
    return switch (wish) {
      case LEVEL_VIEWS -> "level views";
      case DETAILS_IN_LINE -> "details in line";
      case FEW_EDGES -> "few edges";
      case BALANCE -> "balance";
    };
  }

  private static String state(PrintState state) {
    return switch (state) {
      case SOFT -> "S soft";
      case CRISP -> "C crisp";
      case HEAVY -> "H heavy";
      case SCALABLE -> "Sc scalable";
    };
  }

  private static String role(FlatFile file) {
    return file.role().name().toLowerCase(Locale.ROOT);
  }

  private static String pixels(PixelSize size) {
    return String.format(Locale.ROOT, "%,d × %,d", size.width(), size.height());
  }

  private static String trimmed(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }

  private static String cut(String name, int width) {
    return name.length() <= width ? name : name.substring(0, width - 1) + "…";
  }

  private void wrapped(String indent, String words) {
    StringBuilder line = new StringBuilder(indent);
    for (String word : words.split(" ")) {
      if (line.length() > indent.length() && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(indent).append("  ").append(word);
      } else {
        line.append(line.length() > indent.length() ? " " : "").append(word);
      }
    }
    line(line.toString());
  }

  private void line(String words) {
    text.append(words).append(System.lineSeparator());
  }
}
