package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worksheets as damaged, careless or unusual users leave them, and what they may ask for. */
class OddWorksheetsTest {
  private static final String DRAWING = "xl/drawings/drawing1.xml";

  @TempDir Path dir;
  private Path flats;
  private Path out;
  private final Command command = new Command();

  @BeforeEach
  void folders() throws IOException {
    flats = Command.plain(dir.resolve("flats"));
    out = dir.resolve("out");
  }

  /** One odd thing costs a note, not the workbook. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<mergeCells><mergeCell ref='#REF!'/></mergeCells> | its merged cell names no cells ('#REF!')",
        "<dataValidations><dataValidation sqref='B2 #REF! C3'/></dataValidations> | its data validation names no cells ('#REF!')",
        "<dataValidations><dataValidation sqref='XFE1'/></dataValidations> | names no cells ('XFE1')",
        "<pageMargins left='-1' right='1' top='1' bottom='1'/> | its left margin is -1 in; taken as 0.7 in",
        "<pageMargins left='1' right='1e9' top='1' bottom='1'/> | its right margin is 1e9 in",
        "<pageSetup paperSize='119'/> | is printed on paper number 119, which is not known here; taken as Letter",
        "<pageSetup paperSize='4294967295'/> | paper number 4294967295",
        "<pageSetup paperSize='-1'/> | paper number -1",
        "<pageSetup paperWidth='50000mm' paperHeight='50000mm'/> | paper of 50000mm × 50000mm",
        "<pageSetup paperWidth='wide' paperHeight='1mm'/> | paper of wide × 1mm",
        "<pageSetup paperSize='9' scale='0'/> | its page has scale 0; taken as 100",
        "<pageSetup paperSize='9' scale='a4'/> | its page has scale a4",
        "<sheetProtection sheet='1' objects='1'/> | is protected; lift the protection",
      })
  void costsANote(String afterData, String note) throws IOException {
    placed(new RawPackage().sheet(afterData));
    assertTrue(said().contains(note), command.said);
  }

  /** What says where a cell stands has to be right. */
  @Test
  void aRowThatIsNone() throws IOException {
    RawPackage made = new RawPackage();
    made.replace(RawPackage.SHEET, "<row r='40'>", "<row r='231999999999940'>");
    String where = "part xl/worksheets/sheet1.xml, line 2: ";
    String what = "'231999999999940' as r of row is no whole number of that size";
    refused(2, made, where + "a value is wrong: " + what);
  }

