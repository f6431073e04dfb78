package dev.placket.demo.workbook;

import dev.placket.demo.workbook.RawWorkbook.Rect;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What a second library says must stay uncovered. */
final class LabelledByPoi {
  private LabelledByPoi() {}

  /** Ranges of text, numbers, formulas, fills, comments and validation. */
  static List<CellRangeAddress> ranges(XSSFSheet sheet) {
    List<CellRangeAddress> ranges = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        boolean filled = cell.getCellStyle().getFillPattern() != FillPatternType.NO_FILL;
        boolean holds =
            cell.getCellType() == CellType.STRING
                ? !cell.getStringCellValue().isBlank()
                : cell.getCellType() != CellType.BLANK;
        if (holds || filled || cell.getCellComment() != null) {
          ranges.add(whole(sheet, cell));
        }
      }
    }
    for (DataValidation check : sheet.getDataValidations()) {
      ranges.addAll(List.of(check.getRegions().getCellRangeAddresses()));
    }
    return ranges;
  }

  private static CellRangeAddress whole(XSSFSheet sheet, Cell cell) {
    return sheet.getMergedRegions().stream()
        .filter(m -> m.isInRange(cell))
        .findFirst()
        .orElseGet(
            () ->
                new CellRangeAddress(
                    cell.getRowIndex(),
                    cell.getRowIndex(),
                    cell.getColumnIndex(),
                    cell.getColumnIndex()));
  }

  /** The user's own pictures, as anchors. */
  static List<XSSFClientAnchor> pictures(XSSFSheet sheet) {
    List<XSSFClientAnchor> anchors = new ArrayList<>();
    XSSFDrawing drawing = sheet.getDrawingPatriarch();
    for (XSSFShape shape : drawing == null ? List.<XSSFShape>of() : drawing.getShapes()) {
      boolean users = !(shape instanceof XSSFPicture p && p.getShapeName().startsWith("Placket "));
      if (users) {
        anchors.add((XSSFClientAnchor) shape.getAnchor());
      }
    }
    return anchors;
  }

  static Rect rect(CellRangeAddress r, long[] columns, long[] rows) {
    return new Rect(
        r.formatAsString(),
        RawWorkbook.sum(columns, r.getFirstColumn()),
        RawWorkbook.sum(rows, r.getFirstRow()),
        RawWorkbook.sum(columns, r.getLastColumn() + 1),
        RawWorkbook.sum(rows, r.getLastRow() + 1));
  }
}
