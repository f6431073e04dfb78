package dev.placket.demo.workbook;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.RegionUtil;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Four workbooks as small labels rule them, built by a second library. */
final class RuledWorkbooks {
  /** The names of all four. */
  static final List<String> ALL = List.of("header", "block", "notes", "table");

  private RuledWorkbooks() {}

  /** Writes one of the four. */
  static Path write(String name, Path folder) throws IOException {
    Path file = folder.resolve(name + ".xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      switch (name) {
        case "header" -> header(book);
        case "block" -> block(book);
        case "notes" -> notes(book);
        default -> table(book);
      }
      book.write(out);
    }
    return file;
  }

  /** A header of boxes over a framed blank, Letter upright, no print area, not scaled. */
  private static void header(XSSFWorkbook book) {
    XSSFSheet sheet = sheet(book, "Flats", PrintSetup.LETTER_PAPERSIZE, false);
    widths(sheet, 6, 13);
    String[] captions = {"Style no.", "Season", "Stage", "Date", "Size range", "Factory"};
    for (int i = 0; i < captions.length; i++) {
      int row = i / 2;
      int column = (i % 2) * 3;
      text(sheet, row, column, captions[i]);
      box(sheet, row, row, column, column);
      text(sheet, row, column + 1, "MG-3107");
      box(sheet, row, row, column + 1, column + 2);
    }
    frame(sheet, new CellRangeAddress(3, 40, 0, 5), BorderStyle.MEDIUM);
  }

  /** A title block at the right, A4 across, print area, fitted to one page. */
  private static void block(XSSFWorkbook book) {
    XSSFSheet sheet = sheet(book, "Flat sheet", PrintSetup.A4_PAPERSIZE, true);
    widths(sheet, 12, 12);
    for (int row = 0; row < 36; row += 3) {
      text(sheet, row, 10, "Block " + row);
      box(sheet, row, row + 2, 10, 11);
    }
    frame(sheet, new CellRangeAddress(0, 35, 0, 9), BorderStyle.THIN);
    book.setPrintArea(0, 0, 11, 0, 35);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 1);
    sheet.setHorizontallyCenter(true);
  }

  /** A filled notes column at the left, A4 upright, printed at 62 %. */
  private static void notes(XSSFWorkbook book) {
    XSSFSheet sheet = sheet(book, "Notes & flats", PrintSetup.A4_PAPERSIZE, false);
    widths(sheet, 10, 14.5);
    sheet.setColumnHidden(4, true);
    XSSFCellStyle grey = book.createCellStyle();
    grey.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
    grey.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    for (int row = 0; row < 60; row++) {
      Cell cell = text(sheet, row, 0, row % 4 == 0 ? "note " + row : "");
      cell.setCellStyle(grey);
    }
    sheet.getRow(7).setHeightInPoints(33);
    sheet.getRow(9).setZeroHeight(true);
    text(sheet, 62, 3, "Mossgantry, a line of text that is longer than its cell and runs on");
    book.setPrintArea(0, 0, 9, 0, 66);
    sheet.getPrintSetup().setScale((short) 62);
  }

  /**
   * A table below the blank, Letter across, with all that may be in cells, and a user's picture.
   */
  private static void table(XSSFWorkbook book) throws IOException {
    XSSFSheet sheet = sheet(book, "Measures", PrintSetup.LETTER_PAPERSIZE, true);
    widths(sheet, 14, 9.5);
    text(sheet, 0, 0, "Measurement diagram");
    for (int row = 26; row < 38; row++) {
      for (int column = 0; column < 14; column++) {
        Cell cell = cell(sheet, row, column);
        if (row == 26) {
          cell.setCellValue("col " + column);
        } else if (column == 13) {
          cell.setCellFormula("SUM(B" + (row + 1) + ":M" + (row + 1) + ")");
        } else if (row < 34) {
          cell.setCellValue(row * 0.5 + column);
        }
        box(sheet, row, row, column, column);
      }
    }
    DataValidation check =
        sheet
            .getDataValidationHelper()
            .createValidation(
                sheet.getDataValidationHelper().createExplicitListConstraint(new String[] {"a"}),
                new CellRangeAddressList(2, 4, 12, 13));
    sheet.addValidationData(check);
    userPicture(book, sheet);
    var comment =
        sheet
            .createDrawingPatriarch()
            .createCellComment(book.getCreationHelper().createClientAnchor());
    comment.setString(book.getCreationHelper().createRichTextString("checked"));
    cell(sheet, 24, 1).setCellComment(comment);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    book.createSheet("Other").createRow(0).createCell(0).setCellValue("untouched");
  }

  private static void userPicture(XSSFWorkbook book, XSSFSheet sheet) throws IOException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", png);
    int index =
        book.addPicture(png.toByteArray(), org.apache.poi.ss.usermodel.Workbook.PICTURE_TYPE_PNG);
    ClientAnchor anchor = book.getCreationHelper().createClientAnchor();
    anchor.setCol1(12);
    anchor.setRow1(8);
    anchor.setCol2(13);
    anchor.setRow2(12);
    sheet.createDrawingPatriarch().createPicture(anchor, index);
  }

  private static XSSFSheet sheet(XSSFWorkbook book, String name, short paper, boolean across) {
    XSSFSheet sheet = book.createSheet(name);
    sheet.getPrintSetup().setPaperSize(paper);
    sheet.getPrintSetup().setLandscape(across);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.LEFT, 0.4);
    sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.RIGHT, 0.4);
    return sheet;
  }

  private static void widths(XSSFSheet sheet, int columns, double characters) {
    for (int c = 0; c < columns; c++) {
      sheet.setColumnWidth(c, (int) Math.round(characters * 256));
    }
  }

  private static Cell cell(XSSFSheet sheet, int row, int column) {
    Row r = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
    return r.getCell(column) == null ? r.createCell(column) : r.getCell(column);
  }

  private static Cell text(XSSFSheet sheet, int row, int column, String text) {
    Cell cell = cell(sheet, row, column);
    cell.setCellValue(text);
    return cell;
  }

  private static void box(XSSFSheet sheet, int top, int bottom, int left, int right) {
    CellRangeAddress range = new CellRangeAddress(top, bottom, left, right);
    if (range.getNumberOfCells() > 1) {
      sheet.addMergedRegion(range);
    }
    frame(sheet, range, BorderStyle.THIN);
  }

  private static void frame(XSSFSheet sheet, CellRangeAddress range, BorderStyle style) {
    RegionUtil.setBorderTop(style, range, sheet);
    RegionUtil.setBorderBottom(style, range, sheet);
    RegionUtil.setBorderLeft(style, range, sheet);
    RegionUtil.setBorderRight(style, range, sheet);
  }
}
