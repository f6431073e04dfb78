package dev.placket.demo.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Codes of callouts are assigned once, by the command that says so, and never changed. */
class NumberTest {
  @TempDir private Path dir;

  // Spots from top to bottom: collar, left, right, hem.
  private static final String PACK =
      """
      format: placket-pack/1
      # Kept as it is: café, 綿.
      sheets:
        flat:
          name: Flat
          areas: [views]
          windows: {views: }
          flats:
            front:
              file: front.svg
              role: front
              points: {h: {x: 50, y: 90}, l: {x: 20, y: 50}, r: {x: 80, y: 50}, t: {x: 50, y: 9}}
              callouts:
                hem: {point: h, mark: new, text: Hem}   # the last
                right: {point: r, mark: 'new', text: Right}
                left:
                  point: l
                  text: Left
                  mark: "new"
                collar: {point: t, mark: new, detail: collar-flat}
                again: {point: h, mark: new, detail: collar-flat, text: Collar}
            collar-flat: {file: front.svg, role: detail, caption: Collar}
      """;

  @BeforeEach
  void drawing() throws IOException {
    Files.writeString(
        dir.resolve("front.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
            + "<path d='M1 1H99V99H1Z' fill='none' stroke='#000'/></svg>");
  }

  private Path pack(String text) throws IOException {
    return Files.writeString(dir.resolve("pack.yaml"), text);
  }

  private static final String NUMBERED =
      PACK.replace("h, mark: new, text: Hem", "h, mark: 3, text: Hem")
          .replace("mark: 'new'", "mark: '2'")
          .replace("\"new\"", "\"1\"")
          .replace("mark: new, detail", "mark: D1, detail");

  @Test
  void spotsAreNumberedInReadingOrderAndAllElseIsKept() throws IOException {
    for (String end : new String[] {"\n", "\r\n"}) {
      Path pack = pack("\uFEFF" + PACK.replace("\n", end));
      Run fit = Run.of("fit", pack, "--out", dir.resolve("out"));
      assertEquals(2, fit.code());
      assertTrue(fit.err().contains("the mark 'new', which has no code yet"), fit.err());
      Run dry = Run.of("number", pack, "--check");
      assertEquals(0, dry.code(), dry.err());
      assertTrue(dry.out().contains("Nothing written."), dry.out());
      Run run = Run.of("number", pack);
      assertEquals(0, run.code(), run.err());
      assertTrue(run.out().startsWith("D1  front, collar (sheet flat)"), run.out());
      assertEquals("\uFEFF" + NUMBERED.replace("\n", end), Files.readString(pack));
      Run again = Run.of("number", pack);
      assertTrue(again.out().contains("nothing to assign"), again.out());
    }
    assertEquals(0, Run.of("fit", dir.resolve("pack.yaml"), "--out", dir.resolve("out")).code());
  }

  @Test
  void whatGoesIsRetiredAndItsCodeNeverComesBack() throws IOException {
    String without = NUMBERED.replaceAll(" +right: .*\n", "");
    String more =
        without.replace(
            "          again:",
            "          new-one: {point: r, mark: new, text: New}\n          again:");
    Path pack = pack(more);
    Run run = Run.of("number", pack);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("4  front, new-one"), run.out());
    assertTrue(run.out().contains("Retired: 2\n"), run.out());
    String numbered = more.replace("r, mark: new", "r, mark: 4");
    assertEquals(numbered.replace("sheets:", "retired: [2]\nsheets:"), Files.readString(pack));
    pack(Files.readString(pack).replace("mark: 4", "mark: 2"));
    Run back = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(2, back.code());
    assertTrue(back.err().contains("the retired identifier '2'"), back.err());
  }

  @Test
  void retiredCodesAreAddedToEitherFormOfTheList() throws IOException {
    String without = NUMBERED.replaceAll(" +right: .*\n", "");
    pack("retired: [old, older]\n" + without);
    assertEquals(0, Run.of("number", dir.resolve("pack.yaml")).code());
    assertEquals(
        "retired: [old, older, 2]\n" + without, Files.readString(dir.resolve("pack.yaml")));
    pack("retired:\n  - old\n  - older   # of 2026\n" + without);
    assertEquals(0, Run.of("number", dir.resolve("pack.yaml")).code());
    assertTrue(
        Files.readString(dir.resolve("pack.yaml")).contains("  - older\n  - 2   # of 2026\n"));
    Run fit = Run.of("fit", dir.resolve("pack.yaml"), "--out", dir.resolve("out"));
    assertEquals(0, fit.code(), fit.err());
  }

  @Test
  void oneMarkHasOneMeaning() throws IOException {
    Path pack = pack(NUMBERED.replace("mark: '2'", "mark: 3"));
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"));
    assertEquals(2, run.code());
    assertTrue(run.err().contains("the mark '3' for a second text"), run.err());
  }

  @Test
  void aLinkStaysALinkAndItsFileIsNumbered() throws IOException {
    Path pack = pack(PACK);
    Path link = Files.createSymbolicLink(dir.resolve("link.yaml"), pack);
    Run run = Run.of("number", link);
    assertEquals(0, run.code(), run.err());
    assertTrue(Files.isSymbolicLink(link));
    assertEquals(NUMBERED, Files.readString(pack));
  }

  @Test
  void aPointThatIsNotThereIsNamed() throws IOException {
    Path pack = pack(PACK.replace("point: h, mark: new, text", "point: hm, mark: new, text"));
    Run run = Run.of("number", pack);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("line 14, column 24"), run.err());
    assertEquals(
        PACK.replace("point: h, mark: new, text", "point: hm, mark: new, text"),
        Files.readString(pack));
  }
}
