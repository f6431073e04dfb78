package dev.placket.packs.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.packs.refusal.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A glossary is a table of texts; its form is RFC 4180, its languages are tags of BCP 47. */
class GlossaryTest {
  @TempDir Path dir;

  private Path file(String text) throws IOException {
    return Files.writeString(dir.resolve("terms.csv"), text);
  }

  private Glossary read(String text) throws IOException, Refusal {
    return Glossary.read(file(text));
  }

  private List<String> refused(String text) throws IOException {
    Path file = file(text);
    return assertThrows(Refusal.class, () -> Glossary.read(file)).messages().stream()
        .map(m -> m.replace(file.toString(), "terms.csv"))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void spreadsheetsPartValuesByCommaSemicolonOrTab(String part) throws Exception {
    Glossary glossary =
        read(
            "\uFEFFen,de\r\nHem,Saum\r\n\"Cuff, left\",Manschette\r\n"
                .replace(",d", part + "d")
                .replace(",S", part + "S")
                .replace(",M", part + "M"));
    assertEquals("Saum", glossary.in("Hem", "de"));
    assertEquals("Hem", glossary.in("Hem", "en"));
    if (!part.equals(",")) {
      assertNull(glossary.in("Cuff", "de"));
    }
    assertEquals("Manschette", glossary.in("Cuff, left", "de"));
  }

  @Test
  void aTextIsFoundInAnyColumnTheFirstBeforeTheOthers() throws Exception {
    // French "col" is a collar; the first column also has it as a German pass.
    Glossary glossary = read("de,fr,en\nKragen,col,collar\ncol,col de montagne,pass\nSaum,,hem\n");
    assertEquals("pass", glossary.in("col", "en"));
    assertEquals("Kragen", glossary.in("collar", "de"));
    assertEquals("Kragen", glossary.in(" collar\n", "de"));
    assertNull(glossary.in("hem", "fr"));
    assertNull(glossary.in("Collar", "de"), "a capital is another text");
    assertNull(glossary.in("", "fr"));
  }

  @ParameterizedTest
  @CsvSource({
    "zh-Hans, 布",
    "zh, 布",
    "zh-CN, 布",
    "zh-SG, 布",
    "zh-Hans-CN, 布",
    "zh-Hant, ",
    "zh-TW, ",
    "z, ",
    "de-CH, Stoff",
    "DE, Stoff",
  })
  void aTagServesItsRegionsAndScripts(String language, String text) throws Exception {
    // RFC 4647, section 3.3; simplified and traditional Chinese by the likely subtags of CLDR.
    assertEquals(text, read("en,zh-Hans,de\ncloth,布,Stoff\n").in("cloth", language));
  }

  @Test
  void everyFaultIsNamedWithItsLine() throws Exception {
    assertEquals(
        List.of(
            "terms.csv, line 3: has 'Hem' again, as line 2; remove one of the two lines.",
            "terms.csv, line 4: has the fields [] in de, not [{sheet}]; write the fields of the"
                + " first column, braces included."),
        refused("en,de\nHem,Saum\nHem,Kante\nSheet {sheet},Blatt\n"));
    assertEquals(
        List.of(
            "terms.csv, line 1: does not begin with two languages or more; name them in the first"
                + " line, as in en,zh-Hans."),
        refused("Term,Übersetzung\nHem,Saum\n"));
    assertEquals(1, refused("").size());
    assertEquals(1, refused("en,en\n").size());
    assertEquals(1, refused("en,de\nHem\n").size());
    Path latin =
        Files.write(dir.resolve("l.csv"), "en,de\nÄrmel,x".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        List.of(latin + ": is not in UTF-8; save it as UTF-8."),
        assertThrows(Refusal.class, () -> Glossary.read(latin)).messages());
  }
}
