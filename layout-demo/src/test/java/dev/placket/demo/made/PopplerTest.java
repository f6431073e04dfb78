package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheets as poppler reads and shows them; skipped where its programs are missing. */
class PopplerTest {
  private static final String SHEETS = "dev.placket.demo.made.MadeSheet#all";

  @TempDir private Path work;

  @ParameterizedTest
  @MethodSource(SHEETS)
  void itListsExactlyTheRastersAtTheirDensity(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    List<String[]> listed = Poppler.images(work, made.pdf());
    List<JsonNode> rasters =
        made.placements().stream()
            .filter(p -> !p.path("source").asText().endsWith(".svg"))
            .toList();
    assertEquals(rasters.size(), listed.size());
    for (int i = 0; i < rasters.size(); i++) {
      JsonNode embedded = rasters.get(i).path("embedded");
      JsonNode box = rasters.get(i).path("inkedBox");
      String[] columns = listed.get(i);
      assertEquals(embedded.path("width").asInt(), Integer.parseInt(columns[3]));
      assertEquals(embedded.path("height").asInt(), Integer.parseInt(columns[4]));
      double across = side(box, "left", "right") / 72;
      double down = side(box, "top", "bottom") / 72;
      // Half a per cent, which takes in that poppler lists whole numbers.
      double x = Double.parseDouble(columns[12]);
      assertEquals(embedded.path("width").asInt() / across, x, 0.005 * x);
      double y = Double.parseDouble(columns[13]);
      assertEquals(embedded.path("height").asInt() / down, y, 0.005 * y);
    }
  }

  @ParameterizedTest
  @MethodSource(SHEETS)
  void noLabelledCellChangesByAPixel(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    BufferedImage blank = render(made.blank());
    BufferedImage filled = render(made.pdf());
    for (JsonNode cell : made.sheet().path("labelledCells")) {
      int changed = Pages.changed(blank, filled, Pages.pixels(cell, 0));
      assertEquals(0, changed, cell.path("name").asText());
    }
    for (JsonNode p : made.placements()) {
      Rectangle part = Pages.pixels(p.path("inkedBox"), 0);
      assertTrue(Pages.changed(blank, filled, part) > 0, p.path("flat").asText());
    }
  }

  private static double side(JsonNode box, String from, String to) {
    return box.path(to).asDouble() - box.path(from).asDouble();
  }

  private BufferedImage render(Path pdf) throws Exception {
    Path stem = work.resolve(pdf.getFileName());
    String perInch = String.valueOf(Pages.PER_INCH);
    Poppler.run(
        work, "pdftoppm", "-r", perInch, "-png", "-singlefile", pdf.toString(), stem.toString());
    return ImageIO.read(new java.io.File(stem + ".png"));
  }
}
