package dev.placket.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A pack of ten worksheets (ISO/IEC 29500) and thirty flats, three to each. */
final class TenWorksheets {
  private static final int WORKSHEETS = 10;
  private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";

  private TenWorksheets() {}

  /** Writes the flats: a folder for each worksheet. */
  static void flats(Path folder, String drawing) throws IOException {
    for (int i = 0; i < WORKSHEETS; i++) {
      Path own = Files.createDirectories(folder.resolve(name(i)));
      for (String flat : new String[] {"front", "back", "collar-detail"}) {
        // No two are the same, so that each is drawn.
        String stroke = "stroke-width=\"" + (2 + i * 0.1) + "\"";
        Files.writeString(
            own.resolve(flat + ".svg"), drawing.replace("stroke-width=\"3\"", stroke));
      }
    }
  }

  /** Writes the workbook. */
  static void workbook(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      StringBuilder types = new StringBuilder();
      StringBuilder sheets = new StringBuilder();
      StringBuilder relations = new StringBuilder();
      for (int i = 0; i < WORKSHEETS; i++) {
        String part = "worksheets/sheet" + i + ".xml";
        types.append(override("xl/" + part, "worksheet"));
        sheets.append(
            "<sheet name=\"%s\" sheetId=\"%d\" r:id=\"r%d\"/>".formatted(name(i), i + 1, i));
        relations.append(relation("r" + i, "worksheet", part));
        put(zip, "xl/" + part, worksheet(i));
      }
      put(
          zip,
          "[Content_Types].xml",
          "<Types xmlns=\"%scontent-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>%s%s</Types>"
              .formatted(PACKAGE, override("xl/workbook.xml", "sheet.main"), types));
      put(zip, "_rels/.rels", relations(relation("r", "officeDocument", "xl/workbook.xml")));
      put(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns=\"%s\" xmlns:r=\"%s\"><sheets>%s</sheets></workbook>"
              .formatted(MAIN, OFFICE, sheets));
      put(zip, "xl/_rels/workbook.xml.rels", relations(relations.toString()));
    }
  }

  private static String name(int i) {
    return "Sheet " + i;
  }

  /** Forty rows of a title block at the right of a blank, on A4 across. */
  private static String worksheet(int i) {
    StringBuilder rows = new StringBuilder();
    for (int r = 1; r <= 34; r++) {
      rows.append(
          "<row r=\"%d\"><c r=\"K%d\" t=\"inlineStr\"><is><t>Block %d</t></is></c></row>"
              .formatted(r, r, i + r));
    }
    return "<worksheet xmlns=\"%s\"><sheetFormatPr defaultRowHeight=\"15\"/><sheetData>%s</sheetData><pageMargins left=\"0.4\" right=\"0.4\" top=\"0.4\" bottom=\"0.4\" header=\"0\" footer=\"0\"/><pageSetup paperSize=\"9\" orientation=\"landscape\"/></worksheet>"
        .formatted(MAIN, rows);
  }

  private static String override(String part, String type) {
    return "<Override PartName=\"/%s\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.%s+xml\"/>"
        .formatted(part, type);
  }

  private static String relation(String id, String type, String target) {
    return "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"/>"
        .formatted(id, OFFICE, type, target);
  }

  private static String relations(String all) {
    return "<Relationships xmlns=\"%srelationships\">%s</Relationships>".formatted(PACKAGE, all);
  }

  private static void put(ZipOutputStream zip, String name, String xml) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write((XML + xml).getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
