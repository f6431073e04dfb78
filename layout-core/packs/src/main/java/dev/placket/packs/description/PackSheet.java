package dev.placket.packs.description;

import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A sheet of a pack.
 *
 * @param name what it is called, as in {@code Flat sheet}
 * @param paper its paper, the way up it is used; null for the pack's
 * @param margins its margins; null for the pack's
 * @param grid its grid between header and foot
 * @param cells areas that hold text, by name
 * @param tables areas that hold a table, by name
 * @param windows areas that flats may use, by name
 * @param flats its flats by identifier, in the order in which details are read
 * @param check the sample whose check it shows; null for none
 * @param photographs the windows that the photographs of that sample may use; none to leave them
 *     out
 * @param further whether details, swatches and the like that find no room go on over further sheets
 *     of the same kind
 * @param leaders how the leaders of callouts run
 * @param rules which rules let the front lead
 * @param gap between two flats; null for the usual
 * @param clearance from a flat to rules and cells; null for the usual
 */
public record PackSheet(
    Words name,
    @Nullable PaperSize paper,
    @Nullable Margins margins,
    PackGrid grid,
    Map<String, PackCell> cells,
    Map<String, PackTable> tables,
    Map<String, PackWindow> windows,
    Map<String, PackFlat> flats,
    @Nullable String check,
    List<String> photographs,
    boolean further,
    PackLeaders leaders,
    Set<LeadRule> rules,
    @Nullable Length gap,
    @Nullable Length clearance) {
  /** Copies the maps. */
  public PackSheet {
    cells = Pack.ordered(cells);
    tables = Pack.ordered(tables);
    windows = Pack.ordered(windows);
    flats = Pack.ordered(flats);
    photographs = List.copyOf(photographs);
  }

  /** A sheet of windows and flats. */
  public static PackSheet of(
      String name, PackGrid grid, Map<String, PackWindow> windows, Map<String, PackFlat> flats) {
    return new PackSheet(
        Words.of(name),
        null,
        null,
        grid,
        Map.of(),
        Map.of(),
        windows,
        flats,
        null,
        List.of(),
        false,
        PackLeaders.AUTO,
        LeadRule.ALL,
        null,
        null);
  }

  PackSheet on(@Nullable PaperSize other) {
    return new PackSheet(
        name,
        other,
        margins,
        grid,
        cells,
        tables,
        windows,
        flats,
        check,
        photographs,
        further,
        leaders,
        rules,
        gap,
        clearance);
  }

  /** This sheet with other flats. */
  public PackSheet with(Map<String, PackFlat> others) {
    return new PackSheet(
        name,
        paper,
        margins,
        grid,
        cells,
        tables,
        windows,
        others,
        check,
        photographs,
        further,
        leaders,
        rules,
        gap,
        clearance);
  }
}
