package dev.placket.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grids drawn as strings, by the rules of CSS Grid 1, 7.3. */
class TemplateAreasTest {
  @Test
  void readsAreasRowByRow() {
    Map<String, GridArea> areas =
        TemplateAreas.parse(
            List.of("head  head  head", "views views notes", "views views ...", "foot . foot2"));
    assertEquals(List.of("head", "views", "notes", "foot", "foot2"), List.copyOf(areas.keySet()));
    assertEquals(new GridArea(0, 0, 3, 1), areas.get("head"));
    assertEquals(new GridArea(0, 1, 2, 3), areas.get("views"));
    assertEquals(new GridArea(2, 1, 3, 2), areas.get("notes"));
    assertEquals(new GridArea(0, 3, 1, 4), areas.get("foot"));
    assertEquals(new GridArea(2, 3, 3, 4), areas.get("foot2"));
  }

  @Test
  void aRunOfDotsIsOneBlankCell() {
    assertEquals(
        Map.of("a", new GridArea(2, 0, 3, 1)), TemplateAreas.parse(List.of("  .  ...  a ")));
  }

  @Test
  void namesTheRowThatDiffers() {
    Exception e =
        assertThrows(
            IllegalArgumentException.class,
            () -> TemplateAreas.parse(List.of("a a b", "a a", "a a b")));
    assertEquals("row 2 of the areas has 2 cells, the first has 3", e.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // an L, two places in one row, two places in one column, a hole, a step
        "a a / a b | row 2, cell 2",
        "a b a / a b a | row 1, cell 3",
        "a / b / a | row 3, cell 1",
        "a a a / a b a / a a a | row 2, cell 2",
        "b a / a a | row 2, cell 1"
      })
  void namesTheAreaThatIsNoRectangle(String rows, String place) {
    Exception e =
        assertThrows(
            IllegalArgumentException.class, () -> TemplateAreas.parse(List.of(rows.split(" / "))));
    assertEquals("area 'a' is no rectangle: see " + place, e.getMessage());
  }

  @Test
  void refusesAnEmptyDrawing() {
    assertThrows(IllegalArgumentException.class, () -> TemplateAreas.parse(List.of()));
    assertThrows(IllegalArgumentException.class, () -> TemplateAreas.parse(List.of("")));
    assertThrows(IllegalArgumentException.class, () -> TemplateAreas.parse(List.of("a", " ")));
  }
}
