package dev.placket.pictures.css;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.stream.IntStream;
import org.htmlunit.cssparser.parser.selector.Selector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Selectors 4, with its worked examples; the expected values are the standard's own. */
class SelectorsTest {
  private static List<Selector> read(String text) {
    List<Selector> read = new Selectors().read(text);
    assertNotNull(read, text);
    return read;
  }

  /** Selectors 4, clause 17, "Examples". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "* | 0 0 0",
        "LI | 0 0 1",
        "UL LI | 0 0 2",
        "UL OL+LI | 0 0 3",
        "H1 + *[REL=up] | 0 1 1",
        "UL OL LI.red | 0 1 3",
        "LI.red.level | 0 2 1",
        "#x34y | 1 0 0",
        "#s12:not(FOO) | 1 0 1",
        ".foo :is(.bar, #baz) | 1 1 0",
        ":is(em, #foo) | 1 0 0",
        ".qux:where(em, #foo#bar#baz) | 0 1 0",
        ":not(em, strong#foo) | 1 0 1",
      })
  void specificityIsThatOfTheStandardsExamples(String selector, String expected) {
    Specificity s = Specificity.of(read(selector).get(0));
    assertEquals(expected, s.ids() + " " + s.classes() + " " + s.types());
  }

  /** Selectors 4, 14.3.1, and CSS Syntax 3, 6.1: places among twelve siblings. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2n+1 | 1 3 5 7 9 11",
        "odd | 1 3 5 7 9 11",
        "2n+0 | 2 4 6 8 10 12",
        "even | 2 4 6 8 10 12",
        "4n+1 | 1 5 9",
        "10n-1 | 9",
        "10n+9 | 9",
        "0n+5 | 5",
        "5 | 5",
        "1n+0 | 1 2 3 4 5 6 7 8 9 10 11 12",
        "n | 1 2 3 4 5 6 7 8 9 10 11 12",
        "-n+6 | 1 2 3 4 5 6",
        "-n+ 6 | 1 2 3 4 5 6",
        "3n + 1 | 1 4 7 10",
        "+3n - 2 | 1 4 7 10",
        "+6 | 6",
        "-2n+3 | 1 3",
      })
  void everyNthIsWhatTheFormulaSays(String formula, String expected) {
    Nth nth = Nth.of("nth-child(" + formula + ")");
    assertNotNull(nth);
    String places =
        IntStream.rangeClosed(1, 12)
            .filter(nth::has)
            .mapToObj(Integer::toString)
            .reduce((a, b) -> a + " " + b)
            .orElse("");
    assertEquals(expected, places);
  }

  /** Selectors 4, 14.3.1: "invalid". */
  @ParameterizedTest
  @ValueSource(strings = {"3 n", "+ 2n", "+ 2", "10n+-1"})
  void formulasWithMisplacedSpacesAreNone(String formula) {
    assertNull(Nth.of("nth-child(" + formula + ")"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "..a",
        "a:unknown(3)",
        ".a, b::",
        "a >",
        "> a",
        "a,",
        "svg:nth-child(x)",
        ":has(a)",
        "[a=",
        "h1, h2 & h3"
      })
  void whatIsNotUnderstoodIsNone(String selector) {
    assertNull(new Selectors().read(selector));
  }

  /** Which of a family a selector means, told by hand from the names. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "*;root g a b c d e",
        ".x;a c",
        ".y;c",
        "#b;b",
        "rect;a b d",
        "g rect;a b d",
        "g > rect;a b d",
        "svg > rect;",
        "rect + rect;b",
        ".x ~ rect;b d",
        "g > :not(.x);b d e",
        "g > :not(.x, circle);b d",
        ":is(.y, #b);b c",
        ":where(.y, #b);b c",
        "rect:first-child;a",
        ":last-child;root g e",
        ":first-of-type;root g a c",
        "g > :last-of-type;d e",
        "g > :nth-child(2n);b d",
        "rect:nth-of-type(2);b",
        "g > :nth-last-child(2);d",
        "rect:nth-last-of-type(1);d",
        ":only-child;root",
        "g:only-of-type;g",
        ":root;root",
        "g > :empty;a b c e",
        "[data-part];a b d",
        "[data-part=sleeve];a",
        "[data-part='SLEEVE' i];a",
        "[data-part='SLEEVE'];",
        "[data-part^=sl];a",
        "[data-part$=ff];b",
        "[data-part*=u];b",
        "[data-part~=left];d",
        "[data-part|=pocket];d",
        "[data-part^=''];",
        "rect:hover;",
        "rect:not(:hover);a b d",
        "g:lang(de);g",
      })
  void selectorsMeanTheElementsThatTheyDescribe(String selector, String expected) throws Exception {
    Styled styled =
        Styled.of(
            selector + "{stroke:lime}",
            "<g id='g' xml:lang='de-AT'><rect id='a' class='x' data-part='sleeve'/>"
                + "<rect id='b' data-part='cuff'/><circle id='c' class=' y x'/>"
                + "<rect id='d' data-part='pocket-left left'>t</rect><circle id='e'/></g>");
    StringBuilder meant = new StringBuilder();
    for (String id : List.of("root", "g", "a", "b", "c", "d", "e")) {
      if (styled.value(id, "stroke").equals("lime")) {
        meant.append(' ').append(id);
      }
    }
    // The sheet itself stands first among the children of the root, so g is no first child. The
    // root has no siblings, and is the first and last of its kind (Selectors 4, 14.3).
    assertEquals(expected == null ? "" : expected, meant.toString().strip());
  }

  @Test
  void theFaultOfOneSelectorCostsItsRuleAlone() throws Exception {
    Styled s =
        Styled.of(
            ".a{fill:red} ..b, .a{fill:blue} a:foo{x:y} .a{stroke:lime}",
            "<rect id='r' class='a'/>");
    assertEquals("red", s.value("r", "fill"));
    assertEquals("lime", s.value("r", "stroke"));
    assertEquals(
        List.of(
            "the style rule for '..b, .a' is not understood and left out",
            "the style rule for 'a:foo' is not understood and left out"),
        s.notes());
  }

  @Test
  void whatASheetAddsIsNoted() throws Exception {
    Styled s = Styled.of("::before, rect::after, rect{fill:red}", "<rect id='r'/>");
    assertEquals("red", s.value("r", "fill"));
    assertEquals(
        List.of("what the style rule for '::before, rect::after, rect' adds is left out"),
        s.notes());
  }
}
