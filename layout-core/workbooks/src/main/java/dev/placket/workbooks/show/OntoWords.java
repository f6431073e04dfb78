package dev.placket.workbooks.show;

import dev.placket.packs.report.Findings;
import dev.placket.packs.report.SheetResult;
import dev.placket.workbooks.place.Fitted;
import dev.placket.workbooks.room.PageRoom;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Puts the findings of a run onto a workbook into words. */
public final class OntoWords {
  private OntoWords() {}

  /**
   * The findings.
   *
   * @param title what was laid out
   * @param source the file that was read
   * @param how how the flats were read
   * @param unnamed files whose names say no role
   * @param fitted the worksheets in play
   * @param sheets what came of each
   * @param tolerance pixels that readers may differ by
   */
  public static Findings findings(
      String title,
      Path source,
      Set<String> how,
      Set<String> unnamed,
      List<Fitted> fitted,
      List<SheetResult> sheets,
      int tolerance) {
    Set<String> read = new LinkedHashSet<>(how);
    for (Fitted worksheet : fitted) {
      read.add(room(worksheet));
      for (String note : worksheet.worksheet().notes()) {
        read.add("Worksheet " + worksheet.worksheet().name() + ": " + note);
      }
    }
    String clear =
        "No picture touches a labelled cell or another picture, even if a program makes columns"
            + " and rows "
            + tolerance
            + (tolerance == 1 ? " pixel" : " pixels")
            + " smaller, or wider by any amount.";
    return new Findings(
        title,
        source,
        new ArrayList<>(read),
        new ArrayList<>(unnamed),
        sheets,
        List.of(clear),
        null);
  }

  private static String room(Fitted worksheet) {
    PageRoom room = worksheet.room();
    return "Worksheet "
        + worksheet.worksheet().name()
        + ", printed at "
        + room.page().percent()
        + " %: "
        + room.marks().size()
        + " ranges stay clear; the largest blank window is "
        + room.blank().get(0)
        + ".";
  }
}
