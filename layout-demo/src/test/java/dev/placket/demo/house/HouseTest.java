package dev.placket.demo.house;

import dev.placket.demo.Main;
import dev.placket.house.CycleRules;
import dev.placket.house.Library;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;

/** The command: the console and shared options, the commands that use them, the manual. */
class HouseTest {
  private static final Library LIBRARY = Library.of("dev.placket.demo", Main.class);

  @Nested
  class Packages extends CycleRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }

    @Override
    protected Map<String, Set<String>> mayUse() {
      return Map.ofEntries(
          Map.entry("console", Set.of()),
          Map.entry("options", Set.of("console")),
          Map.entry("probe", Set.of("console", "options")),
          Map.entry("prepare", Set.of("console", "options")),
          Map.entry("", Set.of("console", "options", "prepare", "probe")),
          Map.entry("manual", Set.of("", "options")));
    }
  }
}
