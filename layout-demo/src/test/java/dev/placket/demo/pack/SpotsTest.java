package dev.placket.demo.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.FitSchema;
import dev.placket.demo.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Points and callouts of a description, by their identifiers, on the sheet. */
class SpotsTest {
  private static final String FRONT = "window: views, unit: 10mm}\n      back";

  @TempDir Path dir;

  private static String with(String front) {
    String text =
        ExamplePack.TEXT.replace(
            "front: {file: front.svg, role: front, " + FRONT,
            "front: {file: front.svg, role: front, window: views, unit: 10mm, "
                + front
                + "}\n      back");
    assertTrue(text.contains(front), text);
    return text;
  }

  private Run fit(String text) throws IOException {
    return Run.of("fit", ExamplePack.write(dir, text), "--out", dir.resolve("out"));
  }

  /** The ink of the example is 8 to 92 across and 8 to 112 down; the waist is drawn at 50, 60. */
  @Test
  void comeToLieWhereTheDrawingHasThem() throws IOException {
    Run run =
        fit(
            with(
                "points: {tab: {x: 29, y: 34}, belt: {element: waist}},"
                    + " callouts: {c1: {point: tab, text: Throat tab}, c2: {point: body, text: Shell}}"));
    assertEquals(0, run.code(), run.err());
    String json = Files.readString(dir.resolve("out/fit.json"));
    JsonNode front =
        new ObjectMapper().readTree(json).path("sheets").get(0).path("placements").get(0);
    // A quarter and a half of the ink's width from its left, a quarter and a half of its height.
    at(front, front.path("points").get(0), "point", "tab", 0.25, 0.25);
    at(front, front.path("points").get(1), "point", "belt", 0.5, 0.5);
    at(front, front.path("callouts").get(0), "callout", "c1", 0.25, 0.25);
    at(front, front.path("callouts").get(1), "callout", "c2", 0.5, 0.5);
    assertEquals("Throat tab", front.path("callouts").get(0).path("text").asText());
    assertEquals(List.of(), FitSchema.errors(json));
  }

  /**
   * The ink is 84 by 104 units, its middle is the waist: a quarter across is 21 units left of it.
   */
  @Test
  void areGivenByShareOrByTheirWayFromAnElement() throws IOException {
    Run run =
        fit(with("points: {tab: {across: 25%, down: 75%}, belt: {element: waist, x: -21, y: 26}}"));
    assertEquals(0, run.code(), run.err());
    String json = Files.readString(dir.resolve("out/fit.json"));
    JsonNode front =
        new ObjectMapper().readTree(json).path("sheets").get(0).path("placements").get(0);
    at(front, front.path("points").get(0), "point", "tab", 0.25, 0.75);
    at(front, front.path("points").get(1), "point", "belt", 0.25, 0.75);
    Run both = fit(with("points: {tab: {across: 25%, x: 3}}"));
    assertEquals(2, both.code());
    assertTrue(both.err().contains("expected x and y, element, or across and down"), both.err());
    Run more = fit(with("points: {tab: {across: 101%, down: 3%}}"));
    assertTrue(more.err().contains("a percentage, as in 25%"), more.err());
  }

  private static void at(
      JsonNode flat, JsonNode spot, String key, String id, double across, double down) {
    JsonNode ink = flat.path("inkedBox");
    double left = ink.path("left").asDouble();
    double top = ink.path("top").asDouble();
    assertEquals(id, spot.path(key).asText());
    double width = ink.path("right").asDouble() - left;
    double height = ink.path("bottom").asDouble() - top;
    // The middle of an element is known to the precision of a float, as Batik reckons.
    assertEquals(left + across * width, spot.path("x").asDouble(), 1e-3, id);
    assertEquals(top + down * height, spot.path("y").asDouble(), 1e-3, id);
  }

  /** An identifier is never two things, and never comes back. */
  @ParameterizedTest
  @ValueSource(
      strings = {"points: {p1: {x: 50, y: 60}}", "callouts: {p1: {point: waist, text: A}}"})
  void identifiersAreUsedOnce(String spots) throws IOException {
    String twice =
        with(spots).replace("back: {file: back.svg,", "back: {file: back.svg, " + spots + ",");
    Run again = fit(twice);
    assertEquals(2, again.code());
    assertTrue(again.err().contains("'p1' again"), again.err());
    Run retired = fit(with(spots).replace("sheets:\n", "retired: [p1]\nsheets:\n"));
    assertEquals(2, retired.code());
    assertTrue(retired.err().contains("the retired identifier 'p1'"), retired.err());
  }

  /** A view may be level on a point, too. */
  @Test
  void aViewIsLevelOnAPoint() throws IOException {
    String text =
        with("points: {knee: {x: 50, y: 86}}, level: knee")
            .replace("back: {file: back.svg,", "back: {file: back.svg, level: waist,");
    Run run = fit(text);
    assertEquals(0, run.code(), run.err());
    JsonNode sheet =
        new ObjectMapper().readTree(dir.resolve("out/fit.json").toFile()).path("sheets").get(0);
    JsonNode front = sheet.path("placements").get(0).path("inkedBox");
    JsonNode back = sheet.path("placements").get(1).path("inkedBox");
    // 86 is three quarters of the ink's height down, the waist is half-way.
    double knee = height(front, 0.75);
    assertEquals(knee, height(back, 0.5), 0.01);
  }

  private static double height(JsonNode ink, double down) {
    double top = ink.path("top").asDouble();
    return top + down * (ink.path("bottom").asDouble() - top);
  }
}
