package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How near the largest scale a sheet comes is reported truly.
 *
 * <p>Each sheet has one arrangement that is known beforehand: its window is cut into boxes, with
 * more than the gap between any two, and each box is the outline of a drawing in millimetres. All
 * drawings share one scale, so that full size is possible. A report that full size would break is
 * false.
 */
class ScaleClaimTest {
  /** Points per millimetre: the scale at which the boxes stand as they were cut. */
  private static final double FULL_SIZE = 72 / 25.4;

  /** The gap between flats is 5 mm, the clearance to the rules 3 mm and half of the rule. */
  private static final double BETWEEN = 5.2;

  private static final double INSIDE = 3.5;
  private static final double LEAST_SIDE = 12;

  private static final Pattern CLAIM =
      Pattern.compile(
          "Scale: (the largest possible|at most ([0-9.]+) % below the largest possible)"
              + " as this sheet is ruled\\.");

  @TempDir Path dir;

  private record Size(double width, double height) {}

  /** Cuts a box into so many, by cuts from side to side; the same seed gives the same boxes. */
  private static List<Size> cut(Size box, int count, Random random) {
    if (count == 1) {
      return List.of(box);
    }
    int first = 1 + random.nextInt(count - 1);
    boolean across = box.width > box.height;
    double side = (across ? box.width : box.height) - BETWEEN;
    double share = side * Math.min(0.7, Math.max(0.3, (double) first / count));
    List<Size> all = new ArrayList<>();
    all.addAll(
        cut(across ? new Size(share, box.height) : new Size(box.width, share), first, random));
    double rest = side - share;
    all.addAll(
        cut(
            across ? new Size(rest, box.height) : new Size(box.width, rest),
            count - first,
            random));
    return all;
  }

  private Run fit(List<Size> boxes) throws IOException {
    StringBuilder flats = new StringBuilder();
    for (int i = 0; i < boxes.size(); i++) {
      Size box = boxes.get(i);
      // A stroke of 0.2 drawn inside the box, so that the ink is the box.
      Files.writeString(
          dir.resolve("part" + i + ".svg"),
          String.format(
              Locale.ROOT,
              "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-1 -1 300 300'><rect x='.1' y='.1'"
                  + " width='%s' height='%s' fill='none' stroke='#000' stroke-width='.2'/></svg>",
              box.width - 0.2,
              box.height - 0.2));
      flats.append(
          String.format(
              "      part%d: {file: part%d.svg, role: artwork, caption: '', least: 1mm,"
                  + " group: all, ratio: 1}%n",
              i, i));
    }
    Path pack =
        Files.writeString(
            dir.resolve("pack.yaml"),
            """
            format: placket-pack/1
            sheets:
              parts:
                name: Parts
                columns: [200mm, 1fr]
                rows: [150mm, 1fr]
                areas: [parts rest, foot foot]
                windows: {parts: }
                cells: {rest: {text: Rest}, foot: {text: Foot}}
                flats:
            """
                + flats.toString().indent(2));
    return Run.of("fit", pack, "--overwrite");
  }

  /** Whether the report claims the largest scale; fails where what it claims is false. */
  private boolean claimsTheLargest(List<Size> boxes) throws IOException {
    Run run = fit(boxes);
    assertEquals(0, run.code(), run.out() + run.err());
    JsonNode sheet =
        new ObjectMapper().readTree(dir.resolve("placket/fit.json").toFile()).path("sheets").get(0);
    double scale = sheet.path("proof").path("scale").asDouble();
    assertTrue(scale > 0, sheet.toString());
    Matcher claim = CLAIM.matcher(run.out().replaceAll("\\s+", " "));
    assertTrue(claim.find(), run.out());
    boolean largest = claim.group(2) == null;
    double below = largest ? 1e-6 : Double.parseDouble(claim.group(2)) / 100;
    assertTrue(
        scale >= FULL_SIZE * (1 - below),
        claim.group() + " but " + scale + " where " + FULL_SIZE + " is possible");
    return largest;
  }

  @Test
  void noSheetHasAnArrangementLargerThanItsReportClaims() throws IOException {
    int largest = 0;
    int below = 0;
    for (int count : new int[] {2, 3, 5, 7, 12, 16}) {
      for (int seed = 0; seed < 3; seed++) {
        Size window = new Size(200 - 2 * INSIDE, 150 - 2 * INSIDE);
        List<Size> boxes = cut(window, count, new Random(100L * count + seed));
        boxes.forEach(b -> assertTrue(Math.min(b.width, b.height) > LEAST_SIDE, b.toString()));
        if (claimsTheLargest(boxes)) {
          largest++;
        } else {
          below++;
        }
      }
    }
    assertTrue(largest >= 6 && below >= 3, largest + " largest, " + below + " below");
  }
}
