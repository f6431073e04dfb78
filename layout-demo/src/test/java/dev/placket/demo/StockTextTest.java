package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sheet says of itself has room on every paper from A6 up, both ways round. */
@Tag("long")
class StockTextTest {
  @TempDir static Path root;

  @BeforeAll
  static void folder() throws IOException {
    Path flats = Files.createDirectory(root.resolve("flats"));
    drawing(flats, "front-of-a-quilted-winter-coat-with-a-detachable-hood", 60, 90);
    drawing(flats, "back-of-a-quilted-winter-coat-with-a-detachable-hood", 60, 92);
    // Two printed densities: one held by its pixels, one with more than are seen.
    picture(flats, "Reissverschlusstaschenklappenbeschlag-detail.png", 120);
    picture(flats, "collar-detail.png", 1200);
    picture(flats, "sample-photo.png", 300);
  }

  private static void drawing(Path in, String name, int width, int height) throws IOException {
    String svg =
        """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d">
        <rect x="1" y="1" width="%d" height="%d" fill="none" stroke="black"/></svg>
        """;
    Files.writeString(
        in.resolve(name + ".svg"), svg.formatted(width + 2, height + 2, width, height));
  }

  private static void picture(Path in, String name, int side) throws IOException {
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, side, side);
    g.setColor(Color.BLACK);
    g.drawRect(2, 2, side - 5, side - 5);
    g.dispose();
    ImageIO.write(image, "png", in.resolve(name).toFile());
  }

  private static Run fit(String paper, String units) {
    String out = root.resolve(paper.replace(' ', '-') + units).toString();
    return Run.of(
        "fit", root.resolve("flats").toString(), "--paper", paper, "--units", units, "--out", out);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A6",
        "A5",
        "A4",
        "A3",
        "A2",
        "Letter",
        "Legal",
        "11x17",
        "105x148mm",
        "210x148mm",
        "5.5x8.5in",
        "200x200mm",
        "230x160mm",
        "400x120mm"
      })
  void everyPaperBothWaysRound(String paper) throws IOException {
    List<String> ways = new ArrayList<>(List.of(paper));
    if (!paper.matches(".*(mm|in)")) {
      ways.add(paper + " portrait");
    }
    for (String way : ways) {
      for (String units : List.of("mm", "in")) {
        Run run = fit(way, units);
        assertEquals(0, run.code(), () -> way + ": " + run.err());
        Path pdf = root.resolve(way.replace(' ', '-') + units).resolve("flats.pdf");
        String text = text(pdf);
        for (String caution : List.of("Do not take measurements", "never cut", "full size")) {
          assertTrue(text.contains(caution), () -> way + ": " + text);
        }
      }
    }
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  /** ISO 216 and ASME Y14.1; A4 in inches is 210 and 297 over 25.4, rounded. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "A4; mm; A4 297 × 210 mm",
        "A4; in; A4 11.69 × 8.27 in",
        "Letter; in; Letter 11 × 8.5 in",
        "Letter; mm; Letter 279.4 × 215.9 mm",
        "11x17; in; 11x17 17 × 11 in",
        "Legal portrait; in; Legal 8.5 × 14 in"
      })
  void paperIsSaidByItsSides(String paper, String units, String words) {
    Run run = fit(paper + " ", units);
    assertTrue(run.out().contains(words), run.out() + run.err());
  }

  @Test
  void aFactoryReadsNothingThatItNeedNotKnow() throws IOException {
    assertEquals(0, fit("A4  landscape", "mm").code());
    String text = text(root.resolve("A4--landscapemm").resolve("flats.pdf"));
    assertFalse(text.contains("per inch"), text);
    // Four drawings and pictures are without a scale; the photograph is nobody's drawing.
    assertEquals(3, text.split("not to scale", -1).length - 1, text);
    assertTrue(text.contains("drawn smaller, 0.85 of the front"), text);
  }

  @ParameterizedTest
  @CsvSource({"9999x9999mm, 5080 mm", "201x10in, 5080 mm"})
  void paperLargerThanAPageMayBeIsRefused(String paper, String limit) {
    Run run = fit(paper, "mm");
    assertEquals(2, run.code());
    assertTrue(run.err().contains(limit), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"A7", "A4 sideways", "0x5mm", "10x10mm", "5 x mm"})
  void whatIsNoPaperIsRefused(String paper) {
    Run run = fit(paper, "mm");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("--paper " + paper), run.err());
  }
}
