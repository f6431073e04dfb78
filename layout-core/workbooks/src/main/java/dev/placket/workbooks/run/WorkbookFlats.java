package dev.placket.workbooks.run;

import dev.placket.packs.flats.FlatSet;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.text.Lettering;
import dev.placket.workbooks.place.Asked;
import dev.placket.workbooks.read.Workbook;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The flats for a workbook, by worksheet.
 *
 * @param source the file or folder that was read
 * @param title what is laid out; blank for the workbook's name
 * @param fields values of the header, by name
 * @param tasks one for each worksheet that gets flats
 */
record WorkbookFlats(Path source, String title, Map<String, String> fields, List<Task> tasks) {
  /**
   * Flats for one worksheet.
   *
   * @param set the flats
   * @param ranges the named cells of the worksheet
   * @param worksheets those to try, in order; the first with room takes all
   * @param read how the flats were read, in words
   * @param unnamed files whose names say no role
   */
  record Task(
      FlatSet set,
      Asked ranges,
      List<Workbook.Entry> worksheets,
      List<String> read,
      List<String> unnamed) {}

  /** Where flats come from. */
  @FunctionalInterface
  interface Source {
    /**
     * Reads them.
     *
     * @param lettering for captions, where the flats bring no typeface of their own
     * @throws Refusal naming what cannot be used
     */
    WorkbookFlats of(Workbook workbook, Lettering lettering) throws Refusal;
  }
}
