package dev.placket.packs.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.packs.text.LanguageMarks;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Texts of a pack in its languages, and the list of what has no translation. */
class PhrasesTest {
  /** The languages in which file names are read, with Chinese in its simplified script. */
  private static final List<String> STOCK =
      List.of("en", "de", "fr", "it", "es", "pt", "tr", "zh-Hans");

  @TempDir Path dir;

  private Phrases phrases(List<String> languages, String glossary) throws Exception {
    return Phrases.of(
        languages, Glossary.read(Files.writeString(dir.resolve("terms.csv"), glossary)));
  }

  private static String plain(String marked) {
    return LanguageMarks.without(marked);
  }

  @ParameterizedTest
  @EnumSource
  void everyStockPhraseIsThereInEightLanguagesWithItsFields(StockPhrase phrase) {
    Phrases phrases = Phrases.of(STOCK, Glossary.NONE);
    for (String language : STOCK) {
      Phrases.Said said = phrases.in(phrase, language);
      assertEquals(language, said.language());
      assertEquals(fields(phrase.english()), fields(said.text()), said.toString());
    }
    assertEquals(List.of(), phrases.untranslated());
  }

  private static TreeSet<String> fields(String text) {
    TreeSet<String> fields = new TreeSet<>();
    java.util.regex.Matcher m = java.util.regex.Pattern.compile("\\{[a-z]+}").matcher(text);
    while (m.find()) {
      fields.add(m.group());
    }
    return fields;
  }

  @Test
  void theGlossaryComesBeforeTheStock() throws Exception {
    Phrases phrases = phrases(List.of("de"), "en,de\nFront view,Ansicht von vorn\n");
    assertEquals("Ansicht von vorn", plain(phrases.beside(StockPhrase.FRONT_VIEW)));
    assertEquals("Rückansicht", plain(phrases.beside(StockPhrase.BACK_VIEW)));
  }

  @Test
  void whatIsUntranslatedIsPrintedOnceAndListed() throws Exception {
    Phrases phrases = phrases(List.of("en", "ja"), "en,ja\nHem,裾\n");
    assertEquals("Hem / 裾", plain(phrases.beside("Hem")));
    assertEquals("Bound seam", plain(phrases.beside("Bound seam")));
    assertEquals("Front view", plain(phrases.beside(StockPhrase.FRONT_VIEW)));
    assertEquals(
        List.of("Not translated into ja, printed as written (2): 'Bound seam', 'Front view'."),
        phrases.untranslated());
  }

  @ParameterizedTest
  @CsvSource({
    "MG-3107, false",
    "XS–XXL, false",
    "420 g/m², false",
    "2027-02-11, false",
    "A27, false",
    "'{sheet} / {sheets}', false",
    "Tex 60, true",
    "second fit, true",
    "布, true",
    "Пальто, true",
  })
  void codesNumbersAndUnitsAreNotListed(String text, boolean listed) throws Exception {
    Phrases phrases = phrases(List.of("de"), "en,de\nHem,Saum\n");
    assertEquals(text, phrases.in(text, "de").text());
    assertEquals(listed, !phrases.untranslated().isEmpty());
  }

  @Test
  void linesAreLookedUpOneByOneWhereTheWholeIsNotThere() throws Exception {
    Phrases phrases = phrases(List.of("de"), "en,de\nHem,Saum\nCuff,Manschette\n");
    assertEquals("Saum\nManschette", phrases.in("Hem\nCuff", "de").text());
  }

  @Test
  void textOfAnotherLanguageCarriesItsMark() throws Exception {
    Phrases phrases = phrases(List.of("fr", "de"), "fr,de\nourlet,Saum\n");
    assertEquals("ourlet / " + LanguageMarks.marked("Saum", 1), phrases.beside("ourlet"));
    // English stands third, though no text of the pack is to be in it.
    assertEquals(List.of("fr", "de", "en"), phrases.tags());
    Phrases japanese = Phrases.of(List.of("ja"), Glossary.NONE);
    assertEquals(LanguageMarks.marked("Front view", 1), japanese.beside(StockPhrase.FRONT_VIEW));
    assertTrue(japanese.untranslated().get(0).contains("'Front view'"));
  }
}
