package dev.placket.workbooks.read;

import dev.placket.workbooks.geometry.CellRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Merged cells by row, for rows that are asked for from top to bottom: those of one row are kept,
 * so a merge of a million rows costs no more than one of two. O(log n) for each row and each
 * question, in all.
 */
final class Merges {
  private final List<CellRange> byTop;
  private final TreeMap<Integer, CellRange> open = new TreeMap<>();
  private final PriorityQueue<CellRange> ends =
      new PriorityQueue<>(Comparator.comparingInt(CellRange::bottom));
  private int next;
  private int row;

  Merges(List<CellRange> all) {
    this.byTop = new ArrayList<>(all);
    byTop.sort(Comparator.comparingInt(CellRange::top));
  }

  /** Goes to a row; a higher one than before starts over. */
  private void to(int wanted) {
    if (wanted < row) {
      open.clear();
      ends.clear();
      next = 0;
    }
    row = wanted;
    while (next < byTop.size() && byTop.get(next).top() <= row) {
      CellRange merge = byTop.get(next++);
      if (merge.bottom() > row) {
        open.put(merge.left(), merge);
        ends.add(merge);
      }
    }
    while (!ends.isEmpty() && ends.element().bottom() <= row) {
      CellRange ended = ends.remove();
      open.remove(ended.left(), ended);
    }
  }

  /** The merged cell that holds a cell, else the cell alone. */
  CellRange around(int column, int row) {
    to(row);
    CellRange cell = CellRange.cell(column, row);
    Map.Entry<Integer, CellRange> found = open.floorEntry(column);
    return found != null && found.getValue().contains(cell) ? found.getValue() : cell;
  }

  /** The last column of the nearest merged cell that begins before a column; -1 for none. */
  int before(int column, int row) {
    to(row);
    Map.Entry<Integer, CellRange> found = open.lowerEntry(column);
    return found == null ? -1 : found.getValue().right() - 1;
  }

  /** The first column of the nearest merged cell after a column; null for none. */
  @Nullable Integer after(int column, int row) {
    to(row);
    return open.higherKey(column);
  }
}
