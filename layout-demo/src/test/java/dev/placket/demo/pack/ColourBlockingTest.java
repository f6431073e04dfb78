package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Dark and light areas in one drawing. The ratios are worked by hand after WCAG 2.2 (relative
 * luminance, contrast ratio): #2F4038 has a luminance of 0.0456, so black keeps 1.9:1 to it and
 * white 11.0:1; #E8E4D8 has 0.772, so black keeps 16.4:1 and white 1.3:1.
 */
class ColourBlockingTest {
  private static final int DARK = 0x2F4038;
  private static final int LIGHT = 0xE8E4D8;

  @TempDir private Path dir;

  /** A dark yoke over a light body; a row of stitches on each, and one seam between them. */
  private Run run(String colouring) throws IOException {
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120' fill='none' stroke='#000'"
            + " stroke-width='2'><path id='yoke' d='M10,10 H90 V50 H10 Z' fill='#fff'/>"
            + "<path id='body' d='M10,50 H90 V110 H10 Z' fill='#fff'/>"
            + "<path id='seam' d='M10,50 H90'/><path id='yoke-row' d='M14,30 H86'/>"
            + "<path id='body-row' d='M14,80 H86'/></svg>");
    Path pack =
        Files.writeString(
            dir.resolve("pack.yaml"),
            """
            format: placket-pack/1
            sheets:
              ways:
                name: Colourways
                areas: [all]
                windows: {all: }
                flats:
                  one: {file: coat.svg, role: front, caption: "",
                        fills: {yoke: "#2F4038", body: "#E8E4D8"}, %s}
            """
                .formatted(colouring));
    return Run.of("fit", pack, "--out", dir.resolve("out"));
  }

  @Test
  void eachGroupOfLinesIsReadableOnItsArea() throws IOException {
    Run run = run("lines: {yoke-row: yoke, body-row: body}");
    assertEquals(0, run.code(), run.err());
    BufferedImage page = ImageIO.read(dir.resolve("out/pack.png").toFile());
    assertEquals(0xFFFFFF, lineWithin(page, DARK));
    assertEquals(0x000000, lineWithin(page, LIGHT));
  }

  /** The colour of the line that parts an area, met downwards in its middle. */
  private static int lineWithin(BufferedImage page, int area) {
    int x = page.getWidth() / 2;
    int y = 0;
    while ((page.getRGB(x, y) & 0xFFFFFF) != area) {
      y++;
    }
    while ((page.getRGB(x, y) & 0xFFFFFF) == area) {
      y++;
    }
    // The middle of the line, past its softened edge.
    return page.getRGB(x, y + 1) & 0xFFFFFF;
  }

  @Test
  void aLineOnBothIsRefusedWithBothRatios() throws IOException {
    Run run = run("lines: {seam: [yoke, body], yoke-row: yoke}");
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains("neither black (1.9:1) nor white (1.3:1)"), run.err());
    assertTrue(run.err().contains("yoke #2F4038, body #E8E4D8"), run.err());
    assertTrue(run.err().contains("'seam' under low-contrast"), run.err());
    assertTrue(Files.notExists(dir.resolve("out")));
  }

  @Test
  void anExceptionIsReported() throws IOException {
    Run run =
        run("lines: {seam: [yoke, body], yoke-row: yoke}, low-contrast: seam, line-weight: 0.4mm");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("neither black (1.9:1) nor white (1.3:1)"), run.out());
    assertTrue(run.out().contains("low-contrast accepts it"), run.out());
  }

  @Test
  void aDarkAreaWithoutLinesIsRefusedUnlessItIsAccepted() throws IOException {
    Run refused = run("lines: {body-row: body}");
    assertEquals(2, refused.code(), refused.err());
    assertTrue(refused.err().contains("black lines keep only 1.9:1"), refused.err());
    assertEquals(0, run("lines: {body-row: body}, low-contrast: yoke").code());
  }

  @Test
  void anOutlineKeepsItsContrastToThePaper() throws IOException {
    // The yoke's own edge would be white on white paper.
    Run named = run("lines: {yoke: yoke, body-row: body}");
    assertEquals(2, named.code(), named.err());
    assertTrue(named.err().contains("yoke #2F4038, paper"), named.err());
    Run stated = run("lines: {yoke-row: [yoke, paper], body-row: body}");
    assertEquals(2, stated.code(), stated.err());
    assertTrue(stated.err().contains("yoke #2F4038, paper"), stated.err());
  }

  @Test
  void unknownNamesAreAnsweredWithThoseThereAre() throws IOException {
    Run area = run("lines: {yoke-row: joke}");
    assertEquals(2, area.code());
    assertTrue(area.err().contains("joke") && area.err().contains("yoke"), area.err());
    Run accepted = run("lines: {yoke-row: yoke}, low-contrast: seams");
    assertEquals(2, accepted.code());
    assertTrue(accepted.err().contains("seams"), accepted.err());
  }
}
