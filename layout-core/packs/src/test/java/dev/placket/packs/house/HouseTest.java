package dev.placket.packs.house;

import dev.placket.house.CycleRules;
import dev.placket.house.ExplainedRules;
import dev.placket.house.Library;
import dev.placket.house.SpeechRules;
import dev.placket.packs.refusal.Refusal;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;

/** The module of packs: from files and text over sheets to a run and its report. */
class HouseTest {
  private static final Library LIBRARY = Library.of("dev.placket.packs", Refusal.class);

  @Nested
  class Packages extends CycleRules {
    @Override
    protected Library library() {
      return LIBRARY;
    }

    @Override
    protected Map<String, Set<String>> mayUse() {
      return Map.ofEntries(
          Map.entry("refusal", Set.of()),
          Map.entry("text", Set.of("refusal")),
          Map.entry("output", Set.of("refusal")),
          Map.entry("callouts", Set.of("text")),
          Map.entry("dimensions", Set.of("text")),
          Map.entry("page", Set.of("callouts", "dimensions", "text")),
          Map.entry("language", Set.of("refusal", "table", "text")),
          Map.entry("flats", Set.of("callouts", "dimensions", "language", "refusal", "text")),
          Map.entry("placed", Set.of("callouts", "dimensions", "flats", "page", "refusal", "text")),
          Map.entry("revision", Set.of("callouts", "dimensions", "page", "placed", "text")),
          Map.entry("description", Set.of("history", "refusal", "sample", "text")),
          Map.entry("measure", Set.of()),
          Map.entry("history", Set.of()),
          Map.entry("sample", Set.of("measure")),
          Map.entry(
              "issue",
              Set.of(
                  "history",
                  "compose",
                  "description",
                  "json",
                  "output",
                  "refusal",
                  "report",
                  "revision",
                  "run")),
          Map.entry("table", Set.of("refusal", "text", "description")),
          Map.entry(
              "folder", Set.of("description", "flats", "language", "page", "refusal", "text")),
          Map.entry(
              "compose",
              Set.of(
                  "history",
                  "callouts",
                  "description",
                  "dimensions",
                  "flats",
                  "folder",
                  "language",
                  "measure",
                  "output",
                  "page",
                  "refusal",
                  "sample",
                  "table",
                  "text")),
          Map.entry(
              "report",
              Set.of(
                  "flats",
                  "history",
                  "measure",
                  "placed",
                  "refusal",
                  "revision",
                  "sample",
                  "text")),
          Map.entry(
              "json",
              Set.of(
                  "history",
                  "callouts",
                  "dimensions",
                  "flats",
                  "measure",
                  "page",
                  "placed",
                  "refusal",
                  "report",
                  "sample",
                  "text")),
          Map.entry(
              "run",
              Set.of(
                  "callouts",
                  "compose",
                  "description",
                  "dimensions",
                  "flats",
                  "folder",
                  "json",
                  "language",
                  "measure",
                  "output",
                  "page",
                  "placed",
                  "refusal",
                  "report",
                  "revision",
                  "sample",
                  "text")));
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
