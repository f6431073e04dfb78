package dev.placket.packs.report;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.fit.ReadingOrder;
import dev.placket.layout.fit.SizeLevel;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.ScaleGroup;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.packs.placed.PlacedFlat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Puts a whole sheet into words: its name and paper, and whether its scale is the largest. */
final class SheetWords {
  private static final double PERCENT = 100;

  /** So many pairs out of order are named. */
  private static final int PAIRS = 3;

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
    said.add("Scale: " + scale(sheet, fit) + ".");
    List<String> prices = prices(fit);
    if (!prices.isEmpty()) {
      said.add("Arrangement: " + String.join("; ", prices) + ".");
    }
    said.addAll(outOfOrder(sheet));
    List<String> levels = levels(fit);
    if (!levels.isEmpty()) {
      said.add("Enlarged together: " + String.join("; ", levels) + ".");
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

  /** How near the largest; nothing is claimed of flats whose scale is fixed. */
  private static String scale(SheetResult sheet, Fit fit) {
    FitRequest request = sheet.request();
    long fixed =
        request == null ? 0 : request.flats().stream().filter(f -> isFixed(f, request)).count();
    String near = scale(fit.proof()) + " as this sheet is ruled";
    if (request == null || fixed == 0) {
      return near;
    }
    return fixed == request.flats().size() ? "fixed" : near + ", beside flats of fixed scale";
  }

  /** It is held, or one of its group is. */
  private static boolean isFixed(Flat flat, FitRequest request) {
    ScaleGroup group = flat.group();
    return flat.held().scale() != null
        || group != null
            && request.flats().stream()
                .anyMatch(
                    f -> {
                      ScaleGroup its = f.group();
                      return its != null
                          && its.name().equals(group.name())
                          && f.held().scale() != null;
                    });
  }

  /** Details that do not stand in the order given, by name; the first few pairs. */
  private static List<String> outOfOrder(SheetResult sheet) {
    FitRequest request = sheet.request();
    Fit fit = sheet.fit();
    if (request == null || fit == null) {
      return List.of();
    }
    ReadingOrder order = ReadingOrder.of(request.flats(), fit.placements());
    if (order.isKept()) {
      return List.of();
    }
    if (order.inColumns()) {
      return List.of("Details are read column by column.");
    }
    List<ReadingOrder.OutOfOrder> pairs = order.breaks();
    Map<String, String> names = new HashMap<>();
    sheet.flats().forEach(f -> names.put(f.item().file().id(), f.item().file().caption()));
    List<String> named = new ArrayList<>();
    for (ReadingOrder.OutOfOrder p : pairs.subList(0, Math.min(PAIRS, pairs.size()))) {
      named.add(
          names.getOrDefault(p.second(), p.second())
              + " before "
              + names.getOrDefault(p.first(), p.first()));
    }
    String more = pairs.size() > PAIRS ? "; " + (pairs.size() - PAIRS) + " more pairs" : "";
    return List.of("Read out of order: " + String.join("; ", named) + more + ".");
  }

  /** How far the flats of one kind grew together, and how near that is to the largest. */
  private static List<String> levels(Fit fit) {
    List<String> levels = new ArrayList<>();
    for (SizeLevel level : fit.levels()) {
      if (level.factor() <= 1 + Findings.LEAST_SHOWN) {
        continue;
      }
      double below = 1 - level.factor() / level.bound();
      String near =
          level.proven()
              ? "the largest possible"
              : "at most " + Figures.up(below * PERCENT, 1) + " % below the largest possible";
      levels.add(
          level.kind().name().toLowerCase(Locale.ROOT)
              + " "
              + Figures.fixed(level.factor(), 2)
              + " times, "
              + near
              + " in this order");
    }
    return levels;
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
      case PARTED -> "a line between views and details";
      case IN_ORDER -> "details in the order given";
      case LEVEL_VIEWS -> "level views";
      case DETAILS_IN_LINE -> "details in line";
      case FEW_EDGES -> "few edges";
      case BALANCE -> "balance";
    };
  }
}
