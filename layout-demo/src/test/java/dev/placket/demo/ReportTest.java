package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.console.Terminal;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command says on a terminal: what is in it, how wide it is, where it goes. */
class ReportTest {
  private static final String GOOD =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 100'>"
          + "<rect x='10' y='10' width='70' height='80' fill='none' stroke='#000'/></svg>";

  @TempDir Path dir;

  private Run fit(Object... more) {
    Object[] args = new Object[4 + more.length];
    System.arraycopy(new Object[] {"fit", dir, "--out", dir.resolve("made")}, 0, args, 0, 4);
    System.arraycopy(more, 0, args, 4, more.length);
    return Run.of(args);
  }

  private JsonNode placement(int number) throws IOException {
    JsonNode all = new ObjectMapper().readTree(dir.resolve("made/fit.json").toFile());
    return all.path("sheets").get(0).path("placements").get(number);
  }

  /** A black square of so many pixels a side, with a white border of one pixel in ten. */
  private void square(String name, int side) throws IOException {
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, side, side);
    g.setColor(Color.BLACK);
    g.fillRect(side / 10, side / 10, side - side / 5, side - side / 5);
    g.dispose();
    ImageIO.write(image, "png", dir.resolve(name).toFile());
  }

  @Test
  void everyFlatHasItsRoleSizeScaleDensityAndState() throws IOException {
    Files.writeString(dir.resolve("front.svg"), GOOD);
    square("button-detail.png", 200);
    Files.writeString(dir.resolve("pack.properties"), "unit.mm=10\n");
    Run run = fit();
    assertEquals(0, run.code(), run.err());
    JsonNode ink = placement(0).path("inkedBox");
    // 25.4 mm and 72 points to the inch; the garment is 71 units of 10 mm wide, stroke included.
    double width = (ink.path("right").asDouble() - ink.path("left").asDouble()) / 72 * 25.4;
    String size = String.format(Locale.ROOT, "%.1f × ", width);
    String scale = String.format(Locale.ROOT, "1:%.1f ", 710 / width);
    String row = line(run.out(), "Front view");
    for (String said : List.of(" front ", size, scale, " - ", "Sc scalable")) {
      assertTrue(row.contains(said), said + " in: " + row);
    }
    String button = line(run.out(), "Button");
    for (String said : List.of(" detail ", "not to scale", " 150 ", "C crisp")) {
      assertTrue(button.contains(said), said + " in: " + button);
    }
  }

  @Test
  void inInchesTheSizesAreThoseInInches() throws IOException {
    Files.writeString(dir.resolve("front.svg"), GOOD);
    Run run = fit("--units", "in");
    JsonNode ink = placement(0).path("inkedBox");
    double width = (ink.path("right").asDouble() - ink.path("left").asDouble()) / 72;
    assertTrue(run.out().contains(String.format(Locale.ROOT, "%.2f × ", width)), run.out());
    // ISO 216: A4 is 210 by 297 mm, which is 8.27 by 11.69 in.
    assertTrue(run.out().contains("A4 11.69 × 8.27 in"), run.out());
    assertFalse(run.out().contains(" mm"), run.out());
  }

  /**
   * The line of the example prints well over 0.2 mm on A4; a warning comes where it is asked for.
   */
  @Test
  void theLimitsOfWarningsCanBeSet() throws IOException {
    Files.writeString(dir.resolve("front.svg"), GOOD);
    Run usual = fit();
    assertFalse(usual.out().contains("finest line"), usual.out());
    assertEquals("[]", placement(0).path("printed").path("tooFine").toString());
    Run strict = fit("--overwrite", "--warn-line", "9mm");
    assertTrue(strict.out().contains("under 9.00 mm"), strict.out());
    assertEquals("[\"line\"]", placement(0).path("printed").path("tooFine").toString());
  }

  @Test
  void anUnknownUnitIsRefused() throws IOException {
    Files.writeString(dir.resolve("front.svg"), GOOD);
    Run run = fit("--units", "inch");
    assertEquals(2, run.code());
    assertEquals("placket: --units inch: is unknown; give mm or in.", run.err().strip());
  }

  /** What spoils the sheet comes first, what to send comes last. */
  @Test
  void whatToDoNextIsInOrder() throws IOException {
    Files.writeString(dir.resolve("front.svg"), GOOD.replace("<rect", "<rect stroke-width='0.05'"));
    square("dot-detail.png", 20);
    square("button-detail.png", 150);
    square("great.png", 4000);
    Run run = fit();
    assertEquals(3, run.code(), run.err());
    String next = run.out().substring(run.out().indexOf("What to do next")).replaceAll("\\s+", " ");
    int at = -1;
    for (String said :
        List.of(
            "1. Export dot-detail.png at ",
            "front.svg: finest line prints at ",
            "Export button-detail.png at ",
            "Export great.png at ",
            "Name great.png after what it shows",
            "Check it in ",
            "Send ")) {
      int found = next.indexOf(said);
      assertTrue(found > at, said + " in: " + next);
      at = found;
    }
    Matcher asked = Pattern.compile("dot-detail.png at (\\S+) × (\\S+) pixels").matcher(next);
    assertTrue(asked.find(), next);
    JsonNode wanted = placement(2).path("wantedPixels");
    assertEquals("dot-detail.png", placement(2).path("source").asText());
    assertEquals(wanted.path("width").asText(), asked.group(1).replace(",", ""));
  }

  /** On the terminal a path appears as it was given; the page, which is mailed, has the name. */
  @Test
  void onlyTheTerminalShowsThePath() throws IOException {
    String given = "src/demo/mg-3107/flats";
    Run run = Run.of("fit", given, "--out", dir.resolve("out"));
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    assertTrue(run.out().contains("Read from " + given + System.lineSeparator()), run.out());
    try (var files = Files.list(dir.resolve("out"))) {
      Path page = files.filter(f -> f.toString().endsWith("report.html")).findFirst().orElseThrow();
      assertTrue(Files.readString(page).contains(">Read from flats<"));
    }
  }

  @Test
  void jsonIsTheFileAndNothingElse() throws IOException {
    Files.writeString(dir.resolve("front.svg"), GOOD);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] args = {"fit", dir.toString(), "--out", dir.resolve("made").toString(), "--json"};
    assertEquals(0, Main.run(args, stream(out), stream(err)));
    assertArrayEquals(Files.readAllBytes(dir.resolve("made/fit.json")), out.toByteArray());
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("What to do next"));
  }

  /** Nothing is written, but a program that asked for numbers gets the conflict. */
  @Test
  void withoutRoomJsonHasTheConflict() throws Exception {
    Files.writeString(dir.resolve("front.svg"), GOOD);
    for (int i = 0; i < 24; i++) {
      Files.writeString(dir.resolve("inside-" + i + ".svg"), GOOD);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String[] args = {"fit", dir.toString(), "--out", dir.resolve("made").toString(), "--json"};
    int code = Main.run(args, stream(out), stream(err));
    String said = err.toString(StandardCharsets.UTF_8);
    // Twenty-five views of at least 40 mm with 5 mm between need more than the 277 by 190 mm of A4.
    assertEquals(4, code, said);
    assertFalse(Files.exists(dir.resolve("made/fit.json")), "nothing is written");
    JsonNode told = new ObjectMapper().readTree(out.toByteArray());
    JsonNode conflict = told.path("sheets").get(0).path("conflict");
    assertFalse(conflict.path("requirements").isEmpty(), told::toString);
    assertTrue(said.contains(conflict.path("said").asText()), said);
    assertEquals(List.of(), FitSchema.errors(out.toString(StandardCharsets.UTF_8)));
  }

  private static PrintStream stream(ByteArrayOutputStream to) {
    return new PrintStream(to, true, StandardCharsets.UTF_8);
  }

  @Test
  void noLineIsWiderThanEightyAndNoneIsColoured() throws IOException {
    Files.writeString(dir.resolve("front.svg"), GOOD);
    String long_ = "A fold-away hood with a very long caption that says what it shows";
    Files.writeString(dir.resolve("hood-detail.svg"), GOOD);
    Files.writeString(dir.resolve("pack.properties"), "caption.hood-detail=" + long_ + "\n");
    square("dot-detail.png", 20);
    Run run = fit("--paper", "A0", "--allow-soft");
    assertTrue(run.code() == 0 || run.code() == 3, run.err());
    for (String line : run.out().lines().filter(l -> !l.contains(dir.toString())).toList()) {
      assertTrue(line.codePointCount(0, line.length()) <= 80, line);
    }
    assertFalse(run.out().contains("\u001B"), run.out());
    assertTrue(run.out().replaceAll("\\s+", " ").contains(long_), run.out());
  }

  /** COLUMNS: POSIX; NO_COLOR: any value but the empty one asks for no colour. */
  @Test
  void aTerminalIsWhatItsSurroundingsSay() {
    assertEquals(new Terminal(80, false), Terminal.of(Map.of(), false, 0));
    assertEquals(new Terminal(60, false), Terminal.of(Map.of("COLUMNS", "60"), false, 0));
    assertEquals(new Terminal(40, false), Terminal.of(Map.of("COLUMNS", "12"), false, 0));
    assertEquals(new Terminal(80, false), Terminal.of(Map.of("COLUMNS", "wide"), false, 0));
    assertEquals(new Terminal(72, true), Terminal.of(Map.of("TERM", "xterm"), true, 72));
    assertEquals(new Terminal(80, true), Terminal.of(Map.of("TERM", "xterm"), true, 200));
    assertEquals(new Terminal(80, false), Terminal.of(Map.of("TERM", "dumb"), true, 0));
    Map<String, String> plain = Map.of("TERM", "xterm", "NO_COLOR", "1");
    assertEquals(new Terminal(80, false), Terminal.of(plain, true, 0));
    Map<String, String> empty = Map.of("TERM", "xterm", "NO_COLOR", "");
    assertEquals(new Terminal(80, true), Terminal.of(empty, true, 0));
  }

  private static String line(String text, String with) {
    return text.lines().filter(l -> l.contains(with)).findFirst().orElseThrow();
  }
}
