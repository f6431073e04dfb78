package dev.placket.packs.description;

import java.util.List;
import java.util.Map;

/**
 * Flats for one worksheet of a workbook that is ruled already.
 *
 * @param name the worksheet
 * @param windows ranges or defined names that pictures may use; empty for all that is blank
 * @param labelled ranges or defined names that stay uncovered whatever they hold
 * @param flats its flats by identifier, in the order in which details are read
 */
public record PackWorksheet(
    String name, List<String> windows, List<String> labelled, Map<String, PackFlat> flats) {
  /** Copies collections. */
  public PackWorksheet {
    windows = List.copyOf(windows);
    labelled = List.copyOf(labelled);
    flats = Pack.ordered(flats);
  }

  /** This worksheet with other flats. */
  public PackWorksheet with(Map<String, PackFlat> others) {
    return new PackWorksheet(name, windows, labelled, others);
  }
}
