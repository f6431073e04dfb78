package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a run reports, from the files to the exit code. */
class UseWordsTest {
  private static final String GOOD =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  @TempDir Path dir;
  private Path flats;

  @BeforeEach
  void folder() throws IOException {
    flats = Files.createDirectory(dir.resolve("style"));
  }

  private void drawing(String name) throws IOException {
    Files.writeString(flats.resolve(name), GOOD);
  }

  private static String line(String said) {
    return said.replaceAll("\\s+", " ");
  }

  /** Rings, drawn with coverage at their own size, each pixel then repeated. */
  private void picture(String name, int width, int height, int times) throws IOException {
    BufferedImage own = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = own.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(2));
    for (int inset = 4; inset < width / 2 - 4; inset += 12) {
      g.draw(new Ellipse2D.Double(inset, inset, width - 2 * inset, height - 2 * inset));
    }
    g.dispose();
    BufferedImage large =
        new BufferedImage(width * times, height * times, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < large.getHeight(); y++) {
      for (int x = 0; x < large.getWidth(); x++) {
        large.setRGB(x, y, own.getRGB(x / times, y / times));
      }
    }
    ImageIO.write(large, "png", flats.resolve(name).toFile());
  }

  /** 250 pixels at 150 to the inch are 42.3 mm: held there, and the way out is more pixels. */
  @Test
  void aFrontOf250PixelsNamesItsPixelsAndTheWayOut() throws IOException {
    picture("front.png", 250, 250, 1);
    drawing("back.svg");
    drawing("cuff-detail.svg");
    Run fit = Run.of("fit", flats);
    assertEquals(0, fit.code(), fit.out() + fit.err());
    Matcher way =
        Pattern.compile("Export front.png at ([0-9,]+) × [0-9,]+ pixels: its size is limited to")
            .matcher(line(fit.out()));
    assertTrue(way.find(), fit.out());
    assertTrue(Integer.parseInt(way.group(1).replace(",", "")) > 250, fit.out());
  }

  /** 200 pixels blown up eight times print at 342 to the inch and carry 43 of them. */
  @ParameterizedTest
  @ValueSource(ints = {4, 8, 12})
  void aPictureBlownUpBeforeExportIsSoft(int times) throws IOException {
    picture("front.png", 200, 200, times);
    Run fit = Run.of("fit", flats);
    assertEquals(3, fit.code(), fit.out() + fit.err());
    assertTrue(fit.out().contains("S soft"), fit.out());
    assertFalse(fit.out().contains("more are not visible"), fit.out());
  }

  @Test
  void viewsOfAFolderInDifferentUnitsAreAskedAbout() throws IOException {
    drawing("front.svg");
    drawing("back.svg");
    Files.writeString(flats.resolve("pack.properties"), "unit.mm.front=10\nunit.mm.back=1\n");
    Run fit = Run.of("fit", flats);
    assertEquals(2, fit.code(), fit.out());
    assertTrue(
        line(fit.err())
            .contains("front is drawn in units of 10 mm and back in units of 1 mm, yet they"),
        fit.err());
    assertFalse(Files.exists(flats.resolve("placket")));
  }

  private Run pack(String columns, String front, Object... options) throws IOException {
    drawing("front.svg");
    drawing("back.svg");
    Path pack =
        Files.writeString(
            flats.resolve("pack.yaml"),
            """
            format: placket-pack/1
            sheets:
              flats:
                name: Flats
                columns: [%s]
                areas: [views notes]
                windows: {views: }
                cells: {notes: {text: Notes}}
                flats:
                  front: {file: front.svg, role: front, %s}
                  back: {file: back.svg, role: back, unit: 1mm}
            """
                .formatted(columns, front));
    Object[] args = new Object[options.length + 3];
    args[0] = "fit";
    args[1] = pack;
    args[2] = "--overwrite";
    System.arraycopy(options, 0, args, 3, options.length);
    return Run.of(args);
  }

  @Test
  void viewsOfADescriptionInDifferentUnitsAreAskedAbout() throws IOException {
    Run fit = pack("1fr, 40mm", "unit: 1cm");
    assertEquals(2, fit.code(), fit.out());
    assertTrue(
        line(fit.err())
            .contains("front is drawn in units of 10 mm and back in units of 1 mm, yet they"),
        fit.err());
  }

  private double scale() throws IOException {
    Matcher scale =
        Pattern.compile("\"scale\"\\s*:\\s*([0-9.E-]+)")
            .matcher(Files.readString(flats.resolve("placket/fit.json")));
    assertTrue(scale.find());
    return Double.parseDouble(scale.group(1));
  }

  /** A wider window does hold them larger: all that is said is said of this ruling. */
  @Test
  void theLargestIsTheLargestAsTheSheetIsRuled() throws IOException {
    Run narrow = pack("1fr, 160mm", "unit: 1mm");
    assertEquals(0, narrow.code(), narrow.err());
    final double before = scale();
    assertTrue(
        line(narrow.out()).contains("Scale: the largest possible as this sheet is ruled."),
        narrow.out());
    assertFalse(narrow.out().contains("Nothing larger"), narrow.out());
    assertEquals(0, pack("1fr, 40mm", "unit: 1mm").code());
    assertTrue(scale() > 1.3 * before, scale() + " after " + before);
  }

  /** 9 in of front on a window of some 5 in. */
  @ParameterizedTest
  @ValueSource(strings = {"mm", "in"})
  void noRoomSpeaksTheUnitsAskedFor(String units) throws IOException {
    Run fit = pack("1fr, 160mm", "unit: 1mm, least: 229mm", "--units", units);
    assertEquals(4, fit.code(), fit.out() + fit.err());
    String other = units.equals("mm") ? "in" : "mm";
    assertTrue(line(fit.err()).matches(".*[0-9.]+ " + units + "\\b.*"), fit.err());
    assertFalse(line(fit.err()).matches(".*[0-9] " + other + "\\b.*"), fit.err());
  }

  /** Sheets beside their flats are no flats in the next run. */
  @Test
  void aSecondRunIntoTheFolderOfFlatsReadsNoneOfTheFirst() throws IOException {
    drawing("front.svg");
    assertEquals(0, Run.of("fit", flats, "--out", flats).code());
    byte[] first = Files.readAllBytes(flats.resolve("fit.json"));
    Run second = Run.of("fit", flats, "--out", flats, "--overwrite");
    assertEquals(0, second.code(), second.err());
    assertArrayEquals(first, Files.readAllBytes(flats.resolve("fit.json")));
    Run elsewhere = Run.of("fit", flats, "--out", dir.resolve("elsewhere"));
    assertEquals(0, elsewhere.code(), elsewhere.err());
    assertArrayEquals(first, Files.readAllBytes(dir.resolve("elsewhere/fit.json")));
    assertFalse(elsewhere.out().contains("style.png as"), elsewhere.out());
  }

  /** Java reads U+FFFD where a name is no text of the locale, as in LC_ALL=C. */
  @Test
  void aNameThatTheLocaleCannotReadIsRefused() throws IOException {
    drawing("front.svg");
    drawing("r\uFFFDcken-back.svg");
    Run fit = Run.of("fit", flats);
    assertEquals(2, fit.code(), fit.out());
    assertEquals(1, fit.err().lines().count(), fit.err());
    assertTrue(fit.err().contains("LC_ALL=C.UTF-8"), fit.err());
    assertFalse(Files.exists(flats.resolve("placket")));
  }

  /** A4 at 110 pixels to the inch: 1286 by 909 are 1.17 million. */
  @Test
  void thePixelsOfAllPreviewsHaveALimit() throws IOException {
    drawing("front.svg");
    Run over = Run.of("fit", flats, "--max-pixels", 1);
    assertEquals(2, over.code(), over.out());
    assertTrue(
        line(over.err()).contains("1.2 million pixels, more than the limit of 1.0"), over.err());
    assertTrue(over.err().contains("--max-pixels"), over.err());
    assertFalse(Files.exists(flats.resolve("placket")));
    assertEquals(0, Run.of("fit", flats, "--max-pixels", 2).code());
    assertEquals(2, Run.of("fit", flats, "--max-pixels", 0).code());
  }

  /** The same paper in at most a million pixels has fewer to the inch, and the same shape. */
  @Test
  void thePixelsOfOnePreviewHaveALimit() throws IOException {
    drawing("front.svg");
    assertEquals(0, Run.of("fit", flats).code());
    BufferedImage usual = ImageIO.read(flats.resolve("placket/style.png").toFile());
    assertEquals("1286 909", usual.getWidth() + " " + usual.getHeight());
    Run small = Run.of("fit", flats, "--overwrite", "--max-preview", 1);
    assertEquals(0, small.code(), small.err());
    BufferedImage image = ImageIO.read(flats.resolve("placket/style.png").toFile());
    // 1e6 pixels of the ratio of A4: 1189.2 by 840.9.
    assertEquals("1189 841", image.getWidth() + " " + image.getHeight());
    for (Object wrong : new Object[] {0, -1, 2001}) {
      Run run = Run.of("fit", flats, "--overwrite", "--max-preview", wrong);
      assertEquals(2, run.code(), run.out());
      assertTrue(run.err().contains("--max-preview " + wrong), run.err());
    }
  }
}
