package dev.placket.pictures.css;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** Cascade 4 and 5, and CSS Syntax 3 on faults, by their worked examples. */
class CascadeTest {
  private static String fill(String css) throws Exception {
    return Styled.of(css, "<g id='g' class='g'><rect id='r' class='a b' fill='gray'/></g>")
        .value("r", "fill");
  }

  /** Weights in their order, Cascade 5, clause 6; a value per case worked out by hand. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rect{fill:red} | red",
        "circle{fill:red} | gray",
        "*{fill:red} | red",
        ".a{fill:red} rect{fill:blue} | red",
        ".a{fill:red} .b{fill:blue} | blue",
        "#r{fill:red} .a.b{fill:blue} | red",
        ".a{fill:red !important} #r{fill:blue} | red",
        ".a{fill:red ! IMPORTANT} .b{fill:blue!important} | blue",
        ".a{FILL:Red} | red",
        "@media print{rect{fill:red}} | red",
        "@media all{rect{fill:red}} | red",
        "@media screen{rect{fill:red}} | gray",
        "@media screen, print{rect{fill:red}} | red",
        "@media not screen{rect{fill:red}} | red",
        "@media not all{rect{fill:red}} | gray",
        "@media (min-width: 150px){rect{fill:red}} | red",
        "@media (min-width: 250px){rect{fill:red}} | gray",
        "@media print and (max-height: 100px){rect{fill:red}} | red",
        "@media (prefers-color-scheme: dark){rect{fill:red}} | gray",
        "@media print{@media screen{rect{fill:red}}} | gray",
        "@layer a{#r{fill:red}} rect{fill:blue} | blue",
        "@layer a{rect{fill:red}} @layer b{*{fill:blue}} | blue",
        "@layer b, a; @layer a{rect{fill:red}} @layer b{rect{fill:blue}} | red",
        "@layer a{rect{fill:red !important}} @layer b{rect{fill:blue !important}} | red",
        "@layer a{rect{fill:red} @layer b{rect{fill:blue}}} | red",
        ".g{.a{fill:red}} | red",
        ".g{& > .a{fill:red}} | red",
        ".a{&.b{fill:red} fill:blue} | red",
        "rect{@media print{fill:red}} | red",
        "rect{fill:inherit} | inherit",
        "rect{fill:initial} | black",
        "rect{fill:unset} | inherit",
        "rect{fill:revert} | inherit",
      })
  void theHeaviestDeclarationHolds(String css, String expected) throws Exception {
    assertEquals(expected, fill(css));
  }

  /** CSS 2.1, 4.2, "Malformed declarations": all of these are equivalent to the first. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "rect { fill:green }",
        "rect { fill:green; fill }",
        "rect { fill:red;   fill; fill:green }",
        "rect { fill:green; fill: }",
        "rect { fill:red;   fill:; fill:green }",
        "rect { fill:green; fill{;fill:maroon} }",
        "rect { fill:red;   fill{;fill:maroon}; fill:green }",
        // CSS 2.1, 4.2, "Illegal values", "Unknown properties", "Malformed statements".
        "rect { fill:green; fill:\"red\" }",
        "rect { fill:green; fill:#1 }",
        "rect { fill:green; rotation: 70minutes }",
        "rect { fill:green } p @here {fill: red}",
        "rect { fill:green } @foo @bar; rect {}",
        "@foo @bar; rect { fill:green }",
        "rect { fill:green } }} {{ - }}",
        "rect { fill:green } ) ( {} ) rect {fill: red }",
        "@three-dee { @background-lighting { azimuth: 30deg; } rect { fill: red } }"
            + " rect { fill: green }",
        // "Unexpected end of style sheet".
        "rect { fill:green",
        "@media print { rect { fill: green",
        // Comments and marks of older HTML, CSS Syntax 3, 4.3.2 and 5.4.1.
        "<!-- rect { fill: green } -->",
        "rect /* a } b */ { /* ; */ fill /**/ : /* x */ green /* ! */ ; }",
        "rect { fill: green; filter: progid:DXImageTransform.Microsoft.x(a=1); *zoom: 1 }",
        "rect { content: \"a;}b\"; fill: green }",
        "rect { x: url(a;b}c); fill: green }",
        "rect { fill: green; : ; $a: 3; 1: 2 }",
        "rect { --x: {a:b;c}; fill: green; --y:; --z: ;}",
      })
  void aFaultCostsWhatCssSays(String css) throws Exception {
    assertEquals("green", fill(css));
  }

  @Test
  void theStyleAttributeOutweighsSheetsUnlessTheyAreImportant() throws Exception {
    Styled s =
        Styled.of(
            "#r{fill:red;stroke:red!important}",
            "<rect id='r' style='fill:lime;stroke:lime'/>"
                + "<rect id='s' style='fill:lime!important;fill:red'/>");
    assertEquals("lime", s.value("r", "fill"));
    assertEquals("red", s.value("r", "stroke"));
    assertEquals("lime", s.value("s", "fill"));
  }

  @Test
  void aSheetForTheScreenOrOfAnotherKindIsPassedOver() throws Exception {
    Styled s =
        Styled.of(
            "",
            "<style media='screen'>rect{fill:red}</style><style type='text/less'>rect{fill:red}"
                + "</style><style type='text/css' media='print'>rect{stroke:red}</style>"
                + "<rect id='r'/>");
    assertEquals("", s.value("r", "fill"));
    assertEquals("red", s.value("r", "stroke"));
    assertEquals("[a style sheet of the kind 'text/less' is left out]", s.notes().toString());
  }

  @Test
  void workIsCounted() throws Exception {
    StringBuilder svg = new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg'><style>");
    svg.append("* * * * rect{fill:red} ".repeat(50)).append("</style>");
    svg.append("<g>".repeat(50)).append("<rect/>".repeat(50)).append("</g>".repeat(50));
    Document document = Styled.parsed(svg.append("</svg>").toString());
    // 50 rules on 50 rectangles are 2,500 tests at least.
    String message =
        assertThrows(
                TooManySteps.class, () -> StyleSheets.apply(document, new PageSize(1, 1), 2400))
            .getMessage();
    assertTrue(String.valueOf(message).contains("2400"), message);
  }
}
