package dev.placket.packs.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.packs.refusal.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The header's values of a folder have the keys that a description gives them. */
class PackNotesTest {
  @TempDir Path dir;

  private PackNotes read(String text) throws IOException, Refusal {
    Files.writeString(dir.resolve(PackNotes.FILE), text);
    return PackNotes.read(dir, List.of("front"));
  }

  @Test
  void keysAreThoseOfADescription() throws IOException, Refusal {
    PackNotes notes = read("style-number=MG-3107\nissued-by=Design room\n");
    assertEquals("MG-3107", notes.fields().get("style-number"));
    assertEquals("Design room", notes.value(PackNotes.Field.ISSUED_BY));
  }

  @Test
  void aKeyWithADotIsRefusedWithTheKeyToWrite() {
    Refusal refusal = assertThrows(Refusal.class, () -> read("style.number=MG-3107\n"));
    assertEquals(
        List.of(
            dir.resolve(PackNotes.FILE) + ": unknown key 'style.number'; write 'style-number'."),
        refusal.messages());
  }

  @Test
  void languagesGlossaryAndFontsAreChecked() {
    Refusal refusal =
        assertThrows(
            Refusal.class, () -> read("languages=English\nglossary=../terms.csv\nfonts=a.ttf\n"));
    String file = dir.resolve(PackNotes.FILE) + ", ";
    assertEquals(
        List.of(
            file + "fonts: there is no file 'a.ttf'; name one, from this folder.",
            file + "glossary: there is no file '../terms.csv'; name one, from this folder."),
        refusal.messages());
    Refusal language = assertThrows(Refusal.class, () -> read("languages=en, 中文\n"));
    assertEquals(
        List.of(
            file
                + "languages=en, 中文: is no list of languages; name them as BCP 47 does, as in en,"
                + " zh-Hans."),
        language.messages());
  }
}
