package dev.placket.pictures.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.placket.pictures.base.PictureException;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What a message quotes stays on its line and steers no terminal. */
class VisibleTest {
  /** The line breaks of UAX 14 (classes BK, CR, LF, NL) and the control codes of ISO/IEC 6429. */
  private static final String BREAKING = "[\\p{Cc}\\u2028\\u2029]";

  /** The signs that embed, override or isolate a direction (UAX 9, table 4 and section 2.4). */
  private static final String TURNING = "[\\u202A-\\u202E\\u2066-\\u2069]";

  private static void staysOnItsLine(String text) {
    assertFalse(text.matches("(?s).*" + BREAKING + ".*"), text);
    assertFalse(text.matches("(?s).*" + TURNING + ".*"), text);
  }

  @Property
  void anyTextStaysOnItsLine(@ForAll String text) {
    staysOnItsLine(Visible.line(text));
    staysOnItsLine(String.valueOf(new PictureException(Fault.content(text, text)).getMessage()));
  }

  @Property
  void asItIsTwice(@ForAll String text) {
    assertEquals(Visible.line(text), Visible.line(Visible.line(text)));
  }

  @Example
  void spellsSignsOut() {
    assertEquals("a\\nb\\r\\u001B[31m", Visible.line("a\nb\r\u001B[31m"));
    assertEquals("\\u0000 \\u2028 \\u202E", Visible.line("\0 \u2028 \u202E"));
    assertEquals("größe 袖口 ✂", Visible.line("größe 袖口 ✂"));
  }

  @Example
  void ofPictures() {
    assertEquals(
        "fr\\nont.svg: is empty; export it.",
        new PictureException(Fault.content("fr\nont.svg", "is empty").remedy("export it"))
            .getMessage());
  }
}
