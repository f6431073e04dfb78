package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Widths of lines in the pictures of a worksheet, read back with Apache POI. */
class LineWeightsOntoTest {
  private static final double EMU_PER_MM = 36_000;

  @TempDir private Path dir;
  private Path workbook;

  @BeforeEach
  void files() throws IOException {
    svg("front", 100, 3);
    svg("pocket-detail", 60, 0.4);
    workbook = dir.resolve("ruled.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        var out = Files.newOutputStream(workbook)) {
      XSSFSheet sheet = book.createSheet("Flats");
      for (int column = 0; column < 8; column++) {
        sheet.setColumnWidth(column, 14 * 256);
      }
      sheet.createRow(0).createCell(0).setCellValue("Style no.");
      sheet.createRow(40).createCell(0).setCellValue("Cut from the measured table only.");
      book.write(out);
    }
  }

  private void svg(String name, int side, double width) throws IOException {
    Path folder = Files.createDirectories(dir.resolve("flats"));
    Files.writeString(
        folder.resolve(name + ".svg"),
        ("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 120 120'><rect x='10' y='10'"
                + " width='%d' height='%d' fill='none' stroke='#000' stroke-width='%s'/></svg>")
            .formatted(side, side, width));
  }

  /** The printed widths of the left and the right line of each picture, in millimetres. */
  private List<double[]> widths() throws IOException {
    List<double[]> widths = new ArrayList<>();
    try (XSSFWorkbook book = new XSSFWorkbook(dir.resolve("out/ruled.xlsx").toString())) {
      for (XSSFShape shape : book.getSheetAt(0).getDrawingPatriarch()) {
        XSSFPicture picture = (XSSFPicture) shape;
        byte[] bytes = picture.getPictureData().getData();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
        long emu = picture.getCTPicture().getSpPr().getXfrm().getExt().getCx();
        double mmPerPixel = emu / EMU_PER_MM / image.getWidth();
        widths.add(
            new double[] {
              dark(image, 0, image.getWidth() / 2) * mmPerPixel,
              dark(image, image.getWidth() / 2, image.getWidth()) * mmPerPixel
            });
      }
    }
    return widths;
  }

  /** How many dark pixels the middle row has, shades of the edges by their share. */
  private static double dark(BufferedImage image, int from, int to) {
    double dark = 0;
    for (int x = from; x < to; x++) {
      int p = image.getRGB(x, image.getHeight() / 2);
      dark += (p >>> 24) * (255 - (p & 255)) / 255.0 / 255;
    }
    return dark;
  }

  private void check(double front, double detail) throws IOException {
    List<double[]> widths = widths();
    assertEquals(2, widths.size());
    for (double line : widths.get(0)) {
      assertEquals(front, line, 0.03);
    }
    for (double line : widths.get(1)) {
      assertEquals(detail, line, 0.03);
    }
  }

  @Test
  void outlinesPrintAtTheWidthsOfADescription() throws IOException {
    Path pack =
        Files.writeString(
            dir.resolve("pack.yaml"),
            """
            format: placket-pack/1
            line-weight: {front: 0.7mm}
            workbook:
              file: ruled.xlsx
              worksheets:
                Flats:
                  flats:
                    front: {file: flats/front.svg, role: front}
                    pocket: {file: flats/pocket-detail.svg, role: detail, line-weight: 0.5mm}
            """);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(0, run.code(), run.err());
    assertTrue(!run.out().contains("line-weight"), run.out());
    check(0.7, 0.5);
  }

  @Test
  void outlinesPrintAtTheWidthsOfAFolder() throws IOException {
    Files.writeString(
        dir.resolve("flats/pack.properties"), "line-weight=0.6mm\nline-weight.front=1.1mm\n");
    Run run = Run.of("fit", dir.resolve("flats"), "--onto", workbook, "--out", dir.resolve("out"));
    assertEquals(0, run.code(), run.err());
    check(1.1, 0.6);
  }

  /** Strokes are kept clear of cells, too: the picture lies inside the range. */
  @Test
  void whatStrokesReachBeyondThePathsStaysInTheRange() throws IOException {
    Files.writeString(dir.resolve("flats/pack.properties"), "line-weight=4mm\n");
    Run run =
        Run.of(
            "fit",
            dir.resolve("flats"),
            "--onto",
            workbook,
            "--out",
            dir.resolve("out"),
            "--window",
            "B5:F30");
    assertEquals(0, run.code(), run.err());
    check(4, 4);
    try (XSSFWorkbook book = new XSSFWorkbook(dir.resolve("out/ruled.xlsx").toString())) {
      for (XSSFShape shape : book.getSheetAt(0).getDrawingPatriarch()) {
        var anchor = (org.apache.poi.xssf.usermodel.XSSFClientAnchor) shape.getAnchor();
        assertTrue(anchor.getCol1() >= 1 && anchor.getRow1() >= 4, "" + anchor.getFrom());
        assertTrue(anchor.getCol2() <= 5 && anchor.getRow2() <= 29, "" + anchor.getTo());
      }
    }
  }
}
