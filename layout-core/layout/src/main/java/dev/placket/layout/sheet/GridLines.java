package dev.placket.layout.sheet;

import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a sheet's grid, in points from the paper's left and top edges, rising.
 *
 * <p>Areas name lines by index, so that two areas share an edge because they share a line, never
 * because two sums of doubles happened to agree.
 *
 * @param columns the upright lines from left to right, at least two
 * @param rows the level lines from top to bottom, at least two
 */
public record GridLines(List<Double> columns, List<Double> rows) {
  private static final double SLACK = 1e-6;

  /**
   * Copies the lists and checks that they rise.
   *
   * @throws IllegalArgumentException if a list has fewer than two lines or falls
   */
  public GridLines {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    checkRising("column", columns);
    checkRising("row", rows);
  }

  /**
   * Lays tracks from a starting edge: lengths first, shares of the rest as CSS Grid's {@code fr} (a
   * sum of shares below one leaves the rest blank).
   *
   * @param tracks one or more
   * @param start the first line in points
   * @param room what there is to fill, in points
   * @return one line more than tracks
   * @throws IllegalArgumentException if the lengths are longer than the room, saying by how much,
   *     or if a track has no size yet
   */
  public static List<Double> lay(List<GridTrack> tracks, double start, double room) {
    double fixed = 0;
    double shares = 0;
    for (GridTrack t : tracks) {
      if (t instanceof GridTrack.Fixed f) {
        fixed += f.length().pt();
      } else if (t instanceof GridTrack.Share s) {
        shares += s.fr();
      } else {
        throw new IllegalArgumentException(
            "an auto track: replace it by the length of its content");
      }
    }
    double left = room - fixed;
    if (left < -SLACK) {
      throw new IllegalArgumentException(
          String.format(
              java.util.Locale.ROOT,
              "the tracks are %.2f mm longer than their room",
              -left * 25.4 / 72));
    }
    double perShare = Math.max(0, left) / Math.max(1, shares);
    List<Double> lines = new ArrayList<>();
    double at = start;
    lines.add(at);
    for (GridTrack t : tracks) {
      at +=
          t instanceof GridTrack.Fixed f ? f.length().pt() : ((GridTrack.Share) t).fr() * perShare;
      lines.add(at);
    }
    return List.copyOf(lines);
  }

  /**
   * The rectangle of an area.
   *
   * @throws IndexOutOfBoundsException if the area names a line that does not exist
   */
  public Rect box(GridArea area) {
    return new Rect(
        columns.get(area.columnStart()),
        rows.get(area.rowStart()),
        columns.get(area.columnEnd()),
        rows.get(area.rowEnd()));
  }

  private static void checkRising(String what, List<Double> lines) {
    if (lines.size() < 2) {
      throw new IllegalArgumentException(
          "a grid needs at least two " + what + " lines, not " + lines.size());
    }
    for (int i = 1; i < lines.size(); i++) {
      if (!(lines.get(i) >= lines.get(i - 1))) {
        throw new IllegalArgumentException(
            what + " line " + i + " at " + lines.get(i) + " lies before the one before it");
      }
    }
  }
}
