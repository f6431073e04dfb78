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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What survives, what is replaced, and what is stored once. */
class SecondRunTest {
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

  @Test
  void ownPicturesAreReplacedAndTheUsersStay() throws IOException {
    Path first = fitted(RuledWorkbooks.write("table", dir), out);
    // Another drawing, so that the pictures differ.
    Files.writeString(flats.resolve("front.svg"), Command.PLAIN.replace("'70'", "'50'"));
    Path second = fitted(first, dir.resolve("again"));
    RawWorkbook was = new RawWorkbook(first);
    RawWorkbook now = new RawWorkbook(second);
    List<String> names = now.anchors(DRAWING).stream().map(Anchor::name).toList();
    assertEquals(1, names.stream().filter("Placket front"::equals).count(), names.toString());
    assertEquals(1, names.stream().filter("Placket back"::equals).count(), names.toString());
    assertTrue(names.contains("Picture 1"), names.toString());
    assertEquals(userText(was), userText(now), "the user's anchors are the same text");
    // Back, front and the user's: no picture of the first run is left over.
    assertEquals(3, media(now).size(), media(now).toString());
    assertArrayEquals(was.parts.get("xl/media/image1.png"), now.parts.get("xl/media/image1.png"));
  }

  @Test
  void theSameRunTwiceGivesTheSameBytes() throws IOException {
    Path original = RuledWorkbooks.write("block", dir);
    byte[] one = Files.readAllBytes(fitted(original, out));
    byte[] two = Files.readAllBytes(fitted(original, dir.resolve("again")));
    assertArrayEquals(one, two);
  }

  @Test
  void aRunOnItsOwnCopyChangesNothing() throws IOException {
    Path first = fitted(RuledWorkbooks.write("notes", dir), out);
    RawWorkbook was = new RawWorkbook(first);
    RawWorkbook now = new RawWorkbook(fitted(first, dir.resolve("again")));
    assertEquals(was.parts.keySet(), now.parts.keySet());
    was.parts.forEach((name, bytes) -> assertArrayEquals(bytes, now.parts.get(name), name));
  }

  @Test
  void aPictureShownTwiceIsStoredOnce() throws IOException {
    Files.writeString(flats.resolve("back.svg"), Command.PLAIN);
    Files.delete(flats.resolve("front.svg"));
    Files.writeString(flats.resolve("side.svg"), Command.PLAIN);
    RawWorkbook now = new RawWorkbook(fitted(RuledWorkbooks.write("block", dir), out));
    assertEquals(2, now.anchors(DRAWING).size());
    assertEquals(1, media(now).size());
  }

  @Test
  void theOriginalIsOnlyWrittenToWhenAsked() throws IOException {
    Path original = RuledWorkbooks.write("header", dir);
    byte[] before = Files.readAllBytes(original);
    assertEquals(2, command.fit(flats, original, dir), command.said);
    assertArrayEquals(before, Files.readAllBytes(original));
    assertEquals(0, command.fit(flats, original, dir, "--overwrite"), command.said);
    assertFalse(java.util.Arrays.equals(before, Files.readAllBytes(original)));
  }

  @Test
  void macrosAndUnknownExtensionsSurvive() throws IOException {
    Path file = RuledWorkbooks.write("header", dir);
    Map<String, byte[]> parts = new LinkedHashMap<>(new RawWorkbook(file).parts);
    parts.put("xl/vbaProject.bin", new byte[] {1, 2, 3, 0, -1});
    parts.put("customXml/item1.xml", "<a xmlns='urn:x'/>".getBytes(StandardCharsets.UTF_8));
    String sheet = new String(parts.get("xl/worksheets/sheet1.xml"), StandardCharsets.UTF_8);
    String extensions =
        "<extLst><ext uri=\"{0A}\" xmlns:q=\"urn:q\"><q:kept a='>'><![CDATA[<drawing/>]]></q:kept></ext></extLst>";
    parts.put(
        "xl/worksheets/sheet1.xml",
        sheet
            .replace("</worksheet>", "<!-- <drawing/> -->" + extensions + "</worksheet>")
            .getBytes(StandardCharsets.UTF_8));
    OntoRefusalsTest.write(file, parts);
    RawWorkbook now = new RawWorkbook(fitted(file, out));
    assertArrayEquals(parts.get("xl/vbaProject.bin"), now.parts.get("xl/vbaProject.bin"));
    assertArrayEquals(parts.get("customXml/item1.xml"), now.parts.get("customXml/item1.xml"));
    String made = new String(now.parts.get("xl/worksheets/sheet1.xml"), StandardCharsets.UTF_8);
    // In schema order the drawing goes before the extensions (ISO/IEC 29500-1, CT_Worksheet).
    assertTrue(made.contains("r:id=\"placket1\"/>" + extensions), made);
  }

  @Test
  void foldersNamedAsWorksheetsHoldTheirFlats() throws IOException {
    Path folder = Files.createDirectories(dir.resolve("pack"));
    Command.plain(folder.resolve("Measures"));
    RawWorkbook now = new RawWorkbook(fitted(folder, RuledWorkbooks.write("table", dir), out));
    assertTrue(now.anchors(DRAWING).stream().anyMatch(a -> a.name().equals("Placket front")));
    assertFalse(now.parts.containsKey("xl/drawings/drawing2.xml"));
  }

  private Path fitted(Path onto, Path to) {
    return fitted(flats, onto, to);
  }

  private Path fitted(Path folder, Path onto, Path to) {
    assertEquals(0, command.fit(folder, onto, to), command.said);
    return to.resolve(onto.getFileName());
  }

  private static List<String> media(RawWorkbook book) {
    return book.parts.keySet().stream().filter(p -> p.startsWith("xl/media/")).toList();
  }

  /** The first anchor, which the user drew. */
  private static String userText(RawWorkbook book) {
    String xml = new String(book.parts.get(DRAWING), StandardCharsets.UTF_8);
    Matcher m =
        Pattern.compile("<xdr:twoCellAnchor.*?</xdr:twoCellAnchor>", Pattern.DOTALL).matcher(xml);
    assertTrue(m.find(), xml);
    return m.group();
  }
}
