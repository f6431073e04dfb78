package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.workbook.RawWorkbook.Anchor;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Workbooks of the strict conformance class get pictures of that class in the same places. Its
 * namespaces are those of ISO/IEC 29500-1:2016 (transitional ones: part 4).
 */
class StrictTest {
  private static final String OFFICE = "http://schemas.openxmlformats.org/";
  private static final String STRICT = "http://purl.oclc.org/ooxml/";
  private static final Map<String, String> NAMESPACES =
      Map.of(
          OFFICE + "spreadsheetml/2006/main", STRICT + "spreadsheetml/main",
          OFFICE + "officeDocument/2006/relationships", STRICT + "officeDocument/relationships",
          OFFICE + "drawingml/2006/spreadsheetDrawing", STRICT + "drawingml/spreadsheetDrawing",
          OFFICE + "drawingml/2006/main", STRICT + "drawingml/main");

  @TempDir Path dir;
  private final Command command = new Command();

  private static Path strict(Path workbook, Path to) throws IOException {
    RawWorkbook raw = new RawWorkbook(workbook);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(to))) {
      for (Map.Entry<String, byte[]> part : raw.parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        byte[] bytes = part.getValue();
        if (part.getKey().matches(".*\\.(xml|rels)")) {
          String text = new String(bytes, StandardCharsets.UTF_8);
          for (Map.Entry<String, String> n : NAMESPACES.entrySet()) {
            text = text.replace(n.getKey(), n.getValue());
          }
          bytes = text.getBytes(StandardCharsets.UTF_8);
        }
        zip.write(bytes);
        zip.closeEntry();
      }
    }
    return to;
  }

  private RawWorkbook fitted(Path workbook, String out) throws IOException {
    Path flats = Command.plain(dir.resolve("flats"));
    Path copy = dir.resolve(out);
    int code = command.fit(flats, workbook, copy);
    assertTrue(code == 0 || code == 3, command.said);
    return new RawWorkbook(copy.resolve(workbook.getFileName()));
  }

  private static String text(RawWorkbook workbook, String part) {
    return new String(workbook.part(part), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"header", "block", "notes", "table"})
  void picturesLieInTheSamePlaces(String name) throws IOException {
    Path usual = RuledWorkbooks.write(name, dir);
    Path given = strict(usual, dir.resolve("strict-" + name + ".xlsx"));
    RawWorkbook one = fitted(usual, "a");
    RawWorkbook two = fitted(given, "b");
    String drawing = "xl/drawings/drawing1.xml";
    List<Anchor> expected = one.anchors(drawing);
    List<Anchor> found = two.anchors(drawing);
    assertEquals(expected.size(), found.size());
    for (int i = 0; i < found.size(); i++) {
      assertEquals(expected.get(i).name(), found.get(i).name());
      assertArrayEquals(expected.get(i).from(), found.get(i).from());
      assertEquals(expected.get(i).width(), found.get(i).width());
    }
    assertFalse(text(two, drawing).contains(OFFICE), text(two, drawing));
    String relations = text(two, "xl/drawings/_rels/drawing1.xml.rels");
    assertTrue(relations.contains(STRICT + "officeDocument/relationships/image"), relations);
    assertFalse(relations.contains(OFFICE + "officeDocument"), relations);
    RawWorkbook before = new RawWorkbook(given);
    before.parts.forEach(
        (part, bytes) -> {
          if (!part.matches(".*drawing.*|.*_rels.*|\\[Content_Types\\].xml|.*worksheets/sheet.*")) {
            assertArrayEquals(bytes, two.parts.get(part), part);
          }
        });
  }

  @Test
  void theWorksheetNamesItsDrawingInItsOwnNamespace() throws IOException {
    Path given = strict(RuledWorkbooks.write("block", dir), dir.resolve("s.xlsx"));
    RawWorkbook made = fitted(given, "out");
    String sheet = text(made, "xl/worksheets/sheet1.xml");
    assertTrue(sheet.contains("drawing"), sheet);
    assertFalse(sheet.contains(OFFICE), sheet);
  }
}
