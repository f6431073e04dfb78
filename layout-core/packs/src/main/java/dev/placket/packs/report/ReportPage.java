package dev.placket.packs.report;

import dev.placket.layout.density.PrintState;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The report as a page by itself: nothing is fetched, nothing needs a script, each sheet is a
 * picture with its flats outlined, and row and outline lead to one another.
 */
public final class ReportPage {
  private static final String STYLE = "/report.css";

  private final StringBuilder html = new StringBuilder();
  private final Account account;

  private ReportPage(Account account) {
    this.account = account;
  }

  /**
   * The page.
   *
   * @param account what there is to say
   * @param pictures a PNG of each sheet, in their order
   */
  public static byte[] of(Account account, List<byte[]> pictures) {
    ReportPage page = new ReportPage(account);
    page.head();
    for (int i = 0; i < account.sheets().size(); i++) {
      page.sheet(i + 1, account.sheets().get(i), pictures.get(i));
    }
    page.foot();
    return page.html.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void head() {
    Findings findings = account.findings();
    String title = Html.text(findings.title());
    line("<!doctype html>");
    line("<html lang=\"en\">");
    line("<head>");
    line("<meta charset=\"utf-8\">");
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
    line("<title>Report: " + title + "</title>");
    line("<style>");
    html.append(style());
    links();
    line("</style>");
    line("</head>");
    line("<body>");
    line("<header>");
    line("<h1>" + title + "</h1>");
    line("<p class=\"quiet\">Read from " + Html.text(findings.source().toString()) + "</p>");
    line("</header>");
    line("<main>");
    line("<section aria-labelledby=\"next\">");
    line("<h2 id=\"next\">What to do next</h2>");
    items("ol", account.next());
    line("</section>");
    line("<section aria-labelledby=\"marks\">");
    line("<h2 id=\"marks\">What the marks mean</h2>");
    line("<ul class=\"marks\">");
    for (PrintState state : PrintState.values()) {
      line("<li>" + Outlines.mark(state) + sentence(state) + "</li>");
    }
    line("</ul>");
    line("</section>");
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
  private void links() {
    for (int s = 1; s <= account.sheets().size(); s++) {
      for (int f = 1; f <= account.sheets().get(s - 1).rows().size(); f++) {
        String row = "#" + Outlines.row(s, f);
        String outline = "#" + Outlines.outline(s, f);
        line(
            String.format(
                Locale.ROOT,
                "main:has(%1$s:hover, %1$s:focus-within) %2$s .hit"
                    + " { fill: rgb(47 93 115 / 0.14); }",
                row,
                outline));
        line(
            String.format(
                Locale.ROOT,
                "main:has(%1$s:hover, %1$s:focus-within) %2$s .outline { stroke-width: 4px; }",
                row,
                outline));
        line(
            String.format(
                Locale.ROOT,
                "main:has(%1$s:hover, %1$s:focus) %2$s { background: var(--pick); }",
                outline,
                row));
      }
    }
  }

  private void sheet(int number, Account.OfSheet sheet, byte[] picture) {
    String heading = Html.text(sheet.heading());
    line("<section aria-labelledby=\"sheet-" + number + "\">");
    line("<h2 id=\"sheet-" + number + "\">" + heading + "</h2>");
    line("<div class=\"page\">");
    line(
        "<img alt=\"The sheet as it prints: "
            + heading
            + "\" src=\"data:image/png;base64,"
            + Base64.getEncoder().encodeToString(picture)
            + "\">");
    html.append(Outlines.of(number, sheet));
    line("</div>");
    html.append(FlatTable.of(number, sheet, account.units()));
    items("ul", sheet.quality());
    line("</section>");
  }

  private void foot() {
    Findings findings = account.findings();
    line("<section aria-labelledby=\"whole\">");
    line("<h2 id=\"whole\">The whole</h2>");
    items("ul", findings.read());
    items("ul", findings.closing());
    if (findings.weight() != null) {
      items("ul", WeightWords.of(findings.weight()));
    }
    items("ul", account.made().names());
    line("</section>");
    line("</main>");
    line("<footer class=\"quiet\">");
    line(
        "<p>Never cut from a drawing, and do not scale one off: patterns are made and checked to the"
            + " measured table. Rules for children’s cords, small parts and bags are those of the"
            + " country of sale; ask somebody licensed there.</p>");
    line("</footer>");
    line("</body>");
    line("</html>");
  }

  private void items(String list, List<String> items) {
    if (items.isEmpty()) {
      return;
    }
    line("<" + list + ">");
    items.forEach(i -> line("<li>" + Html.text(i) + "</li>"));
    line("</" + list + ">");
  }

  private void line(String text) {
    html.append(text).append('\n');
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
