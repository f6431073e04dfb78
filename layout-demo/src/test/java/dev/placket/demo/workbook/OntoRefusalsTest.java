package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Workbooks and wishes that cannot be used: one clear message, exit code 2 or 4, nothing written.
 */
class OntoRefusalsTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";

  @TempDir Path dir;
  private Path flats;
  private Path out;
  private final Command command = new Command();

  @BeforeEach
  void folders() throws IOException {
    flats = Command.plain(dir.resolve("flats"));
    out = dir.resolve("out");
  }

  @Test
  void anEncryptedOne() throws IOException {
    // The first bytes of a compound file, in which an encrypted package lies ([MS-CFB] 2.2).
    byte[] head = {
      (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
    };
    Path file = dir.resolve("pack.xlsx");
    Files.write(file, Arrays.copyOf(head, 4096));
    refused(file, "encrypted");
  }

  @Test
  void aText() throws IOException {
    refused(
        Files.writeString(dir.resolve("pack.xlsx"), "style, season"), "is not a workbook but text");
  }

  @Test
  void aFileThatIsAbsent() throws IOException {
    refused(dir.resolve("absent.xlsx"), "absent.xlsx");
  }

  @Test
  void aPackageThatIsNoWorkbook() throws IOException {
    Path file = dir.resolve("pack.xlsx");
    write(file, Map.of("mimetype", "text".getBytes(StandardCharsets.UTF_8)));
    refused(file, "no workbook of ISO/IEC 29500");
  }

  @Test
  void aTruncatedOne() throws IOException {
    Path file = RuledWorkbooks.write("header", dir);
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, whole.length / 2));
    refused(file, "damaged");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // A billion laughs, an outside file, an entity from nowhere.
        "<!DOCTYPE w [<!ENTITY a 'ha'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'>]><w>&b;</w>",
        "<!DOCTYPE w [<!ENTITY a SYSTEM 'file:///etc/hostname'>]><w>&a;</w>",
        "<!DOCTYPE w SYSTEM 'http://127.0.0.1:9/w.dtd'><w/>",
        "<w>&a;</w>",
        "<w><unclosed></w>",
        "",
      })
  void hostileXml(String xml) throws IOException {
    refused(with(SHEET, xml.getBytes(StandardCharsets.UTF_8)), SHEET);
  }

  @Test
  void xmlThatIsNestedVeryDeep() throws IOException {
    String deep = "<worksheet>" + "<a>".repeat(100_000) + "</a>".repeat(100_000) + "</worksheet>";
    refused(with(SHEET, deep.getBytes(StandardCharsets.UTF_8)), "64 deep");
  }

  @Test
  void aZipBomb() throws IOException {
    // A thousand to one: 64 MiB of blanks.
    byte[] blanks = new byte[64 << 20];
    Arrays.fill(blanks, (byte) ' ');
    refused(with("xl/media/bomb.bin", blanks), "--max-mebibytes", "--max-mebibytes", "32");
  }

  /** No typeface of this family is given, so that its text comes out in another. */
  @Test
  void withStrictADrawingThatIsNotDrawnAsItsFileSays() throws IOException {
    Files.writeString(
        flats.resolve("front.svg"),
        Command.PLAIN.replace(
            "</svg>", "<text y='50' font-family='Nowhere Grotesk'>Hood</text></svg>"));
    refused(RuledWorkbooks.write("header", dir), "Nowhere Grotesk", "--strict");
  }

  @Test
  void tooManyWorksheets() throws IOException {
    Path file =
        book(
            b -> {
              for (int i = 0; i < 201; i++) {
                b.createSheet();
              }
            });
    refused(file, "200 worksheets");
  }

  @Test
  void tooManyCells() throws IOException {
    Path file =
        book(
            b -> {
              XSSFSheet sheet = b.createSheet("Cells");
              for (int r = 0; r < 200; r++) {
                Row row = sheet.createRow(r);
                for (int c = 0; c < 50; c++) {
                  row.createCell(c).setCellValue(1);
                }
              }
            });
    refused(file, "--max-cells", "--max-cells", "5000");
  }

  @Test
  void aWorksheetThatDoesNotExist() throws IOException {
    refused(
        RuledWorkbooks.write("header", dir),
        "has no worksheet 'Sketch'; it has Flats",
        "--worksheet",
        "Sketch");
  }

  @Test
  void aRangeThatDoesNotExist() throws IOException {
    refused(
        RuledWorkbooks.write("header", dir), "'front_room' is neither", "--window", "front_room");
  }

  @Test
  void aWindowThatCutsAMergedCell() throws IOException {
    // B1:C1 is merged for a value of the header.
    refused(RuledWorkbooks.write("header", dir), "merged cell B1:C1", "--window", "C1:F30");
  }

  /** Every length, of the cells and of the ways out, in the unit asked for. */
  @ParameterizedTest
  @ValueSource(strings = {"mm", "in"})
  void noRoomSaysWhatWouldHelp(String units) throws IOException {
    Path file = RuledWorkbooks.write("header", dir);
    assertEquals(
        4, command.fit(flats, file, out, "--window", "B10:D26", "--units", units), command.said);
    assertTrue(command.said.contains("no room"), command.said);
    assertTrue(command.said.contains(units + " on paper"), command.said);
    assertTrue(command.said.replaceAll("\\s+", " ").contains(" by "), command.said);
    onlyIn(units);
    assertFalse(Files.exists(out));
  }

  /** A view is 40 mm long at least, and the front then 71/81 of that wide, strokes counted. */
  @ParameterizedTest
  @CsvSource({"mm, 35.1 × 40.0 mm", "in, 1.38 × 1.57 in"})
  void aWorksheetThatIsFullSaysSoInTheUnitAskedFor(String units, String least) throws IOException {
    assertEquals(4, command.fit(flats, full(), out, "--units", units), command.said);
    assertTrue(command.said.replaceAll("\\s+", " ").contains(least), command.said);
    onlyIn(units);
  }

  private void onlyIn(String units) {
    String other = units.equals("mm") ? "in" : "mm";
    assertFalse(
        command.said.replaceAll("\\s+", " ").matches(".*[0-9] " + other + "\\b.*"), command.said);
  }

  @Test
  void aWorksheetThatIsFullSaysSo() throws IOException {
    assertEquals(4, command.fit(flats, full(), out), command.said);
    assertTrue(command.said.contains("'Full'"), command.said);
  }

  private Path full() throws IOException {
    return book(
        b -> {
          XSSFSheet sheet = b.createSheet("Full");
          for (int r = 0; r < 60; r++) {
            for (int c = 0; c < 12; c++) {
              (c == 0 ? sheet.createRow(r) : sheet.getRow(r)).createCell(c).setCellValue("full");
            }
          }
        });
  }

  private void refused(Path file, String says, String... more) throws IOException {
    byte[] before = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    assertEquals(2, command.fit(flats, file, out, more), command.said);
    assertTrue(command.said.contains(says), command.said);
    assertFalse(command.said.contains("Exception"), command.said);
    assertFalse(Files.exists(out), "nothing is written");
    if (Files.exists(file)) {
      org.junit.jupiter.api.Assertions.assertArrayEquals(before, Files.readAllBytes(file));
    }
  }

  private Path book(Consumer<XSSFWorkbook> fill) throws IOException {
    Path file = dir.resolve("pack.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        var to = Files.newOutputStream(file)) {
      fill.accept(book);
      book.write(to);
    }
    return file;
  }

  /** The first workbook with one part put in. */
  private Path with(String part, byte[] bytes) throws IOException {
    Path file = RuledWorkbooks.write("header", dir);
    Map<String, byte[]> parts = new LinkedHashMap<>(new RawWorkbook(file).parts);
    parts.put(part, bytes);
    write(file, parts);
    return file;
  }

  static void write(Path file, Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    }
    Files.write(file, bytes.toByteArray());
  }

  /** The preview of a first run tells the name that the second one would overwrite. */
  @Test
  void aPictureThatWouldBeOverwritten() throws IOException {
    Path file = dir.resolve("pack.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet("Flats").createRow(0).createCell(0).setCellValue("Style");
      try (java.io.OutputStream to = Files.newOutputStream(file)) {
        workbook.write(to);
      }
    }
    assertEquals(0, command.fit(flats, file, out), command.said);
    Path preview;
    try (java.util.stream.Stream<Path> all = Files.list(out)) {
      preview = all.filter(f -> f.toString().endsWith(".png")).findFirst().orElseThrow();
    }
    byte[] picture = Files.readAllBytes(preview);
    Path read = Files.write(flats.resolve(preview.getFileName()), picture);
    assertEquals(2, command.fit(flats, file, flats, "--overwrite"), command.said);
    assertTrue(command.said.contains(read + ": would be overwritten"), command.said);
    org.junit.jupiter.api.Assertions.assertArrayEquals(picture, Files.readAllBytes(read));
  }
}
