package dev.placket.packs.report;

import dev.placket.layout.density.PrintState;
import dev.placket.layout.fit.ExactBox;
import dev.placket.layout.sheet.PaperSize;
import java.util.ArrayList;
import java.util.List;

/** Outlines of the flats of a sheet, laid over its picture in points of the paper. */
final class Outlines {
  /** From the ink to the outline, so that no line of the drawing is hidden. */
  private static final double AWAY = 4;

  /** From the outer to the inner of two lines. */
  private static final double DOUBLE = 3;

  private static final double TAG_HEIGHT = 11;
  private static final double TAG_LETTER = 6.5;

  private Outlines() {}

  /** What the row of a flat is called on the page, both counted from 1. */
  static String row(int sheet, int flat) {
    return "sheet-" + sheet + "-row-" + flat;
  }

  /** What the outline of a flat is called on the page. */
  static String outline(int sheet, int flat) {
    return "sheet-" + sheet + "-flat-" + flat;
  }

  /** The sheet as a view box, in points. */
  static String room(ReportContent.OfSheet sheet) {
    PaperSize paper = sheet.result().sheet().paper();
    return "0 0 " + plain(paper.width().pt()) + " " + plain(paper.height().pt());
  }

  static void add(Html svg, int number, ReportContent.OfSheet sheet) {
    svg.open("svg", "viewBox", room(sheet), "role", "group", "aria-label", "Flats on this sheet")
        .line();
    List<FlatRow> rows = sheet.rows();
    for (int i = 0; i < rows.size(); i++) {
      flat(svg, number, i + 1, rows.get(i));
    }
    svg.close().line();
  }

  private static void flat(Html svg, int sheet, int number, FlatRow row) {
    ExactBox ink = row.flat().ink();
    double left = ink.left().doubleValue() - AWAY;
    double top = ink.top().doubleValue() - AWAY;
    double width = ink.width().doubleValue() + 2 * AWAY;
    double height = ink.height().doubleValue() + 2 * AWAY;
    String initial = StateMark.initial(row.state());
    String label = initial + " " + StateMark.word(row.state()) + ": " + row.caption();
    String target = "#" + row(sheet, number);
    svg.open(
        "a", "id", outline(sheet, number), "href", target, "aria-label", label + ", to its row");
    svg.line();
    rect(svg, "hit", left, top, width, height);
    lines(svg, row.state(), left, top, width, height);
    double tag = TAG_LETTER * initial.length() + TAG_LETTER;
    svg.open("g", "class", "initial", "aria-hidden", "true");
    rect(svg, "", left, top, tag, TAG_HEIGHT);
    svg.element("text", initial, "x", plain(left + tag / 2), "y", plain(top + TAG_HEIGHT - 2.5));
    svg.close().line().close().line();
  }

  private static void lines(
      Html svg, PrintState state, double left, double top, double w, double h) {
    String name = "outline " + StateMark.word(state);
    rect(svg, name, left, top, w, h);
    if (state == PrintState.HEAVY && w > 2 * DOUBLE && h > 2 * DOUBLE) {
      rect(svg, name, left + DOUBLE, top + DOUBLE, w - 2 * DOUBLE, h - 2 * DOUBLE);
    }
  }

  /** A small outline for the list of marks. */
  static void mark(Html svg, PrintState state) {
    svg.open("svg", "viewBox", "0 0 48 24", "aria-hidden", "true");
    rect(svg, "ground", 0, 0, 48, 24);
    lines(svg, state, 4, 4, 40, 16);
    svg.close();
  }

  private static void rect(Html svg, String name, double x, double y, double width, double height) {
    List<String> all = new ArrayList<>(name.isEmpty() ? List.of() : List.of("class", name));
    all.addAll(List.of("x", plain(x), "y", plain(y)));
    all.addAll(List.of("width", plain(width), "height", plain(height)));
    svg.shape("rect", all.toArray(String[]::new));
  }

  private static String plain(double value) {
    return Figures.trimmed(value, 2);
  }
}
