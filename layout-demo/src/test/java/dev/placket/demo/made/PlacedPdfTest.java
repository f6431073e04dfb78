package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import dev.placket.demo.Browser;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Flats from PDF beside the same flats from SVG. The PDFs are made by librsvg, by Batik with
 * PDFBox, and by Chromium; poppler renders source and pack. Skipped where a program is missing.
 */
class PlacedPdfTest {
  private static final String SHEETS = "dev.placket.demo.made.MadeSheet#all";

  /** Half a millimetre in points. */
  private static final double HALF_MM = 0.5 * 72 / 25.4;

  /** Renderings are so many times as fine as they are compared. */
  private static final int FINE = 3;

  @TempDir private Path work;

  private interface Maker {
    void make(Path svg, Path pdf) throws Exception;
  }

  private void librsvg(Path svg, Path pdf) throws Exception {
    Poppler.run(work, "rsvg-convert", "-f", "pdf", "-o", pdf.toString(), svg.toString());
  }

  private void batik(Path svg, Path pdf) throws Exception {
    Drawing drawing = (Drawing) PictureReader.read(PictureSource.of(svg), ReadLimits.DEFAULT);
    float width = (float) drawing.viewBox().width();
    float height = (float) drawing.viewBox().height();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(width, height));
      document.addPage(page);
      PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
      g.translate(-drawing.viewBox().x(), -drawing.viewBox().y());
      drawing.paint(g);
      g.dispose();
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        out.drawForm(g.getXFormObject());
      }
      document.save(pdf.toFile());
    }
  }

  private void chromium(Path svg, Path pdf) throws Exception {
    Drawing drawing = (Drawing) PictureReader.read(PictureSource.of(svg), ReadLimits.DEFAULT);
    double scale = 600 / largest(svg.getParent());
    String size =
        drawing.viewBox().width() * scale + "px " + drawing.viewBox().height() * scale + "px";
    String width = "width:" + drawing.viewBox().width() * scale + "px";
    Path page = work.resolve("page.html");
    Files.writeString(
        page,
        "<!DOCTYPE html><style>@page{margin:0;size:"
            + size
            + "}body{margin:0}img{display:block;"
            + width
            + "}</style><img src='"
            + svg.toUri()
            + "'>");
    Browser.print(page, pdf, work);
  }

  /** The longest side of any drawing: pages of one style are printed at one scale. */
  private static double largest(Path folder) throws Exception {
    double largest = 0;
    for (Path svg : drawings(folder)) {
      Drawing drawing = (Drawing) PictureReader.read(PictureSource.of(svg), ReadLimits.DEFAULT);
      largest = Math.max(largest, Math.max(drawing.viewBox().width(), drawing.viewBox().height()));
    }
    return largest;
  }

  private static List<Path> drawings(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
    }
  }

  /** The folder of a sheet with each drawing as a PDF, all else as it is. */
  private Path folder(MadeSheet made, Maker maker) throws Exception {
    Path folder = Files.createDirectory(work.resolve("style"));
    try (Stream<Path> all = Files.list(made.folder())) {
      for (Path file : all.filter(f -> !f.toString().endsWith(".svg")).toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
    for (Path svg : drawings(made.folder())) {
      String name = svg.getFileName().toString().replace(".svg", ".pdf");
      maker.make(svg, folder.resolve(name));
    }
    return folder;
  }

  private JsonNode fit(Path folder) throws IOException {
    Run run = Run.of("fit", folder, "--out", work.resolve("out"), "--json");
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    assertEquals(List.of(), FitSchema.errors(run.out()));
    return new ObjectMapper().readTree(run.out()).path("sheets").get(0);
  }

  private static JsonNode placement(JsonNode sheet, String flat) {
    for (JsonNode p : sheet.path("placements")) {
      if (p.path("flat").asText().equals(flat)) {
        return p;
      }
    }
    throw new AssertionError("no flat " + flat + " in " + sheet);
  }

  private void same(MadeSheet made, JsonNode sheet) {
    for (JsonNode expected : made.placements()) {
      same(expected, placement(sheet, expected.path("flat").asText()));
    }
  }

  private static void same(JsonNode expected, JsonNode actual) {
    for (String side : new String[] {"left", "top", "right", "bottom"}) {
      assertEquals(
          expected.path("inkedBox").path(side).asDouble(),
          actual.path("inkedBox").path(side).asDouble(),
          HALF_MM,
          actual.path("flat").asText() + " " + side);
    }
  }

  @ParameterizedTest
  @MethodSource(SHEETS)
  void theyLieWhereTheSameSvgLies(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    same(made, fit(folder(made, this::librsvg)));
  }

  @ParameterizedTest
  @MethodSource(SHEETS)
  void soDoThoseThatBatikWrote(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    same(made, fit(folder(made, this::batik)));
  }

  @Test
  void soDoThoseThatChromiumPrinted() throws Exception {
    MadeSheet made = MadeSheet.of("noble");
    same(made, fit(folder(made, this::chromium)));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource(SHEETS)
  void soDoAllThatChromiumPrinted(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    same(made, fit(folder(made, this::chromium)));
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("garments")
  void soDoThePagesOfOneFile(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    Path folder = Files.createDirectory(work.resolve("style"));
    List<String> command = new ArrayList<>(List.of("rsvg-convert", "-f", "pdf", "-o"));
    command.add(folder.resolve(name + ".pdf").toString());
    // The front first, as a person exports them.
    Comparator<Path> backLast = Comparator.comparing(f -> f.endsWith("back.svg"));
    List<Path> pages = drawings(made.folder()).stream().sorted(backLast).toList();
    pages.forEach(f -> command.add(f.toString()));
    Poppler.run(work, command.toArray(String[]::new));
    StringBuilder roles = new StringBuilder();
    for (int i = 0; i < pages.size(); i++) {
      String role = pages.get(i).endsWith("back.svg") ? "back" : "front";
      roles.append("role." + name + "-" + (i + 1) + "=" + role + "\n");
    }
    Files.writeString(folder.resolve("pack.properties"), roles, StandardCharsets.UTF_8);
    JsonNode sheet = fit(folder);
    for (int i = 0; i < pages.size(); i++) {
      String flat = pages.get(i).getFileName().toString().replace(".svg", "");
      same(placement(made, flat), placement(sheet, name + "-" + (i + 1)));
    }
  }

  static Stream<String> garments() {
    return MadeSheet.all().skip(1);
  }

  private static JsonNode placement(MadeSheet made, String flat) {
    return made.placements().stream()
        .filter(p -> p.path("flat").asText().equals(flat))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void popplerShowsThemAsItShowsTheirFile() throws Exception {
    shownAlike("noble");
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource(SHEETS)
  void popplerShowsAllAsItShowsTheirFile(String name) throws Exception {
    shownAlike(name);
  }

  private void shownAlike(String name) throws Exception {
    MadeSheet made = MadeSheet.of(name);
    Path folder = folder(made, this::librsvg);
    JsonNode sheet = fit(folder);
    Path pack = onlyPdf(work.resolve("out"));
    for (Path pdf : pdfs(folder)) {
      JsonNode p = placement(sheet, pdf.getFileName().toString().replace(".pdf", ""));
      InkedBox ink = PictureReader.read(PictureSource.of(pdf), ReadLimits.DEFAULT).inkedBox();
      double left = p.path("inkedBox").path("left").asDouble();
      double top = p.path("inkedBox").path("top").asDouble();
      double scale = p.path("scale").asDouble();
      double fine = FINE * Pages.PER_INCH;
      int width = (int) (ink.width() * scale * fine / 72);
      int height = (int) (ink.height() * scale * fine / 72);
      Rectangle there = at(left * fine / 72, top * fine / 72, width, height);
      Rectangle here =
          at(ink.left() * scale * fine / 72, ink.top() * scale * fine / 72, width, height);
      BufferedImage placed = render(pack, fine, there, "pack");
      double[] own = coarse(placed, 0, 0);
      double best = -1;
      // The pixels of one begin between those of the other: the nearest of some shifts counts.
      BufferedImage source = render(pdf, fine * scale, here, "source");
      for (int dy = -1; dy <= 1; dy++) {
        for (int dx = -1; dx <= 1; dx++) {
          best = Math.max(best, Pages.correlation(own, coarse(source, dx, dy)));
        }
      }
      assertTrue(best >= 0.98, pdf + ": " + best);
    }
  }

  private static Rectangle at(double left, double top, int width, int height) {
    return new Rectangle((int) Math.round(left), (int) Math.round(top), width, height);
  }

  /** Ink at the resolution of a screen, of a rendering so many times as fine, moved a little. */
  private static double[] coarse(BufferedImage image, int dx, int dy) {
    int width = image.getWidth() / FINE - 2;
    int height = image.getHeight() / FINE - 2;
    double[] ink = new double[width * height];
    for (int y = 0; y < height * FINE; y++) {
      for (int x = 0; x < width * FINE; x++) {
        int rgb = image.getRGB(x + FINE + dx, y + FINE + dy);
        ink[y / FINE * width + x / FINE] += 255 - (rgb >> 8 & 255);
      }
    }
    return ink;
  }

  private BufferedImage render(Path pdf, double perInch, Rectangle part, String name)
      throws Exception {
    Path stem = work.resolve(name);
    Poppler.run(
        work,
        "pdftoppm",
        "-r",
        String.valueOf(perInch),
        "-x",
        String.valueOf(part.x),
        "-y",
        String.valueOf(part.y),
        "-W",
        String.valueOf(part.width),
        "-H",
        String.valueOf(part.height),
        "-png",
        "-singlefile",
        pdf.toString(),
        stem.toString());
    return ImageIO.read(new File(stem + ".png"));
  }

  private static List<Path> pdfs(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
    }
  }

  private static Path onlyPdf(Path folder) throws IOException {
    List<Path> all = pdfs(folder);
    assertEquals(1, all.size(), all.toString());
    return all.get(0);
  }

  @Test
  void picturesInThemCountAsPopplerCountsThem() throws Exception {
    Path folder = Files.createDirectory(work.resolve("style"));
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(200, 160));
      document.addPage(page);
      BufferedImage noise = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
      for (int i = 0; i < 300 * 200; i++) {
        noise.setRGB(i % 300, i / 300, i * 7919 & 0xFFFFFF);
      }
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        out.drawImage(LosslessFactory.createFromImage(document, noise), 20, 20, 150, 120);
      }
      document.save(folder.resolve("front.pdf").toFile());
    }
    JsonNode sheet = fit(folder);
    JsonNode density = placement(sheet, "front").path("density");
    List<String[]> listed = Poppler.images(work, onlyPdf(work.resolve("out")));
    assertEquals(1, listed.size());
    double x = Double.parseDouble(listed.get(0)[12]);
    double y = Double.parseDouble(listed.get(0)[13]);
    // Poppler prints whole numbers.
    assertEquals(x, density.path("x").asDouble(), 0.005 * x + 0.5);
    assertEquals(y, density.path("y").asDouble(), 0.005 * y + 0.5);
    // Just not soft: 150 pixels per inch on the poorer axis.
    assertEquals(150, Math.min(density.path("x").asDouble(), density.path("y").asDouble()), 0.5);
    assertEquals("scalable", placement(sheet, "front").path("state").asText());
  }

  @Test
  void eachIsAFigureAndSharesWhatPagesShare() throws Exception {
    List<Path> svg = drawings(Path.of("src", "demo", "mg-3107", "flats"));
    Path folder = Files.createDirectory(work.resolve("style"));
    List<String> command = new ArrayList<>(List.of("rsvg-convert", "-f", "pdf", "-o"));
    command.add(folder.resolve("style.pdf").toString());
    svg.forEach(f -> command.add(f.toString()));
    Poppler.run(work, command.toArray(String[]::new));
    Files.writeString(
        folder.resolve("pack.properties"),
        "role.style-1=back\nrole.style-2=front\n",
        StandardCharsets.UTF_8);
    JsonNode sheet = fit(folder);
    assertEquals("back", placement(sheet, "style-1").path("role").asText());
    assertEquals("style.pdf#2", placement(sheet, "style-2").path("source").asText());
    Path pack = onlyPdf(work.resolve("out"));
    try (PDDocument document = Loader.loadPDF(pack.toFile())) {
      List<String> figures = new ArrayList<>();
      PDStructureElement all =
          (PDStructureElement)
              document.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
      for (Object kid : all.getKids()) {
        PDStructureElement element = (PDStructureElement) kid;
        if (element.getStructureType().equals("Figure")) {
          figures.add(element.getAlternateDescription());
        }
      }
      assertEquals(svg.size(), figures.size(), figures.toString());
      assertTrue(figures.get(0).startsWith("Front view, line drawing"), figures.toString());
      assertTrue(document.getDocumentCatalog().getOCProperties() == null);
    }
    // The same folder gives the same bytes.
    byte[] first = Files.readAllBytes(pack);
    Run again = Run.of("fit", folder, "--out", work.resolve("again"));
    assertEquals(0, again.code() % 3, again.err());
    assertTrue(java.util.Arrays.equals(first, Files.readAllBytes(onlyPdf(work.resolve("again")))));
  }
}
