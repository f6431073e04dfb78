package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Packages as ISO/IEC 29500-2 allows them, or as writers make them all the same. */
class PackagesTest {
  @TempDir Path dir;
  private Path flats;
  private Path out;
  private final Command command = new Command();

  @BeforeEach
  void folders() throws IOException {
    flats = Command.plain(dir.resolve("flats"));
    out = dir.resolve("out");
  }

  private static Arguments of(String what, Consumer<RawPackage> change) {
    return Arguments.of(what, change);
  }

  static Stream<Arguments> sound() {
    String rels = "application/vnd.openxmlformats-package.relationships+xml";
    String byName = "<Override PartName='%s' ContentType='" + rels + "'/>";
    return Stream.of(
        of("plain", p -> {}),
        of(
            "relations typed one by one",
            p ->
                p.replace(
                    RawPackage.TYPES,
                    "<Default Extension='rels' ContentType='" + rels + "'/>",
                    byName.formatted("/_rels/.rels")
                        + byName.formatted("/xl/_rels/workbook.xml.rels"))),
        of(
            "no defaults at all",
            p -> {
              String types = p.text(RawPackage.TYPES).replaceAll("<Default[^>]*>", "");
              types = types.replace("</Types>", byName.formatted("/_rels/.rels") + "</Types>");
              String more = byName.formatted("/xl/_rels/workbook.xml.rels");
              p.put(RawPackage.TYPES, types.replace("</Types>", more + "</Types>"));
            }),
        of(
            "the type of a drawing that was lost",
            p ->
                p.replace(
                    RawPackage.TYPES,
                    "</Types>",
                    "<Override PartName='/xl/drawings/drawing1.xml' ContentType='400'/></Types>")),
        of("stored", p -> p.stored = true),
        of("zip64", p -> p.zip64 = Zip64Mode.Always),
        of("a folder as an entry", p -> p.parts.put("xl/media/", new byte[0])),
        of("a mark before UTF-8", p -> encode(p, StandardCharsets.UTF_8, 0xEF, 0xBB, 0xBF)),
        of("UTF-16, small end first", p -> encode(p, StandardCharsets.UTF_16LE, 0xFF, 0xFE)),
        of("UTF-16, large end first", p -> encode(p, StandardCharsets.UTF_16BE, 0xFE, 0xFF)),
        of("UTF-16 without a mark", p -> encode(p, StandardCharsets.UTF_16LE)),
        of(
            "targets from the root",
            p -> p.replace(RawPackage.RELATIONS, "worksheets/sheet1.xml", "/" + RawPackage.SHEET)),
        of(
            "targets by way of the parent",
            p -> p.replace(RawPackage.RELATIONS, "worksheets/", "../xl/./worksheets/")),
        of(
            "capitals",
            p -> p.replace(RawPackage.RELATIONS, "worksheets/sheet", "Worksheets/Sheet")),
        of("capitals of an entry", p -> p.rename(RawPackage.SHEET, "XL/WorkSheets/SHEET1.xml")),
        of(
            "a percent escape",
            p -> {
              p.rename(RawPackage.SHEET, "xl/worksheets/sheet%201.xml");
              p.replace(RawPackage.RELATIONS, "sheet1.xml", "sheet%201.xml");
              p.replace(RawPackage.TYPES, "sheet1.xml", "sheet%201.xml");
            }),
        of(
            "a percent escape that the entry does not have",
            p -> {
              p.rename(RawPackage.SHEET, "xl/worksheets/Größe 1.xml");
              p.replace(RawPackage.RELATIONS, "sheet1.xml", "Gr%C3%B6%C3%9Fe%201.xml");
              p.replace(RawPackage.TYPES, "sheet1.xml", "Gr%C3%B6%C3%9Fe%201.xml");
            }),
        of("entries from the root", p -> p.rename(RawPackage.SHEET, "/" + RawPackage.SHEET)),
        of(
            "entries parted by backslashes",
            p -> p.rename(RawPackage.SHEET, "xl\\worksheets\\sheet1.xml")));
  }

  private static void encode(RawPackage p, Charset charset, int... mark) {
    for (String part : p.parts.keySet().toArray(String[]::new)) {
      p.encode(part, charset, mark);
    }
  }

  /** Most of them open in the second reader, or the test below would compare nothing. */
  @Test
  void theSecondReaderTakesMostOfThem() throws IOException {
    int opened = 0;
    for (Arguments each : sound().toList()) {
      opened += opens(made(each).write(dir)) ? 1 : 0;
    }
    assertTrue(opened >= 15, "opens only " + opened);
  }

