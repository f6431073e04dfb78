package dev.placket.demo.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Issues of a small style: folders that are written once, and what changes between them. */
class IssueTest {
  private static final String PACK =
      """
      format: placket-pack/1
      fields: {label: Mossgantry, style-number: MG-1, revision: C, date: "2027-02-11"}
      sheets:
        flats:
          name: Flat sheet
          columns: [1fr, 80mm]
          rows: [1fr, 30mm]
          areas:
            - views steps
            - views note
          cells: {note: {text: "Revision {revision}: hem turned twice"}}
          windows: {views: }
          tables:
            steps:
              columns: [{heading: Step, width: 12mm}, {heading: What is done, width: 1fr}]
              rows: [["1", "Fold the sleeves back."], ["2", "Fold once across."]]
          flats:
            front:
              file: front.svg
              role: front
              points: {hem: {across: 50%, down: 90%}, edge: {across: 20%, down: 40%}}
              callouts: {hem-note: {point: hem, text: Hem rows}}
            pocket: {file: pocket.svg, role: detail}
      measurements:
        unit: cm
        sizes: [S, M]
        sample: M
        points:
          A: {name: Chest, tolerance: 1, value: 50, grade: 2}
      """;

  @TempDir private Path dir;
  private Path pack = Path.of("");

  @BeforeEach
  void drawings() throws IOException {
    draw("front.svg", 100, 140);
    draw("pocket.svg", 60, 50);
    pack = Files.writeString(dir.resolve("pack.yaml"), PACK);
  }

  private void draw(String name, int width, int height) throws IOException {
    Files.writeString(
        dir.resolve(name),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-2 -2 %d %d'><path fill='none'"
                .formatted(width + 4, height + 4)
            + " stroke='#000' d='M0 0H%dV%dH0Z'/></svg>".formatted(width, height));
  }

  private Run issue() {
    return Run.of("issue", pack);
  }

  private void change(String from, String to) throws IOException {
    String text = Files.readString(pack);
    assertTrue(text.contains(from), from);
    Files.writeString(pack, text.replace(from, to));
  }

  private void revise() throws IOException {
    change("revision: C, date: \"2027-02-11\"", "revision: D, date: \"2027-03-04\"");
  }

