package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.made.PaintedPaths.Figure;
import dev.placket.demo.made.PaintedPaths.Stroked;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The printed lines of the demo as its PDF states them, in millimetres. The ranges are common
 * practice: outlines 0.5 to 0.7, seams 0.25 to 0.35, stitching 0.18 to 0.25 with dashes of 1 to 1.5
 * and gaps of at least 0.5.
 */
class DemoLinesTest {
  private static final double MM = 25.4 / 72;

  /** Four decimals of a coordinate, in millimetres. */
  private static final double WRITTEN = 1e-4;

  @Test
  void everyLineIsOutlineSeamOrStitching() throws Exception {
    List<String> odd = new ArrayList<>();
    for (Figure figure : drawings()) {
      for (Stroked s : figure.strokes()) {
        double mm = s.width() * MM;
        boolean dashed = s.dashes().length > 0;
        boolean right = dashed ? stitching(mm) : stitching(mm) || seam(mm) || outline(mm);
        if (!right) {
          odd.add((dashed ? "dashed " : "whole ") + mm + " mm");
        }
      }
    }
    assertEquals(List.of(), odd);
  }

  @Test
  void eachDrawingHasAnOutline() throws Exception {
    for (Figure figure : drawings()) {
      assertTrue(figure.strokes().stream().anyMatch(s -> outline(s.width() * MM)));
    }
  }

  @Test
  void outlinesAreEvenOverTheSheet() throws Exception {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Figure figure : drawings()) {
      double widest = 0;
      for (Stroked s : figure.strokes()) {
        widest = Math.max(widest, s.width());
      }
      least = Math.min(least, widest);
      most = Math.max(most, widest);
    }
    // Common practice: 1.25 to 1 on one sheet.
    assertTrue(most <= 1.25 * least, most * MM + " and " + least * MM + " mm");
  }

  @Test
  void dashesAreSeenApart() throws Exception {
    int dashed = 0;
    for (Figure figure : drawings()) {
      for (Stroked s : figure.strokes()) {
        if (s.dashes().length > 0) {
          dashed++;
          double dash = s.dashes()[0] * MM;
          assertTrue(dash >= 1 - WRITTEN && dash <= 1.5 + WRITTEN, "dash of " + dash + " mm");
          double gap = s.dashes()[1] * MM - (s.butt() ? 0 : s.width() * MM);
          assertTrue(gap >= 0.5 - WRITTEN, "gap of " + gap + " mm");
        }
      }
    }
    assertTrue(dashed > 20, "the coat is topstitched");
  }

  private static List<Figure> drawings() throws Exception {
    List<Figure> figures = PaintedPaths.figures(MadeSheet.of(MadeSheet.DEMO).pdf());
    return figures.stream().filter(f -> f.images().isEmpty()).toList();
  }

  private static boolean outline(double mm) {
    return mm >= 0.5 - WRITTEN && mm <= 0.7 + WRITTEN;
  }

  private static boolean seam(double mm) {
    return mm >= 0.25 - WRITTEN && mm <= 0.35 + WRITTEN;
  }

  private static boolean stitching(double mm) {
    return mm >= 0.18 - WRITTEN && mm <= 0.25 + WRITTEN;
  }
}
