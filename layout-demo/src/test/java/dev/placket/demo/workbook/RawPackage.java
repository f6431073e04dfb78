package dev.placket.demo.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** A small workbook, part by part, that tests change in ways that no library would write. */
final class RawPackage {
  static final String TYPES = "[Content_Types].xml";
  static final String SHEET = "xl/worksheets/sheet1.xml";
  static final String RELATIONS = "xl/_rels/workbook.xml.rels";
  private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String SHEET_ML =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  final Map<String, byte[]> parts = new LinkedHashMap<>();
  boolean stored;
  Zip64Mode zip64 = Zip64Mode.Never;

  RawPackage() {
    put(
        TYPES,
        "<Types xmlns='"
            + PACKAGE
            + "content-types'>"
            + "<Default Extension='rels' ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
            + "<Default Extension='xml' ContentType='application/xml'/>"
            + override("/xl/workbook.xml", "sheet.main")
            + override("/" + SHEET, "worksheet")
            + "</Types>");
    put("_rels/.rels", relations(relation("r1", "officeDocument", "xl/workbook.xml")));
    put(
        "xl/workbook.xml",
        "<workbook xmlns='http://schemas.openxmlformats.org/spreadsheetml/2006/main' xmlns:r='"
            + OFFICE
            + "'><sheets><sheet name='Flats' sheetId='1' r:id='r1'/></sheets></workbook>");
    put(RELATIONS, relations(relation("r1", "worksheet", "worksheets/sheet1.xml")));
    sheet("");
  }

  /** The worksheet: a title, some columns, rows, and more after its data. */
  RawPackage sheet(String afterData) {
    return put(
        SHEET,
        "<worksheet xmlns='http://schemas.openxmlformats.org/spreadsheetml/2006/main' xmlns:r='"
            + OFFICE
            + "'><cols><col min='1' max='3' width='12' customWidth='1'/></cols><sheetData>"
            + "<row r='1'><c r='A1' t='inlineStr'><is><t>Style</t></is></c></row>"
            + "<row r='40'><c r='H40' t='inlineStr'><is><t>Page</t></is></c></row>"
            + "</sheetData>"
            + afterData
            + "</worksheet>");
  }

  static String override(String part, String type) {
    return "<Override PartName='" + part + "' ContentType='" + SHEET_ML + type + "+xml'/>";
  }

  static String relation(String id, String type, String target) {
    return "<Relationship Id='%s' Type='%s/%s' Target='%s'/>".formatted(id, OFFICE, type, target);
  }

  static String relations(String all) {
    return "<Relationships xmlns='" + PACKAGE + "relationships'>" + all + "</Relationships>";
  }

  RawPackage put(String part, String xml) {
    parts.put(part, (HEAD + xml).getBytes(StandardCharsets.UTF_8));
    return this;
  }

  String text(String part) {
    byte[] bytes = parts.get(part);
    if (bytes == null) {
      throw new AssertionError("no part " + part);
    }
    return new String(bytes, StandardCharsets.UTF_8).substring(HEAD.length());
  }

  RawPackage replace(String part, String what, String with) {
    String text = text(part);
    if (!text.contains(what)) {
      throw new AssertionError(part + " has no " + what);
    }
    return put(part, text.replace(what, with));
  }

  RawPackage rename(String part, String name) {
    byte[] bytes = parts.remove(part);
    if (bytes == null) {
      throw new AssertionError("no part " + part);
    }
    parts.put(name, bytes);
    return this;
  }

  RawPackage encode(String part, java.nio.charset.Charset charset, int... mark) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (int b : mark) {
      bytes.write(b);
    }
    String head = HEAD.replace("UTF-8", charset.name().replaceAll("(?<=UTF-16).*", ""));
    bytes.writeBytes((head + text(part)).getBytes(charset));
    parts.put(part, bytes.toByteArray());
    return this;
  }

  /** Writes it by a second library, to a stream that cannot seek: with data descriptors. */
  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(bytes)) {
      zip.setUseZip64(zip64);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        ZipArchiveEntry entry = new ZipArchiveEntry(part.getKey());
        entry.setTime(0);
        if (stored) {
          entry.setMethod(ZipArchiveOutputStream.STORED);
          entry.setSize(part.getValue().length);
          java.util.zip.CRC32 crc = new java.util.zip.CRC32();
          crc.update(part.getValue());
          entry.setCrc(crc.getValue());
        }
        zip.putArchiveEntry(entry);
        zip.write(part.getValue());
        zip.closeArchiveEntry();
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return bytes.toByteArray();
  }

  Path write(Path dir) throws IOException {
    return Files.write(dir.resolve("pack.xlsx"), bytes());
  }
}
