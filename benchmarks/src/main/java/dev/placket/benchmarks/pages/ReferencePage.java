package dev.placket.benchmarks.pages;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One reference sheet: plain rectangles to be placed at the largest common scale.
 *
 * @param id unique in its file
 * @param width of the paper, in points
 * @param height of the paper, in points
 * @param margin all four alike, in points
 * @param gap between flats, and from a flat to a labelled cell, in points
 * @param labelled what stays uncovered, in points, y down
 * @param flats the sizes at common scale 1
 * @param expected what is known of the answer, or null
 */
public record ReferencePage(
    String id,
    double width,
    double height,
    double margin,
    double gap,
    List<Rect> labelled,
    List<Size> flats,
    @Nullable Expected expected) {
  /**
   * The size of a flat at common scale 1, in points.
   *
   * @param width above zero
   * @param height above zero
   */
  public record Size(double width, double height) {}

  /**
   * What is known of a sheet's largest common scale.
   *
   * @param bestKnown the largest scale found so far
   * @param bound no scale is larger
   * @param proven whether the two agree
   */
  public record Expected(double bestKnown, double bound, boolean proven) {}

  /** Copies the lists. */
  public ReferencePage {
    labelled = List.copyOf(labelled);
    flats = List.copyOf(flats);
  }

  /** What the margins leave, in points. */
  public Rect inside() {
    return new Rect(margin, margin, width - margin, height - margin);
  }

  /**
   * The largest scale known and nothing else asked: no order, no growth, no rule of roles, all
   * flats in one scale group.
   */
  public FitRequest request() {
    PaperSize paper = new PaperSize(id, Length.pt(width), Length.pt(height));
    List<LabelledCell> cells = new ArrayList<>();
    for (Rect b : labelled) {
      cells.add(new LabelledCell("cell " + (cells.size() + 1), b));
    }
    List<Flat> all = new ArrayList<>();
    for (Size s : flats) {
      InkedBox ink = InkedBox.ofSize(s.width(), s.height());
      all.add(Flat.of("flat " + (all.size() + 1), Role.DETAIL, ink).withGroup("all", 1));
    }
    Sheet sheet = Sheet.open(id, paper, Margins.all(Length.pt(margin)), cells);
    return FitRequest.of(
            sheet, all, Spacing.NONE.withGap(Length.pt(gap)).withClearance(Length.pt(gap)))
        .withRules(LeadRule.NONE)
        .withOrder(Order.NONE)
        .withGrowth(false);
  }
}
