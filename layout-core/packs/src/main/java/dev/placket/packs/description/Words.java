package dev.placket.packs.description;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Text in one language or several.
 *
 * @param byLanguage the text of each language, in the order written; under the empty name where the
 *     text is the same in all of them
 */
public record Words(Map<String, String> byLanguage) {
  /** No text at all. */
  public static final Words NONE = Words.of("");

  /** Copies the map. */
  public Words {
    byLanguage = Collections.unmodifiableMap(new LinkedHashMap<>(byLanguage));
  }

  /** Text that is the same in every language. */
  public static Words of(String text) {
    return new Words(Map.of("", text));
  }

  /** Whether it is the same in every language. */
  public boolean plain() {
    return byLanguage.containsKey("");
  }

  /** Whether there is nothing to be set. */
  public boolean blank() {
    return byLanguage.values().stream().allMatch(String::isBlank);
  }

  /** The text in each of the languages, each text once, in their order. */
  public List<String> in(List<String> languages) {
    List<String> texts = new ArrayList<>();
    for (String each : plain() ? List.of("") : languages) {
      String text = byLanguage.getOrDefault(each, "");
      if (!text.isBlank() && !texts.contains(text)) {
        texts.add(text);
      }
    }
    return List.copyOf(texts);
  }

  /** The languages that it lacks; none for plain or blank text. */
  public List<String> missing(List<String> languages) {
    return plain() || blank()
        ? List.of()
        : languages.stream().filter(l -> byLanguage.getOrDefault(l, "").isBlank()).toList();
  }
}
