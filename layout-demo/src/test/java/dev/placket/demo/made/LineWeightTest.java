package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import dev.placket.demo.made.PaintedPaths.Stroked;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Widths of lines on paper, in the path operators of the page. */
class LineWeightTest {
  private static final double MM = 25.4 / 72;

  @TempDir private Path dir;

  /** An outline of 400 units, 4 wide, a seam of 90, 2 wide, and a wider spot too short to count. */
  private static final String FRONT =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 120 120' fill='none' stroke='#000'"
          + " stroke-linejoin='round'><rect x='10' y='10' width='100' height='100'"
          + " stroke-width='4'/><path d='M 15 60 H 105' stroke-width='2' stroke-dasharray='6 3'/>"
          + "<path id='tack' d='M 60 20 V 30' stroke-width='9'/></svg>";

  private static final String PACK =
      """
      format: placket-pack/1
      sheets:
        m:
          name: Sheet
          areas: [views]
          windows: {views: }
          flats:
            front: {file: front.svg, role: front, line-weight: 0.6mm, greatest: 50mm}
      """;

  private Run fit(String text) throws IOException {
    Files.writeString(dir.resolve("front.svg"), FRONT);
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--json", "--overwrite");
  }

  private List<Stroked> strokes() throws Exception {
    return PaintedPaths.figures(dir.resolve("out/pack.pdf"), 0).get(0).strokes();
  }

  private static List<String> widths(List<Stroked> strokes) {
    List<String> widths = new ArrayList<>();
    for (Stroked s : strokes) {
      widths.add(String.format(java.util.Locale.ROOT, "%.3f", s.width() * MM));
    }
    return widths;
  }

  /** The outline prints at 0.6 mm, half as wide a seam at 0.3, 9 to 4 at 1.35. */
  @Test
  void theOutlinePrintsAtItsWidthWhateverTheScale() throws Exception {
    for (String greatest : List.of("50mm", "31mm", "90mm")) {
      Run run = fit(PACK.replace("50mm", greatest));
      assertEquals(0, run.code(), run.err());
      assertEquals(List.of("0.600", "0.300", "1.350"), widths(strokes()), greatest);
    }
    // Paths alone have the printed size; what strokes reach beyond them is kept clear as well.
    JsonNode flat =
        new ObjectMapper()
            .readTree(fit(PACK).out())
            .path("sheets")
            .get(0)
            .path("placements")
            .get(0);
    Rectangle2D outline = strokes().get(0).path().getBounds2D();
    assertEquals(50, outline.getWidth() * MM, 1e-3);
    JsonNode room = flat.path("footprint");
    double over = outline.getMinX() - room.path("left").asDouble();
    // The widest line is 1.35 mm wide, and half of that is how far a line can reach.
    assertTrue(over * MM >= 0.675 - 1e-3, "" + over * MM);
  }

  /** 6 and 3 units at 2.4 times the width of a line of 2: gaps of at least 0.5 mm are kept. */
  @Test
  void dashesAreMultipliedAndGapsStayOpen() throws Exception {
    Run run = fit(PACK.replace("0.6mm", "0.3mm"));
    assertEquals(0, run.code(), run.err());
    Stroked seam = strokes().get(1);
    assertEquals(0.15, seam.width() * MM, 1e-3);
    // The factor is that of the widths: 0.15 mm over 2 units.
    assertEquals(6 * 0.15 / 2, seam.dashes()[0] * MM, 1e-3);
    double gap = seam.dashes()[1] * MM - (seam.butt() ? 0 : seam.width() * MM);
    assertEquals(0.5, gap, 0.15 + 1e-3);
  }

  @Test
  void thePackStatesAWidthForAllOrByRole() throws Exception {
    String plain = PACK.replace(", line-weight: 0.6mm", "");
    fit(plain + "line-weight: {front: 0.5mm, detail: 0.9mm}\n");
    assertEquals("0.500", widths(strokes()).get(0));
    fit(plain + "line-weight: 0.7mm\n");
    assertEquals("0.700", widths(strokes()).get(0));
    fit(PACK + "line-weight: 0.7mm\n");
    assertEquals("0.600", widths(strokes()).get(0));
    fit(plain);
    // As drawn: 4 of the 104 units that are 50 mm.
    assertEquals("1.923", widths(strokes()).get(0));
  }

  @Test
  void hiddenPartsAreNotDrawn() throws Exception {
    fit(PACK.replace("line-weight: 0.6mm", "line-weight: 0.6mm, hide: tack"));
    assertEquals(List.of("0.600", "0.300"), widths(strokes()));
    Run unknown = fit(PACK.replace("line-weight: 0.6mm", "hide: tak"));
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("no part of the drawing named 'tak'"), unknown.err());
    assertTrue(unknown.err().contains("nearest is 'tack'"), unknown.err());
  }

  @Test
  void aPictureOfPixelsHasNoLines() throws Exception {
    java.awt.image.BufferedImage grey =
        new java.awt.image.BufferedImage(900, 900, java.awt.image.BufferedImage.TYPE_BYTE_GRAY);
    javax.imageio.ImageIO.write(grey, "png", dir.resolve("front.png").toFile());
    Run run = fit(PACK.replace("front.svg", "front.png"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("line-weight for a picture without lines"), run.err());
    Run all =
        fit(
            PACK.replace("front.svg, role: front, line-weight: 0.6mm", "front.png, role: front")
                + "line-weight: 0.7mm\n");
    assertEquals(0, all.code(), all.err());
  }

  /** A named class is the outline: the tack of 9 prints at 0.6 mm, lines of 4 at 0.267. */
  @Test
  void anOutlineMayBeNamed() throws Exception {
    Run run = fit(PACK.replace("0.6mm", "0.6mm, outline: tack"));
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of("0.267", "0.133", "0.600"), widths(strokes()));
    Run unknown = fit(PACK.replace("0.6mm", "0.6mm, outline: tak"));
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("no part of the drawing named 'tak'"), unknown.err());
    Run alone = fit(PACK.replace("line-weight: 0.6mm", "outline: tack"));
    assertEquals(2, alone.code());
    assertTrue(alone.err().contains("an outline without line-weight"), alone.err());
  }

  @Test
  void aFolderStatesAWidthForAllOrForOne() throws Exception {
    Path folder = Files.createDirectory(dir.resolve("flats"));
    Files.writeString(folder.resolve("front.svg"), FRONT);
    Files.writeString(folder.resolve("pocket-detail.svg"), FRONT);
    Path notes = folder.resolve("pack.properties");
    Files.writeString(notes, "line-weight=0.6mm\nline-weight.pocket-detail=0.4mm\n");
    Run run = Run.of("fit", folder, "--out", dir.resolve("f"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    Path pdf;
    try (java.util.stream.Stream<Path> files = Files.list(dir.resolve("f"))) {
      pdf = files.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
    }
    List<String> outlines = new ArrayList<>();
    PaintedPaths.figures(pdf, 0).forEach(f -> outlines.add(widths(f.strokes()).get(0)));
    assertEquals(List.of("0.600", "0.400"), outlines);
    Files.writeString(notes, "line-weight=thick\n");
    Run wrong = Run.of("fit", folder, "--out", dir.resolve("f"), "--overwrite");
    assertEquals(2, wrong.code());
    assertTrue(wrong.err().contains("line-weight=thick"), wrong.err());
  }
}