  /** What the standard allows costs no note at all. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<pageSetup paperSize='9' fitToWidth='4294967295' fitToHeight='0'/>",
        "<pageSetup paperSize='9' scale='400'/>",
        "<pageSetup paperWidth='210mm' paperHeight='29.7cm'/>",
      })
  void costsNothing(String afterData) throws IOException {
    placed(new RawPackage().sheet(afterData));
    assertFalse(said().contains("taken as Letter"), command.said);
    assertFalse(said().contains("its page"), command.said);
  }

  /** Columns and rows in any order come to the same pictures in the same places. */
  @Test
  void theOrderOfColumnsAndRowsIsNoMatter() throws IOException {
    RawPackage ordered = new RawPackage().sheet("");
    ordered.replace(
        RawPackage.SHEET,
        "<col min='1' max='3' width='12' customWidth='1'/>",
        "<col min='1' max='2' width='12'/><col min='3' max='3' width='30'/>");
    placed(ordered);
    byte[] expected = new RawWorkbook(out.resolve("pack.xlsx")).part(DRAWING);
    assertFalse(said().contains("out of order"), command.said);
    String text = ordered.text(RawPackage.SHEET);
    String first = text.replaceAll(".*(<row r='1'>.*?</row>).*", "$1");
    String second = text.replaceAll(".*(<row r='40'>.*?</row>).*", "$1");
    ordered.replace(RawPackage.SHEET, first + second, second + first);
    ordered.replace(
        RawPackage.SHEET,
        "<col min='1' max='2' width='12'/><col min='3' max='3' width='30'/>",
        "<col min='3' max='3' width='30'/><col min='1' max='2' width='12'/><col min='2' max='2' width='12'/>");
    out = dir.resolve("again");
    placed(ordered);
    assertTrue(said().contains("its columns are stated out of order or twice"), command.said);
    assertTrue(said().contains("its rows are stated out of order or twice"), command.said);
    assertArrayEquals(expected, new RawWorkbook(out.resolve("pack.xlsx")).part(DRAWING));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "_xlnm.Print_Area | Flats!#REF! | its print area names no cells",
        "_xlnm.Print_Titles | Flats!#REF! | its print titles names no cells",
        "_xlnm.Print_Area | Other!$A$1:$H$40 | its print area names no cells",
      })
  void aNameWithoutCellsIsNoted(String name, String formula, String note) throws IOException {
    placed(named(name, formula));
    assertTrue(said().contains(note), command.said);
  }

  /** Whole columns or rows beside all that is used, and unions of areas. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Flats!$J:$R",
        "Flats!$45:$90",
        "Flats!$A$1:$XFD$60",
        "(Flats!$A$1:$B$2,Flats!$C$3:$H$39)"
      })
  void printAreasAreTaken(String formula) throws IOException {
    placed(named("_xlnm.Print_Area", formula));
    assertFalse(said().contains("print area names"), command.said);
  }

  /** One column of it is printed where nothing is used: too narrow, but no internal error. */
  @Test
  void aPrintAreaToTheLastColumnBesideAllThatIsUsed() throws IOException {
    refused(4, named("_xlnm.Print_Area", "Flats!$J$1:$XFD$60"), "no room");
  }

  @Test
  void namesInQuotesAreTaken() throws IOException {
    RawPackage made = named("room", "'Maß, it''s! 1'!$B$3:$F$38");
    made.replace("xl/workbook.xml", "name='Flats'", "name=\"Maß, it's! 1\"");
    placed(made, "--window", "room");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Fabrics!$B$2:$F$30 | room | 2 | the name 'room' lies on Fabrics; place the flats there",
        "Flats!#REF! | room | 2 | the name 'room' stands for Flats!#REF!, which is no range",
        "Flats!$B$2 | XFE1:XFG9 | 2 | 'XFE1:XFG9' leaves the worksheet, which ends with XFD1048576",
        "Flats!$B$2 | A1048570:F1048590 | 2 | leaves the worksheet",
        "Flats!$B$2 | hall | 2 | 'hall' is neither a range",
      })
  void aWindowThatIsNotThere(String formula, String window, int code, String says)
      throws IOException {
    refused(code, named("room", formula), says, "--window", window);
  }

  @Test
  void aWindowThatIsNotPrinted() throws IOException {
    RawPackage made = named("_xlnm.Print_Area", "Flats!$A$1:$F$30");
    refused(4, made, "J2:P30 is not printed, only A1:F30 is", "--window", "J2:P30");
  }

  /** Without a print area, what is placed is printed, wherever it lies. */
  @Test
  void aWindowFarFromAllThatIsUsed() throws IOException {
    placed(new RawPackage(), "--window", "Z100:AH140");
    RawWorkbook.Anchor first = new RawWorkbook(out.resolve("pack.xlsx")).anchors(DRAWING).get(0);
    assertTrue(first.from()[0] >= 25 && first.from()[2] >= 99, () -> "outside the window");
  }

  @Test
  void aHiddenWorksheetIsSaidToBeHidden() throws IOException {
    RawPackage made = new RawPackage();
    made.replace("xl/workbook.xml", "name='Flats'", "state='veryHidden' name='Flats'");
    refused(2, made, "shows no worksheet for the flats");
    placed(made, "--worksheet", "Flats");
    assertTrue(said().contains("is hidden; unhide it"), command.said);
  }

  /** A new workbook, as yet without anything in it. */
  @Test
  void whereAllWorksheetsAreBareTheFirstIsTaken() throws IOException {
    RawPackage made = twoWorksheets();
    made.put(RawPackage.SHEET, made.text(RawPackage.SHEET).replaceAll("<row.*</row>", ""));
    made.put("xl/worksheets/sheet2.xml", made.text(RawPackage.SHEET));
    placed(made);
    assertTrue(said().contains("Worksheet Flats, printed"), command.said);
  }

  @Test
  void aBareWorksheetIsPassedOver() throws IOException {
    RawPackage made = twoWorksheets();
    made.put("xl/worksheets/sheet2.xml", made.text(RawPackage.SHEET));
    made.put(RawPackage.SHEET, made.text(RawPackage.SHEET).replaceAll("<row.*</row>", ""));
    placed(made);
    assertTrue(said().contains("Worksheet Sketch, printed"), command.said);
  }

  private static RawPackage twoWorksheets() {
    RawPackage made = new RawPackage();
    made.replace(
        RawPackage.TYPES,
        "</Types>",
        RawPackage.override("/xl/worksheets/sheet2.xml", "worksheet") + "</Types>");
    made.replace(
        RawPackage.RELATIONS,
        "</Relationships>",
        RawPackage.relation("r2", "worksheet", "worksheets/sheet2.xml") + "</Relationships>");
    made.replace(
        "xl/workbook.xml", "</sheets>", "<sheet name='Sketch' sheetId='2' r:id='r2'/></sheets>");
    return made;
  }

  /**
   * Thousands of rows and columns on one page, something in each: too much to look at, and full.
   */
  @Test
  void aPageOfTinyCellsHasNoRoom() throws IOException {
    String rows =
        IntStream.rangeClosed(1, 9000)
            .mapToObj(r -> "<row r='%d'><c r='%s%d'><v>1</v></c></row>".formatted(r, letters(r), r))
            .collect(Collectors.joining());
    RawPackage made = new RawPackage();
    made.replace(
        RawPackage.SHEET,
        "<cols>",
        "<sheetPr><pageSetUpPr fitToPage='1'/></sheetPr>"
            + "<sheetFormatPr defaultRowHeight='0.75' defaultColWidth='0.2'/><cols>");
    String text = made.text(RawPackage.SHEET).replaceAll("<row.*</row>", rows);
    refused(4, made.put(RawPackage.SHEET, text), "no room");
  }

  private static String letters(int row) {
    return dev.placket.workbooks.geometry.CellRange.letters(row * 37 % 8000);
  }

  private static RawPackage named(String name, String formula) {
    String local = name.startsWith("_") ? "' localSheetId='0'>" : "'>";
    return new RawPackage()
        .replace(
            "xl/workbook.xml",
            "</workbook>",
            "<definedNames><definedName name='"
                + name
                + local
                + formula
                + "</definedName></definedNames></workbook>");
  }

  /** Without the breaks of lines. */
  private String said() {
    return command.said.replaceAll("\\s+", " ");
  }

  private void placed(RawPackage made, String... more) throws IOException {
    assertEquals(0, command.fit(flats, made.write(dir), out, more), command.said);
  }

  private void refused(int code, RawPackage made, String says, String... more) throws IOException {
    assertEquals(code, command.fit(flats, made.write(dir), out, more), command.said);
    assertTrue(said().contains(says), command.said);
    assertFalse(Files.exists(out));
  }
}
