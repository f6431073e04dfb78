package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.demo.console.Messages;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Calls as nobody means them: names that steer a terminal, files that do not exist, full pipes. */
class HostileCallTest {
  private static final String GOOD =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  /** ECMA-48: clear the screen; C1's control sequence introducer; UAX 9: right-to-left override. */
  private static final String NASTY = "a\u001B[2J\u009B1m\u202Eb\nplacket: c";

  @TempDir Path dir;
  private Path flats;

  @BeforeEach
  void folder() throws IOException {
    flats = Files.createDirectory(dir.resolve("style"));
  }

  private static void assertHarmless(Run run) {
    for (String said : List.of(run.out(), run.err())) {
      for (char sign : new char[] {'\u001B', '\u009B', '\u202E'}) {
        assertEquals(-1, said.indexOf(sign), said);
      }
      assertFalse(said.contains("\nplacket: c"), said);
    }
  }

  @Test
  void aNameThatSteersATerminalIsSpelledOut() throws IOException {
    Path front = Files.writeString(flats.resolve("front " + NASTY + ".svg"), GOOD);
    Path text = Files.writeString(flats.resolve(NASTY + ".txt"), "left alone");
    Path out = dir.resolve("out " + NASTY);
    assertHarmless(Run.of("fit", flats, "--out", out));
    assertHarmless(Run.of("fit", flats, "--out", out));
    assertHarmless(Run.of("fit", flats, "--out", dir.resolve("json"), "--json"));
    assertHarmless(Run.of("fit", dir.resolve(NASTY)));
    assertHarmless(Run.of("fit", flats, "--" + NASTY));
    assertHarmless(Run.of("fit", flats, "--paper", NASTY));
    assertHarmless(Run.of("probe", front, text, "--at", "100mm"));
    assertHarmless(Run.of("probe", front, "--json"));
    Run prepare = Run.of("prepare", front, "--at", "50mm", "--out", dir.resolve("ready" + NASTY));
    assertEquals(0, prepare.code(), prepare.err());
    assertHarmless(prepare);
    assertHarmless(Run.of("starter", dir.resolve("start " + NASTY)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fit", "probe", "prepare", "--help", "json"})
  void aFullStandardOutputEndsWithACode(String command) throws IOException {
    Path front = Files.writeString(flats.resolve("front.svg"), GOOD);
    String out = dir.resolve("out").toString();
    List<String> args =
        switch (command) {
          case "fit" -> List.of("fit", flats.toString(), "--out", out);
          case "json" -> List.of("fit", flats.toString(), "--out", out, "--json");
          case "probe" -> List.of("probe", front.toString());
          case "prepare" -> List.of("prepare", front.toString(), "--at", "50mm", "--out", out);
          default -> List.of("--help");
        };
    java.io.ByteArrayOutputStream err = new java.io.ByteArrayOutputStream();
    int code =
        Main.run(
            args.toArray(String[]::new),
            new PrintStream(new Full(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    String said = err.toString(StandardCharsets.UTF_8);
    assertEquals(2, code, said);
    assertTrue(said.contains("placket: standard output is full or closed"), said);
    assertFalse(said.contains("Exception"), said);
  }

  /** As /dev/full does. */
  private static final class Full extends OutputStream {
    @Override
    public void write(int b) throws IOException {
      throw new IOException("No space left on device");
    }
  }

  @Test
  void aMissingFileNamesItsNearestNeighbour() throws IOException {
    Files.writeString(flats.resolve("front.svg"), GOOD);
    Files.writeString(dir.resolve("style.yaml"), "format: placket-pack/1");
    assertMissing(Run.of("fit", dir.resolve("stile.yaml")), dir.resolve("style.yaml"));
    assertMissing(Run.of("fit", dir.resolve("styl")), dir.resolve("style"));
    assertMissing(Run.of("probe", flats.resolve("frnt.svg")), flats.resolve("front.svg"));
    assertMissing(
        Run.of("prepare", flats.resolve("fornt.svg"), "--at", "9mm", "--out", dir.resolve("r")),
        flats.resolve("front.svg"));
  }

  private static void assertMissing(Run run, Path nearest) {
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains("does not exist; did you mean " + nearest + "?"), run.err());
    assertFalse(run.err().contains("folder"), run.err());
  }

  /** The preview is named style.png, which is nearer to styl.png than any drawing. */
  @Test
  void outputsOfAnEarlierRunAreNoNeighbours() throws IOException {
    Files.writeString(flats.resolve("front.svg"), GOOD);
    assertEquals(0, Run.of("fit", flats, "--out", flats).code());
    assertTrue(Files.exists(flats.resolve("style.png")));
    Run run = Run.of("probe", flats.resolve("styl.png"));
    assertTrue(run.err().contains("styl.png: does not exist; check the name."), run.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "null",
        "{\"format\": 3}",
        "{\"format\": \"placket-fit/1\", \"placements\": [{}]}",
        "{\"format\": \"placket-fit/1\", \"placements\": [{\"source\": 3, \"inkedBox\": 4}]}",
        "{\"format\": \"placket-fit/1\", \"placements\": [{\"source\": \"../front.svg\","
            + " \"inkedBox\": {\"left\": 0, \"right\": 9, \"top\": 0, \"bottom\": 9}}]}",
        "{\"format\": \"placket-fit/1\", \"placements\": [{\"source\": \"a\\u0000b\","
            + " \"inkedBox\": {\"left\": 0, \"right\": 9, \"top\": 0, \"bottom\": 9}}]}",
        "{\"format\": \"placket-fit/1\", \"placements\": [{\"source\": \"front.svg\","
            + " \"inkedBox\": {\"left\": 0, \"right\": 1e400, \"top\": 0, \"bottom\": 9}}]}",
        "{\"format\": \"placket-fit/1\", \"placements\": [{\"source\": \"front.svg\","
            + " \"inkedBox\": {\"left\": 0, \"right\": \"9\", \"top\": 0, \"bottom\": \"9\"}}]}",
        "{\"format\": \"placket-fit/1\", \"placements\": [{\"source\": \"front.svg\","
            + " \"inkedBox\": {\"left\": 0, \"right\": 99999999, \"top\": 0, \"bottom\": 9}}]}",
        "{\"format\": \"placket-fit/1\", \"placements\": []}",
      })
  void aDamagedFitJsonIsOneMessage(String json) throws IOException {
    Files.writeString(flats.resolve("front.svg"), GOOD);
    Path fit = Files.writeString(flats.resolve("fit.json"), json);
    Run run = Run.of("prepare", "--for", fit, "--out", dir.resolve("ready"));
    assertEquals(2, run.code(), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().startsWith("placket: " + fit + ": "), run.err());
    assertFalse(Files.exists(dir.resolve("ready")));
  }

  /** Half of a letter is in no charset; in the C locale, any letter beyond ASCII is as well. */
  @Test
  void anArgumentThatThisLocaleCannotWriteIsOneMessage() {
    Run run = Run.of("probe", "front\uD83D.svg");
    assertEquals(2, run.code(), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("LC_ALL=C.UTF-8"), run.err());
  }

  /** The hash of an object tells nobody anything and differs from run to run. */
  @Test
  void noMessageShowsTheHashOfAnObject() {
    java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
    Messages.print(
        new PrintStream(bytes, true, StandardCharsets.UTF_8),
        List.of("front.svg: broken (org.w3c.dom.Node$A@1f2e3d); mail a@b1 or x.y@cafe.example"));
    assertEquals(
        "placket: front.svg: broken (org.w3c.dom.Node$A); mail a@b1 or x.y@cafe.example",
        bytes.toString(StandardCharsets.UTF_8).strip());
  }

  /** By way of a link to the folder of the pictures, too. */
  @Test
  void noPictureThatIsReadIsOverwritten() throws IOException {
    Path front = flats.resolve("front.png");
    java.awt.image.BufferedImage image = new java.awt.image.BufferedImage(400, 400, 1);
    javax.imageio.ImageIO.write(image, "png", front.toFile());
    Files.writeString(flats.resolve("pack.properties"), "style-number=front\n");
    byte[] before = Files.readAllBytes(front);
    Path link = Files.createSymbolicLink(dir.resolve("link"), flats);
    for (Path out : List.of(flats, link)) {
      Run fit = Run.of("fit", flats, "--out", out, "--overwrite");
      assertEquals(2, fit.code(), fit.out() + fit.err());
      assertTrue(fit.err().contains("front.png: would be overwritten"), fit.err());
      Run prepare = Run.of("prepare", front, "--at", "9mm", "--out", out, "--overwrite");
      assertEquals(2, prepare.code(), prepare.out() + prepare.err());
      org.junit.jupiter.api.Assertions.assertArrayEquals(before, Files.readAllBytes(front));
    }
  }
}
