package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each kind of slip is answered at its place, says what is known, and writes nothing. */
class FaultsTest {
  @TempDir Path dir;
  private Path out = Path.of("");

  @BeforeEach
  void place() {
    out = dir.resolve("out");
  }

  private String refused(String text) throws IOException {
    Path file = ExamplePack.write(dir, text);
    Run run = Run.of("fit", file, "--out", out);
    assertEquals(2, run.code(), run.out());
    assertFalse(Files.exists(out));
    return run.err();
  }

  /** The place is counted in the changed text, where the wrong part begins. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "- views note | - views note note | row 2 of the areas has 3 cells",
        "      - views details\\n      - views note | _AREAS_ | is no rectangle",
        "note: {caption: Note | notes: {caption: Note | nearest is 'note'",
        "window: details, caption | window: detail, caption | nearest is 'details'",
        "window: views, unit: 10mm}\\n      back | unit: 10mm}\\n      back | a flat without window",
        "file: back.svg | file: ../back.svg | outside the folder",
        "file: back.svg | file: bck.svg | nearest is 'back.svg'",
        "{sheet} of | {shet} of | nearest is 'sheet'",
        "sample: \"{sample-size}\" | sample: XM | no column headed",
        "[cloth, Twill, body] | [clothe, Twill, body] | nearest is 'cloth'",
        "[cloth, Twill, body] | [cloth, Twill] | expected 3, one for each column",
        "cloth: {file | front: {file | the flat 'front' again",
        "width: 40mm, height | width: 400mm, height | a corner larger than its window",
        "note: bar tacks 10 | level: waste | nearest is 'waist'",
        "note: bar tacks 10 | points: {p1: {x: 1}} | x and y, element, or across and down",
        "note: bar tacks 10 | points: {p1: {x: 5000, y: 1}} | a point beside what is drawn",
        "note: bar tacks 10 | points: {p1: {element: waste}} | nearest is 'waist'",
        "note: bar tacks 10 | callouts: {c1: {point: waste, text: Tab}} | nearest is 'waist'",
        "note: bar tacks 10 | callouts: {c1: {point: waist}} | callout c1 without text",
        "note: bar tacks 10 | true-size: true | unit, the real length",
        "note: bar tacks 10 | fills: {bodi: \"#112233\"} | nearest is 'body'",
        "note: bar tacks 10 | fills: {body: \"#112233\"} | lines",
        "note: bar tacks 10 | fills: {body: #112233} | broken YAML",
        "note: bar tacks 10 | note: \"\u05D1\u05D3\" | needs shaping (hebrew)",
        "note: bar tacks 10 | least: 30mm, greatest: 20mm | under the least",
        "name: Materials | name: Materials\\n    name: Again | each key once",
        "label: Mossgantry | label: *x | alias",
        "label: Mossgantry | label: !!int 3 | tag",
        "label: Mossgantry | sheet: 3 | another name",
        "sheets:\\n | retired: [pocket]\\nsheets:\\n | the retired identifier 'pocket'",
        "rows: [10mm] | rows: [90mm, 90mm, 90mm] | leave no room",
        "text: left over right | text: left over right and a great deal more than goes into so small a cell as this one | too long for its cell",
        "csv: points.csv | csv: point.csv | nearest is 'points.csv'",
      })
  void isAnswered(String right, String wrong, String said) throws IOException {
    String from = right.replace("\\n", "\n");
    String to =
        wrong.equals("_AREAS_")
            ? "- views details\n      - note views"
            : wrong.replace("\\n", "\n");
    assertTrue(ExamplePack.TEXT.contains(from), from);
    String err = refused(ExamplePack.TEXT.replace(from, to));
    assertTrue(err.contains(said), err);
    assertTrue(err.contains("pack.yaml, line "), err);
  }

  @Test
  void linesAndColumnsAreThoseOfTheSlip() throws IOException {
    String text = ExamplePack.TEXT.replace("role: detail", "role: detial");
    String before = text.substring(0, text.indexOf("detial"));
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = before.length() - before.lastIndexOf('\n');
    String err = refused(text);
    assertTrue(err.contains("line " + line + ", column " + column + ": found the role"), err);
    assertEquals(1, err.lines().count(), err);
  }

  @Test
  void brokenYamlIsAnsweredWhereItBreaks() throws IOException {
    assertTrue(refused("format: placket-pack/1\nsheets: {a: [}\n").contains("line 2, column 14"));
    assertTrue(refused("").contains("an empty file"));
    assertTrue(refused("just text").contains("keys with values"));
    assertTrue(refused("a: 1\n---\nb: 2\n").contains("a second document"));
    Path file =
        Files.write(dir.resolve("pack.yaml"), new byte[] {'a', ':', '\n', (byte) 0xC3, '('});
    assertTrue(Run.of("fit", file, "--out", out).err().contains("line 2: is not in UTF-8"));
  }

  @Test
  void aMissingTranslationIsToldAndNothingMore() throws IOException {
    String text =
        ExamplePack.TEXT
            .replace("fields:\n", "languages: [en, de]\nfields:\n")
            .replace("caption: Sheet,", "caption: {en: Sheet, de: Blatt},")
            .replace("caption: Note,", "caption: {en: Note},");
    Run run = Run.of("fit", ExamplePack.write(dir, text), "--out", out);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("no text in 'de' (sheets/flats/cells/note/caption)"), run.out());
  }

  @Test
  void textThatShrinksIsTold() throws IOException {
    String text =
        ExamplePack.TEXT.replace(
            "text: left over right", "text: wearer's left over wearer's right");
    Run run = Run.of("fit", ExamplePack.write(dir, text), "--out", out);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("set at 1.8 mm to fit"), run.out());
  }
}
