package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The report page of the demo, by itself and in a browser at three widths. */
class ReportPageTest {
  /** CSS pixels across: a telephone, a tablet, a desk. */
  private static final int[] WIDTHS = {360, 800, 1280};

  @TempDir private static Path made;
  private static String page = "";

  /** The report of an issue that has one before it. */
  private static String ofIssue = "";

  private static JsonNode fit = new ObjectMapper().createObjectNode();

  @TempDir Path work;

  @BeforeAll
  static void make() throws IOException {
    Run run = Run.of("fit", Path.of("src", "demo", "mg-3107", "pack.yaml"), "--out", made);
    assertEquals(3, run.code(), run.err());
    page = Files.readString(made.resolve("MG-3107-report.html"));
    fit = new ObjectMapper().readTree(made.resolve("fit.json").toFile());
    ofIssue = issued();
  }

  private static String issued() throws IOException {
    Path dir = Files.createDirectory(made.resolve("style"));
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 50 70'><path d='M9 9H40V60Z'/></svg>");
    String text =
        """
        format: placket-pack/1
        fields: {style-number: MG-1, revision: C, date: "2027-02-11"}
        sheets:
          flats:
            name: Flat sheet
            columns: [1fr, 60mm]
            areas: [views steps]
            windows: {views: }
            tables: {steps: {columns: [Step], rows: [[Fold]]}}
            flats: {front: {file: front.svg, role: front}}
        """;
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    assertEquals(0, Run.of("issue", pack).code());
    Files.writeString(
        pack, text.replace("revision: C", "revision: D").replace("[[Fold]]", "[[Fold twice]]"));
    assertEquals(0, Run.of("issue", pack).code());
    String stem = "MG-1_D_2027-02-11";
    return Files.readString(dir.resolve("issues").resolve(stem).resolve(stem + "-report.html"));
  }

  @Test
  void nothingIsFetchedAndNothingNeedsAScript() {
    assertFalse(page.contains("<script"));
    Matcher from = Pattern.compile("(?: src=\"| href=\"|url\\()([^\"\\s)>]*)").matcher(page);
    int seen = 0;
    while (from.find()) {
      String target = from.group(1);
      assertTrue(target.startsWith("#") || target.startsWith("data:image/png;"), target);
      seen++;
    }
    assertTrue(seen > 40, "links and pictures");
  }

  @Test
  void allSheetsAreShownInSmallOnTop() {
    String top = page.substring(0, page.indexOf("<div class=\"page\">"));
    for (int i = 1; i <= 8; i++) {
      assertTrue(top.contains("<a href=\"#sheet-" + i + "\"><svg"), "sheet " + i);
      assertTrue(top.contains("<use href=\"#picture-" + i + "\"/>"), "picture " + i);
      assertTrue(page.contains("<image id=\"picture-" + i + "\""), "picture " + i);
    }
  }

  /** It is mailed: it says nothing about the machine that made it. */
  @Test
  void noPathOfTheMachineIsShown() {
    assertTrue(page.contains("Read from pack.yaml<"));
    assertFalse(page.contains(Path.of("").toAbsolutePath().toString()));
    assertFalse(page.contains(System.getProperty("java.io.tmpdir") + "/"));
  }

  /** Every flat has a row and an outline that lead to one another, marked by its state. */
  @Test
  void rowsAndOutlinesLeadToOneAnother() {
    int sheet = 0;
    for (JsonNode s : fit.path("sheets")) {
      sheet++;
      int flat = 0;
      for (JsonNode p : s.path("placements")) {
        flat++;
        String row = "sheet-" + sheet + "-row-" + flat;
        String outline = "sheet-" + sheet + "-flat-" + flat;
        assertTrue(page.contains("<tr id=\"" + row + "\"><th scope=\"row\"><a href=\"#" + outline));
        assertTrue(page.contains("<a id=\"" + outline + "\" href=\"#" + row + "\""));
        String drawn = page.substring(page.indexOf("<a id=\"" + outline));
        drawn = drawn.substring(0, drawn.indexOf("</a>"));
        String state = p.path("state").asText();
        assertTrue(drawn.contains("class=\"outline " + state + "\""), drawn);
        // names.md: the initial is always there.
        String initial = state.equals("scalable") ? "Sc" : state.substring(0, 1).toUpperCase();
        assertTrue(drawn.contains(">" + initial + "</text>"), drawn);
      }
    }
    assertEquals(9, sheet);
  }

