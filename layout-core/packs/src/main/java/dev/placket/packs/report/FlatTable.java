package dev.placket.packs.report;

import java.util.List;

/** The table of a sheet's flats on the report page. */
final class FlatTable {
  private FlatTable() {}

  private static final List<String> HEADS =
      List.of(
          "Flat",
          "Role",
          "Printed (%s)",
          "Scale",
          "Pixels/in",
          "State",
          "Ask for (pixels)",
          "Remarks");

  static void add(Html html, int sheet, ReportContent.OfSheet account, Units units) {
    List<FlatRow> rows = account.rows();
    if (rows.isEmpty()) {
      html.element("p", "No flats on this sheet.").line();
      return;
    }
    String about = "Flats of sheet " + sheet;
    html.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", about);
    html.line().open("table").line().element("caption", about).line().open("thead").open("tr");
    HEADS.forEach(h -> html.element("th", h.replace("%s", units.sign()), "scope", "col"));
    html.close().close().line().open("tbody").line();
    for (int i = 0; i < rows.size(); i++) {
      row(html, sheet, i + 1, rows.get(i));
    }
    html.close().line().close().line().close().line();
  }

  private static void row(Html html, int sheet, int number, FlatRow row) {
    html.open("tr", "id", Outlines.row(sheet, number)).open("th", "scope", "row");
    html.element("a", row.caption(), "href", "#" + Outlines.outline(sheet, number));
    html.single("br").element("span", row.file(), "class", "quiet").close();
    html.element("td", row.role());
    html.element("td", row.size(), "class", "size");
    html.element("td", row.scale());
    html.element("td", row.density().equals("-") ? "paths" : row.density(), "class", "number");
    String state = StateMark.initial(row.state()) + " " + StateMark.word(row.state());
    html.element("td", state, "class", "state");
    html.element("td", row.wanted().isEmpty() ? "–" : row.wanted(), "class", "size");
    html.open("td");
    if (!row.changes().isEmpty() || !row.remarks().isEmpty()) {
      html.open("ul");
      for (String change : row.changes()) {
        html.open("li", "class", "changed").element("strong", FlatRow.CHANGED.strip());
        html.text(" " + change).close();
      }
      row.remarks().forEach(r -> html.element("li", r));
      html.close();
    }
    html.close().close().line();
  }
}
