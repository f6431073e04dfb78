package dev.placket.demo.workbook;

import dev.placket.demo.workbook.RawWorkbook.Anchor;
import dev.placket.demo.workbook.RawWorkbook.Rect;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Looks for pictures of ours that touch a labelled cell or another picture. */
final class Touching {
  private Touching() {}

  /** What touches what, with columns and rows as some reader has them. */
  static List<String> found(List<Anchor> anchors, XSSFSheet sheet, long[] columns, long[] rows) {
    List<Rect> ours = new ArrayList<>();
    List<Rect> others = new ArrayList<>();
    for (Anchor anchor : anchors) {
      Rect rect = RawWorkbook.rect(anchor, columns, rows);
      (anchor.name().startsWith("Placket ") ? ours : others).add(rect);
    }
    LabelledByPoi.ranges(sheet).forEach(l -> others.add(LabelledByPoi.rect(l, columns, rows)));
    List<String> touching = new ArrayList<>();
    for (int i = 0; i < ours.size(); i++) {
      List<Rect> against = new ArrayList<>(others);
      against.addAll(ours.subList(0, i));
      for (Rect other : against) {
        if (ours.get(i).overlaps(other)) {
          touching.add(ours.get(i) + " touches " + other);
        }
      }
    }
    return touching;
  }
}
