package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The lines of measure of the demo, found again on poppler's rendering of its sheet. */
class MeasureLinesTest {
  private static final double PER_POINT = 300 / 72.0;

  @TempDir private Path dir;

  @ParameterizedTest
  @ValueSource(strings = {"A4", "Letter"})
  void linesAreDarkAndCodesStandInWhite(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    int sheet = made.sheet("measurements");
    String page = "" + (sheet + 1);
    Path png = dir.resolve("page");
    Poppler.run(
        dir,
        "pdftoppm",
        "-r",
        "300",
        "-gray",
        "-png",
        "-singlefile",
        "-f",
        page,
        "-l",
        page,
        made.pdf().toString(),
        png.toString());
    BufferedImage seen = ImageIO.read(new File(png + ".png"));
    List<String> codes = new ArrayList<>();
    for (JsonNode flat : made.placements(sheet)) {
      for (JsonNode measure : flat.path("dimensions")) {
        String code = measure.path("point").asText();
        codes.add(code);
        JsonNode box = measure.path("code");
        double[] line = line(measure);
        int dark = 0;
        int all = 0;
        for (int i = 3; i <= 97; i++) {
          double x = line[0] + i / 100.0 * (line[2] - line[0]);
          double y = line[1] + i / 100.0 * (line[3] - line[1]);
          if (!inside(box, x, y)) {
            dark += dark(seen, x, y, 2) ? 1 : 0;
            all++;
          }
        }
        assertTrue(dark >= 0.98 * all, code + ": " + dark + " of " + all);
        // Its letters are dark, and its rim is white but where the line comes in and leaves.
        double width = box.path("right").asDouble() - box.path("left").asDouble();
        assertTrue(share(seen, box, 0.2 * width) > 0.05, code + " is set");
        assertTrue(rim(seen, box) < 0.25, code + ": the rim of its box " + rim(seen, box));
      }
    }
    codes.sort(null);
    assertEquals("[A, B, C, D, E, F, G, H, J, K, N, P, Q]", codes.toString());
  }

  private static double[] line(JsonNode measure) {
    JsonNode line = measure.path("line");
    return new double[] {
      line.get(0).path("x").asDouble(),
      line.get(0).path("y").asDouble(),
      line.get(1).path("x").asDouble(),
      line.get(1).path("y").asDouble()
    };
  }

  private static boolean inside(JsonNode box, double x, double y) {
    return x > box.path("left").asDouble() - 0.5
        && x < box.path("right").asDouble() + 0.5
        && y > box.path("top").asDouble() - 0.5
        && y < box.path("bottom").asDouble() + 0.5;
  }

  private static boolean dark(BufferedImage seen, double x, double y, int near) {
    for (int dx = -near; dx <= near; dx++) {
      for (int dy = -near; dy <= near; dy++) {
        int px = (int) Math.floor(x * PER_POINT) + dx;
        int py = (int) Math.floor(y * PER_POINT) + dy;
        if ((seen.getRGB(px, py) & 255) < 160) {
          return true;
        }
      }
    }
    return false;
  }

  private static double share(BufferedImage seen, JsonNode box, double in) {
    int dark = 0;
    int all = 0;
    for (double x = box.path("left").asDouble() + in;
        x < box.path("right").asDouble() - in;
        x += 0.2) {
      for (double y = box.path("top").asDouble() + in;
          y < box.path("bottom").asDouble() - in;
          y += 0.2) {
        dark += dark(seen, x, y, 0) ? 1 : 0;
        all++;
      }
    }
    return dark / (double) all;
  }

  private static double rim(BufferedImage seen, JsonNode box) {
    int dark = 0;
    int all = 0;
    double in = 0.6;
    for (double t = 0; t <= 1; t += 0.02) {
      double x = box.path("left").asDouble() + in + t * (width(box, "left", "right") - 2 * in);
      double y = box.path("top").asDouble() + in + t * (width(box, "top", "bottom") - 2 * in);
      for (double[] p :
          new double[][] {
            {x, box.path("top").asDouble() + in},
            {x, box.path("bottom").asDouble() - in},
            {box.path("left").asDouble() + in, y},
            {box.path("right").asDouble() - in, y}
          }) {
        dark += dark(seen, p[0], p[1], 0) ? 1 : 0;
        all++;
      }
    }
    return dark / (double) all;
  }

  private static double width(JsonNode box, String from, String to) {
    return box.path(to).asDouble() - box.path(from).asDouble();
  }
}
