package dev.placket.packs.description;

import dev.placket.layout.sheet.GridTrack;
import java.util.List;

/**
 * A grid with its areas drawn as CSS Grid template strings.
 *
 * @param columns sizes from left to right
 * @param rows sizes from top to bottom
 * @param areas one string a row, one name a cell, {@code .} for a blank cell
 */
public record PackGrid(List<GridTrack> columns, List<GridTrack> rows, List<String> areas) {
  /** Copies the lists. */
  public PackGrid {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    areas = List.copyOf(areas);
  }

  /** A grid of equal shares. */
  public static PackGrid of(String... areas) {
    int across = areas[0].strip().split("\\s+").length;
    return new PackGrid(shares(across), shares(areas.length), List.of(areas));
  }

  static List<GridTrack> shares(int count) {
    return java.util.Collections.nCopies(count, new GridTrack.Share(1));
  }
}
