package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.workbook.RawWorkbook.Anchor;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.WsDrDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;

/** The ten outside garments onto four ruled workbooks, judged from outside. */
class GarmentsOntoWorkbooksTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";
  private static final String DRAWING = "xl/drawings/drawing1.xml";
  private static final long PIXEL = 9525;

  /** Reader differences tried on each workbook, beside the narrowest and the widest. */
  private static final int COMBINATIONS = 60;

  @TempDir Path dir;

  static Stream<Arguments> all() throws IOException {
    Path shared;
    try {
      shared = Command.shared();
    } catch (org.opentest4j.TestAbortedException e) {
      return Stream.of(Arguments.of("none", "header"));
    }
    List<Arguments> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(shared)) {
      files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith("-front.svg"))
          .sorted()
          .forEach(
              f ->
                  RuledWorkbooks.ALL.forEach(
                      w -> all.add(Arguments.of(f.replace("-front.svg", ""), w))));
    }
    return all.stream();
  }

  @ParameterizedTest(name = "{0} onto {1}")
  @MethodSource("all")
  void landsWhereNothingIsTouched(String garment, String workbook) throws Exception {
    Path original = RuledWorkbooks.write(workbook, dir);
    byte[] before = Files.readAllBytes(original);
    Path out = dir.resolve("out");
    Command command = new Command();
    assertEquals(0, command.fit(Command.garment(garment, dir), original, out), command.said);
    assertArrayEquals(before, Files.readAllBytes(original), "the original is as it was");
    RawWorkbook was = new RawWorkbook(original);
    RawWorkbook now = new RawWorkbook(out.resolve(workbook + ".xlsx"));
    onlyPicturesChanged(was, now);
    try (InputStream in = Files.newInputStream(out.resolve(workbook + ".xlsx"));
        XSSFWorkbook poi = new XSSFWorkbook(in)) {
      nothingTouches(now, poi.getSheetAt(0));
      sameToPoi(now, poi.getSheetAt(0));
    }
    valid(now);
  }

  private static void onlyPicturesChanged(RawWorkbook was, RawWorkbook now) throws IOException {
    for (Map.Entry<String, byte[]> part : was.parts.entrySet()) {
      String name = part.getKey();
      boolean mayChange =
          name.startsWith("xl/drawings/")
              || name.equals("[Content_Types].xml")
              || name.equals("xl/worksheets/_rels/sheet1.xml.rels")
              || name.equals(SHEET);
      if (!mayChange) {
        assertArrayEquals(part.getValue(), now.parts.get(name), name);
      }
    }
    // But for one drawing element, the worksheet is the same text.
    String cut =
        utf8(now.part(SHEET)).replaceFirst("<drawing xmlns:r=\"[^\"]*\" r:id=\"placket1\"/>", "");
    assertEquals(utf8(was.part(SHEET)), cut);
  }

  private static String utf8(byte[] bytes) {
    return new String(bytes, java.nio.charset.StandardCharsets.UTF_8);
  }

  private static void nothingTouches(RawWorkbook raw, XSSFSheet sheet) {
    List<Anchor> anchors = raw.anchors(DRAWING);
    List<Anchor> ours = anchors.stream().filter(a -> a.name().startsWith("Placket ")).toList();
    assertEquals(
        List.of("Placket front", "Placket back"), ours.stream().map(Anchor::name).toList());
    long[] columns = raw.columns(SHEET, 60);
    long[] rows = raw.rows(SHEET, 200);
    Random random = new Random(29500);
    for (int i = 0; i < COMBINATIONS + 2; i++) {
      long[] c = differ(columns, i, random);
      long[] r = differ(rows, i, random);
      assertEquals(List.of(), Touching.found(anchors, sheet, c, r));
    }
  }

  /** All one pixel narrower, all wider, then each by its own whim. */
  private static long[] differ(long[] sizes, int combination, Random random) {
    long[] other = new long[sizes.length];
    for (int i = 0; i < sizes.length; i++) {
      long by = combination == 0 ? -1 : combination == 1 ? 1 : random.nextInt(3) - 1;
      other[i] = sizes[i] == 0 ? 0 : Math.max(0, sizes[i] + by * PIXEL);
    }
    return other;
  }

  private static void sameToPoi(RawWorkbook raw, XSSFSheet sheet) throws IOException {
    List<Anchor> ours =
        raw.anchors(DRAWING).stream().filter(a -> a.name().startsWith("Placket ")).toList();
    int seen = 0;
    for (XSSFShape shape : sheet.getDrawingPatriarch().getShapes()) {
      if (shape instanceof XSSFPicture picture && picture.getShapeName().startsWith("Placket ")) {
        Anchor anchor = ours.get(seen++);
        XSSFClientAnchor read = picture.getClientAnchor();
        assertEquals(anchor.from()[0], read.getCol1());
        assertEquals(anchor.from()[2], read.getRow1());
        assertEquals(anchor.from()[1], read.getDx1());
        assertEquals(anchor.from()[3], read.getDy1());
        assertEquals(anchor.width(), read.getSize().getCx());
        assertEquals(anchor.height(), read.getSize().getCy());
        PackagePart media = picture.getPictureData().getPackagePart();
        byte[] bytes = media.getInputStream().readAllBytes();
        assertArrayEquals(raw.parts.get(media.getPartName().getName().substring(1)), bytes);
        aspect(anchor, bytes);
      }
    }
    assertEquals(ours.size(), seen);
  }

  /** Extents are to one another exactly as pixels are, and pHYs says the size they are shown at. */
  private static void aspect(Anchor anchor, byte[] png) throws IOException {
    var head = new java.io.DataInputStream(new ByteArrayInputStream(png, 16, 8));
    long width = head.readInt();
    long height = head.readInt();
    assertEquals(anchor.width() * height, anchor.height() * width, "aspect of " + anchor.name());
    int at = find(png, "pHYs");
    var physical = new java.io.DataInputStream(new ByteArrayInputStream(png, at + 4, 9));
    int across = physical.readInt();
    assertEquals(across, physical.readInt());
    assertEquals(1, physical.read(), "pixels per metre, PNG 3rd ed., pHYs");
    // 36,000,000 EMU to the metre (ISO/IEC 29500-1: 360,000 to the centimetre).
    assertEquals(width * 36_000_000.0 / anchor.width(), across, 0.5);
    // Six is colour with alpha, four grey with alpha, three a palette (PNG 3rd ed., IHDR, tRNS).
    boolean palette = png[25] == 3 && find(png, "tRNS") > 0;
    assertTrue(png[25] == 6 || png[25] == 4 || palette, "transparent");
  }

  private static int find(byte[] png, String chunk) {
    int at = new String(png, java.nio.charset.StandardCharsets.ISO_8859_1).indexOf(chunk);
    assertTrue(at > 0, chunk);
    return at;
  }

  /** The schemas of ECMA-376, as the second library brings them. */
  private static void valid(RawWorkbook now) throws Exception {
    valid(WorksheetDocument.Factory.parse(new ByteArrayInputStream(now.part(SHEET))));
    valid(WsDrDocument.Factory.parse(new ByteArrayInputStream(now.part(DRAWING))));
  }

  private static void valid(XmlObject xml) {
    List<XmlError> errors = new ArrayList<>();
    assertTrue(xml.validate(new XmlOptions().setErrorListener(errors)), errors.toString());
  }
}
