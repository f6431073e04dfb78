package dev.placket.packs.description;

import java.util.Map;

/**
 * Cells that every sheet shares, along its top or bottom.
 *
 * @param grid their grid, whose rows all have lengths
 * @param cells what each area holds, by its name
 */
public record PackBand(PackGrid grid, Map<String, PackCell> cells) {
  /** Copies the map. */
  public PackBand {
    cells = Pack.ordered(cells);
  }
}
