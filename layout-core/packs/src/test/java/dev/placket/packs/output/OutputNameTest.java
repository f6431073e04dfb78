package dev.placket.packs.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of written files, whatever a style number or a file of the user is called. */
class OutputNameTest {
  /** Names of devices as Windows' documentation of file names lists them; from memory. */
  private static final Set<String> DEVICES =
      Set.of("con", "prn", "aux", "nul", "com1", "com9", "lpt1", "lpt9", "com¹", "conin$");

  @Provide
  Arbitrary<String> names() {
    Arbitrary<String> any = Arbitraries.strings().all().ofMaxLength(40);
    Arbitrary<String> nasty =
        Arbitraries.strings()
            .withChars(".- /\\:\n\u001B\u009B\u202E\u2028\u0308\uD83D\"'ü-.A")
            .ofMaxLength(12);
    Arbitrary<String> devices = Arbitraries.of("CON", "con.", "nul.x.y", "Lpt9 ", "COM¹", "aux-");
    Arbitrary<String> long_ = Arbitraries.of("ü", "a", "\uD83D\uDC57", "衣").map(s -> s.repeat(300));
    return Arbitraries.oneOf(any, nasty, devices, long_);
  }

  @Property(tries = 3000)
  void aStemIsANameThatEverySystemTakes(@ForAll("names") String text) {
    String stem = OutputName.stem(text, "sheet");
    assertSound(stem);
    assertTrue(stem.matches("[\\p{L}\\p{M}\\p{N}._-]+"), stem);
    assertEquals(stem, OutputName.stem(stem, "sheet"), "once is enough");
  }

  @Property(tries = 3000)
  void aKeptNameIsANameThatEverySystemTakes(@ForAll("names") String text) {
    assertSound(OutputName.kept(text, "picture"));
  }

  private static void assertSound(String name) {
    assertFalse(name.isEmpty());
    assertFalse(".- ".contains(name.substring(0, 1)), name);
    assertFalse(". ".contains(name.substring(name.length() - 1)), name);
    for (int c : name.codePoints().toArray()) {
      assertTrue(c >= 0x20 && (c < 0x7F || c > 0x9F), name);
      assertTrue("<>:\"/\\|?*\u202E\u2028".indexOf(c) < 0, name);
      assertTrue(c < 0xD800 || c > 0xDFFF, "half a letter");
    }
    // 255 bytes are the most on common file systems; endings come behind.
    assertTrue(name.getBytes(StandardCharsets.UTF_8).length <= 241, name);
    String device = name.toLowerCase(Locale.ROOT).replaceFirst("\\..*", "");
    assertFalse(DEVICES.contains(device), name);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MG-3107 | MG-3107",
        ".-MG/1- | MG-1",
        "--overwrite | overwrite",
        "../../etc/passwd | etc-passwd",
        "CON | CON_",
        "con.1 | con_.1",
        "Mäntel 7 | Mäntel-7",
        "u\u0308 | ü",
        "... | sheet",
        "衣服 | 衣服",
      })
  void styleNumbers(String number, String expected) {
    assertEquals(expected, OutputName.stem(number, "sheet"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "front | front",
        "front (2) don't | front (2) don't",
        "-front | front",
        ".hidden | hidden",
        "a\u001B[2Jb | a-[2Jb",
      })
  void namesOfCopies(String name, String expected) {
    assertEquals(expected, OutputName.kept(name, "picture"));
  }

  /** Two names that differ stay two where nothing in them does harm. */
  @Property
  void harmlessNamesStay(@ForAll("harmless") String name) {
    assertEquals(
        List.of(name, name), List.of(OutputName.stem(name, "x"), OutputName.kept(name, "x")));
  }

  @Provide
  Arbitrary<String> harmless() {
    return Arbitraries.strings()
        .withCharRange('a', 'z')
        .withChars("äöü0123456789_")
        .ofMinLength(5)
        .ofMaxLength(30);
  }
}
