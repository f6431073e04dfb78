package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.demo.Browser;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.sheet.TemplateAreas;
import dev.placket.layout.units.Rect;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tracks and areas against CSS Grid 1: by hand from its text, and as a browser lays them. */
class CssGridTest {
  /** CSS Values 4, 5.2: 96 px and 72 pt to the inch. */
  private static final double PX = 96.0 / 72;

  @TempDir Path dir;

  private static List<GridTrack> tracks(String text) {
    return Arrays.stream(text.strip().split("\\s+")).map(GridTrack::parse).toList();
  }

  /**
   * CSS Grid 1, 11.7.1: the leftover is the room less the lengths; one fr is the leftover over the
   * sum of the flex factors, which counts as 1 where it is less. Worked by hand, all in points.
   */
  @ParameterizedTest
  @CsvSource({
    "600, 100pt 1fr 2fr, 0 100 266.666667 600",
    "600, 1fr 1fr 1fr, 0 200 400 600",
    "500, 200pt 200pt 1fr, 0 200 400 500",
    "600, 0.25fr 0.25fr, 0 150 300",
    "600, 100pt 0.5fr, 0 100 350",
    "360, 1in 2.5fr 1.5fr, 0 72 252 360",
    "300, 100pt 100pt, 0 100 200",
  })
  void sharesAreWorkedOutAsTheStandardSays(double room, String tracks, String lines) {
    double[] wanted =
        Arrays.stream(lines.strip().split(" ")).mapToDouble(Double::parseDouble).toArray();
    double[] laid = GridLines.lay(tracks(tracks), 0, room).stream().mapToDouble(d -> d).toArray();
    assertEquals(wanted.length, laid.length);
    for (int i = 0; i < wanted.length; i++) {
      assertEquals(wanted[i], laid[i], 1e-6);
    }
  }

  /** CSS Grid 1, 7.3, its first example: head, nav, main, foot; and a dot for a blank cell. */
  @Test
  void areasAreTheExampleOfTheStandard() {
    Map<String, GridArea> areas =
        TemplateAreas.parse(List.of("head head", "nav  main", "foot ....", "....  ."));
    assertEquals(new GridArea(0, 0, 2, 1), areas.get("head"));
    assertEquals(new GridArea(0, 1, 1, 2), areas.get("nav"));
    assertEquals(new GridArea(1, 1, 2, 2), areas.get("main"));
    assertEquals(new GridArea(0, 2, 1, 3), areas.get("foot"));
    assertEquals(4, areas.size());
  }

  /** CSS Grid 1, 7.3: rows of unequal length, and areas that are no rectangle, are invalid. */
  @Test
  void whatTheStandardCallsInvalidIsRefused() {
    for (List<String> rows :
        List.of(
            List.of("a b", "a"),
            List.of("a b", "b b"),
            List.of("a . a"),
            List.of("a a", ". a"),
            List.of(""))) {
      assertThrows(IllegalArgumentException.class, () -> TemplateAreas.parse(rows), rows::toString);
    }
  }

  private record Case(
      String columns, String rows, List<String> areas, double width, double height) {}

  private static final List<Case> CASES =
      List.of(
          new Case(
              "40fr 34fr 66fr 22fr 18fr",
              "10mm 10mm",
              List.of("label number name season stage", "label sizes fabric fabric unit"),
              1047,
              80),
          new Case("2fr 1fr", "1fr 36mm", List.of("views details", "views notes"), 1047.3, 601.7),
          new Case(
              "1fr 150mm 12.5pt", "3cm 0.5fr 0.25fr", List.of("a b c", "a d d", ". d d"), 900, 500),
          new Case("0.3fr 0.3fr", "1in 2fr 3fr", List.of("x y", "x z", "w z"), 333.3, 777.7));

  @Test
  void aBrowserLaysTheSameRectangles() throws IOException, InterruptedException {
    Path page = Files.writeString(dir.resolve("grid.html"), html());
    String document = Browser.document(page, dir);
    Pattern measured = Pattern.compile("\\[(\\d+) (\\w+) ([\\d.]+) ([\\d.]+) ([\\d.]+) ([\\d.]+)]");
    Matcher m = measured.matcher(document);
    int seen = 0;
    while (m.find()) {
      Rect ours = ours(CASES.get(Integer.parseInt(m.group(1))), m.group(2));
      assertEquals(Double.parseDouble(m.group(3)), ours.left() * PX, 0.1, m.group());
      assertEquals(Double.parseDouble(m.group(4)), ours.top() * PX, 0.1, m.group());
      assertEquals(Double.parseDouble(m.group(5)), ours.right() * PX, 0.1, m.group());
      assertEquals(Double.parseDouble(m.group(6)), ours.bottom() * PX, 0.1, m.group());
      seen++;
    }
    assertEquals(CASES.stream().mapToInt(c -> TemplateAreas.parse(c.areas()).size()).sum(), seen);
  }

  private static Rect ours(Case c, String name) {
    GridLines lines =
        new GridLines(
            GridLines.lay(tracks(c.columns()), 0, c.width() / PX),
            GridLines.lay(tracks(c.rows()), 0, c.height() / PX));
    return lines.box(Objects.requireNonNull(TemplateAreas.parse(c.areas()).get(name)));
  }

  private static String html() {
    StringBuilder html =
        new StringBuilder("<!doctype html><meta charset=utf-8><body style='margin:0'>");
    for (int i = 0; i < CASES.size(); i++) {
      Case c = CASES.get(i);
      List<String> quoted = new ArrayList<>();
      c.areas().forEach(a -> quoted.add("\"" + a + "\""));
      html.append(
          String.format(
              java.util.Locale.ROOT,
              "<div class=g data-case=%d style='position:absolute;left:0;top:0;display:grid;"
                  + "width:%spx;height:%spx;grid-template-columns:%s;grid-template-rows:%s;"
                  + "grid-template-areas:%s'>",
              i,
              c.width(),
              c.height(),
              c.columns(),
              c.rows(),
              String.join(" ", quoted)));
      for (String name : TemplateAreas.parse(c.areas()).keySet()) {
        html.append("<i data-name=")
            .append(name)
            .append(" style='grid-area:")
            .append(name)
            .append("'></i>");
      }
      html.append("</div>");
    }
    return html
        + "<pre id=out></pre><script>let t='';for(const g of document.querySelectorAll('.g'))"
        + "for(const e of g.children){const r=e.getBoundingClientRect();"
        + "t+='['+[g.dataset.case,e.dataset.name,r.left,r.top,r.right,r.bottom].join(' ')+']';}"
        + "document.getElementById('out').textContent=t;</script>";
  }
}
