package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The log of revisions and the list of sheets with their revisions, as a title block has them (ISO
 * 7200 names the fields revision index, date of issue and creator).
 */
class RevisionLogTest {
  private static final String PACK =
      """
      format: placket-pack/1
      fields: {style-number: MG-1, season: A27, issued-by: Design room, revision: C, date: "2027-02-11"}
      sheets:
        cover:
          name: Cover
          columns: [1fr]
          rows: [auto, auto, 1fr]
          areas: [list, log, rest]
          windows: {rest: }
          tables: {list: {revisions: sheets}, log: {revisions: log}}
        steps:
          name: Packing
          areas: [steps]
          tables:
            steps:
              columns: [Step, What is done]
              rows: [["1", "Fold the sleeves back."], ["2", "Fold once across."]]
        flats:
          name: Flat sheet
          areas: [views]
          windows: {views: }
          flats: {front: {file: front.svg, role: front}}
      """;

  @TempDir private Path dir;
  private Path pack = Path.of("");

  @BeforeEach
  void files() throws IOException {
    draw(140);
    pack = Files.writeString(dir.resolve("pack.yaml"), PACK);
  }

  private void draw(int height) throws IOException {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-2 -2 104 %d'><path fill='none'"
                .formatted(height + 4)
            + " stroke='#000' d='M0 0H100V%dH0Z'/></svg>".formatted(height));
  }

  private void change(String from, String to) throws IOException {
    String text = Files.readString(pack);
    assertTrue(text.contains(from), from);
    Files.writeString(pack, text.replace(from, to));
  }

  private void revise(String from, String to, String date) throws IOException {
    String text =
        Files.readString(pack).replaceFirst("date: \"[0-9-]*\"", "date: \"" + date + "\"");
    Files.writeString(pack, text.replace("revision: " + from, "revision: " + to));
  }

  private Path issue(String revision, String date) throws IOException {
    Run run = Run.of("issue", pack);
    assertEquals(0, run.code(), run.err());
    String stem = "MG-1_" + revision + "_" + date;
    Path folder = dir.resolve("issues").resolve(stem);
    assertEquals(List.of(), FitSchema.errors(Files.readString(folder.resolve(stem + "-fit.json"))));
    return folder.resolve(stem);
  }

  private static JsonNode history(Path stem) throws IOException {
    return new ObjectMapper().readTree(Path.of(stem + "-fit.json").toFile()).path("history");
  }

  private static List<String> log(Path stem) throws IOException {
    List<String> log = new ArrayList<>();
    history(stem)
        .path("log")
        .forEach(
            e ->
                log.add(
                    String.join(
                        " | ",
                        e.path("revision").asText(),
                        e.path("date").asText(),
                        e.path("by").asText(),
                        e.path("sheet").asText(),
                        e.path("what").asText())));
    return log;
  }

  private static String page(Path stem, int page) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(Path.of(stem + ".pdf").toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      text.setStartPage(page);
      text.setEndPage(page);
      return text.getText(pdf);
    }
  }

  @Test
  void theFirstIssueHasNoLogAndAllSheetsItsRevision() throws IOException {
    Path first = issue("C", "2027-02-11");
    assertTrue(history(first).isMissingNode());
    String cover = page(first, 1);
    for (String line : List.of("Cover C", "Packing C", "Flat sheet C")) {
      assertTrue(cover.contains(line), cover);
    }
  }

  @Test
  void changesFillTheLogAndSheetsKeepTheirRevisions() throws IOException {
    issue("C", "2027-02-11");
    revise("C", "D", "2027-03-04");
    change("season: A27", "season: S28");
    change("Fold once across.", "Fold twice across.");
    Path second = issue("D", "2027-03-04");
    assertEquals(
        List.of(
            "D | 2027-03-04 | Design room |  | season: A27 \u2192 S28",
            "D | 2027-03-04 | Design room | Packing | 2, What is done: Fold once across. \u2192"
                + " Fold twice across."),
        log(second));
    assertEquals("{\"cover\":\"C\",\"steps\":\"D\",\"flats\":\"C\"}", sheets(second));
    String cover = page(second, 1);
    for (String line : List.of("Packing D", "Flat sheet C", "season: A27", "Design room")) {
      assertTrue(cover.contains(line), cover);
    }

    // The third issue has the entries of the second, and says nothing of the log itself.
    revise("D", "E", "2027-03-09");
    draw(150);
    Path third = issue("E", "2027-03-09");
    List<String> log = log(third);
    assertEquals(log(second), log.subList(0, 2));
    assertEquals(
        List.of("E | 2027-03-09 | Design room | Flat sheet | Front view: drawing changed"),
        log.subList(2, log.size()));
    assertEquals("{\"cover\":\"C\",\"steps\":\"D\",\"flats\":\"E\"}", sheets(third));
    Run compared = Run.of("compare", second.getParent().toString(), third.getParent().toString());
    assertFalse(compared.out().contains("cover"), compared.out());
  }

  private static String sheets(Path stem) throws IOException {
    return history(stem).path("sheets").toString();
  }

  /** The label's own words stand instead, of this revision and of earlier ones. */
  @Test
  void entriesOfTheDescriptionStandInsteadOfTheFoundOnes() throws IOException {
    issue("C", "2027-02-11");
    revise("C", "D", "2027-03-04");
    change("Fold once across.", "Fold twice across.");
    change(
        "sheets:\n  cover:",
        """
        log:
          - {revision: B, what: First fit}
          - {revision: D, date: "2027-03-04", sheet: Packing, what: "Folded smaller, for the new carton"}
        sheets:
          cover:"""
            .stripTrailing());
    Path second = issue("D", "2027-03-04");
    assertEquals(
        List.of(
            "B |  |  |  | First fit",
            "D | 2027-03-04 |  | Packing | Folded smaller, for the new carton"),
        log(second));
    assertTrue(page(second, 1).contains("Folded smaller, for the new carton"), page(second, 1));
  }

  /** A text with braces stands in the log as it is, and is no field that is missing. */
  @Test
  void bracesInTheLogAreNoFields() throws IOException {
    change(
        "sheets:\n  cover:",
        "log: [{revision: D, what: \"Hem {not a field}\"}]\nsheets:\n  cover:");
    Path first = issue("C", "2027-02-11");
    assertTrue(page(first, 1).contains("Hem {not a field}"), page(first, 1));
  }

  /** Of a long text the part that differs. */
  @Test
  void longTextsAreCutAroundTheDifference() throws IOException {
    String start = "Fold the sleeves back, smooth the front, close every button but the lowest, ";
    change("Fold the sleeves back.", start + "to about 470 across.");
    issue("C", "2027-02-11");
    revise("C", "D", "2027-03-04");
    change("about 470", "about 450");
    String entry = log(issue("D", "2027-03-04")).get(0);
    assertTrue(entry.contains("470 across. \u2192 \u2026"), entry);
    assertTrue(entry.endsWith("450 across."), entry);
    assertTrue(entry.length() < 160, entry);
  }

  @Test
  void slipsAreNamedWithTheirPlace() throws IOException {
    change("{revisions: log}", "{revisions: logs}");
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("the table of revisions 'logs'"), run.err());
    change("{revisions: logs}", "{revisions: log}");
    Files.writeString(pack, Files.readString(pack) + "log: [{revision: D}]\n");
    Run without = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(2, without.code());
    assertTrue(without.err().contains("without what"), without.err());
  }
}
