package dev.placket.packs.flats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which flat takes which box, by hand. */
class FlatBoxesTest {
  private static final List<String> SIX = List.of("b1", "b2", "b3", "b4", "b5", "b6");

  private static Map<String, List<String>> windows(List<String> boxes, String... ids) {
    Map<String, List<String>> windows = new LinkedHashMap<>();
    for (String id : ids) {
      windows.put(id, boxes);
    }
    return windows;
  }

  @Test
  void theFirstTakesTheFirstBoxAndSpareBoxesStayEmpty() {
    assertEquals(
        Map.of("x", List.of("b1"), "a", List.of("b2"), "m", List.of("b3")),
        FlatBoxes.of(windows(SIX, "x", "a", "m")));
  }

  @Test
  void moreFlatsThanBoxesShareThem() {
    assertEquals(Map.of(), FlatBoxes.of(windows(List.of("b1", "b2"), "x", "a", "m")));
  }

  @Test
  void aFlatAloneChoosesAmongItsWindows() {
    assertEquals(Map.of(), FlatBoxes.of(windows(SIX, "x")));
  }

  @Test
  void flatsOfOtherWindowsAreCountedApart() {
    Map<String, List<String>> windows = windows(List.of("views"), "front", "back");
    windows.putAll(windows(List.of("b1", "b2"), "x", "a"));
    assertEquals(Map.of("x", List.of("b1"), "a", List.of("b2")), FlatBoxes.of(windows));
  }
}
