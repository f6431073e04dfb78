package dev.placket.workbooks.house;

import dev.placket.house.CycleRules;
import dev.placket.house.ExplainedRules;
import dev.placket.house.Library;
import dev.placket.house.SpeechRules;
import dev.placket.workbooks.parts.Parts;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;

/** The module of workbooks: parts are read, room is found, flats are placed, a copy is written. */
class HouseTest {
  private static final Library LIBRARY = Library.of("dev.placket.workbooks", Parts.class);

  @Nested
  class Packages extends CycleRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }

    @Override
    protected Map<String, Set<String>> mayUse() {
      return Map.ofEntries(
          Map.entry("geometry", Set.of()),
          Map.entry("refusal", Set.of()),
          Map.entry("parts", Set.of("refusal")),
          Map.entry("form", Set.of("parts")),
          Map.entry("read", Set.of("geometry", "parts", "refusal")),
          Map.entry("room", Set.of("geometry", "read")),
          Map.entry("place", Set.of("geometry", "read", "refusal", "room")),
          Map.entry("write", Set.of("parts", "place", "read")),
          Map.entry("show", Set.of("geometry", "place", "read", "room")),
          Map.entry("run", Set.of("parts", "place", "read", "refusal", "show", "write")));
    }
  }

  @Nested
  class Speech extends SpeechRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }
  }

  @Nested
  class Explained extends ExplainedRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }
  }
}
