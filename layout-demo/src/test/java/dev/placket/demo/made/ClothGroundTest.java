package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cloth and photographs are placed with their ground, and framed where paper would swallow it. */
class ClothGroundTest {
  private static final float PER_INCH = 288;
  private static final String OPEN =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 80'>";

  @TempDir private Path dir;
  private Path flats;

  @BeforeEach
  void folder() throws IOException {
    flats = Files.createDirectory(dir.resolve("style"));
    svg("front", "<path d='M20 9H70V70H20Z' fill='none' stroke='#000'/>");
    svg("white-swatch", "<rect width='100' height='80' fill='#fff'/>");
    svg("ivory-swatch", "<rect width='100' height='80' fill='ivory'/>");
    svg(
        "stripe-swatch",
        "<rect width='100' height='80' fill='#fff'/><path d='M20 0V80M80 0V80' stroke='#88a'/>");
    // A white page behind; the cloth is the white square on it, with one dot.
    svg(
        "dot-swatch",
        "<rect width='100' height='80' fill='#fff'/><rect x='30' y='20' width='40' height='40'"
            + " fill='#fdfdfd'/><circle cx='50' cy='40' r='4'/>");
    svg("dark-swatch", "<rect width='100' height='80' fill='#223355'/>");
    pdf("page-swatch", 200, 100);
    png("pale-photo", new Color(250, 248, 240), 300, 200);
  }

  private void svg(String name, String content) throws IOException {
    Files.writeString(flats.resolve(name + ".svg"), OPEN + content + "</svg>");
  }

  private void pdf(String name, int width, int height) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(width, height));
      document.addPage(page);
      try (var out = new PDPageContentStream(document, page)) {
        out.setNonStrokingColor(new Color(252, 252, 250));
        out.addRect(0, 0, width, height);
        out.fill();
      }
      document.save(flats.resolve(name + ".pdf").toFile());
    }
  }

  /** A ground with a bar over the middle fifth of its width and three fifths of its height. */
  private void png(String name, Color ground, int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(ground);
    g.fillRect(0, 0, width, height);
    g.setColor(Color.BLACK);
    g.fillRect(2 * width / 5, height / 5, width / 5, 3 * height / 5);
    g.dispose();
    ImageIO.write(image, "png", flats.resolve(name + ".png").toFile());
  }

  private Map<String, JsonNode> placed(Path out) throws IOException {
    Map<String, JsonNode> placed = new HashMap<>();
    JsonNode fit = new ObjectMapper().readTree(out.resolve("fit.json").toFile());
    for (JsonNode sheet : fit.path("sheets")) {
      sheet
          .path("placements")
          .forEach(p -> placed.put(p.path("source").asText().replaceAll("\\..*", ""), p));
    }
    return placed;
  }

  private static double side(JsonNode placement, String from, String to) {
    JsonNode box = placement.path("inkedBox");
    return box.path(to).asDouble() - box.path(from).asDouble();
  }

  private static double ratio(JsonNode placement) {
    return side(placement, "left", "right") / side(placement, "top", "bottom");
  }

  private static BufferedImage page(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFRenderer(document).renderImageWithDPI(0, PER_INCH);
    }
  }

  /** Whether the middle of each edge is dark within half a millimetre. */
  private static boolean framed(BufferedImage page, JsonNode placement) {
    double pixel = PER_INCH / 72;
    JsonNode box = placement.path("inkedBox");
    int left = (int) Math.round(box.path("left").asDouble() * pixel);
    int right = (int) Math.round(box.path("right").asDouble() * pixel);
    int top = (int) Math.round(box.path("top").asDouble() * pixel);
    int bottom = (int) Math.round(box.path("bottom").asDouble() * pixel);
    int x = left + (right - left) / 8;
    int y = top + (bottom - top) / 8;
    return dark(page, x, top, 0, 1)
        && dark(page, x, bottom, 0, 1)
        && dark(page, left, y, 1, 0)
        && dark(page, right, y, 1, 0);
  }

  private static boolean dark(BufferedImage page, int x, int y, int dx, int dy) {
    boolean line = false;
    boolean inside = true;
    for (int i = -6; i <= 6; i++) {
      int grey = page.getRGB(x + i * dx, y + i * dy) >> 8 & 255;
      line |= grey < 150;
      inside &= grey < 150 || i < 3;
    }
    return line && !inside;
  }

  @Test
  void clothKeepsItsGroundAndIsFramedWherePaleOnPaper() throws Exception {
    Path out = dir.resolve("out");
    Run run = Run.of("fit", flats, "--out", out, "--allow-soft");
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    Map<String, JsonNode> placed = placed(out);
    // Width over height of the files, by hand; of the dot, its square of cloth.
    Map<String, Double> shapes =
        Map.of(
            "white-swatch", 1.25,
            "ivory-swatch", 1.25,
            "stripe-swatch", 1.25,
            "dark-swatch", 1.25,
            "dot-swatch", 1.0,
            "page-swatch", 2.0,
            "pale-photo", 1.5);
    BufferedImage page = page(out.resolve("style.pdf"));
    for (var shape : shapes.entrySet()) {
      JsonNode placement = placed.get(shape.getKey());
      assertEquals(shape.getValue(), ratio(placement), 0.01, shape.getKey());
      boolean pale = !shape.getKey().equals("dark-swatch");
      assertEquals(pale, framed(page, placement), shape.getKey());
    }
  }

  @Test
  void aDescribedSheetPlacesAllOfASwatchOfPixels() throws Exception {
    png("motif", Color.WHITE, 400, 400);
    Path pack = flats.resolve("pack.yaml");
    Files.writeString(
        pack,
        """
        format: placket-pack/1
        paper: A4
        sheets:
          flat:
            name: Cloth
            columns: [1fr]
            rows: [1fr]
            areas:
              - cloth
            windows:
              cloth:
            flats:
              motif: {file: motif.png, role: swatch, window: cloth, greatest: 40mm}
        """);
    Path out = dir.resolve("out");
    Run run = Run.of("fit", pack, "--out", out);
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    JsonNode placement = placed(out).get("motif");
    assertEquals(1, ratio(placement), 1e-6, "all of the square picture");
    assertTrue(framed(page(out.resolve("pack.pdf")), placement));
  }

  @Test
  void inAWorkbookThePictureHasAHairline() throws Exception {
    Path workbook = dir.resolve("blank.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet("Flats").createRow(0).createCell(0).setCellValue("Style");
      try (var to = Files.newOutputStream(workbook)) {
        book.write(to);
      }
    }
    Path out = dir.resolve("out");
    Run run = Run.of("fit", flats, "--onto", workbook, "--out", out, "--allow-soft");
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    try (var in = Files.newInputStream(out.resolve("blank.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      Map<String, Boolean> lines = new HashMap<>();
      for (XSSFShape shape : book.getSheetAt(0).getDrawingPatriarch()) {
        var picture = ((XSSFPicture) shape).getCTPicture();
        lines.put(picture.getNvPicPr().getCNvPr().getName(), picture.getSpPr().isSetLn());
      }
      assertEquals(8, lines.size());
      lines.forEach(
          (name, line) ->
              assertEquals(!name.contains("front") && !name.contains("dark"), line, name));
    }
  }
}
