package dev.placket.packs.report;

import dev.placket.layout.density.PrintState;
import dev.placket.layout.fit.ExactBox;
import dev.placket.layout.sheet.Paper;
import java.util.List;
import java.util.Locale;

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

  static String of(int number, Account.OfSheet sheet) {
    Paper paper = sheet.result().sheet().paper();
    StringBuilder svg = new StringBuilder();
    svg.append(
        format(
            "<svg viewBox=\"0 0 %s %s\" role=\"group\" aria-label=\"Flats on this sheet\">\n",
            paper.width().pt(), paper.height().pt()));
    List<FlatRow> rows = sheet.rows();
    for (int i = 0; i < rows.size(); i++) {
      flat(svg, number, i + 1, rows.get(i));
    }
    return svg.append("</svg>\n").toString();
  }

  private static void flat(StringBuilder svg, int sheet, int number, FlatRow row) {
    ExactBox ink = row.flat().ink();
    double left = ink.left().doubleValue() - AWAY;
    double top = ink.top().doubleValue() - AWAY;
    double width = ink.width().doubleValue() + 2 * AWAY;
    double height = ink.height().doubleValue() + 2 * AWAY;
    String initial = StateMark.initial(row.state());
    svg.append("<a id=\"")
        .append(outline(sheet, number))
        .append("\" href=\"#")
        .append(row(sheet, number))
        .append("\" aria-label=\"")
        .append(initial)
        .append(' ')
        .append(Html.text(StateMark.word(row.state()) + ": " + row.caption()))
        .append(", to its row\">\n");
    svg.append(rect("hit", left, top, width, height));
    svg.append(lines(row.state(), left, top, width, height));
    double tag = TAG_LETTER * initial.length() + TAG_LETTER;
    svg.append("<g class=\"initial\" aria-hidden=\"true\">")
        .append(rect("", left, top, tag, TAG_HEIGHT))
        .append(
            format(
                "<text x=\"%s\" y=\"%s\">%s</text>",
                left + tag / 2, top + TAG_HEIGHT - 2.5, initial))
        .append("</g>\n</a>\n");
  }

  private static String lines(PrintState state, double left, double top, double w, double h) {
    String name = "outline " + StateMark.word(state);
    String outer = rect(name, left, top, w, h);
    boolean twice = state == PrintState.HEAVY && w > 2 * DOUBLE && h > 2 * DOUBLE;
    return twice
        ? outer + rect(name, left + DOUBLE, top + DOUBLE, w - 2 * DOUBLE, h - 2 * DOUBLE)
        : outer;
  }

  /** A small outline for the list of marks. */
  static String mark(PrintState state) {
    return "<svg viewBox=\"0 0 48 24\" aria-hidden=\"true\">"
        + rect("ground", 0, 0, 48, 24)
        + lines(state, 4, 4, 40, 16)
        + "</svg>";
  }

  private static String rect(String name, double x, double y, double width, double height) {
    String called = name.isEmpty() ? "" : " class=\"" + name + "\"";
    return format(
        "<rect%s x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>", called, x, y, width, height);
  }

  private static String format(String pattern, Object... values) {
    Object[] plain = values.clone();
    for (int i = 0; i < plain.length; i++) {
      plain[i] = plain[i] instanceof Double d ? Figures.trimmed(d, 2) : plain[i];
    }
    return String.format(Locale.ROOT, pattern, plain);
  }
}
