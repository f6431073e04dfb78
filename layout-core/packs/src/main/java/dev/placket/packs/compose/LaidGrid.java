package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.sheet.TemplateAreas;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackGrid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A grid laid into a rectangle of the sheet.
 *
 * @param columns its upright lines, in points
 * @param rows its level lines, in points
 * @param areas each named area's rectangle
 */
record LaidGrid(List<Double> columns, List<Double> rows, Map<String, Rect> areas) {
  /** Nothing can be seen in a smaller area. */
  private static final Length LEAST = Length.mm(1);

  private static final Pattern ROW = Pattern.compile("row (\\d+)");

  /** Two axes of lines. */
  record Lines(Snap across, Snap down) {
    Lines() {
      this(new Snap(), new Snap());
    }
  }

  /** Lays a grid; null where it cannot be laid, with the slips noted. */
  static @Nullable LaidGrid of(
      PackGrid grid, Rect room, String path, Lines lines, Described described) {
    Map<String, GridArea> areas = areas(grid, path, described);
    if (areas == null) {
      return null;
    }
    int across = grid.areas().get(0).strip().split("\\s+").length;
    boolean counted =
        counted(grid.columns(), across, "columns", path, described)
            & counted(grid.rows(), grid.areas().size(), "rows", path, described);
    if (!counted) {
      return null;
    }
    List<Double> columns =
        lay(grid.columns(), room.left(), room.right(), joined(path, "columns"), described);
    List<Double> rows =
        lay(grid.rows(), room.top(), room.bottom(), joined(path, "rows"), described);
    if (columns == null || rows == null) {
      return null;
    }
    List<Double> x = lines.across().lines(columns);
    List<Double> y = lines.down().lines(rows);
    Map<String, Rect> boxes = new LinkedHashMap<>();
    areas.forEach(
        (name, a) ->
            boxes.put(
                name,
                new Rect(
                    x.get(a.columnStart()),
                    y.get(a.rowStart()),
                    x.get(a.columnEnd()),
                    y.get(a.rowEnd()))));
    boxes.forEach(
        (name, b) -> {
          if (b.width() < LEAST.pt() || b.height() < LEAST.pt()) {
            String found = "the area '" + name + "' of less than " + LEAST.mm() + " mm";
            described
                .faults()
                .add(
                    described.places().of(joined(path, "areas")),
                    found,
                    "columns and rows with room");
          }
        });
    boolean roomy =
        boxes.values().stream().allMatch(b -> b.width() >= LEAST.pt() && b.height() >= LEAST.pt());
    return roomy ? new LaidGrid(x, y, boxes) : null;
  }

  private static @Nullable Map<String, GridArea> areas(
      PackGrid grid, String path, Described described) {
    try {
      return TemplateAreas.parse(grid.areas());
    } catch (IllegalArgumentException e) {
      String message = String.valueOf(e.getMessage());
      Matcher m = ROW.matcher(message);
      String row = m.find() ? "/" + (Integer.parseInt(m.group(1)) - 1) : "";
      described
          .faults()
          .add(
              described.places().of(joined(path, "areas") + row),
              message,
              "rows of equally many names, each area one rectangle");
      return null;
    }
  }

  private static boolean counted(
      List<GridTrack> tracks, int wanted, String what, String path, Described described) {
    if (tracks.size() == wanted) {
      return true;
    }
    described
        .faults()
        .add(
            described.places().of(joined(path, what)),
            tracks.size() + " " + what,
            wanted + ", as many as the areas draw");
    return false;
  }

  private static @Nullable List<Double> lay(
      List<GridTrack> tracks, double start, double end, String path, Described described) {
    try {
      List<Double> lines = new java.util.ArrayList<>(GridLines.lay(tracks, start, end - start));
      int last = lines.size() - 1;
      // The last line is the edge itself, not a sum that came near it.
      if (Math.abs(lines.get(last) - end) < 1e-6) {
        lines.set(last, end);
      }
      return lines;
    } catch (IllegalArgumentException e) {
      described
          .faults()
          .add(
              described.places().of(path),
              "lengths that do not add up: " + e.getMessage(),
              String.format(
                  java.util.Locale.ROOT,
                  "lengths within the %.2f mm available",
                  (end - start) * 25.4 / 72));
      return null;
    }
  }

  private static String joined(String path, String key) {
    return path.isEmpty() ? key : path + "/" + key;
  }
}
