package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Previews of worksheets have the limits that previews of sheets have. */
class PreviewLimitsTest {
  @TempDir Path dir;
  private Path out;
  private final Command command = new Command();

  @BeforeEach
  void folder() {
    out = dir.resolve("out");
  }

  /** Worksheets that print on paper of this number (ISO/IEC 29500-1, 18.3.1.63), with flats. */
  private Path workbook(int paper, int count) throws IOException {
    Path file = dir.resolve("pack.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream to = Files.newOutputStream(file)) {
      for (int i = 0; i < count; i++) {
        XSSFSheet sheet = workbook.createSheet("Sheet" + i);
        sheet.createRow(0).createCell(0).setCellValue("Style");
        sheet.createRow(40).createCell(6).setCellValue("Season");
        sheet.getPrintSetup().setPaperSize((short) paper);
        Command.plain(dir.resolve("flats").resolve("Sheet" + i));
      }
      workbook.write(to);
    }
    return file;
  }

  private List<BufferedImage> previews() throws IOException {
    try (Stream<Path> all = Files.list(out)) {
      return all.filter(f -> f.toString().endsWith(".png"))
          .map(
              f -> {
                try {
                  return ImageIO.read(f.toFile());
                } catch (IOException e) {
                  throw new java.io.UncheckedIOException(e);
                }
              })
          .toList();
    }
  }

  /** A4 in points is 596 by 842 pixels, 0.50 million: two come to 1.0037 million. */
  @Test
  void allTogether() throws IOException {
    Path two = workbook(9, 2);
    Path flats = dir.resolve("flats");
    assertEquals(2, command.fit(flats, two, out, "--max-pixels", "1"), command.said);
    String said = command.said.replaceAll("\\s+", " ");
    assertTrue(said.contains("pack.xlsx: its previews come to 1.0 million pixels"), said);
    assertTrue(said.contains("--max-pixels"), said);
    assertFalse(Files.exists(out));
    assertEquals(0, command.fit(flats, two, out, "--max-pixels", "2"), command.said);
    assertEquals(2, previews().size());
  }

  /** A3 in points is 842 by 1191 pixels, 1.0028 million. */
  @Test
  void each() throws IOException {
    Path one = workbook(8, 1);
    Path flats = dir.resolve("flats");
    assertEquals(0, command.fit(flats, one, out), command.said);
    assertEquals(842L * 1191, pixels());
    assertEquals(
        0, command.fit(flats, one, out, "--overwrite", "--max-preview", "1"), command.said);
    assertTrue(pixels() > 990_000 && pixels() < 1_002_100, pixels() + " pixels");
    assertEquals(2, command.fit(flats, one, out, "--max-preview", "0"), command.said);
    assertTrue(command.said.contains("--max-preview 0"), command.said);
    assertEquals(2, command.fit(flats, one, out, "--max-preview", "3000"), command.said);
  }

  private long pixels() throws IOException {
    BufferedImage preview = previews().get(0);
    return (long) preview.getWidth() * preview.getHeight();
  }
}
