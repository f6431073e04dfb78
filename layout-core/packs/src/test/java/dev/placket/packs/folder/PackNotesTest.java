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
}
