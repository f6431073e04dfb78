package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Whatever one value of a workbook says, the flats are placed, find no room, or the workbook is
 * refused in words; and a copy opens in a second library wherever the workbook did.
 */
class HostileValuesTest {
  private static final List<String> VALUES =
      List.of(
          "",
          "-1",
          "0",
          "1",
          "255",
          "400",
          "16385",
          "1048577",
          "4294967295",
          "99999999999999",
          "0.0001",
          "1e308",
          "-1e308",
          "NaN",
          "x",
          "#REF!",
          "A1:XFD1048576",
          "ZZZ99",
          "true",
          "../x");

  private static final Pattern VALUE =
      Pattern.compile("[\\w:]='([^']*)'|[\\w:]=\"([^\"]*)\"|>([^<>]+)<");

  private static Path dir = Path.of(".");
  private static Path flats = Path.of(".");

  @BeforeContainer
  static void folder() throws IOException {
    dir = Files.createTempDirectory("hostile");
    flats = Command.plain(dir.resolve("flats"));
  }

  @AfterContainer
  static void remove() throws IOException {
    remove(dir);
  }

  @Property(tries = 150)
  void noValueIsAnInternalError(
      @ForAll @IntRange(max = 9999) int spot, @ForAll @IntRange(max = 19) int value)
      throws IOException {
    RawPackage made = rich();
    List<String> parts = new ArrayList<>(made.parts.keySet());
    String part = parts.get(spot % parts.size());
    List<int[]> places = places(made.text(part));
    int[] at = places.get(spot / parts.size() % places.size());
    String text = made.text(part);
    made.put(part, text.substring(0, at[0]) + VALUES.get(value) + text.substring(at[1]));
    Path file = made.write(dir);
    Path out = dir.resolve("out");
    Command command = new Command();
    int code = command.fit(flats, file, out);
    String what = part + " " + text.substring(0, at[0]) + "[" + VALUES.get(value) + "]: ";
    assertTrue(code == 0 || code == 2 || code == 4, what + command.said);
    assertFalse(command.said.contains("Exception"), what + command.said);
    assertEquals(code == 0, Files.exists(out), what);
    if (code == 0) {
      assertTrue(!opens(file) || opens(out.resolve("pack.xlsx")), what + "the copy does not open");
      remove(out);
    }
  }

  @Example
  void theWorkbookItselfIsTaken() throws IOException {
    Path file = rich().write(dir);
    Command command = new Command();
    assertEquals(0, command.fit(flats, file, dir.resolve("out")), command.said);
    assertTrue(opens(file) && opens(dir.resolve("out/pack.xlsx")));
    remove(dir.resolve("out"));
  }

  /** All kinds of values that are read. */
  private static RawPackage rich() {
    RawPackage made = new RawPackage();
    made.sheet(
        "<sheetProtection sheet='0'/><mergeCells><mergeCell ref='B3:D4'/></mergeCells>"
            + "<dataValidations><dataValidation sqref='B6 C7'/></dataValidations>"
            + "<printOptions horizontalCentered='1'/>"
            + "<pageMargins left='0.7' right='0.7' top='0.75' bottom='0.75'/>"
            + "<pageSetup paperSize='9' scale='90' fitToWidth='1' fitToHeight='0'/>"
            + "<rowBreaks><brk id='60'/></rowBreaks><drawing r:id='r1'/>");
    made.replace(
        RawPackage.SHEET,
        "<cols>",
        "<sheetPr><pageSetUpPr fitToPage='0'/></sheetPr>"
            + "<sheetFormatPr baseColWidth='8' defaultColWidth='9' defaultRowHeight='15'/><cols>");
    made.replace(RawPackage.SHEET, "<row r='40'>", "<row r='40' ht='20' s='0' hidden='0'>");
    made.put(
        "xl/worksheets/_rels/sheet1.xml.rels",
        RawPackage.relations(RawPackage.relation("r1", "drawing", "../drawings/drawing1.xml")));
    made.put(
        "xl/drawings/drawing1.xml",
        "<x:wsDr xmlns:x='http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing'>"
            + "<x:oneCellAnchor><x:from><x:col>1</x:col><x:colOff>9525</x:colOff><x:row>2</x:row>"
            + "<x:rowOff>0</x:rowOff></x:from><x:ext cx='900000' cy='90000'/><x:sp><x:nvSpPr>"
            + "<x:cNvPr id='2' name='Logo'/><x:cNvSpPr/></x:nvSpPr><x:spPr/></x:sp>"
            + "<x:clientData/></x:oneCellAnchor></x:wsDr>");
    made.replace(
        RawPackage.TYPES,
        "</Types>",
        "<Override PartName='/xl/drawings/drawing1.xml' ContentType="
            + "'application/vnd.openxmlformats-officedocument.drawing+xml'/></Types>");
    return made.replace(
        "xl/workbook.xml",
        "</workbook>",
        "<definedNames><definedName name='_xlnm.Print_Area' localSheetId='0'>Flats!$A$1:$J$50"
            + "</definedName></definedNames></workbook>");
  }

  private static List<int[]> places(String text) {
    List<int[]> places = new ArrayList<>();
    for (Matcher m = VALUE.matcher(text); m.find(); ) {
      int group = m.group(1) != null ? 1 : m.group(2) != null ? 2 : 3;
      places.add(new int[] {m.start(group), m.end(group)});
    }
    return places;
  }

  private static boolean opens(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    try (OPCPackage opened = OPCPackage.open(new ByteArrayInputStream(bytes));
        XSSFWorkbook book = new XSSFWorkbook(opened)) {
      return book.getNumberOfSheets() >= 0;
    } catch (OpenXML4JException | RuntimeException e) {
      return false;
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    }
  }
}
