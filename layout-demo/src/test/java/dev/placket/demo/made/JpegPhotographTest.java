package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photographs that are JPEGs: they stay the same bytes in the PDF where no pixel has to change. */
class JpegPhotographTest {
  private static final int WIDTH = 200;
  private static final int HEIGHT = 150;

  @TempDir private Path dir;

  /** Cloth: a colour with noise, which takes less as a JPEG than without loss. */
  private static byte[] cloth(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(7);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int noise = random.nextInt(60);
        image.setRGB(x, y, (90 + noise) << 16 | (70 + noise) << 8 | (x * 100 / width + noise));
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpg", out);
    return out.toByteArray();
  }

  private Path folder(byte[] jpeg) throws IOException {
    Path folder = Files.createDirectory(dir.resolve("style"));
    Files.writeString(
        folder.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
            + "<rect x='9' y='9' width='70' height='80'/></svg>");
    Files.write(folder.resolve("cloth-swatch.jpg"), jpeg);
    return folder;
  }

  private Path fit(byte[] jpeg) throws IOException {
    Path out = dir.resolve("out");
    Run run = Run.of("fit", folder(jpeg), "--out", out);
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    try (Stream<Path> all = Files.list(out)) {
      return all.filter(f -> f.toString().endsWith(".pdf")).findFirst().orElseThrow();
    }
  }

  private static PDImageXObject picture(PDDocument document) throws IOException {
    var resources = document.getPage(0).getResources();
    for (COSName name : resources.getXObjectNames()) {
      if (resources.getXObject(name) instanceof PDImageXObject image) {
        return image;
      }
    }
    throw new AssertionError("no picture on the page");
  }

  private static byte[] raw(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDImageXObject image = picture(document);
      assertEquals(COSName.DCT_DECODE, image.getCOSObject().getFilters());
      try (var in = image.getCOSObject().createRawInputStream()) {
        return in.readAllBytes();
      }
    }
  }

  private static byte[] withSegment(byte[] jpeg, int marker, byte[] body) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 20);
    int length = body.length + 2;
    out.writeBytes(new byte[] {(byte) 0xFF, (byte) marker, (byte) (length >> 8), (byte) length});
    out.writeBytes(body);
    out.write(jpeg, 20, jpeg.length - 20);
    return out.toByteArray();
  }

  @Test
  void popplerTakesTheSameBytesOutOfThePack() throws Exception {
    byte[] jpeg = cloth(WIDTH, HEIGHT);
    Path pdf = fit(jpeg);
    Poppler.run(dir, "pdfimages", "-j", pdf.toString(), dir.resolve("taken").toString());
    assertArrayEquals(jpeg, Files.readAllBytes(dir.resolve("taken-000.jpg")));
    List<String[]> listed = Poppler.images(dir, pdf);
    assertEquals(1, listed.size());
    assertEquals("jpeg", listed.get(0)[8]);
    JsonNode sheet =
        new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile()).path("sheets").get(0);
    for (JsonNode placement : sheet.path("placements")) {
      if (placement.path("source").asText().equals("cloth-swatch.jpg")) {
        double x = placement.path("density").path("x").asDouble();
        assertEquals(x, Double.parseDouble(listed.get(0)[12]), 0.005 * x);
        return;
      }
    }
    throw new AssertionError("the swatch is not placed");
  }

  @Test
  void whatNamesPlacesAndPeopleIsLeftOutAndTheRestStays() throws Exception {
    byte[] jpeg = cloth(WIDTH, HEIGHT);
    byte[] secret = "Exif\0\0 somebody, somewhere".getBytes(StandardCharsets.ISO_8859_1);
    byte[] marked = withSegment(withSegment(jpeg, 0xE1, secret), 0xFE, secret);
    assertArrayEquals(jpeg, raw(fit(marked)));
  }

  @Test
  void aPictureWithTooManyPixelsIsReduced() throws Exception {
    try (PDDocument document = Loader.loadPDF(fit(cloth(4000, 3000)).toFile())) {
      PDImageXObject image = picture(document);
      assertTrue(image.getWidth() < 4000);
      assertEquals(COSName.FLATE_DECODE, image.getCOSObject().getFilters());
    }
  }

  /** Exif 2.3: orientation 6 is a picture to be turned clockwise by a quarter. */
  @Test
  void aPictureThatIsTurnedIsStoredUpright() throws Exception {
    byte[] exif = {
      'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6,
      0, 0, 0, 0, 0, 0
    };
    byte[] jpeg = withSegment(cloth(WIDTH, HEIGHT), 0xE1, exif);
    try (PDDocument document = Loader.loadPDF(fit(jpeg).toFile())) {
      PDImageXObject image = picture(document);
      assertTrue(image.getHeight() > image.getWidth());
      BufferedImage stored = ImageIO.read(new java.io.ByteArrayInputStream(jpeg));
      int left = image.getImage().getRGB(image.getWidth() - 1, 0) & 255;
      assertEquals(stored.getRGB(0, 0) & 255, left, 8, "the left edge of the top comes right");
    }
  }

  @Test
  void theWorkbookHoldsTheSameBytes() throws Exception {
    byte[] jpeg = cloth(WIDTH, HEIGHT);
    Path workbook = dir.resolve("blank.xlsx");
    try (var book = new org.apache.poi.xssf.usermodel.XSSFWorkbook()) {
      book.createSheet("Flats").createRow(0).createCell(0).setCellValue("Style");
      try (var to = Files.newOutputStream(workbook)) {
        book.write(to);
      }
    }
    Path out = dir.resolve("out");
    Run run = Run.of("fit", folder(jpeg), "--onto", workbook, "--out", out);
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    try (var book =
        new org.apache.poi.xssf.usermodel.XSSFWorkbook(
            Files.newInputStream(out.resolve("blank.xlsx")))) {
      var jpegs =
          book.getAllPictures().stream().filter(p -> p.getMimeType().equals("image/jpeg")).toList();
      assertEquals(1, jpegs.size());
      assertArrayEquals(jpeg, jpegs.get(0).getData());
    }
  }
}