  private static Map<String, String> digests(Path folder) throws Exception {
    Map<String, String> digests = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
        digests.put(file.getFileName().toString(), HexFormat.of().formatHex(digest));
      }
    }
    return digests;
  }

  @Test
  void anIssueIsAFolderOfItsOwn() throws Exception {
    Run run = issue();
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("The first issue of this style."), run.out());
    Path folder = dir.resolve("issues/MG-1_C_2027-02-11");
    Map<String, String> files = digests(folder);
    for (String file : files.keySet()) {
      assertTrue(file.startsWith("MG-1_C_2027-02-11"), file);
    }
    JsonNode manifest =
        new ObjectMapper().readTree(folder.resolve("MG-1_C_2027-02-11-manifest.json").toFile());
    assertEquals("placket-issue/1", manifest.path("format").asText());
    assertEquals("C", manifest.path("revision").asText());
    files.remove("MG-1_C_2027-02-11-manifest.json");
    Map<String, String> outputs = new TreeMap<>();
    manifest
        .path("outputs")
        .fields()
        .forEachRemaining(f -> outputs.put(f.getKey(), f.getValue().asText()));
    assertEquals(files, outputs);
    Map<String, String> inputs = new TreeMap<>();
    manifest
        .path("inputs")
        .fields()
        .forEachRemaining(f -> inputs.put(f.getKey(), f.getValue().asText()));
    Map<String, String> sources = digests(dir.resolve("."), inputs);
    assertEquals(sources, inputs);
    assertEquals(List.of("front.svg", "pack.yaml", "pocket.svg"), List.copyOf(inputs.keySet()));
    String json = Files.readString(folder.resolve("MG-1_C_2027-02-11-fit.json"));
    assertEquals(List.of(), FitSchema.errors(json));
    // Nothing else is left beside it.
    try (Stream<Path> all = Files.list(dir.resolve("issues"))) {
      assertEquals(1, all.filter(f -> Files.isDirectory(f)).count());
    }
  }

  private static Map<String, String> digests(Path folder, Map<String, String> names)
      throws Exception {
    Map<String, String> digests = new TreeMap<>();
    for (String name : names.keySet()) {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(folder.resolve(name)));
      digests.put(name, HexFormat.of().formatHex(digest));
    }
    return digests;
  }

  @Test
  void anIssueIsNeverWrittenAgain() throws Exception {
    issue();
    Path folder = dir.resolve("issues/MG-1_C_2027-02-11");
    Map<String, String> before = digests(folder);
    Run again = issue();
    assertEquals(0, again.code(), again.err());
    assertTrue(again.out().contains("Already issued"), again.out());
    change("Hem rows", "Hem, two rows".replace(", ", " "));
    Run other = issue();
    assertEquals(2, other.code());
    assertTrue(
        other.err().contains("revision C of MG-1 was issued on 2027-02-11 with other content"),
        other.err());
    assertTrue(other.err().contains("state revision D and its date"), other.err());
    change("Hem two rows", "Hem rows");
    Run paper = Run.of("issue", pack, "--paper", "Letter");
    assertEquals(2, paper.code(), paper.out());
    draw("pocket.svg", 61, 50);
    assertEquals(2, issue().code(), "a drawing that changed is other content");
    assertEquals(before, digests(folder));
  }

  @Test
  void anOlderRevisionIsRefused() throws Exception {
    issue();
    change("revision: C", "revision: B");
    Run older = issue();
    assertEquals(2, older.code());
    assertTrue(
        older.err().contains("revision B of 2027-02-11 is older than the last issue, C"),
        older.err());
    change("revision: B, date: \"2027-02-11\"", "revision: D, date: \"2027-01-11\"");
    assertEquals(2, issue().code(), "an earlier date is older, too");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'style-number: MG-1, ' | '' | has no field 'style-number'",
        "'revision: C, ' | '' | has no field 'revision'",
        "', date: \"2027-02-11\"' | '' | has no field 'date'",
        "2027-02-11 | 2027-02-30 | write it as year, month and day",
        "2027-02-11 | 11.2.2027 | write it as year, month and day"
      })
  void whatNamesAnIssueIsStated(String from, String to, String message) throws Exception {
    change(from, to);
    Run run = issue();
    assertEquals(2, run.code());
    assertTrue(run.err().contains(message), run.err());
    assertFalse(Files.exists(dir.resolve("issues")));
  }

  @Test
  void aDamagedManifestIsNamed() throws Exception {
    issue();
    Path manifest = dir.resolve("issues/MG-1_C_2027-02-11/MG-1_C_2027-02-11-manifest.json");
    byte[] bytes = Files.readAllBytes(manifest);
    revise();
    for (String damaged : List.of("{", "[]", "", "{\"format\": \"placket-issue/2\"}")) {
      Files.writeString(manifest, damaged);
      Run run = issue();
      assertEquals(2, run.code());
      assertTrue(run.err().contains("MG-1_C_2027-02-11-manifest.json"), run.err());
      assertTrue(run.err().contains("move its folder away"), run.err());
    }
    Files.write(manifest, bytes);
    assertEquals(0, issue().code());
    assertArrayEquals(bytes, Files.readAllBytes(manifest));
  }

  @Test
  void aCheckWritesNothing() throws Exception {
    Run run = Run.of("issue", pack, "--check");
    assertEquals(0, run.code(), run.err());
    assertFalse(Files.exists(dir.resolve("issues")));
    Path taken = dir.resolve("issues/MG-1_C_2027-02-11");
    Files.createDirectories(taken);
    Files.writeString(taken.resolve("mine.txt"), "mine");
    Run other = issue();
    assertEquals(2, other.code());
    assertTrue(other.err().contains("is no issue of this style"), other.err());
    assertEquals("mine", Files.readString(taken.resolve("mine.txt")));
  }

  /** What a run left that was killed while it wrote: the next one takes it away. */
  @Test
  void whatAKilledRunLeftGoes() throws Exception {
    Path left = dir.resolve("issues/.placket-123e4567-e89b-12d3-a456-426614174000.folder");
    Files.createDirectories(left);
    Files.writeString(left.resolve("half.pdf"), "%PDF");
    Path mine = Files.createDirectories(dir.resolve("issues/.placket-notes.folder"));
    assertEquals(0, issue().code());
    assertFalse(Files.exists(left));
    assertTrue(Files.exists(mine), "a folder of another name is somebody's");
  }

  /** Nine kinds of change, each once. */
  @Test
  void changesAreListed() throws Exception {
    issue();
    revise();
    change("name: Flat sheet", "name: Flats");
    change("hem turned twice", "hem bound");
    change("Fold once across.", "Fold across, twice.");
    change(", [\"2\"", ", [\"3\", \"Bag it.\"], [\"2\"");
    change("text: Hem rows", "text: Twin rows");
    change(
        "{name: Chest, tolerance: 1, value: 50, grade: 2}",
        "{name: Chest, tolerance: 0.5, value: 50, grade: 3}");
    draw("pocket.svg", 60, 80);
    Run run = issue();
    assertEquals(0, run.code(), run.err());
    List<String> changes =
        run.out().lines().dropWhile(l -> !l.startsWith("Changes from")).map(String::strip).toList();
    assertEquals("Changes from C 2027-02-11 to D 2027-03-04:", changes.get(0));
    for (String line :
        List.of(
            "field revision: C -> D",
            "field date: 2027-02-11 -> 2027-03-04",
            "sheet flats, name: Flat sheet -> Flats",
            "cell flats, note: Revision C: hem turned twice -> Revision D: hem bound",
            "row flats, steps, 2, What is done: Fold once across. -> Fold across, twice.",
            "row flats, steps, 3: new: 3 | Bag it.",
            "callout flats, hem-note: Hem rows @ hem -> Twin rows @ hem",
            "point A, tolerance: 1 -> 0.5",
            "point A, S: 48 -> 47")) {
      assertTrue(changes.contains(line), line + " in " + changes);
    }
    String all = String.join("\n", changes);
    assertTrue(all.contains("flat flats, pocket, drawing: pocket.svg "), all);
    assertTrue(all.contains("size flats, pocket: "), all);
    Path issues = dir.resolve("issues");
    Run json =
        Run.of(
            "compare",
            issues.resolve("MG-1_C_2027-02-11"),
            issues.resolve("MG-1_D_2027-03-04"),
            "--json");
    assertEquals(0, json.code(), json.err());
    JsonNode list = new ObjectMapper().readTree(json.out()).path("changes");
    assertEquals(changes.size() - 1, list.size());
    applied(list, json(issues, "C_2027-02-11"), json(issues, "D_2027-03-04"));
    Run same =
        Run.of("compare", issues.resolve("MG-1_C_2027-02-11"), issues.resolve("MG-1_C_2027-02-11"));
    assertTrue(same.out().contains("none"), same.out());
  }

  /** What leaves every file of a drawing as it is, and is seen on the sheet all the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "file: pocket.svg, | file: pocket.svg, fills: {bag: \"#ddaa88\"}, | pocket, colours or hidden parts",
        "file: pocket.svg, | file: pocket.svg, hide: mark, | pocket, colours or hidden parts",
        "file: pocket.svg, | file: pocket.svg, line-weight: 0.6mm, | pocket, line weight",
        "file: pocket.svg, | file: pocket.svg, note: lined, | pocket, caption",
        "across: 50%, down: 90% | across: 50%, down: 80% | front, point hem: 50.0 %, 90.0 % -> 50.0 %, 80.0 %",
        "text: Hem rows | text: Hem rows, region: 9 | callout flats, hem-note",
        "file: pocket.svg, | file: pocket.svg, points: {p: {across: 9%, down: 9%}, q: {across: 91%, down: 9%}}, dimensions: {A: {from: p, to: q}}, | pocket, lines of measure: new: A",
        "note: {text: | note: {caption: Note, text: | cell flats, note, caption: new: Note",
        "Never cut from a drawing. | Do not cut from a drawing. | cell foot caution: Never",
        "greatest: 40mm | greatest: 30mm | size flats, pocket"
      })
  void nothingThatIsSeenChangesInSilence(String from, String to, String expected) throws Exception {
    Files.writeString(
        dir.resolve("pocket.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-2 -2 64 54'><path id='bag' fill='#fff'"
            + " stroke='#000' d='M0 0H60V50H0Z'/><path id='mark' stroke='#000' d='M9 9H20'/></svg>");
    change("file: pocket.svg, role: detail", "file: pocket.svg, role: detail, greatest: 40mm");
    Files.writeString(
        pack,
        Files.readString(pack)
            + """
            foot:
              rows: [12mm]
              areas: [caution]
              cells: {caution: {text: Never cut from a drawing.}}
            """);
    assertEquals(0, issue().code());
    revise();
    change(from, to);
    Run run = issue();
    assertEquals(0, run.code(), run.err());
    String changes = run.out().substring(run.out().indexOf("Changes from"));
    assertTrue(changes.contains(expected), changes);
    assertTrue(changes.contains("file pack.yaml: "), changes);
  }

  private static JsonNode json(Path issues, String name) throws IOException {
    return new ObjectMapper()
        .readTree(issues.resolve("MG-1_" + name + "/MG-1_" + name + "-fit.json").toFile());
  }

  /** The changes applied to the values of the old issue give those of the new one. */
  private static void applied(JsonNode changes, JsonNode before, JsonNode after) {
    Map<String, String> values = values(before);
    for (JsonNode change : changes) {
      String key =
          change.path("kind").asText()
              + " "
              + change.path("sheet").asText()
              + " "
              + change.path("what").asText();
      String is = change.path("after").asText();
      boolean caption = change.path("what").asText().endsWith(", caption");
      if (!caption && change.path("kind").asText().matches("field|cell|point")) {
        assertEquals(change.path("before").asText(), values.getOrDefault(key, ""), key);
        values.put(key, is);
      }
    }
    assertEquals(values(after), values);
  }

  private static Map<String, String> values(JsonNode issue) {
    Map<String, String> values = new TreeMap<>();
    issue
        .path("pack")
        .fields()
        .forEachRemaining(
            f -> {
              if (!f.getKey().equals("title")) {
                values.put("field  " + f.getKey(), f.getValue().asText());
              }
            });
    for (JsonNode sheet : issue.path("sheets")) {
      for (JsonNode cell : sheet.path("cells")) {
        values.put(
            "cell " + sheet.path("id").asText() + " " + cell.path("cell").asText(),
            cell.path("text").asText());
      }
    }
    for (JsonNode point : issue.path("measurements").path("points")) {
      String code = "point  " + point.path("point").asText() + ", ";
      values.put(code + "name", point.path("name").asText());
      values.put(code + "tolerance", point.path("plus").asText());
      for (JsonNode value : point.path("values")) {
        values.put(code + value.path("size").asText(), value.path("value").asText());
      }
    }
    return values;
  }

  @Test
  void whatCannotBeComparedIsNamed() throws Exception {
    issue();
    Path folder = dir.resolve("issues/MG-1_C_2027-02-11");
    Path broken = Files.writeString(dir.resolve("broken.json"), "{\"format\": \"placket-fit/9\"}");
    Run newer = Run.of("compare", folder, broken);
    assertEquals(2, newer.code());
    assertTrue(newer.err().contains("its format is 'placket-fit/9'"), newer.err());
    Run empty = Run.of("compare", folder, Files.createDirectories(dir.resolve("empty")));
    assertTrue(empty.err().contains("has no fit.json"), empty.err());
    String other =
        Files.readString(folder.resolve("MG-1_C_2027-02-11-fit.json")).replace("MG-1", "MG-2");
    Run style = Run.of("compare", folder, Files.writeString(dir.resolve("other.json"), other));
    assertTrue(style.err().contains("is of the style 'MG-2', the other of 'MG-1'"), style.err());
    assertEquals(2, Run.of("compare", folder, dir.resolve("nowhere")).code());
  }
}
