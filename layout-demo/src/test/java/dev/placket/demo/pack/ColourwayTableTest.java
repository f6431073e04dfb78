package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Run;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One table of colourways fills drawings, captions them and is printed; materials take from it. */
class ColourwayTableTest {
  private static final String TEXT =
      """
      format: placket-pack/1
      colourways:
        ways: {K1: Silt, K2: Alder, K3: Lamp}
        colours:
          silt: {name: Silt, code: 18-03, reference: lab dip 2, screen: "#8A7F70"}
          alder: {name: Alder, reference: lab dip 1, screen: "#2F4038"}
          lamp: {name: Lamp, screen: "#C49A3A"}
          horn: Horn
        parts:
          shell: {name: Shell, fills: body, lines: row, colours: [silt, alder, lamp]}
          yoke: {name: Yoke, fills: yoke, colours: [silt, silt, alder]}
          buttons: {name: Buttons, colours: horn}
      materials:
        M1: {name: Twill, consumption: 2.35 m, waste: included, part: shell}
        M2: {name: Button, consumption: 6 pieces, part: buttons}
        M3: {name: Yoke cloth, consumption: 0.3 m, waste: included, part: yoke}
      sheets:
        ways:
          name: Colourways
          rows: [1fr, auto]
          areas: [all, colours]
          windows: {all: }
          tables: {colours: {colourways: all}}
          rules: {front-before-back: false}
          flats:
            coat: {file: coat.svg, role: front, group: ways, ratio: 1, colourways: all}
        list:
          name: Materials
          areas: [list]
          tables: {list: {materials: all}}
      """;

  @TempDir private Path dir;

