package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.sheet.TemplateAreas;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackGrid;
import dev.placket.packs.description.PackSheet;
import dev.placket.packs.description.PackTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Gives rows of a grid the height that their tables need.
 *
 * <p>Where other rows take shares, these rows take at most three quarters of what lengths leave, so
 * that flats keep room; a longer table continues on further sheets.
 */
final class AutoRows {
  private static final double MOST = 0.75;

  /** For a table that cannot be set, which is noted elsewhere. */
  private static final Length UNKNOWN = Length.mm(10);

  private final String path;
  private final PackSheet sheet;
  private final SheetTables tables;
  private final Described described;
  private final List<GridTrack> rows;

  private AutoRows(String id, PackSheet sheet, SheetTables tables, Described described) {
    this.path = "sheets/" + id;
    this.sheet = sheet;
    this.tables = tables;
    this.described = described;
    this.rows = new ArrayList<>(sheet.grid().rows());
  }

  /** The grid of a sheet without rows that have no height; slips are noted. */
  static PackGrid of(
      String id, PackSheet sheet, Rect between, SheetTables tables, Described described) {
    PackGrid grid = sheet.grid();
    boolean any = grid.rows().stream().anyMatch(r -> r instanceof GridTrack.Auto);
    return any ? new AutoRows(id, sheet, tables, described).laid(between) : grid;
  }

  private PackGrid laid(Rect between) {
    Map<String, GridArea> areas = areas();
    List<Double> columns = columns(between);
    double left = between.height() - fixed(rows);
    if (rows.stream().anyMatch(r -> r instanceof GridTrack.Share)) {
      left *= MOST;
    }
    for (int r = 0; r < rows.size(); r++) {
      if (rows.get(r) instanceof GridTrack.Auto) {
        double need = areas == null || columns == null ? UNKNOWN.pt() : need(r, areas, columns);
        double taken = Math.max(0, Math.min(need, left));
        rows.set(r, new GridTrack.Fixed(Length.pt(taken)));
        left -= taken;
      }
    }
    return new PackGrid(sheet.grid().columns(), rows, sheet.grid().areas());
  }

  /** What the tables need that lie in this row, beside rows of stated heights. */
  private double need(int row, Map<String, GridArea> areas, List<Double> columns) {
    double need = 0;
    boolean any = false;
    for (Map.Entry<String, PackTable> table : sheet.tables().entrySet()) {
      GridArea area = areas.get(table.getKey());
      if (area == null || row < area.rowStart() || row >= area.rowEnd()) {
        continue;
      }
      List<GridTrack> others = new ArrayList<>(rows.subList(area.rowStart(), area.rowEnd()));
      others.remove(row - area.rowStart());
      if (others.stream().allMatch(r -> r instanceof GridTrack.Fixed)) {
        any = true;
        double width = columns.get(area.columnEnd()) - columns.get(area.columnStart());
        String at = path + "/tables/" + table.getKey();
        need = Math.max(need, tables.height(table.getValue(), at, width) - fixed(others));
      }
    }
    if (!any) {
      described
          .faults()
          .add(
              described.places().of(path + "/rows/" + row),
              "a row of height auto without a table of its own",
              "a length, or a share as in 1fr");
    }
    return need > 0 ? need : UNKNOWN.pt();
  }

  private static double fixed(List<GridTrack> tracks) {
    return tracks.stream()
        .mapToDouble(r -> r instanceof GridTrack.Fixed f ? f.length().pt() : 0)
        .sum();
  }

  /** Null where the areas are no rectangles, which is noted where the grid is laid. */
  private @Nullable Map<String, GridArea> areas() {
    try {
      Map<String, GridArea> areas = TemplateAreas.parse(sheet.grid().areas());
      return sheet.grid().areas().size() == rows.size() ? areas : null;
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  /** Null where the widths do not add up, which is noted where the grid is laid. */
  private @Nullable List<Double> columns(Rect between) {
    try {
      PackGrid grid = sheet.grid();
      int across = grid.areas().get(0).strip().split("\\s+").length;
      return grid.columns().size() == across
          ? GridLines.lay(grid.columns(), between.left(), between.width())
          : null;
    } catch (IllegalArgumentException e) {
      return null;
    }
  }
}
