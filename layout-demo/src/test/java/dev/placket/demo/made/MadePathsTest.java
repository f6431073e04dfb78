package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.demo.made.PaintedPaths.Figure;
import dev.placket.demo.made.PaintedPaths.Stroked;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The drawings as paths of the page, against the coordinates in their files. */
class MadePathsTest {
  /**
   * The views of carlton come in viewBoxes of 168 by 168 and 97 by 175 round ink of one height:
   * whoever fits the viewBox, not the units, gets another ratio.
   */
  @ParameterizedTest
  @MethodSource("dev.placket.demo.made.MadeSheet#all")
  void frontAndBackKeepTheRatioOfTheirScales(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    double front = 0;
    double back = 0;
    List<Figure> figures = PaintedPaths.figures(made.pdf());
    for (int i = 0; i < figures.size(); i++) {
      JsonNode placement = made.placements().get(i);
      if (placement.path("role").asText().equals("front")) {
        front = scale(made, placement, figures.get(i));
      } else if (placement.path("role").asText().equals("back")) {
        back = scale(made, placement, figures.get(i));
      }
    }
    // One scale for both, or the back at 0.85 of the front's, as is common practice.
    assertEquals(back / front > 0.9 ? 1 : 0.85, back / front, 0.85e-4);
  }

  @ParameterizedTest
  @MethodSource("dev.placket.demo.made.MadeSheet#all")
  void theRastersAreTheOnlyPictures(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    List<Figure> figures = PaintedPaths.figures(made.pdf());
    assertEquals(made.placements().size(), figures.size());
    for (int i = 0; i < figures.size(); i++) {
      boolean raster = !made.placements().get(i).path("source").asText().endsWith(".svg");
      assertEquals(raster ? 1 : 0, figures.get(i).images().size());
      assertEquals(raster, figures.get(i).strokes().isEmpty());
    }
  }

  /**
   * Points per drawing unit, from the farthest points of all stroked paths; across and down agree
   * with each other and with what {@code fit.json} says.
   */
  private static double scale(MadeSheet made, JsonNode placement, Figure figure) throws Exception {
    List<Shape> printed = new ArrayList<>();
    for (Stroked s : figure.strokes()) {
      printed.add(s.path());
    }
    List<Shape> drawn = DrawnPaths.stroked(made.source(placement));
    double across = extent(printed, 0) / extent(drawn, 0);
    double down = extent(printed, 1) / extent(drawn, 1);
    assertEquals(across, down, 2e-5 * across);
    assertEquals(placement.path("scale").asDouble(), across, 2e-5 * across);
    assertTrue(across > 0);
    return across;
  }

  private static double extent(List<Shape> paths, int axis) {
    List<Double> values = new ArrayList<>();
    for (Shape path : paths) {
      for (double v : DrawnPaths.points(path)[axis]) {
        values.add(v);
      }
    }
    return DrawnPaths.extent(values.stream().mapToDouble(d -> d).toArray());
  }
}
