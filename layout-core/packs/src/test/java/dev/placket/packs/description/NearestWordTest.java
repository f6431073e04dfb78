package dev.placket.packs.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The nearest word by letters put in, left out, changed or swapped. */
class NearestWordTest {
  @ParameterizedTest
  @CsvSource({
    // Counted by hand.
    "colums, columns, 1",
    "bakc, back, 1",
    "window, windows, 1",
    "front, front, 0",
    "kitten, sitting, 3",
    "'', abc, 3",
  })
  void countsChanges(String a, String b, int changes) {
    assertEquals(changes, NearestWord.distance(a, b));
    assertEquals(changes, NearestWord.distance(b, a));
  }

  @Test
  void namesTheNearestOrNone() {
    List<String> known = List.of("columns", "rows", "areas");
    assertEquals("columns", NearestWord.of("Colums", known));
    assertNull(NearestWord.of("sleeve", known));
    assertNull(NearestWord.of("x", List.of()));
  }
}