  private Run run(String text) throws IOException {
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120' fill='none' stroke='#000'"
            + " stroke-width='2'><path id='yoke' d='M10,10 H90 V50 H10 Z' fill='#fff'/>"
            + "<path id='body' d='M10,50 H90 V110 H10 Z' fill='#fff'/>"
            + "<path id='row' d='M14,80 H86'/><path id='mark' d='M40,30 H60'/></svg>");
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    return Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile());
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(n -> texts.add(n.asText()));
    return texts;
  }

  @Test
  void theTableFillsCaptionsAndIsPrinted() throws IOException {
    // The dark yoke of K3 has a line of its own.
    Run run = run(TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,"));
    assertEquals(0, run.code(), run.err());
    JsonNode sheet = json().at("/sheets/0");
    List<String> captions = new ArrayList<>();
    sheet.path("placements").forEach(p -> captions.add(p.path("caption").asText()));
    assertEquals(List.of("K1 Silt", "K2 Alder", "K3 Lamp"), captions);
    JsonNode table = sheet.at("/tables/0");
    assertEquals(List.of("Part", "K1 Silt", "K2 Alder", "K3 Lamp"), texts(table.path("headings")));
    assertEquals(
        List.of("Shell", "Silt, 18-03, lab dip 2", "Alder, lab dip 1", "Lamp"),
        texts(table.at("/rows/0")));
    assertEquals(List.of("Buttons", "Horn", "Horn", "Horn"), texts(table.at("/rows/2")));
    BufferedImage page = ImageIO.read(dir.resolve("out/pack-1.png").toFile());
    // Silt: two yokes and a body; Alder: a yoke and a body; Lamp: a body.
    int silt = count(page, 0x8A7F70);
    int alder = count(page, 0x2F4038);
    int lamp = count(page, 0xC49A3A);
    assertTrue(lamp > 1000);
    assertEquals(silt - alder, alder - lamp, 0.1 * (alder - lamp));
  }

  private static int count(BufferedImage image, int rgb) {
    int n = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        n += (image.getRGB(x, y) & 0xFFFFFF) == rgb ? 1 : 0;
      }
    }
    return n;
  }

  @Test
  void theScreenColourIsPrintedOnlyWhereAsked() throws IOException {
    String text = TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,");
    assertEquals(0, run(text).code());
    assertFalse(json().path("sheets").toString().contains("#8A7F70"));
    assertEquals(
        0, run(text.replace("  ways: {K1", "  printed: [name, screen]\n  ways: {K1")).code());
    assertEquals("Silt, #8A7F70", json().at("/sheets/0/tables/0/rows/0/1").asText());
  }

  @Test
  void aPartThatAColourwayLacksIsHiddenAndDashed() throws IOException {
    String text = TEXT.replace("[silt, silt, alder]", "[silt, silt, none]");
    Run run = run(text);
    assertEquals(0, run.code(), run.err());
    assertEquals("\u2013", json().at("/sheets/0/tables/0/rows/1/3").asText());
    // Without its yoke from 10 to 50 the drawing begins at the mark, at 30: 82 units of 102, with
    // half the width of a line at either end.
    JsonNode last = json().at("/sheets/0/placements/2/inkedBox");
    JsonNode first = json().at("/sheets/0/placements/0/inkedBox");
    assertEquals(82.0 / 102, height(last) / height(first), 1e-6);
  }

  private static double height(JsonNode box) {
    return box.path("bottom").asDouble() - box.path("top").asDouble();
  }

  @Test
  void materialsListTheColoursOfTheirParts() throws IOException {
    assertEquals(0, run(TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,")).code());
    JsonNode table = json().at("/sheets/1/tables/0");
    assertEquals(
        List.of("No.", "Material", "Consumption", "K1 Silt", "K2 Alder", "K3 Lamp"),
        texts(table.path("headings")));
    assertEquals(
        List.of("M1", "Twill", "2.35 m, waste included", "Silt", "Alder", "Lamp"),
        texts(table.at("/rows/0")));
    assertEquals(
        List.of("M2", "Button", "6 pieces", "Horn", "Horn", "Horn"), texts(table.at("/rows/1")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[silt, silt, alder] | [silt, alder] | part yoke with 2 colours for 3 colourways",
        "[silt, silt, alder] | [silt, sillt, alder] | the colour 'sillt'",
        "fills: yoke | fills: yolk | no part of a drawing named 'yolk'",
        "fills: yoke | fills: [yoke, body] | the area body in part yoke and in part shell",
        "colourways: all} | colourways: [K1, K4]} | the colourway 'K4'",
        "role: front, | role: front, points: {p: {x: 1, y: 1}}, | a flat in colourways with points",
        "name: Lamp, screen: \"#C49A3A\" | name: Lamp | the colour lamp, which fills drawings, without",
        "consumption: 2.35 m | consumption: 2.35 | the consumption '2.35'",
        "waste: included, part: shell | part: shell | of which waste may be a part",
        "part: buttons | part: button | no part of the colourways named 'button'",
        "materials: all | materials: [M1, M9] | the material 'M9'",
        "fills: body, lines: row, | lines: row, | no part of the drawing",
        "rows: [1fr, auto] | rows: [auto, 1fr] | a row of height auto without a table",
        "screen: \"#8A7F70\" | lab: [140, 0, 0] | lightness from 0 to 100"
      })
  void slipsAreAnsweredAtTheirPlace(String from, String to, String said) throws IOException {
    String sound = TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,");
    assertTrue(sound.contains(from), from);
    if (said.equals("no part of the drawing")) {
      // With no area left that is filled, the drawing shows nothing of its colourways.
      Run run = run(sound.replace(from, to).replace("fills: yoke, ", ""));
      assertEquals(2, run.code(), run.err());
      assertTrue(run.err().contains("of which no area takes a colour"), run.err());
      return;
    }
    Run run = run(sound.replace(from, to));
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains(said), run.err());
    assertTrue(run.err().contains("pack.yaml, line "), run.err());
  }

  @Test
  void whatIsStatedAndNotUsedIsReported() throws IOException {
    Run run =
        run(
            TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,")
                .replace("          horn: Horn", "          horn: Horn\n    ink: Ink")
                .replace("    horn: Horn", "    horn: Horn\n    ink: Ink")
                .replace("colourways: all}\n  list", "colourways: [K1, K2]}\n  list")
                .replace(", part: yoke}", "}")
                .replace("materials: all", "materials: [M1, M2]"));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("no part has the colour ink"), run.out());
    assertTrue(run.out().contains("no drawing shows K3"), run.out());
    assertTrue(run.out().contains("none has the colours of the part yoke"), run.out());
    assertTrue(run.out().contains("no table lists M3"), run.out());
  }

  /** The row is as high as its table: one sheet, and a tenth of a millimetre less makes two. */
  @Test
  void anAutoRowIsAsHighAsItsTable() throws IOException {
    String sound = TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,");
    assertEquals(0, run(sound).code());
    assertEquals(2, json().path("sheets").size());
    JsonNode cells = json().at("/sheets/0/labelledCells/0");
    double height = height(cells) * 25.4 / 72;
    // A heading and three rows of one line, each of the least height of 5.5 mm.
    assertEquals(22, height, 1e-3);
    assertEquals(0, run(sound.replace("[1fr, auto]", "[1fr, 21.9mm]")).code());
    assertEquals(3, json().path("sheets").size());
  }

  /** A material may stand in two tables: it is shown on the sheet that has its flat. */
  @Test
  void aMaterialIsShownWhereItsFlatIs() throws IOException {
    String text =
        TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,")
                .replace("M1: {name: Twill,", "M1: {name: Twill, shown: cloth,")
            + "    flats: {cloth: {file: coat.svg, role: detail, least: 10mm}}\n"
            + "  again:\n    name: Again\n    areas: [list]\n"
            + "    tables: {list: {materials: [M1]}}\n";
    Run run = run(text);
    assertEquals(0, run.code(), run.err());
    assertEquals("Shown", json().at("/sheets/1/tables/0/headings/0").asText());
    assertEquals("cloth", json().at("/sheets/1/placements/0/flat").asText());
    assertEquals("No.", json().at("/sheets/2/tables/0/headings/0").asText());
    Run unknown = run(text.replace("shown: cloth", "shown: clot"));
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("no flat 'clot'"), unknown.err());
  }

  /** Waste is in the heading only where every consumption states it. */
  @Test
  void theHeadingClaimsWasteOnlyOfWhatStatesIt() throws IOException {
    String sound = TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,");
    assertEquals(0, run(sound.replace("materials: all", "materials: [M1, M3]")).code());
    JsonNode table = json().at("/sheets/1/tables/0");
    assertEquals("Consumption\nwaste included", table.at("/headings/2").asText());
    assertEquals("2.35 m", table.at("/rows/0/2").asText());
  }

  /** An outline of the table keeps its contrast to the paper, too. */
  @Test
  void paperUnderLinesOfAPartIsKept() throws IOException {
    String text =
        TEXT.replace("lines: row,", "lines: {row: [body, paper]},")
            .replace("fills: yoke,", "fills: yoke, lines: mark,");
    Run run = run(text);
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().contains("body #2F4038, paper"), run.err());
  }

  /** Lines on an area that one colourway lacks lie on the rest of their areas there. */
  @Test
  void linesMayLieOnAnAreaThatAColourwayLacks() throws IOException {
    String text =
        TEXT.replace("lines: row,", "lines: {row: [body, yoke]},")
            .replace("[silt, silt, alder]", "[silt, alder, none]");
    Run run = run(text);
    assertEquals(0, run.code(), run.err());
  }

  @Test
  void aPartWithoutAnAreaInADrawingIsReported() throws IOException {
    String text = TEXT.replace("fills: yoke,", "fills: yoke, lines: mark,");
    run(text);
    Files.writeString(
        dir.resolve("back.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120' fill='none' stroke='#000'>"
            + "<path id='body' d='M10,10 H90 V110 H10 Z' fill='#fff'/><path id='row'"
            + " d='M14,80 H86'/></svg>");
    Path pack = dir.resolve("pack.yaml");
    Files.writeString(
        pack,
        text.replace(
            "colourways: all}\n  list",
            "colourways: all}\n      rear: {file: back.svg, role: back, group: ways, ratio: 1,"
                + " colourways: K1}\n  list"));
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("drawing of rear has no area of the part yoke"), run.out());
  }

  /** Within an area, another of its own colour: in either order both show. */
  @ParameterizedTest
  @CsvSource({"outer, inner", "inner, outer"})
  void anAreaWithinAnotherKeepsItsColour(String first, String second) throws IOException {
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 120'><g id='outer'>"
            + "<path d='M10,10 H90 V110 H10 Z' fill='#fff'/>"
            + "<path id='inner' d='M30,30 H70 V90 H30 Z' fill='#fff'/></g></svg>");
    String colour = "  %s: {fills: %s, colours: %s}\n";
    String text =
        "format: placket-pack/1\ncolourways:\n  ways: {K1: One}\n  colours:\n"
            + "    outer: {screen: \"#C49A3A\"}\n    inner: {screen: \"#8A7F70\"}\n  parts:\n"
            + ("  " + colour).formatted(first, first, first)
            + ("  " + colour).formatted(second, second, second)
            + "sheets:\n  s: {name: S, areas: [w], windows: {w: }, flats: {coat: {file: coat.svg,"
            + " role: front, colourways: all}}}\n";
    Path pack = Files.writeString(dir.resolve("pack.yaml"), text);
    Run run = Run.of("fit", pack, "--out", dir.resolve("out"), "--overwrite");
    assertEquals(0, run.code(), run.err());
    BufferedImage page = ImageIO.read(dir.resolve("out/pack.png").toFile());
    // 80 by 100 with a hole of 40 by 60: 5600 to 2400.
    double ratio = count(page, 0xC49A3A) / (double) count(page, 0x8A7F70);
    assertEquals(5600.0 / 2400, ratio, 0.05);
  }

  /** Without ids nothing can be filled; the flat is not left out without a word. */
  @Test
  void aDrawingWithoutIdsIsRefused() throws IOException {
    run(TEXT);
    Files.writeString(
        dir.resolve("coat.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><path d='M1,1 H8 V8 Z'/></svg>");
    Run run = Run.of("fit", dir.resolve("pack.yaml"), "--out", dir.resolve("out"), "--overwrite");
    assertEquals(2, run.code(), run.out());
    assertTrue(run.err().contains("a picture without named areas"), run.err());
  }
}
