package dev.placket.packs.report;

import java.util.List;

/** The table of a sheet's flats on the report page. */
final class FlatTable {
  private FlatTable() {}

  static String of(int sheet, Account.OfSheet account, Units units) {
    List<FlatRow> rows = account.rows();
    if (rows.isEmpty()) {
      return "<p>No flats on this sheet.</p>\n";
    }
    StringBuilder html = new StringBuilder();
    String about = "Flats of sheet " + sheet;
    html.append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"")
        .append(about)
        .append("\">\n<table>\n<caption>")
        .append(about)
        .append("</caption>\n<thead><tr>");
    for (String head :
        List.of(
            "Flat",
            "Role",
            "Printed (" + units.sign() + ")",
            "Scale",
            "Pixels/in",
            "State",
            "Ask for (pixels)",
            "To know")) {
      html.append("<th scope=\"col\">").append(head).append("</th>");
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (int i = 0; i < rows.size(); i++) {
      row(html, sheet, i + 1, rows.get(i));
    }
    return html.append("</tbody>\n</table>\n</div>\n").toString();
  }

  private static void row(StringBuilder html, int sheet, int number, FlatRow row) {
    html.append("<tr id=\"").append(Outlines.row(sheet, number)).append("\">");
    html.append("<th scope=\"row\"><a href=\"#")
        .append(Outlines.outline(sheet, number))
        .append("\">")
        .append(Html.text(row.caption()))
        .append("</a><br><span class=\"quiet\">")
        .append(Html.text(row.file()))
        .append("</span></th>");
    cell(html, "", row.role());
    cell(html, "size", row.size());
    cell(html, "", row.scale());
    cell(html, "number", row.density().equals("-") ? "paths" : row.density());
    cell(html, "state", StateMark.initial(row.state()) + " " + StateMark.word(row.state()));
    cell(html, "size", row.wanted().isEmpty() ? "–" : row.wanted());
    html.append("<td>");
    if (!row.changes().isEmpty() || !row.remarks().isEmpty()) {
      html.append("<ul>");
      for (String change : row.changes()) {
        html.append("<li class=\"changed\"><strong>")
            .append(FlatRow.CHANGED.strip())
            .append("</strong> ")
            .append(Html.text(change))
            .append("</li>");
      }
      row.remarks().forEach(r -> html.append("<li>").append(Html.text(r)).append("</li>"));
      html.append("</ul>");
    }
    html.append("</td></tr>\n");
  }

  private static void cell(StringBuilder html, String kind, String text) {
    html.append(kind.isEmpty() ? "<td>" : "<td class=\"" + kind + "\">")
        .append(Html.text(text))
        .append("</td>");
  }
}
