package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is seen on the sheets of the demo and of ten garments, against the same sheets blank. */
class MadeSheetTest {
  private static final String SHEETS = "dev.placket.demo.made.MadeSheet#all";

  /** Pixels at an edge that anti-aliasing may touch. */
  private static final int EDGE = 1;

  @ParameterizedTest
  @MethodSource(SHEETS)
  void noLabelledCellChangesByAPixel(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    BufferedImage blank = Pages.render(made.blank());
    BufferedImage filled = Pages.render(made.pdf());
    JsonNode cells = made.sheet().path("labelledCells");
    assertTrue(cells.size() > 10, "the header has its cells");
    for (JsonNode cell : cells) {
      int changed = Pages.changed(blank, filled, Pages.pixels(cell, 0));
      assertEquals(0, changed, cell.path("name").asText());
    }
  }

  @ParameterizedTest
  @MethodSource(SHEETS)
  void nothingIsInkedOutsideTheFootprints(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    BufferedImage blank = Pages.render(made.blank());
    BufferedImage filled = Pages.render(made.pdf());
    for (JsonNode placement : made.placements()) {
      Rectangle part = Pages.pixels(placement.path("footprint"), EDGE);
      assertTrue(Pages.changed(blank, filled, part) > 0, placement.path("flat").asText());
      copy(blank, filled, part);
    }
    Rectangle page = new Rectangle(blank.getWidth(), blank.getHeight());
    assertEquals(0, Pages.changed(blank, filled, page));
  }

  @ParameterizedTest
  @MethodSource(SHEETS)
  void eachFlatLooksOnThePageAsItDoesByItself(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    BufferedImage filled = Pages.render(made.pdf());
    for (JsonNode placement : made.placements()) {
      Rectangle part = Pages.pixels(placement.path("inkedBox"), EDGE);
      double same = correlation(filled, made, placement, part, false);
      if (!placement.path("pixels").isNull()) {
        same = Math.max(same, correlation(filled, made, placement, part, true));
      }
      assertTrue(same >= 0.98, placement.path("flat").asText() + " correlates at " + same);
    }
  }

  @ParameterizedTest
  @MethodSource(SHEETS)
  void theInkReachesTheEdgesOfItsBox(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    BufferedImage filled = Pages.render(made.pdf());
    for (JsonNode placement : made.placements()) {
      Rectangle box = Pages.pixels(placement.path("inkedBox"), 0);
      String flat = placement.path("flat").asText();
      int d = 2 * EDGE + 1;
      assertTrue(inked(filled, new Rectangle(box.x, box.y, d, box.height)), flat + ": left");
      assertTrue(inked(filled, new Rectangle(box.x, box.y, box.width, d)), flat + ": top");
      assertTrue(
          inked(filled, new Rectangle(box.x + box.width - d, box.y, d, box.height)),
          flat + ": right");
      assertTrue(
          inked(filled, new Rectangle(box.x, box.y + box.height - d, box.width, d)),
          flat + ": bottom");
    }
  }

  private static double correlation(
      BufferedImage page, MadeSheet made, JsonNode placement, Rectangle part, boolean whole)
      throws Exception {
    BufferedImage own = OwnRendering.of(made.source(placement), placement, part, whole);
    return Pages.correlation(
        Pages.ink(page, part), Pages.ink(own, new Rectangle(part.width, part.height)));
  }

  private static void copy(BufferedImage from, BufferedImage to, Rectangle part) {
    for (int y = part.y; y < part.y + part.height; y++) {
      for (int x = part.x; x < part.x + part.width; x++) {
        to.setRGB(x, y, from.getRGB(x, y));
      }
    }
  }

  private static boolean inked(BufferedImage page, Rectangle part) {
    for (double ink : Pages.ink(page, part)) {
      // A quarter: a hairline that covers a pixel in part.
      if (ink > 0.25) {
        return true;
      }
    }
    return false;
  }
}
