package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.ViewBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms of SVG 2 and CSS against a plain drawing of the same, pixel by pixel. */
class RewrittenTest {
  private static final String VIEW = "viewBox='0 0 100 100'";
  private static final String SHAPE = "<path d='M10 10H60V20H40V50H10Z' fill='#226644'";

  private static void same(String form, String plain) throws Exception {
    SameDrawing.assertSame(SameDrawing.svg(VIEW, form), SameDrawing.svg(VIEW, plain));
  }

  /** CSS Transforms 1, 12: each function as the matrix that its text gives. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "translate(20px, 30px); matrix(1 0 0 1 20 30)",
        "translate(20%, 30%); matrix(1 0 0 1 20 30)",
        "translateX(5mm); matrix(1 0 0 1 18.897637795 0)",
        "translateY(-.5e1px); matrix(1 0 0 1 0 -5)",
        "scale(1.5); matrix(1.5 0 0 1.5 0 0)",
        "scale(150%, .5); matrix(1.5 0 0 .5 0 0)",
        "scaleX(1.5) scaleY(2); matrix(1.5 0 0 2 0 0)",
        "translate(60px,10px) rotate(90deg); matrix(0 1 -1 0 60 10)",
        "translate(60px,10px) rotate(.25turn); matrix(0 1 -1 0 60 10)",
        "translate(60px,10px) rotate(100grad); matrix(0 1 -1 0 60 10)",
        "translate(60px,10px) rotate(1.570796326795rad); matrix(0 1 -1 0 60 10)",
        "skewX(45deg); matrix(1 0 1 1 0 0)",
        "skew(0deg, 45deg); matrix(1 1 0 1 0 0)",
        "matrix(1, 0, 1, 1, 5, 6); matrix(1 0 1 1 5 6)",
        "none; matrix(1 0 0 1 0 0)",
        "nonsense(3); matrix(1 0 0 1 0 0)",
      })
  void aTransformInAStyleIsThatOfItsMatrix(String css, String matrix) throws Exception {
    same(
        SHAPE + " style='opacity:1; transform: " + css + " '/>",
        SHAPE + " transform='" + matrix + "'/>");
  }

  /** CSS Transforms 1, 4: the property wins; 6: the origin is moved to the corner and back. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "transform='translate(50)' style='transform:translate(9px)' | translate(9)",
        "transform='rotate(20)' transform-origin='center' | rotate(20 50 50)",
        "transform='rotate(20)' transform-origin='40 30' | rotate(20 40 30)",
        "style='transform:rotate(20deg);transform-origin:bottom' | rotate(20 50 100)",
        "style='transform:rotate(20deg);transform-origin:top left' | rotate(20 0 0)",
        "style='transform:rotate(20deg);transform-origin:30px' | rotate(20 30 50)",
        "style='transform:rotate(20deg);transform-origin:60% 20%' | rotate(20 60 20)",
        "style='transform:rotate(20deg)' | rotate(20)",
      })
  void whatATransformTurnsAbout(String form, String plain) throws Exception {
    same(SHAPE + " " + form + "/>", SHAPE + " transform='" + plain + "'/>");
  }

  /** A line's outline is that of a path with the same ends (SVG 2, 10.5), skewed or not. */
  @ParameterizedTest
  @CsvSource({"scale(1 2)", "skewX(-45)", "rotate(30) scale(3 .5)", "matrix(1 .5 -.7 1 30 0)"})
  void aLineIsAPathOfTwoPoints(String transform) throws Exception {
    String pen = " stroke='#204080' stroke-width='9' transform='" + transform + "'/>";
    same("<line x1='10' y1='10' x2='30' y2='40'" + pen, "<path d='M10 10L30 40'" + pen);
    Drawing skewed =
        SameDrawing.read(
            SameDrawing.svg(
                "viewBox='0 0 100 100'",
                "<line x1='10' y1='20' x2='90' y2='20' stroke='#000' stroke-width='20'"
                    + " transform='skewX(45)'/>"));
    // By hand: the line from y = 10 to 30, each point moved right by its y.
    assertEquals(20, skewed.inkedBox().left(), 1e-3);
    assertEquals(0xff, skewed.render(100, skewed.inkedBox()).getRGB(1, 0) >>> 24, 0x60);
  }

  @Test
  void theRootIsClippedMovedAndFadedAsAGroupIs() throws Exception {
    String clip = "<clipPath id='c'><circle cx='40' cy='40' r='25'/></clipPath>";
    String all = clip + SHAPE + "/><rect x='30' y='30' width='40' height='40' fill='#a22'/>";
    SameDrawing.assertSame(
        SameDrawing.svg(VIEW + " clip-path='url(#c)'", all),
        SameDrawing.svg(VIEW, "<g clip-path='url(#c)'>" + all + "</g>"));
    SameDrawing.assertSame(
        SameDrawing.svg(VIEW + " style='transform:translate(9px,7px)'", all),
        SameDrawing.svg(VIEW, "<g transform='translate(9 7)'>" + all + "</g>"));
    String nested = "<svg x='5' width='50' height='50' viewBox='0 0 100 100'";
    same(
        nested + " transform='rotate(9)'>" + all + "</svg>",
        "<g transform='rotate(9)'>" + nested + ">" + all + "</svg></g>");
  }

