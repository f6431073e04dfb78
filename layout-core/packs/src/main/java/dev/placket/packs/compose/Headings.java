package dev.placket.packs.compose;

import dev.placket.packs.description.Words;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Headings of tables in the languages that are printed.
 *
 * @param phrases the languages
 */
record Headings(Phrases phrases) {
  Words of(StockPhrase phrase) {
    return of(phrase, "");
  }

  /**
   * A heading with more after it.
   *
   * @param more the same in all languages
   */
  Words of(StockPhrase phrase, String more) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String language : phrases.languages()) {
      texts.put(language, phrases.in(phrase, language).text() + more);
    }
    return new Words(texts);
  }
}
