package dev.placket.packs.report;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.packs.placed.PlacedFlat;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts a whole sheet into words: its name and paper, and whether its scale is the largest. */
final class SheetWords {
  private static final double PERCENT = 100;

  private SheetWords() {}

  /** Its number, name and paper. */
  static String heading(SheetResult sheet, int number, int of, Units units) {
    PaperSize paper = sheet.sheet().paper();
    String counted = of == 1 ? "" : "Sheet " + number + " of " + of + ": ";
    return counted + sheet.sheet().name() + ", " + paper.name() + " " + units.paper(paper);
  }

  /**
   * Whether the scale is the largest, what order cost, what grew; empty for a sheet without flats.
   * The proof covers the common scale before growth and the windows as ruled, and no more.
   */
  static List<String> quality(SheetResult sheet) {
    Fit fit = sheet.fit();
    if (fit == null) {
      return List.of();
    }
    List<String> said = new ArrayList<>(continued(sheet.further()));
    said.add("Scale: " + scale(fit.proof()) + " as this sheet is ruled.");
    List<String> prices = prices(fit);
    if (!prices.isEmpty()) {
      said.add("Arrangement: " + String.join("; ", prices) + ".");
    }
    List<String> grown = grown(sheet);
    if (!grown.isEmpty()) {
      boolean most = fit.proof().provenForOrder();
      said.add(
          "Enlarged into free room: "
              + String.join("; ", grown)
              + (most ? ", the maximum in this order." : "."));
    }
    return said;
  }

  /** How near the largest, rounded up: nothing that is possible exceeds what is said. */
  static String scale(Proof proof) {
    if (proof.proven()) {
      return "the largest possible";
    }
    double below = proof.gap() / (1 + proof.gap());
    return "at most " + Figures.up(below * PERCENT, 1) + " % below the largest possible";
  }

  /** Reports that flats continue on further sheets, on the first of them. */
  private static List<String> continued(@Nullable Further which) {
    if (which == null || which.number() != 1) {
      return List.of();
    }
    String fewest = which.provenFewest() ? "; fewer sheets have no room for them." : ".";
    return List.of(
        "Not all have room on one sheet at their minimum size; they continue over "
            + which.count()
            + " sheets"
            + fewest);
  }

  private static List<String> prices(Fit fit) {
    List<String> prices = new ArrayList<>();
    for (OrderStep step : fit.order()) {
      if (!step.kept() || step.price() >= Findings.LEAST_SHOWN) {
        prices.add(price(step));
      }
    }
    return prices;
  }

  /** What a wish cost, or that it was relaxed. */
  static String price(OrderStep step) {
    String price = percent(step.price()) + " of the scale";
    if (step.kept()) {
      return wish(step.wish()) + " cost " + price;
    }
    boolean paid = step.price() >= Findings.LEAST_SHOWN;
    return wish(step.wish()) + " relaxed" + (paid ? " (approaching it cost " + price + ")" : "");
  }

  private static List<String> grown(SheetResult sheet) {
    List<String> grown = new ArrayList<>();
    for (PlacedFlat f : sheet.flats()) {
      if (f.growth() > 1 + Findings.LEAST_SHOWN) {
        grown.add(f.item().file().caption() + " " + Figures.fixed(f.growth(), 2) + " times");
      }
    }
    return grown;
  }

  private static String percent(double share) {
    return Figures.fixed(share * PERCENT, 1) + " %";
  }

  private static String wish(OrderWish wish) {
    return switch (wish) {
      case LEVEL_VIEWS -> "level views";
      case DETAILS_IN_LINE -> "details in line";
      case FEW_EDGES -> "few edges";
      case BALANCE -> "balance";
    };
  }
}
