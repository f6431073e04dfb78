package dev.placket.layout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.fit.Fit;
import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.Placement;
import dev.placket.layout.fit.Proof;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * A sheet with a fit worked out by hand, in which as much as possible touches exactly, and ways to
 * break it.
 *
 * <pre>
 *  50       150                300                550
 *  50 +-style-+                 :                  |     two windows, left (both rows) and right
 *  90 +-------+          +--- detail ---+          |     (upper row), meeting at 300
 * 100 --------- rule     +--- 255..345 -+          |
 *     swatch                    :                  |
 *     front        back         :                  |
 * 400 - - - - - - - - - - - - - +------------------+
 *                               |      closed      |
 * 650 ---- further rule         |                  |
 * 750                           +------------------+
 * </pre>
 */
final class HandMade {
  static final LabelledCell STYLE = new LabelledCell("style", new Rect(50, 50, 150, 90));
  static final Rule RULE = new Rule(new Rect(50, 100, 150, 100), Length.pt(1));
  static final Rule FURTHER_RULE = new Rule(new Rect(50, 650, 100, 650), Length.pt(2));
  static final Spacing SPACING = Spacing.NONE.withGap(Length.pt(10)).withClearance(Length.pt(5));

  /** At common scale 1.2: 120 by 240 pt. */
  static final Flat FRONT =
      Flat.of("front", Role.FRONT, InkedBox.ofSize(100, 200)).withGroup("body", 1);

  /** Drawn at twice the size: scale 0.6, 115.2 by 240 pt. */
  static final Flat BACK =
      Flat.of("back", Role.BACK, new InkedBox(4, 4, 196, 404)).withGroup("body", 0.5);

  /** 0.3 × 200 over 50 drawing units is 1.2 at scale 1: scale 1.44, 72 by 57.6 pt, 90 wide. */
  static final Flat DETAIL =
      Flat.of("detail", Role.DETAIL, InkedBox.ofSize(50, 40))
          .withSurround(Surround.caption(Length.pt(12), Length.pt(90)));

  /** 0.15 × 200 over 30 drawing units is 1 at scale 1: it would have scale 1.2 but is held to 1. */
  static final Flat SWATCH =
      Flat.of("swatch", Role.SWATCH, InkedBox.ofSize(30, 30))
          .withLimits(new Limits(Length.ZERO, Length.pt(30)));

  private HandMade() {}

  static Sheet sheet(List<Double> columns, List<SheetWindow> windows) {
    return new Sheet(
        "flats",
        new PaperSize("test", Length.pt(600), Length.pt(800)),
        Margins.all(Length.pt(50)),
        new GridLines(columns, List.of(50.0, 400.0, 750.0)),
        windows,
        List.of(STYLE, new LabelledCell("notes", new Rect(310, 450, 540, 740))),
        List.of(RULE, FURTHER_RULE));
  }

  static Sheet sheet() {
    return sheet(
        List.of(50.0, 300.0, 550.0),
        List.of(
            new SheetWindow("left", new GridArea(0, 0, 1, 2)),
            new SheetWindow("right", new GridArea(1, 0, 2, 1))));
  }

  static FitRequest request() {
    return FitRequest.of(sheet(), List.of(FRONT, BACK, DETAIL, SWATCH), SPACING).withGrowth(false);
  }

  static Fit fit() {
    return fit(
        "1.2",
        at("front", "1.2", "50", "145.5"),
        at("back", "0.6", "180", "145.5"),
        at("detail", "1.44", "264", "65.9"),
        new Placement("swatch", d("1"), d("50"), d("105.5"), true));
  }

  static Fit fit(String scale, Placement... placements) {
    return new Fit(List.of(placements), new Proof(d(scale), 1e6, 1, false), List.of());
  }

  static Placement at(String flat, String scale, String left, String top) {
    return new Placement(flat, d(scale), d(left), d(top), false);
  }

  static Fit change(Fit fit, String flat, UnaryOperator<Placement> how) {
    List<Placement> changed = new ArrayList<>();
    for (Placement p : fit.placements()) {
      changed.add(p.flat().equals(flat) ? how.apply(p) : p);
    }
    return new Fit(changed, fit.proof(), fit.order());
  }

  static Fit moveTo(Fit fit, String flat, String left, String top) {
    return change(fit, flat, p -> new Placement(p.flat(), p.scale(), d(left), d(top), p.capped()));
  }

  static Fit rescale(Fit fit, String flat, String scale) {
    return change(fit, flat, p -> new Placement(p.flat(), d(scale), p.left(), p.top(), p.capped()));
  }

  static Fit withPlacements(Fit fit, List<Placement> placements) {
    return new Fit(placements, fit.proof(), fit.order());
  }

  static FitRequest with(FitRequest request, Flat changed) {
    return request.withFlats(
        request.flats().stream().map(f -> f.id().equals(changed.id()) ? changed : f).toList());
  }

  static BigDecimal d(String number) {
    return new BigDecimal(number);
  }

  /** Exactly these rules are broken, no other; none at all for an empty list. */
  static void assertBroken(FitRequest request, Fit fit, String... rules) {
    List<Breach> found = Referee.check(request, fit);
    Set<String> names = new TreeSet<>(found.stream().map(Breach::rule).toList());
    assertEquals(new TreeSet<>(List.of(rules)), names, found::toString);
  }
}
