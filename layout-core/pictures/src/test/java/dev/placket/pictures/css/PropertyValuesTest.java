package dev.placket.pictures.css;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values in the plain form that older readers know. */
class PropertyValuesTest {
  private static final PropertyValues VALUES = new PropertyValues(new PageSize(200, 100));

  /** CSS Color 4: examples of clauses 5.1, 5.2, 7, 8, and conversions worked out by hand. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#0f0 | #0f0",
        "#00FF00 | #00ff00",
        "#0f0f | #00ff00",
        "#00ff00ff | #00ff00",
        "#0f08 | rgba(0,255,0,0.533333333333)",
        "#0000 | rgba(0,0,0,0)",
        "rgb(255,0,0) | #ff0000",
        "rgb(100%, 0%, 0%) | #ff0000",
        "rgb(0 128 0) | #008000",
        "rgb(0 128 0 / 50%) | rgba(0,128,0,0.5)",
        "rgba(0,128,0,.5) | rgba(0,128,0,0.5)",
        "rgb(0 50% 0) | #008000",
        "rgb(300, -5, 12.4) | #ff000c",
        "hsl(120, 100%, 25%) | #008000",
        "hsl(120deg 100% 50%) | #00ff00",
        "hsl(0.5turn 100% 50% / 0.25) | rgba(0,255,255,0.25)",
        "hsl(-240, 100%, 50%) | #00ff00",
        "hsla(240, 100%, 50%, 1) | #0000ff",
        "hwb(0 100% 100%) | #808080",
        "hwb(150 20% 10%) | #33e68c",
        "rebeccapurple | #663399",
        "transparent | rgba(0,0,0,0)",
        "LightSeaGreen | lightseagreen",
        "CURRENTCOLOR | currentColor",
        "#cd853f icc-color(acmecmyk, 0.11, 0.48, 0.83, 0.00) | #cd853f",
      })
  void coloursComeInOneNotation(String stated, String plain) {
    assertEquals(plain, VALUES.canonical("fill", stated));
    assertEquals(plain, VALUES.canonical("color", stated));
  }

  @ParameterizedTest
  @CsvSource({
    "fill,reddish",
    "fill,#ff",
    "fill,#12345",
    "fill,rgb(1 2)",
    "fill,'rgba(0,50%,0,.5)'",
    "fill,url(http://a/b)",
    "fill-opacity,half",
    "stroke-width,-1px",
    "stroke-width,wide",
    "stroke-dasharray,1 -2",
    "clip-path,circle(3px)",
    "fill-rule,odd",
    "opacity,1px",
    "color,none",
    "stroke-linecap,1",
  })
  void whatAPropertyDoesNotTakeIsNoValue(String name, String value) {
    assertNull(VALUES.canonical(name, value));
  }

  /** CSS Values 4, clauses 6.2 and 10, on a page of 200 by 100 pixels. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stroke-width | calc(1px + 2px) | 3px",
        "stroke-width | calc(2 * (1px + .5px)) | 3px",
        "stroke-width | calc(1in/4 - 4px) | 20px",
        "stroke-width | calc(10% + 5%) | 15%",
        "stroke-width | min(3px, 1in) | 3px",
        "stroke-width | max(3px, 1pc, 2px) | 16px",
        "stroke-width | clamp(1px, 5px, 3px) | 3px",
        "stroke-width | 2vw | 4px",
        "stroke-width | 40q | 37.7952755906px",
        "stroke-width | 1e1 | 10",
        "stroke-width | .5e-1px | 0.05px",
        "fill-opacity | 50% | 0.5",
        "fill-opacity | 1.5 | 1",
        "fill-opacity | calc(1 / 4) | 0.25",
        "stroke-dasharray | 1px, 2 3e0 | 1px,2,3",
        "stroke-linejoin | ROUND | round",
        "clip-path | url('#a') | url(#a)",
        "fill | url(#a)none | url(#a) none",
        "fill | url( \"#a\" ) #F00 | url(#a) #f00",
        "display | flex | inline",
        "mix-blend-mode | multiply | multiply",
        "transform | rotate(10deg) translate(1px, 2px) | rotate(10deg) translate(1px, 2px)",
      })
  void lengthsAndWordsComeInPlainForm(String name, String stated, String plain) {
    assertEquals(plain, VALUES.canonical(name, stated));
  }

  @Test
  void seeThroughPaintsAreInheritedAndMultiply() throws Exception {
    Styled s =
        Styled.of(
            "g{fill:#ff000080;stop-color:#00ff0040} .s{stop-color:rgb(0 0 255/.5);stop-opacity:.5}",
            "<g id='g'><rect id='r' fill-opacity='.5'/><stop id='s' class='s'/>"
                + "<stop id='t' stop-color='inherit' stop-opacity='.5'/></g>");
    String id = s.value("g", "fill").replaceAll("url\\(#(.*)\\)", "$1");
    // 80 hex is 128 of 255.
    assertEquals(
        128 / 255.0,
        Double.parseDouble(
            ((org.w3c.dom.Element) s.element(id).getFirstChild()).getAttribute("stop-opacity")),
        1e-11);
    assertEquals("0.5", s.value("r", "fill-opacity"));
    assertEquals("#0000ff", s.value("s", "stop-color"));
    assertEquals("0.25", s.value("s", "stop-opacity"));
    assertEquals("#00ff00", s.value("t", "stop-color"));
    // 40 hex is 64 of 255; times one half.
    assertEquals(32 / 255.0, Double.parseDouble(s.value("t", "stop-opacity")), 1e-11);
  }

  /** CSS Color 4, clause 4.4: currentColor is inherited as a word. */
  @Test
  void currentColorFollowsTheColourOfWhereItIsUsed() throws Exception {
    Styled s =
        Styled.of(
            "",
            "<g id='a' fill='currentColor'><g id='b' color='green'><rect id='r'/></g>"
                + "<rect id='t' style='color:#ff000080'/></g>");
    assertEquals("currentColor", s.value("b", "fill"));
    assertEquals("", s.value("r", "fill"));
    assertEquals("#ff0000", s.value("t", "color"));
    assertEquals("url(#colour-1)", s.value("t", "fill"));
  }
}