  /** SVG 2, 8.6: where a viewBox of 100 by 50 lies in a square of 200. */
  @ParameterizedTest
  @CsvSource({
    "xMidYMid meet, 0, -25, 100, 100",
    "xMinYMin meet, 0, 0, 100, 100",
    "xMaxYMax, 0, -50, 100, 100",
    "'', 0, -25, 100, 100",
    "xMidYMid slice, 25, 0, 50, 50",
    "xMaxYMid slice, 50, 0, 50, 50",
    "none, 0, 0, 100, 100",
  })
  void whatTheStatedSizeShows(String aspect, double x, double y, double w, double h)
      throws Exception {
    Drawing d =
        SameDrawing.read(
            SameDrawing.svg(
                "viewBox='0 0 100 50' width='200' height='200' preserveAspectRatio='"
                    + aspect
                    + "'",
                "<rect x='40' y='10' width='20' height='20'/>"));
    assertEquals(new ViewBox(x, y, w, h), d.viewBox());
    boolean stretched = aspect.equals("none");
    double left = Math.max(x, 40);
    assertEquals(left, d.inkedBox().left(), 1e-4);
    assertEquals(stretched ? 20 : 10, d.inkedBox().top(), 1e-4);
    assertEquals(stretched ? 60 : 30, d.inkedBox().bottom(), 1e-4);
  }

  @Test
  void aSizeRoundedByTheProgramShowsTheViewBox() throws Exception {
    Drawing d =
        SameDrawing.read(
            SameDrawing.svg(
                "viewBox='0 0 595 842' width='210mm' height='297mm'",
                "<rect width='9' height='9'/>"));
    assertEquals(new ViewBox(0, 0, 595, 842), d.viewBox());
  }

  /** CSS Color 4, 9.2: the word is inherited, not the colour that it had. */
  @Test
  void currentColorIsTheColourOfWhatIsPainted() throws Exception {
    same(
        "<g color='#a00' fill='currentColor'><g style='color:#0a0'>"
            + "<path d='M9 9h50v50z'/></g></g>",
        "<path d='M9 9h50v50z' fill='#0a0'/>");
  }

  /** SVG 2, 14.2.3: with the circles about one centre, by hand: radius 20 is t = 0, 40 is t = 1. */
  @Test
  void anInnerCircleOfAGradientMovesItsStops() throws Exception {
    String rect = "<rect width='100' height='100' fill='url(#g)'/>";
    String at = "<radialGradient id='g' gradientUnits='userSpaceOnUse' cx='50' cy='50' r='40'";
    same(
        at + " fr='20'><stop stop-color='#fff'/><stop offset='1'/></radialGradient>" + rect,
        at + "><stop offset='.5' stop-color='#fff'/><stop offset='1'/></radialGradient>" + rect);
  }

  @Test
  void anInnerCircleThatRepeatsIsNamed() throws Exception {
    Drawing d =
        SameDrawing.read(
            SameDrawing.svg(
                VIEW,
                "<radialGradient id='g' fr='.2' spreadMethod='repeat'><stop stop-color='#fff'/>"
                    + "<stop offset='1'/></radialGradient><rect width='9' height='9'"
                    + " fill='url(#g)'/>"));
    assertTrue(d.notes().toString().contains("inner circle"), d.notes().toString());
  }

  /** What is drawn otherwise and no renderer agrees on. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "<radialGradient id='g' fx='1.5'>STOPS</radialGradient> | url(#g) | focus outside",
        "<radialGradient id='g' fx='.7'>STOPS</radialGradient> | url(#g) | ",
        "<linearGradient id='g' gradientTransform='scale(0)'>STOPS</linearGradient>"
            + " | url(#g) | flattens it",
        "<g/> | red icc-color(a, 0.1, 0.2, 0.3, 0) | printing colour",
        "<g/> | #a00 device-cmyk(0 1 1 0) | printing colour",
        "<g/> | red | ",
      })
  void aPaintDrawnOtherwiseIsNamed(String defs, String fill, String note) throws Exception {
    String stops = "<stop stop-color='#fff'/><stop offset='1'/>";
    for (String as : new String[] {"fill='%s'", "style='fill:%s'"}) {
      Drawing d =
          SameDrawing.read(
              SameDrawing.svg(
                  VIEW,
                  defs.replace("STOPS", stops)
                      + "<path d='M0 0h9'  stroke='#000'/><rect width='9' height='9' "
                      + String.format(as, fill)
                      + "/>"));
      assertEquals(note == null ? 0 : 1, d.notes().size(), d.notes().toString());
      assertTrue(note == null || d.notes().get(0).changesPicture());
      assertTrue(note == null || d.notes().toString().contains(note), d.notes().toString());
    }
  }

  /** Unicode, annex 15: e and U+0301 are canonically U+00E9; q has no composed form. */
  @Test
  void anAccentAndItsLetterAreOneSign() throws Exception {
    String text = "<text x='5' y='60' font-size='40'>";
    same(text + "e\u0301</text>", text + "\u00e9</text>");
    Drawing d = SameDrawing.read(SameDrawing.svg(VIEW, text + "q\u0301</text>"));
    assertTrue(d.notes().toString().contains("accent U+0301"), d.notes().toString());
  }

