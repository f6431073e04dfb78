package dev.placket.packs.report;

import dev.placket.layout.density.PrintState;
import dev.placket.packs.revision.WhatChanged;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The report as a page by itself: nothing is fetched, nothing needs a script, each sheet is a
 * picture with its flats outlined, and row and outline lead to one another.
 */
public final class ReportPage {
  private static final String STYLE = "/report.css";

  private static final String CAUTION =
      "Never cut from a drawing, and do not take measurements from one: patterns are made and"
          + " checked to the measured table. The country of sale has rules for cords on"
          + " children’s clothes, small parts and bags; ask a licensed expert there.";

  /** Of a row and its outline, by their identifiers, which are ours. */
  private static final String LINK =
      """
      main:has(%1$s:hover, %1$s:focus-within) %2$s .hit { fill: rgb(47 93 115 / 0.14); }
      main:has(%1$s:hover, %1$s:focus-within) %2$s .outline { stroke-width: 4px; }
      main:has(%2$s:hover, %2$s:focus) %1$s { background: var(--pick); }
      """;

  private final Html html = new Html();
  private final ReportContent account;

  private ReportPage(ReportContent account) {
    this.account = account;
  }

  /**
   * The page.
   *
   * @param account the content
   * @param pictures a PNG of each sheet, in their order
   * @param changed what differs from the issue before; null where nothing is compared
   */
  public static byte[] of(
      ReportContent account, List<byte[]> pictures, @Nullable WhatChanged changed) {
    ReportPage page = new ReportPage(account);
    page.head();
    if (changed != null) {
      new ChangesSection(page.html, account, pictures).add(changed);
    }
    page.overview();
    for (int i = 0; i < account.sheets().size(); i++) {
      page.sheet(i + 1, account.sheets().get(i), pictures.get(i));
    }
    page.foot();
    return page.html.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void head() {
    Findings findings = account.findings();
    html.open("html", "lang", "en").line().open("head").line();
    html.single("meta", "charset", "utf-8").line();
    html.single("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
        .line();
    html.element("title", "Report: " + findings.title()).line();
    html.style(style() + links());
    html.close().line().open("body").line().open("header").line();
    html.element("h1", findings.title()).line();
    // The page is mailed: where the source lies on this machine is nobody else's business.
    Path name = findings.source().toAbsolutePath().normalize().getFileName();
    html.element("p", "Read from " + (name == null ? "" : name), "class", "quiet").line();
    html.close().line().open("main").line();
    section("next", "What to do next");
    items("ol", account.next());
    html.close().line();
    section("marks", "What the marks mean");
    html.open("ul", "class", "marks").line();
    for (PrintState state : PrintState.values()) {
      html.open("li");
      Outlines.mark(html, state);
      html.text(sentence(state)).close().line();
    }
    html.close().line().close().line();
  }

  private void section(String id, String heading) {
    html.open("section", "aria-labelledby", id).line();
    html.element("h2", heading, "id", id).line();
  }

  private String sentence(PrintState state) {
    long count = account.count(state);
    return StateMark.initial(state)
        + " "
        + StateMark.word(state)
        + ": "
        + StateMark.meaning(state)
        + (count == 0 ? "; none here" : "; " + count + " here");
  }

  /** Row and outline show one another while one is pointed at or has the focus. */
  private String links() {
    StringBuilder css = new StringBuilder();
    for (int s = 1; s <= account.sheets().size(); s++) {
      for (int f = 1; f <= account.sheets().get(s - 1).rows().size(); f++) {
        css.append(LINK.formatted("#" + Outlines.row(s, f), "#" + Outlines.outline(s, f)));
      }
    }
    return css.toString();
  }

  /** All sheets in small; each shows the picture that stands below. */
  private void overview() {
    if (account.sheets().size() < 2) {
      return;
    }
    section("overview", "The sheets");
    html.open("ol", "class", "overview").line();
    for (int i = 1; i <= account.sheets().size(); i++) {
      ReportContent.OfSheet sheet = account.sheets().get(i - 1);
      html.open("li").open("a", "href", "#sheet-" + i);
      html.open("svg", "viewBox", Outlines.room(sheet), "aria-hidden", "true");
      html.shape("use", "href", "#" + picture(i)).close();
      html.element("span", sheet.heading()).close();
      long soft = sheet.rows().stream().filter(r -> r.state() == PrintState.SOFT).count();
      if (soft > 0) {
        html.element("span", soft + " " + StateMark.word(PrintState.SOFT), "class", "quiet");
      }
      html.close().line();
    }
    html.close().line().close().line();
  }

  static String picture(int sheet) {
    return "picture-" + sheet;
  }

  private void sheet(int number, ReportContent.OfSheet sheet, byte[] picture) {
    section("sheet-" + number, sheet.heading());
    html.open("div", "class", "page").line();
    String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(picture);
    String label = "The sheet as it prints: " + sheet.heading();
    String room = Outlines.room(sheet);
    html.open("svg", "class", "picture", "viewBox", room, "role", "img", "aria-label", label);
    html.shape("image", "id", picture(number), "href", data, "width", "100%", "height", "100%");
    html.close().line();
    Outlines.add(html, number, sheet);
    html.close().line();
    FlatTable.add(html, number, sheet, account.units());
    items("ul", sheet.quality());
    html.close().line();
  }

  private void foot() {
    Findings findings = account.findings();
    section("whole", "The pack");
    items("ul", findings.read());
    items("ul", findings.closing());
    if (findings.weight() != null) {
      items("ul", WeightWords.of(findings.weight()));
    }
    items("ul", account.made().names());
    html.close().line().close().line();
    html.open("footer", "class", "quiet").line();
    html.element("p", CAUTION).line();
    html.close().line().close().line().close().line();
  }

  private void items(String list, List<String> items) {
    if (items.isEmpty()) {
      return;
    }
    html.open(list).line();
    items.forEach(i -> html.element("li", i).line());
    html.close().line();
  }

  private static String style() {
    try (InputStream in =
        Objects.requireNonNull(ReportPage.class.getResourceAsStream(STYLE), STYLE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
