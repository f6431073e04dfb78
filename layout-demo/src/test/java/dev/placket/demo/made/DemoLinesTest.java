package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.made.PaintedPaths.Figure;
import dev.placket.demo.made.PaintedPaths.Stroked;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The printed lines of the demo pack as its PDF states them on both papers, in millimetres. The
 * ranges are common practice: outlines 0.5 to 0.7, seams 0.25 to 0.35, stitching 0.18 to 0.25 with
 * dashes of 1 to 1.5 and gaps of at least 0.5.
 */
class DemoLinesTest {
  private static final String PAPERS = "dev.placket.demo.made.MadePack#papers";

  private static final double MM = 25.4 / 72;

  /** Four decimals of a coordinate, in millimetres. */
  private static final double WRITTEN = 1e-4;

  /** Swatches and buttons in the rows of a table are looked at, not sewn from. */
  private static final String MATERIALS = "materials";

  @ParameterizedTest
  @MethodSource(PAPERS)
  void everyLineIsOutlineSeamOrStitching(String paper) throws Exception {
    List<String> odd = new ArrayList<>();
    each(
        paper,
        (where, figures) -> {
          for (Figure figure : figures) {
            for (Stroked s : figure.strokes()) {
              double mm = s.width() * MM;
              boolean dashed = s.dashes().length > 0;
              boolean right = dashed ? stitching(mm) : stitching(mm) || seam(mm) || outline(mm);
              if (!right) {
                odd.add(where + ": " + (dashed ? "dashed " : "whole ") + mm + " mm");
              }
            }
          }
        });
    assertEquals(List.of(), odd.stream().distinct().toList());
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void eachDrawingHasAnOutline(String paper) throws Exception {
    each(
        paper,
        (where, figures) -> {
          for (Figure figure : figures) {
            assertTrue(figure.strokes().stream().anyMatch(s -> outline(s.width() * MM)), where);
          }
        });
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void outlinesAreEvenOverEachSheet(String paper) throws Exception {
    each(
        paper,
        (where, figures) -> {
          double least = Double.POSITIVE_INFINITY;
          double most = 0;
          for (Figure figure : figures) {
            double widest = figure.strokes().stream().mapToDouble(Stroked::width).max().orElse(0);
            least = Math.min(least, widest);
            most = Math.max(most, widest);
          }
          System.out.printf(
              Locale.ROOT, "%s: outlines %.3f to %.3f mm%n", where, least * MM, most * MM);
          // Common practice: 1.25 to 1 on one sheet.
          assertTrue(most <= 1.25 * least, where + ": " + most * MM + " and " + least * MM + " mm");
        });
  }

  @ParameterizedTest
  @MethodSource(PAPERS)
  void dashesAreSeenApart(String paper) throws Exception {
    int[] dashed = {0};
    each(
        paper,
        (where, figures) -> {
          for (Figure figure : figures) {
            for (Stroked s : figure.strokes()) {
              if (s.dashes().length > 0) {
                dashed[0]++;
                double dash = s.dashes()[0] * MM;
                boolean right = dash >= 1 - WRITTEN && dash <= 1.5 + WRITTEN;
                assertTrue(right, where + ": dash of " + dash + " mm");
                double gap = s.dashes()[1] * MM - (s.butt() ? 0 : s.width() * MM);
                assertTrue(gap >= 0.5 - WRITTEN, where + ": gap of " + gap + " mm");
              }
            }
          }
        });
    assertTrue(dashed[0] > 100, "the coat is topstitched");
  }

  private interface Check {
    void drawings(String where, List<Figure> figures);
  }

  /** The drawings of each sheet that has any, materials left out. */
  private static void each(String paper, Check check) throws Exception {
    MadePack made = MadePack.on(paper);
    for (int i = 0; i < made.sheets().size(); i++) {
      String id = made.sheets().get(i).path("id").asText();
      List<Figure> all = PaintedPaths.figures(made.pdf(), i);
      List<Figure> drawings = all.stream().filter(f -> f.images().isEmpty()).toList();
      if (!drawings.isEmpty() && !id.equals(MATERIALS)) {
        check.drawings(paper + ", " + id, drawings);
      }
    }
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
