package dev.placket.packs.report;

import dev.placket.layout.units.Rect;
import dev.placket.packs.revision.ChangedAreas;
import dev.placket.packs.revision.WhatChanged;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/** The section of a report page on the issue before: the changes, and sheets before and after. */
final class ChangesSection {
  private static final double AWAY = 3;

  private final Html html;
  private final ReportContent account;
  private final List<byte[]> pictures;

  ChangesSection(Html html, ReportContent account, List<byte[]> pictures) {
    this.html = html;
    this.account = account;
    this.pictures = pictures;
  }

  void add(WhatChanged changed) {
    String heading = "What changed since " + changed.since();
    html.open("section", "aria-labelledby", "changes").line();
    html.element("h2", heading, "id", "changes").line();
    html.open("ul").line();
    changed.lines().forEach(l -> html.element("li", l).line());
    if (changed.lines().isEmpty()) {
      html.element("li", "Nothing.").line();
    }
    html.close().line();
    for (int i = 0; i < account.sheets().size(); i++) {
      byte[] before = changed.before().get(account.sheets().get(i).result().id());
      if (before != null) {
        pair(i, before, changed.since());
      }
    }
    html.close().line();
  }

  /** A sheet before and after: what differs has broken boxes before, solid ones after. */
  private void pair(int index, byte[] before, String since) {
    ReportContent.OfSheet sheet = account.sheets().get(index);
    List<Rect> areas = areas(before, pictures.get(index));
    html.element("h3", sheet.heading()).line();
    html.open("div", "class", "pair").line();
    String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(before);
    figure(sheet, "Before: " + since, data, areas, "was");
    figure(sheet, "Now", "#" + ReportPage.picture(index + 1), areas, "is");
    html.close().line();
  }

  private void figure(
      ReportContent.OfSheet sheet, String caption, String picture, List<Rect> areas, String kind) {
    String room = Outlines.room(sheet);
    double width = sheet.result().sheet().paper().width().pt();
    double height = sheet.result().sheet().paper().height().pt();
    html.open("figure").line();
    html.element("figcaption", caption).line();
    String label = caption + ": " + sheet.heading();
    html.open("svg", "viewBox", room, "role", "img", "aria-label", label);
    String shape = picture.startsWith("#") ? "use" : "image";
    html.shape(shape, "href", picture, "width", "100%", "height", "100%");
    for (Rect a : areas) {
      html.shape(
          "rect",
          "class",
          kind,
          "x",
          plain(a.left() * width - AWAY),
          "y",
          plain(a.top() * height - AWAY),
          "width",
          plain(a.width() * width + 2 * AWAY),
          "height",
          plain(a.height() * height + 2 * AWAY));
    }
    html.close().line();
    html.close().line();
  }

  private static String plain(double points) {
    return String.format(Locale.ROOT, "%.1f", points);
  }

  private static List<Rect> areas(byte[] before, byte[] after) {
    try {
      return ChangedAreas.of(before, after);
    } catch (IOException e) {
      // A picture of an earlier issue that is no picture any more: it is shown as it is, or not.
      return List.of();
    }
  }
}
