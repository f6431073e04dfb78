package dev.placket.workbooks.room;

import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Emu;
import dev.placket.workbooks.geometry.PrintPage;
import dev.placket.workbooks.geometry.Tracks;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The lines of a page's grid at which anything begins or ends: a worksheet has a million rows, but
 * few that matter.
 */
final class GridCuts {
  private final int[] tracks;
  private final double[] places;

  private GridCuts(int[] tracks, double[] places) {
    this.tracks = tracks;
    this.places = places;
  }

  /**
   * Lines of one axis.
   *
   * @param wanted columns or rows that something begins before; those outside the page fall away
   * @param sizes the narrowest that readers make the tracks
   */
  static GridCuts of(NavigableSet<Integer> wanted, PrintPage page, Tracks sizes, boolean columns) {
    CellRange cells = page.cells();
    int first = columns ? cells.left() : cells.top();
    int end = columns ? cells.right() : cells.bottom();
    double origin = columns ? page.left() : page.top();
    TreeSet<Integer> all = new TreeSet<>(wanted.subSet(first, end));
    all.add(first);
    all.add(end);
    int[] tracks = all.stream().mapToInt(Integer::intValue).toArray();
    double[] places = new double[tracks.length];
    for (int i = 0; i < tracks.length; i++) {
      long emu = sizes.between(first, tracks[i]);
      places[i] = origin + (double) emu * page.percent() / 100 / Emu.PER_POINT;
    }
    return new GridCuts(tracks, places);
  }

  /** How many spaces lie between the lines. */
  int spaces() {
    return tracks.length - 1;
  }

  /** The column or row that a line stands before. */
  int track(int line) {
    return tracks[line];
  }

  /** Where a line stands on the paper, in points. */
  double place(int line) {
    return places[line];
  }

  /** The line before a column or row; the nearest inside the page for one outside. */
  int line(int track) {
    int i = java.util.Arrays.binarySearch(tracks, track);
    return i >= 0 ? i : Math.min(tracks.length - 1, -i - 1);
  }

  /** All places, in points. */
  List<Double> places() {
    List<Double> list = new ArrayList<>();
    for (double p : places) {
      list.add(p);
    }
    return list;
  }
}
