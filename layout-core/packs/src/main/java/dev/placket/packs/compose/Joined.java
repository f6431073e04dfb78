package dev.placket.packs.compose;

import dev.placket.packs.description.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Texts in several languages, joined to one. */
final class Joined {
  private Joined() {}

  /** The texts of each language joined; blank ones are left out. */
  static Words of(String separator, List<Words> texts, List<String> languages) {
    if (texts.stream().allMatch(Words::plain)) {
      return Words.of(in(texts, "", separator));
    }
    Map<String, String> joined = new LinkedHashMap<>();
    languages.forEach(language -> joined.put(language, in(texts, language, separator)));
    return new Words(joined);
  }

  private static String in(List<Words> texts, String language, String separator) {
    return texts.stream()
        .map(w -> w.byLanguage().getOrDefault(w.plain() ? "" : language, ""))
        .filter(text -> !text.isBlank())
        .collect(Collectors.joining(separator));
  }
}
