package dev.placket.packs.description;

import java.util.Map;

/**
 * A workbook (ISO/IEC 29500) onto whose worksheets the flats go, in place of sheets of our own.
 *
 * @param file the workbook, beside the description or in a folder below it
 * @param worksheets the worksheets in play by identifier, one or more
 */
public record PackWorkbook(String file, Map<String, PackWorksheet> worksheets) {
  /** Copies the map. */
  public PackWorkbook {
    worksheets = Pack.ordered(worksheets);
  }
}
