package dev.placket.packs.refusal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.packs.description.PackReader;
import dev.placket.pictures.fault.Fault;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The messages of a refusal are one line each, whatever names they quote. */
class RefusalTest {
  /** The control codes of ISO/IEC 6429 and the separators of lines and paragraphs of Unicode. */
  private static final String BREAKING = "(?s).*[\\p{Cc}\\u2028\\u2029].*";

  private static List<String> messages(String yaml) {
    try {
      PackReader.read(Path.of("pack.yaml"), yaml.getBytes(StandardCharsets.UTF_8))
          .faults()
          .refuse();
      return List.of();
    } catch (Refusal refusal) {
      return refusal.messages();
    }
  }

  @Property
  void eachMessageIsOneLine(@ForAll String text) {
    Refusal refusal = Refusal.input(List.of(Fault.content(text, text), Fault.noRoom("b")));
    assertEquals(2, refusal.messages().size());
    refusal.messages().forEach(m -> assertFalse(m.matches(BREAKING), m));
  }

  @Property
  void aKeyOfADescriptionBreaksNoLine(@ForAll String key) {
    StringBuilder quoted = new StringBuilder();
    key.chars().forEach(c -> quoted.append(String.format("\\u%04X", c)));
    List<String> messages = messages("\"" + quoted + " tacked\": x\n");
    assertFalse(messages.isEmpty());
    messages.forEach(m -> assertFalse(m.matches(BREAKING), m));
  }

  /**
   * The escapes are those of YAML 1.2.2, section 5.7; a blank line folds to a line feed (7.3.1).
   */
  @Example
  void spellsControlSignsOfAKeyOut() {
    String all = String.join("|", messages("\"a\\nb\\e[31m\\L\\0\": x\n"));
    assertTrue(all.contains("the key 'a\\nb\\u001B[31m\\u2028\\u0000'"), all);
    String folded =
        String.join("|", messages("? \"Buttons tacked\n\n  through the facing\"\n: x\n"));
    assertTrue(folded.contains("the key 'Buttons tacked\\nthrough the facing'"), folded);
  }
}
