package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hairlines around details cut out of a larger drawing; that they help is common practice. */
class CropFrameTest {
  private static final double PIXELS_PER_PT = 300 / 72.0;

  /** Lines that the view box cuts off. */
  private static final Map<String, String> CROPS =
      Map.of(
          "collar", "M-10,30 C30,10 70,10 110,30 M-10,60 C30,40 70,40 110,60",
          "cuff", "M10,-10 L20,80 H80 L90,-10 M18,70 H82",
          "hem", "M-10,70 H110 M-10,78 H110 M30,-10 V90");

  /** Parts drawn whole: straight and pointed, a point, round, and a thread that hangs. */
  private static final Map<String, String> WHOLE =
      Map.of(
          "pocket", "M10,10 H90 V90 L50,98 L10,90 Z",
          "tab", "M10,10 L50,90 L90,10 C70,20 30,20 10,10",
          "badge", "M10,50 A40,40 0 0 0 90,50 A40,40 0 0 0 10,50",
          "eyelet", "M30,20 A20,20 0 0 0 70,20 A20,20 0 0 0 30,20 M50,40 V95");

  @TempDir private Path dir;

  private void svg(String name, String path) throws IOException {
    Files.writeString(
        dir.resolve(name + ".svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
            + "<path d='%s' fill='none' stroke='#000'/></svg>".formatted(path));
  }

  /** Whether each flat of a folder or a description is framed on its first page. */
  private Map<String, Boolean> framed(Object source) throws IOException {
    Run run = Run.of("fit", source, "--out", dir.resolve("out"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    JsonNode sheet =
        new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile()).path("sheets").path(0);
    Path pdf;
    try (var files = Files.list(dir.resolve("out"))) {
      pdf = files.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
    }
    Map<String, Boolean> framed = new TreeMap<>();
    try (PDDocument pages = Loader.loadPDF(pdf.toFile())) {
      BufferedImage page = new PDFRenderer(pages).renderImageWithDPI(0, 300);
      for (JsonNode flat : sheet.path("placements")) {
        framed.put(flat.path("flat").asText(), isFramed(page, flat.path("inkedBox")));
      }
    }
    return framed;
  }

  /** Dark pixels all along the four lines one millimetre outside the drawing. */
  private static boolean isFramed(BufferedImage page, JsonNode ink) {
    double mm = 72 / 25.4;
    double left = ink.path("left").asDouble() - mm;
    double top = ink.path("top").asDouble() - mm;
    double right = ink.path("right").asDouble() + mm;
    double bottom = ink.path("bottom").asDouble() + mm;
    for (double part = 0; part <= 1; part += 0.01) {
      double x = left + part * (right - left);
      double y = top + part * (bottom - top);
      if (!(isDark(page, x, top)
          && isDark(page, x, bottom)
          && isDark(page, left, y)
          && isDark(page, right, y))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDark(BufferedImage page, double x, double y) {
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        int px = (int) (x * PIXELS_PER_PT) + dx;
        int py = (int) (y * PIXELS_PER_PT) + dy;
        if ((page.getRGB(px, py) & 255) < 200) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void onlyDetailsThatAreCutOffAreFramed() throws IOException {
    Path folder = Files.createDirectory(dir.resolve("folder"));
    svg("front", "M20,2 H80 L98,98 H2 Z");
    Files.move(dir.resolve("front.svg"), folder.resolve("front.svg"));
    Map<String, Boolean> expected = new TreeMap<>(Map.of("front", false));
    for (var part : CROPS.entrySet()) {
      svg(part.getKey(), part.getValue());
      expected.put(part.getKey() + "-detail", true);
    }
    for (var part : WHOLE.entrySet()) {
      svg(part.getKey(), part.getValue());
      expected.put(part.getKey() + "-detail", false);
    }
    for (String id : expected.keySet()) {
      Path from = dir.resolve(id.replace("-detail", "") + ".svg");
      if (Files.exists(from)) {
        Files.move(from, folder.resolve(id + ".svg"));
      }
    }
    assertEquals(expected, framed(folder));
  }

  private Path pack(String gap, String more) throws IOException {
    svg("hem", CROPS.get("hem"));
    svg("cuff", CROPS.get("cuff"));
    return Files.writeString(
        dir.resolve("pack.yaml"),
        """
        format: placket-pack/1
        sheets:
          one:
            name: One
            areas: [all]
            gap: %s
            windows: {all: }
            flats:
              cuff: {file: cuff.svg, role: detail}
              hem: {file: hem.svg, role: detail%s}
        """
            .formatted(gap, more));
  }

  @Test
  void noFrameStandsWhereNeighboursAreFarApart() throws IOException {
    assertEquals(Map.of("cuff", true, "hem", true), framed(pack("5mm", "")));
    assertEquals(Map.of("cuff", false, "hem", false), framed(pack("20mm", "")));
  }

  /** Its leaders would cross the frame; the neighbour has one still. */
  @Test
  void aDetailWithCalloutsHasNone() throws IOException {
    String called =
        ", points: {mid: {across: 50%, down: 50%}}, callouts: {n: {point: mid, text: Fold}}";
    assertTrue(!framed(pack("5mm", called)).get("hem"));
  }

  /** Two frames do not fit into two millimetres. */
  @Test
  void noFrameStandsWhereItHasNoRoom() throws IOException {
    assertEquals(Map.of("cuff", false, "hem", false), framed(pack("2mm", "")));
  }
}