  /** The outline lies where fit.json says that the ink does, with air of a few points. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void outlinesLieRoundTheInk(int which) throws IOException, InterruptedException {
    String measured =
        measured(
            page,
            WIDTHS[which],
            "const r=[];for(const a of document.querySelectorAll('.page a')){"
                + "const p=a.closest('.page').querySelector('.picture').getBoundingClientRect();"
                + "const o=a.querySelector('.outline').getBoundingClientRect();"
                + "r.push([(o.left-p.left)/p.width,(o.top-p.top)/p.height,(o.right-p.left)/p.width,"
                + "(o.bottom-p.top)/p.height].join(' '));}"
                + "r.push('wide '+(document.documentElement.scrollWidth-document.documentElement.clientWidth));r");
    List<String> lines = measured.lines().toList();
    int at = 0;
    for (JsonNode s : fit.path("sheets")) {
      double width = s.path("paper").path("width").asDouble();
      double height = s.path("paper").path("height").asDouble();
      for (JsonNode p : s.path("placements")) {
        String[] box = lines.get(at++).split(" ");
        JsonNode ink = p.path("inkedBox");
        assertEquals(ink.path("left").asDouble() - 4, Double.parseDouble(box[0]) * width, 2);
        assertEquals(ink.path("top").asDouble() - 4, Double.parseDouble(box[1]) * height, 2);
        assertEquals(ink.path("right").asDouble() + 4, Double.parseDouble(box[2]) * width, 2);
        assertEquals(ink.path("bottom").asDouble() + 4, Double.parseDouble(box[3]) * height, 2);
      }
    }
    assertEquals("wide 0", lines.get(at), "nothing runs out of the page at the right");
  }

  /**
   * axe-core, the checks of WCAG 2 A and AA and its best practices, at 100 and 400 % of 1280 CSS
   * pixels, in light and dark; the page of an issue with a revision before it, too.
   */
  @ParameterizedTest
  @CsvSource({"1280, false", "320, false", "1280, true", "320, true"})
  void axeFindsNothing(int width, boolean dark) throws IOException, InterruptedException {
    String axe = System.getenv().getOrDefault("PLACKET_AXE", "");
    assumeTrue(!axe.isEmpty(), "needs axe-core: PLACKET_AXE names its axe.min.js");
    for (String each : List.of(page, ofIssue)) {
      String shown =
          dark ? each.replace("@media (prefers-color-scheme: dark)", "@media all") : each;
      String found =
          measured(
              shown,
              width,
              Files.readString(Path.of(axe)).replace("</script", "<\\/script")
                  + ";axe.run(document).then(r=>['passes '+r.passes.length]"
                  + ".concat(r.violations.map(v=>v.id+': '+v.nodes.map(n=>n.html).join(' | '))))");
      assertTrue(found.startsWith("passes "), found);
      assertEquals(1, found.lines().count(), found);
    }
  }

  /** On paper: every sheet with its heading, and no text outside of the paper. */
  @Test
  void thePrintedPageHasAllSheets() throws IOException, InterruptedException {
    Path html = Files.writeString(work.resolve("report.html"), page);
    Path pdf = work.resolve("report.pdf");
    Browser.print(html, pdf, work);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      List<String> outside = new ArrayList<>();
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
              double right = at.getXDirAdj() + at.getWidthDirAdj();
              if (at.getXDirAdj() < 0 || right > getCurrentPage().getMediaBox().getWidth()) {
                outside.add(at.getUnicode());
              }
              super.processTextPosition(at);
            }
          };
      String text = stripper.getText(document).replaceAll("\\s+", " ");
      for (JsonNode sheet : fit.path("sheets")) {
        assertTrue(text.contains(": " + sheet.path("name").asText() + ", A4"), text);
      }
      assertEquals(List.of(), outside);
      assertTrue(text.contains("Never cut from a drawing"), "the caution at the end");
    }
  }

  /** With the focus moved by the tab key, all targets come in the order of the page. */
  @Test
  void theTabKeyFollowsTheOrderOfThePage() throws IOException, InterruptedException {
    String order =
        measured(
            page,
            1280,
            "const all=[...document.querySelectorAll('a[href],button,input,[tabindex]')];"
                + "[String(all.length),String(all.filter(e=>e.tabIndex>0).length),"
                + "String(all.filter(e=>{e.focus();return document.activeElement!==e;}).length)]");
    List<String> counts = order.lines().toList();
    assertTrue(Integer.parseInt(counts.get(0)) > 40, order);
    assertEquals("0", counts.get(1), "no element jumps the order");
    assertEquals("0", counts.get(2), "each takes the focus");
  }

  /** What a script says in the page, shown in a frame of so many pixels. */
  private String measured(String shown, int width, String script)
      throws IOException, InterruptedException {
    String asked =
        shown.replace(
            "</body>",
            "<script>addEventListener('load',async()=>{let t;try{t=(await eval("
                + new ObjectMapper().writeValueAsString(script).replace("</", "<\\/")
                + ")).join('\\n');}catch(e){t='failed '+e;}"
                + "parent.document.getElementById('out').textContent=t;});</script></body>");
    Path inner = Files.writeString(work.resolve("asked.html"), asked);
    String frame =
        "<!doctype html><meta charset=utf-8><pre id=out></pre><iframe id=f width="
            + width
            + " height=900 style='border:0'></iframe><script>document.getElementById('f').srcdoc="
            + new ObjectMapper().writeValueAsString(asked).replace("</", "<\\/")
            + "</script>";
    Files.writeString(work.resolve("frame.html"), frame);
    assertTrue(Files.size(inner) > 0);
    String document = Browser.document(work.resolve("frame.html"), work);
    Matcher out = Pattern.compile("<pre id=\"out\">([^<]*)</pre>").matcher(document);
    assertTrue(out.find() && !out.group(1).isEmpty(), "the page says nothing");
    String said = out.group(1).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    assertFalse(said.startsWith("failed"), said);
    return said;
  }
}
