package dev.placket.demo.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is no workbook of ISO/IEC 29500 is named as what it is, with what to do. */
class OtherKindsTest {
  @TempDir Path dir;

  static Stream<Arguments> kinds() throws IOException, GeneralSecurityException {
    String word = "http://schemas.openxmlformats.org/wordprocessingml/2006/main";
    RawPackage text = new RawPackage();
    text.put("xl/workbook.xml", "<w:document xmlns:w='" + word + "'><w:body/></w:document>");
    RawPackage binary = new RawPackage().rename("xl/workbook.xml", "xl/workbook.bin");
    binary.replace("_rels/.rels", "workbook.xml", "workbook.bin");
    RawPackage archive = new RawPackage();
    archive.parts.clear();
    archive.parts.put("from the mill/pack.xlsx", new RawPackage().bytes());
    return Stream.of(
        of(compound("Workbook"), "an old binary workbook (.xls)", "save it as"),
        of(hssf(), "an old binary workbook (.xls)", "save it as"),
        of(encrypted(), "protected with a password", "remove the password"),
        of(compound("WordDocument"), "a text document (.doc)", "name a workbook"),
        of(compound("Contents"), "encrypted or a binary document", "save it as"),
        of(binary.bytes(), "a binary workbook (.xlsb)", "save it as"),
        of(text.bytes(), "a text document (.docx)", "name a workbook"),
        of(openDocument("spreadsheet"), "an OpenDocument spreadsheet (.ods)", "save it as"),
        of(openDocument("spreadsheet-template"), "an OpenDocument spreadsheet", "save it as"),
        of(openDocument("text"), "an OpenDocument text (.odt)", "name a workbook"),
        of(archive.bytes(), "a zip archive that contains from the mill/pack.xlsx", "unpack it"),
        of("%PDF-1.7\n%\u00e2\u00e3".getBytes(StandardCharsets.ISO_8859_1), "a PDF", "name the"),
        of(bytes("style;season\nMG-1;SS\n"), "text, as in .csv", "save it as"),
        of("Maß;Größe\n".getBytes(StandardCharsets.UTF_16), "text, as in .csv", "save it as"),
        of(bytes("\uFEFFMaß;Größe\n"), "text, as in .csv", "save it as"),
        of(bytes("<html><table>"), "a web page", "save it as"),
        of(
            bytes("<?xml version='1.0'?><W xmlns='urn:schemas-microsoft-com:office:spreadsheet'/>"),
            "an old XML spreadsheet",
            "save it as"),
        of(bytes(Command.PLAIN), "a drawing (.svg)", "name a workbook"),
        of(new byte[] {'I', 'I', '*', 0, 8}, "a picture", "name a workbook"),
        of(new byte[0], "empty", "give the workbook"),
        of(new byte[] {0, 1, 2, 3, 4}, "neither a package", "name an ISO/IEC 29500 workbook"));
  }

  private static Arguments of(byte[] file, String named, String remedy) {
    return Arguments.of(file, named, remedy);
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("kinds")
  void areNamed(byte[] bytes, String named, String remedy) throws IOException {
    Path file = Files.write(dir.resolve("pack.xlsx"), bytes);
    Command command = new Command();
    Path out = dir.resolve("out");
    assertEquals(2, command.fit(Command.plain(dir.resolve("flats")), file, out), command.said);
    assertTrue(command.said.contains("pack.xlsx: is "), command.said);
    assertTrue(command.said.contains(named), command.said);
    assertTrue(command.said.contains(remedy), command.said);
    assertEquals(1, command.said.lines().count(), command.said);
    assertFalse(Files.exists(out));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The type stands in the first entry (ISO/IEC 26300-3, 3.3). */
  private static byte[] openDocument(String kind) {
    RawPackage made = new RawPackage();
    made.parts.clear();
    made.parts.put("mimetype", bytes("application/vnd.oasis.opendocument." + kind));
    made.put("content.xml", "<x/>");
    return made.bytes();
  }

  private static byte[] hssf() throws IOException {
    try (HSSFWorkbook book = new HSSFWorkbook()) {
      book.createSheet("Flats").createRow(0).createCell(0).setCellValue("Style");
      return book.getBytes();
    }
  }

  private static byte[] compound(String stream) throws IOException {
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      files.createDocument(new ByteArrayInputStream(new byte[5000]), stream);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      files.writeFilesystem(bytes);
      return bytes.toByteArray();
    }
  }

  private static byte[] encrypted() throws IOException, GeneralSecurityException {
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      var encryptor = new EncryptionInfo(EncryptionMode.standard).getEncryptor();
      encryptor.confirmPassword("placket");
      try (OutputStream to = encryptor.getDataStream(files)) {
        to.write(new RawPackage().bytes());
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      files.writeFilesystem(bytes);
      return bytes.toByteArray();
    }
  }
}
