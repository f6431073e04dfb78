package dev.placket.pictures.css;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;

/** CSS Variables 1 by its worked examples, with fill in the place of other colours. */
class VariablesTest {
  /** Example 1 and the note on small and capital letters below it. */
  @Test
  void aNameStandsForItsValue() throws Exception {
    Styled s =
        Styled.of(
            ":root{--main-color:#06c;--FOO:red} #r{fill:var(--main-color);stroke:var(--foo)}",
            "<rect id='r'/>");
    assertEquals("#06c", s.value("r", "fill"));
    assertEquals("none", s.value("r", "stroke").replace("inherit", "none"));
  }

  /** Clause 2.1, the example with :root, div and #alert. */
  @Test
  void theyAreInherited() throws Exception {
    Styled s =
        Styled.of(
            ":root{--color:blue} g{--color:green} #alert{--color:red} *{fill:var(--color)}",
            "<rect id='p'/><g id='d'><rect id='q'/></g><g id='alert'><rect id='t'/></g>");
    assertEquals("blue", s.value("p", "fill"));
    assertEquals("green", s.value("d", "fill"));
    assertEquals("green", s.value("q", "fill"));
    assertEquals("red", s.value("t", "fill"));
  }

  /** SVG 2, clause 5.6: a used element inherits from its {@code use}, which is not done here. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "#u{--c:green} #r{fill:var(--c,blue)}       | true",
        "#g{--c:green} #r{fill:var(--c,blue)}       | true",
        "#d{--c:green} #r{fill:var(--c,blue)}       | true",
        "#u{--c:green} #r{fill:blue}                | false",
        ":root{--c:green;fill:var(--c)} #r{fill:var(--c,blue)} | false",
        "#r{--c:green;fill:var(--c)}                | false",
      })
  void valuesThatAUseWouldChangeAreNoted(String css, boolean noted) throws Exception {
    Styled s =
        Styled.of(css, "<defs id='d'><rect id='r'/></defs><g id='g'><use id='u' href='#r'/></g>");
    assertEquals(noted, s.notes().toString().contains("custom property"), s.notes()::toString);
  }

  /** Clause 2.3: a circle, and what looks like one across three elements. */
  @Test
  void circlesStandForNothing() throws Exception {
    Styled s =
        Styled.of(
            ":root{--one:calc(var(--two) + 20px);--two:calc(var(--one) - 20px)}"
                + "#a{--foo:10px} #b{--bar:calc(var(--foo) + 10px)}"
                + "#c{--foo:calc(var(--bar) + 10px);stroke-width:var(--foo)}"
                + "#r{stroke-width:var(--one, 3px)} #t{--x:var(--x, red);fill:var(--x, lime)}",
            "<rect id='r'/><rect id='t'/><g id='a'><g id='b'><rect id='c'/></g></g>");
    assertEquals("30px", s.value("c", "stroke-width"));
    assertEquals("3px", s.value("r", "stroke-width"));
    assertEquals("lime", s.value("t", "fill"));
  }

  /** Clause 3, its examples, and 3.1: what is invalid once it is known counts as unset. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fill:red; fill:var(--not-a-color) | inherit",
        "fill:red; fill:var(--undefined) | inherit",
        "fill:red; fill:var(--undefined, blue) | blue",
        "fill:red; fill:var(--undefined, var(--neither, lime)) | lime",
        "fill:red; fill:var( --named ) | lime",
        "fill:red; fill:var(--empty) blue | blue",
        "fill:red; fill:var(named) | inherit",
        "fill:rgb(var(--channels)) | #010203",
        "--a: initial; fill:var(--a, blue) | blue",
        "--named: inherit; fill:var(--named) | lime",
        "fill:var(--wide) | inherit",
      })
  void whatAVariableComesTo(String css, String expected) throws Exception {
    Styled s =
        Styled.of(
            ":root{--not-a-color:20px;--named:lime;--empty:;--channels:1,2, 3;--wide:inherit}"
                + "rect{"
                + css
                + "}",
            "<rect id='r' fill='gray'/>");
    assertEquals(expected, s.value("r", "fill"));
  }

  /** Clause 3: a variable is no part of a word, "20px" is not made of 20 and px. */
  @Test
  void partsDoNotRunTogether() throws Exception {
    Styled s =
        Styled.of(
            "rect{--gap:20;stroke-width:var(--gap)px} #t{stroke-width:calc(var(--gap)*1px)}",
            "<rect id='r'/><rect id='t'/>");
    assertEquals("inherit", s.value("r", "stroke-width"));
    assertEquals("20px", s.value("t", "stroke-width"));
  }

  @Test
  void presentationAttributesUseThemToo() throws Exception {
    Styled s = Styled.of(":root{--c:lime}", "<rect id='r' fill='var(--c)'/>");
    assertEquals("lime", s.value("r", "fill"));
  }

  /** Clause 3.3, "Safely handling overly-long variables": the billion laughs. */
  @Test
  void growthIsCounted() throws Exception {
    StringBuilder css = new StringBuilder("*{--a0: lol;");
    for (int i = 1; i < 30; i++) {
      css.append("--a").append(i).append(":");
      css.append((" var(--a" + (i - 1) + ")").repeat(10)).append(';');
    }
    Document document =
        Styled.parsed(
            "<svg xmlns='http://www.w3.org/2000/svg'><style>"
                + css.append("fill:var(--a29)}")
                + "</style></svg>");
    assertThrows(
        TooManySteps.class, () -> StyleSheets.apply(document, new PageSize(1, 1), 10_000_000));
  }
}
