package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo pack as poppler reads it: page boxes, fonts, images. */
class PopplerPackTest {
  @TempDir Path work;

  /** ISO 216: 297 by 210 mm. ASME Y14.1, from memory: 11 by 8.5 in. In points of 1/72 in. */
  @ParameterizedTest
  @CsvSource({"A4, 841.8898, 595.2756", "Letter, 792, 612"})
  void everyPageHasItsBoxes(String paper, double width, double height) throws Exception {
    Path pdf = MadePack.on(paper).pdf();
    String said = Poppler.run(work, "pdfinfo", "-box", "-l", "99", pdf.toString());
    Matcher box = Pattern.compile("(Media|Crop)Box: +(\\S+) +(\\S+) +(\\S+) +(\\S+)").matcher(said);
    int boxes = 0;
    while (box.find()) {
      assertEquals(0, Double.parseDouble(box.group(2)), 0.005);
      assertEquals(0, Double.parseDouble(box.group(3)), 0.005);
      assertEquals(width, Double.parseDouble(box.group(4)), 0.01);
      assertEquals(height, Double.parseDouble(box.group(5)), 0.01);
      boxes++;
    }
    assertEquals(2 * 9, boxes, "two boxes for each of nine sheets");
    assertTrue(said.contains("Tagged:          yes"), said);
  }

  @ParameterizedTest
  @MethodSource("dev.placket.demo.made.MadePack#papers")
  void everyFontIsEmbedded(String paper) throws Exception {
    String said = Poppler.run(work, "pdffonts", MadePack.on(paper).pdf().toString());
    List<String> fonts = said.lines().skip(2).toList();
    assertTrue(!fonts.isEmpty(), said);
    for (String font : fonts) {
      // Three columns from the encoding on: embedded, a subset, with a way back to Unicode.
      assertTrue(font.contains("Identity-H       yes yes yes"), font);
    }
  }

  /** Exactly the flats with pixels are images, at the density that the command states. */
  @ParameterizedTest
  @MethodSource("dev.placket.demo.made.MadePack#papers")
  void exactlyTheRastersAreImages(String paper) throws Exception {
    MadePack made = MadePack.on(paper);
    List<JsonNode> rasters = new ArrayList<>();
    for (int i = 0; i < made.sheets().size(); i++) {
      made.placements(i).stream().filter(p -> !p.path("pixels").isNull()).forEach(rasters::add);
    }
    List<String[]> images = Poppler.images(work, made.pdf());
    assertEquals(rasters.size(), images.size());
    for (int i = 0; i < images.size(); i++) {
      JsonNode p = rasters.get(i);
      JsonNode box = p.path("inkedBox");
      double inches = (box.path("right").asDouble() - box.path("left").asDouble()) / 72;
      double pixels = p.path("embedded").path("width").asDouble();
      assertEquals(pixels, Double.parseDouble(images.get(i)[3]));
      // Poppler prints whole pixels per inch.
      assertEquals(pixels / inches, Double.parseDouble(images.get(i)[12]), 0.5 + 0.005 * 300);
    }
  }
}