  /** SVG 2, 13.7.1: the first marker of the line is turned by half a turn. */
  @Test
  void aMarkerTurnsRoundAtTheStart() throws Exception {
    String arrow =
        "' markerWidth='9' markerHeight='9' refX='2' refY='4.5' markerUnits='userSpaceOnUse'";
    String tip = "><path d='M0 0L9 4.5L0 9Z' fill='#008'/></marker>";
    String line = "<path d='M30 60H80' stroke='#000' stroke-width='2' ";
    same(
        "<marker id='m"
            + arrow
            + " orient='auto-start-reverse'"
            + tip
            + line
            + "marker-start='url(#m)' marker-end='url(#m)'/>",
        "<marker id='m"
            + arrow
            + " orient='auto'"
            + tip
            + "<marker id='n"
            + arrow
            + " orient='180'"
            + tip
            + line
            + "marker-start='url(#n)' marker-end='url(#m)'/>");
  }

  /** SVG 2, 13.7.1: a marker's clip is as wide as the marker, whatever the line. */
  @Test
  void aMarkerIsClippedInItsOwnUnits() throws Exception {
    String line = "<path d='M50 50H99' stroke='#000' stroke-width='6' marker-start='url(#m)'/>";
    String size =
        "refX='5' refY='5' markerUnits='userSpaceOnUse' markerWidth='10' markerHeight='10'";
    same(
        "<marker id='m' "
            + size
            + "><rect width='60' height='60' x='-9' y='-9' fill='#080'/></marker>"
            + line,
        "<marker id='m' " + size + "><rect width='10' height='10' fill='#080'/></marker>" + line);
  }

  @Test
  void aLineBreakBetweenWordsIsASpace() throws Exception {
    same(
        "<text x='5' y='50' font-size='20'>one\ntwo</text>",
        "<text x='5' y='50' font-size='20'>one two</text>");
  }

  /** A box would be drawn for a space without a glyph. */
  @Test
  void aSpaceBetweenSpansIsBlank() throws Exception {
    String text = "<text x='5' y='50' font-size='20'>";
    same(
        text + "<tspan>one</tspan> <tspan fill='#000'>two</tspan></text>", text + "one two</text>");
  }

  /** SVG 2, 13.8: as elements over one another, also where the order is inherited by a use. */
  @ParameterizedTest
  @CsvSource({
    "stroke, stroke fill markers",
    "markers, markers fill stroke",
    "stroke markers, stroke markers fill",
    "fill markers, fill markers stroke",
    "stroke stroke, fill stroke markers",
    "nonsense, fill stroke markers",
  })
  void aShapeIsPaintedInItsOrder(String order, String parts) throws Exception {
    String d = " d='M20 20H80V80H20Z' ";
    String marker =
        "<marker id='m' markerUnits='userSpaceOnUse' markerWidth='30' markerHeight='30' refX='15'"
            + " refY='15'><rect width='30' height='30' fill='#a00'/></marker>";
    String fill = "fill='#0a0'";
    String stroke = "stroke='#00a' stroke-width='12'";
    String marked = "marker-mid='url(#m)'";
    StringBuilder plain = new StringBuilder(marker);
    for (String part : parts.split(" ")) {
      String own = part.equals("fill") ? fill : part.equals("stroke") ? stroke : marked;
      String none = part.equals("fill") ? "" : " fill='none'";
      plain.append("<path").append(d).append(own).append(none).append("/>");
    }
    String all = d + fill + " " + stroke + " " + marked;
    same(marker + "<path" + all + " paint-order='" + order + "'/>", plain.toString());
    same(
        marker
            + "<defs><path id='p'"
            + all
            + "/></defs><use href='#p' style='paint-order:"
            + order
            + "'/>",
        plain.toString());
  }

  /** SVG 2, 13.8: paint-order as two elements, one over the other. */
  @Test
  void textIsFilledOverItsStroke() throws Exception {
    String text = "<text x='5' y='60' font-size='40' ";
    same(
        text + "paint-order='stroke' fill='#0a0' stroke='#00a' stroke-width='6'>Ab</text>",
        text
            + "fill='none' stroke='#00a' stroke-width='6'>Ab</text>"
            + text
            + "fill='#0a0'>Ab</text>");
  }
}