  @SuppressWarnings("unchecked")
  private static RawPackage made(Arguments each) {
    RawPackage made = new RawPackage();
    ((Consumer<RawPackage>) each.get()[1]).accept(made);
    return made;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sound")
  void areTakenAndTheCopyOpens(String what, Consumer<RawPackage> change) throws IOException {
    RawPackage made = new RawPackage();
    change.accept(made);
    placed(made.write(dir));
  }

  /** Some writers date no part: month and day are 0 then, which no calendar has. */
  @Test
  void partsWithoutDatesAreTaken() throws IOException {
    byte[] zip = new RawPackage().bytes();
    for (int i = 0; i + 4 < zip.length; i++) {
      // Where the date and time stand in both headers (PKWARE APPNOTE 4.3.7 and 4.3.12).
      int at = header(zip, i) == 1 ? 12 : header(zip, i) == 3 ? 10 : 0;
      if (at > 0) {
        Arrays.fill(zip, i + at, i + at + 4, (byte) 0);
      }
    }
    placed(Files.write(dir.resolve("pack.xlsx"), zip));
  }

  private static int header(byte[] zip, int at) {
    return zip[at] == 'P' && zip[at + 1] == 'K' ? zip[at + 2] : 0;
  }

  static Stream<Arguments> unsound() {
    return Stream.of(
        refused("points outside the package", p -> p.parts.put("xl/../../out.xml", new byte[0])),
        refused("points outside the package", p -> p.parts.put("..\\out.xml", new byte[0])),
        refused(
            "twice", p -> p.parts.put("XL/worksheets/sheet1.xml", p.parts.get(RawPackage.SHEET))),
        refused(
            "xl/worksheets/absent.xml is missing",
            p -> p.replace(RawPackage.RELATIONS, "sheet1.xml", "absent.xml")),
        refused("its drawing is missing", p -> p.sheet("<drawing r:id='r1'/>")));
  }

  private static Arguments refused(String says, Consumer<RawPackage> change) {
    return Arguments.of(says, change);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("unsound")
  void areRefusedInOneSentence(String says, Consumer<RawPackage> change) throws IOException {
    RawPackage made = new RawPackage();
    change.accept(made);
    refused(made.write(dir), says);
  }

  /** ISO/IEC 29500-2 forbids a document type in every part, read here or not. */
  @ParameterizedTest
  @MethodSource("everyPart")
  void aDocumentTypeIsRefusedWhereverItStands(String part) throws IOException {
    RawPackage made = new RawPackage();
    String xml = made.parts.containsKey(part) ? made.text(part) : "<x/>";
    made.put(part, "<!DOCTYPE x [<!ENTITY e SYSTEM 'file:///etc/hostname'>]>" + xml);
    refused(made.write(dir), "part " + part + ": has a document type");
  }

  static Stream<String> everyPart() {
    Stream<String> more =
        Stream.of("docProps/core.xml", "xl/theme/theme1.xml", "customXml/item1.xml");
    return Stream.concat(new RawPackage().parts.keySet().stream(), more);
  }

  private void refused(Path file, String says) throws IOException {
    assertEquals(2, command.fit(flats, file, out), command.said);
    assertTrue(command.said.contains(says), command.said);
    assertTrue(command.said.contains("pack.xlsx"), command.said);
    assertEquals(1, command.said.lines().count(), command.said);
    assertFalse(Files.exists(out), "nothing is written");
  }

  private void placed(Path file) throws IOException {
    boolean opened = opens(file);
    assertEquals(0, command.fit(flats, file, out), command.said);
    Path copy = out.resolve("pack.xlsx");
    assertTrue(!opened || opens(copy), "the copy does not open, and the workbook did");
    assertTrue(!opened || pictures(copy) == 2, "the copy opens without its pictures");
    Map<String, byte[]> before = new LinkedHashMap<>(new RawWorkbook(file).parts);
    Map<String, byte[]> after = new RawWorkbook(copy).parts;
    before.keySet().removeIf(n -> n.endsWith("/") || n.endsWith(".rels") || n.startsWith("["));
    before.keySet().removeIf(n -> n.toLowerCase(Locale.ROOT).contains("worksheets"));
    before.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
  }

  private static int pictures(Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)))) {
      var drawing = book.getSheetAt(0).getDrawingPatriarch();
      return drawing == null ? 0 : drawing.getShapes().size();
    }
  }

  /** Whether a second reader opens it and can write it. */
  private static boolean opens(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    try (OPCPackage opened = OPCPackage.open(new ByteArrayInputStream(bytes));
        XSSFWorkbook book = new XSSFWorkbook(opened)) {
      assertEquals("Style", book.getSheetAt(0).getRow(0).getCell(0).getStringCellValue());
      book.write(new ByteArrayOutputStream());
      return true;
    } catch (OpenXML4JException | RuntimeException e) {
      return false;
    }
  }
}
