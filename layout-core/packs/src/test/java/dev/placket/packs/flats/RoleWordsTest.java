package dev.placket.packs.flats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.Role;
import dev.placket.packs.language.Phrases;
import java.text.Normalizer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Roles from names as people write them; the words are common practice. */
class RoleWordsTest {
  @ParameterizedTest
  @CsvSource({
    "back-pocket-detail, DETAIL",
    "Mantel Rückansicht, BACK",
    "MANTEL_RÜCKEN, BACK",
    "manteau-devant, FRONT",
    "manteau dos 2, BACK",
    "cappotto_retro, BACK",
    "abrigo espalda, BACK",
    "casaco-frente, FRONT",
    "palto ön, FRONT",
    "palto-arka, BACK",
    "大衣正面, FRONT",
    "大衣背面图, BACK",
    "口袋细节, DETAIL",
    "échantillon toile, SWATCH",
    "dettaglio collo retro, DETAIL"
  })
  void wordsOfEightLanguagesGiveTheRole(String name, Role role) {
    RoleWords.Reading reading = RoleWords.read(name);
    assertEquals(role, reading.role());
    assertTrue(reading.worded());
    // Some systems keep accents apart from their letters.
    String apart = Normalizer.normalize(name, Normalizer.Form.NFD);
    assertEquals(role, RoleWords.read(apart).role());
  }

  @ParameterizedTest
  @CsvSource({"pocket-on-sleeve", "backpack", "frontier", "IMG_0231", "arkadia"})
  void partsOfOtherWordsDoNot(String name) {
    assertNull(RoleWords.read(name).word());
  }

  @Test
  void frontAndBackInOneNameAreOneDrawingOfBoth() {
    RoleWords.Reading both = RoleWords.read("coat front + back");
    assertEquals(Role.FRONT, both.role());
    assertTrue(both.bothViews());
    assertEquals(List.of("coat"), both.rest());
    assertEquals(
        "Front and back view",
        Captions.of(both.role(), both.rest(), List.of(), both.bothViews(), Phrases.english()));
    assertTrue(RoleWords.read("大衣正面 背面").bothViews());
    assertFalse(RoleWords.read("front-back-pocket-detail").bothViews());
  }

  @Test
  void theRoleIsTakenOutOfAHanWord() {
    assertEquals(List.of("大衣"), RoleWords.read("大衣正面").rest());
    assertEquals(List.of("口袋"), RoleWords.read("口袋细节").rest());
  }
}
