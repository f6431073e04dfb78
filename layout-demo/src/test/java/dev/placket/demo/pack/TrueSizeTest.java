package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Artwork of true size is as large as it says, and the bar beside it measures 100 mm. */
class TrueSizeTest {
  @TempDir Path dir;

  @Test
  void artworkAndBarMeasureWhatTheySay() throws IOException {
    String text =
        """
        format: placket-pack/1
        sheets:
          label:
            name: Label
            areas: [all]
            windows: {all: }
            flats:
              woven: {file: front.svg, role: artwork, unit: 0.5mm, true-size: true}
        """;
    Run run = Run.of("fit", ExamplePack.write(dir, text), "--out", dir.resolve("out"));
    assertEquals(0, run.code(), run.err());
    JsonNode fit = new ObjectMapper().readTree(Files.readString(dir.resolve("out/fit.json")));
    JsonNode flat = fit.path("sheets").get(0).path("placements").get(0);
    JsonNode ink = flat.path("inkedBox");
    // The drawing's ink: 80 units and a stroke of 4, at half a millimetre each.
    double width = (ink.path("right").asDouble() - ink.path("left").asDouble()) / 72 * 25.4;
    assertEquals(84 * 0.5, width, 1e-3);
    assertEquals(1, flat.path("garmentScale").asDouble(), 1e-9);
    assertEquals(100, bar(), 0.4);
  }

  /** The one level line between 90 and 110 mm on the page, at 10 pixels a millimetre. */
  private double bar() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(dir.resolve("out/pack.pdf").toFile())) {
      BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, 254);
      TreeSet<Integer> found = new TreeSet<>();
      for (int y = 0; y < image.getHeight(); y++) {
        int run = 0;
        for (int x = 0; x < image.getWidth(); x++) {
          boolean dark = (image.getRGB(x, y) & 255) < 128;
          if (!dark && run > 900 && run < 1100) {
            found.add(run);
          }
          run = dark ? run + 1 : 0;
        }
      }
      // With half a line's width at either end.
      return (found.last() - 2.5) / 10.0;
    }
  }
}
