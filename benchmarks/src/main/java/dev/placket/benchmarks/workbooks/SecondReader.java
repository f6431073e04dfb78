package dev.placket.benchmarks.workbooks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Opens workbooks with Apache POI. */
final class SecondReader {
  /** What {@link #pictures} gives for a file that does not open. */
  static final int CLOSED = -1;

  static {
    // Without a logging library it would say so among the figures.
    System.setProperty("log4j2.StatusLogger.level", "OFF");
  }

  private SecondReader() {}

  /**
   * How many pictures placket put in that can be read; {@link #CLOSED} if the file does not open.
   */
  static int pictures(Path file) {
    try (OPCPackage opened = OPCPackage.open(file.toFile(), PackageAccess.READ);
        XSSFWorkbook book = new XSSFWorkbook(opened)) {
      int pictures = 0;
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        pictures += pictures(book.getSheetAt(i));
      }
      return pictures;
    } catch (IOException | OpenXML4JException | RuntimeException | OutOfMemoryError e) {
      return CLOSED;
    }
  }

  private static int pictures(XSSFSheet sheet) {
    XSSFDrawing drawing = sheet.getDrawingPatriarch();
    int pictures = 0;
    for (XSSFShape shape : drawing == null ? List.<XSSFShape>of() : drawing.getShapes()) {
      if (shape instanceof XSSFPicture picture && picture.getShapeName().startsWith("Placket ")) {
        pictures += picture.getPictureData().getData().length > 0 ? 1 : 0;
      }
    }
    return pictures;
  }
}
