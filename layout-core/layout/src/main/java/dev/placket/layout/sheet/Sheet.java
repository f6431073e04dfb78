package dev.placket.layout.sheet;

import dev.placket.layout.units.Rect;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One ruled page of a pack: its paper, the grid inside the margins, what may hold pictures and what
 * must stay uncovered.
 *
 * <p>What is neither window nor labelled cell is closed to pictures.
 *
 * @param name what messages call it
 * @param paper its paper, the way up it is used
 * @param margins the blank edge; grid lines lie inside it
 * @param lines the grid's lines, in points on the sheet
 * @param windows where pictures may lie; they do not overlap one another
 * @param labelledCells what stays uncovered
 * @param rules the drawn lines that pictures keep clear of
 */
public record Sheet(
    String name,
    PaperSize paper,
    Margins margins,
    GridLines lines,
    List<SheetWindow> windows,
    List<LabelledCell> labelledCells,
    List<Rule> rules) {
  private static final double SLACK = 1e-6;

  /**
   * Copies the lists and checks them.
   *
   * @throws IllegalArgumentException if the margins leave no room, lines run into the margins,
   *     names repeat, or windows overlap or leave the grid
   */
  public Sheet {
    windows = List.copyOf(windows);
    labelledCells = List.copyOf(labelledCells);
    rules = List.copyOf(rules);
    Rect inside = inside(name, paper, margins);
    checkInside(name, inside, lines);
    checkNames(name, windows.stream().map(SheetWindow::name).toList());
    checkNames(name, labelledCells.stream().map(LabelledCell::name).toList());
    checkInGrid(name, lines, windows);
    checkApart(name, lines, windows);
  }

  /** A sheet with one window, named {@code page}, over all that the margins leave. */
  public static Sheet open(
      String name, PaperSize paper, Margins margins, List<LabelledCell> labelledCells) {
    Rect inside = inside(name, paper, margins);
    GridLines lines =
        new GridLines(
            List.of(inside.left(), inside.right()), List.of(inside.top(), inside.bottom()));
    List<SheetWindow> windows = List.of(new SheetWindow("page", new GridArea(0, 0, 1, 1)));
    return new Sheet(name, paper, margins, lines, windows, labelledCells, List.of());
  }

  /** What the margins leave of the paper, in points on the sheet. */
  public Rect inside() {
    return inside(name, paper, margins);
  }

  /** The rectangle of a window, in points on the sheet. */
  public Rect box(SheetWindow window) {
    return lines.box(window.area());
  }

  /**
   * The window of that name.
   *
   * @throws IllegalArgumentException naming the windows there are, if there is none
   */
  public SheetWindow window(String wanted) {
    return windows.stream()
        .filter(w -> w.name().equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "sheet "
                        + name
                        + " has no window '"
                        + wanted
                        + "'; it has "
                        + windows.stream().map(SheetWindow::name).toList()));
  }

  private static Rect inside(String name, PaperSize paper, Margins margins) {
    double right = paper.width().pt() - margins.right().pt();
    double bottom = paper.height().pt() - margins.bottom().pt();
    if (right <= margins.left().pt() || bottom <= margins.top().pt()) {
      throw new IllegalArgumentException(
          "the margins of sheet " + name + " leave no room on " + paper.name());
    }
    return new Rect(margins.left().pt(), margins.top().pt(), right, bottom);
  }

  private static void checkInside(String name, Rect inside, GridLines lines) {
    Rect grid = lines.box(new GridArea(0, 0, lines.columns().size() - 1, lines.rows().size() - 1));
    if (!inside.grown(SLACK).contains(grid)) {
      throw new IllegalArgumentException(
          "the grid of sheet " + name + " runs into the margins: " + grid + " in " + inside);
    }
  }

  private static void checkNames(String name, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String each : names) {
      if (!seen.add(each)) {
        throw new IllegalArgumentException("sheet " + name + " has '" + each + "' twice");
      }
    }
  }

  private static void checkInGrid(String name, GridLines lines, List<SheetWindow> windows) {
    int columns = lines.columns().size() - 1;
    int rows = lines.rows().size() - 1;
    for (SheetWindow w : windows) {
      if (w.area().columnEnd() > columns || w.area().rowEnd() > rows) {
        throw new IllegalArgumentException(
            "window '%s' of sheet %s leaves the grid of %d columns and %d rows"
                .formatted(w.name(), name, columns, rows));
      }
    }
  }

  private static void checkApart(String name, GridLines lines, List<SheetWindow> windows) {
    for (int i = 0; i < windows.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (lines.box(windows.get(i).area()).overlaps(lines.box(windows.get(j).area()))) {
          throw new IllegalArgumentException(
              "windows '"
                  + windows.get(j).name()
                  + "' and '"
                  + windows.get(i).name()
                  + "' of sheet "
                  + name
                  + " overlap");
        }
      }
    }
  }
}
