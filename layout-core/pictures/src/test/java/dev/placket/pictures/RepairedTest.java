package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureNote;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faulty, missing and styled values against a plain drawing of what SVG 2 says for them. */
class RepairedTest {
  private static final String VIEW = "viewBox='0 0 100 50'";
  private static final String FRAME =
      "<linearGradient id='g'><stop/><stop offset='1' stop-color='#0a0'/></linearGradient>"
          + "<path d='M0 0H100V50H0Z' fill='none' stroke='#000'/>";

  private static void same(String form, String plain, boolean noted) throws Exception {
    String svg = SameDrawing.svg(VIEW, FRAME + form);
    SameDrawing.assertSame(svg, SameDrawing.svg(VIEW, FRAME + (plain == null ? "" : plain)));
    Drawing d = SameDrawing.read(svg);
    assertEquals(
        noted, d.notes().stream().anyMatch(PictureNote::changesPicture), () -> "" + d.notes());
  }

  /** Geometry Properties and SVG 2, 7.1 to 7.4, 10.2 to 10.4: sizes and places as properties. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "<rect style='x:9px;y:8px;width:30px;height:20px'/> | <rect x='9' y='8' width='30' height='20'/>",
        "<rect width='99' style='width:30px;height:20px'/> | <rect width='30' height='20'/>",
        "<rect width='30' height='20' style='rx:5px'/> | <rect width='30' height='20' rx='5'/>",
        "<rect width='30' height='20' rx='5' style='rx:auto;ry:8px'/> | <rect width='30' height='20' rx='8'/>",
        "<rect width='30' height='20' rx='auto' ry='8'/> | <rect width='30' height='20' ry='8'/>",
        "<style>.c{cx:40px;cy:20px;r:9px}</style><circle class='c'/> | <circle cx='40' cy='20' r='9'/>",
        "<style>#e{rx:calc(4px + 5px)}</style><ellipse id='e' cx='40' cy='20'/> | <ellipse cx='40' cy='20' rx='9' ry='9'/>",
        "<ellipse cx='40' cy='20' rx='10%'/> | <ellipse cx='40' cy='20' rx='10' ry='10'/>",
        "<ellipse cx='40' cy='20' ry='10%'/> | <ellipse cx='40' cy='20' rx='5' ry='5'/>",
        "<ellipse cx='40' cy='20'/> | ",
        "<path style='d:path(\"M9 9h30v30\")'/> | <path d='M9 9h30v30'/>",
        "<path d='M9 9h30v30' style='d:none'/> | ",
        "<path d='M9 9h30v30' style='width:3px;x:4px'/> | <path d='M9 9h30v30'/>",
        "<rect width='30'/> | ",
        "<circle cx='9'/> | ",
      })
  void aSizeIsAPropertyToo(String form, String plain) throws Exception {
    same(form, plain, false);
  }

  /**
   * SVG 2, 4.2.1 (values that are none count as not given), 9.5.4 (data up to the fault), 10.6
   * (points), 13.7 (markers), 14.2.3 (gradients), 14.3 (patterns), CSS Transforms 1, 6.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "<rect x='9ly' width='30' height='20'/> | <rect width='30' height='20'/>",
        "<rect width='-30' height='20'/> | ",
        "<rect width='30' height='20' rx='-3' ry='4'/> | <rect width='30' height='20' rx='4'/>",
        "<circle r='-3'/> | ",
        "<ellipse cx='40' cy='20' rx='-3' ry='9'/> | <ellipse cx='40' cy='20' rx='9' ry='9'/>",
        "<rect width='30' height='20' transform='turn(3)'/> | <rect width='30' height='20'/>",
        "<rect width='30' height='20' transform='translate(9) scale('/> | <rect width='30' height='20'/>",
        "<path d='M9 9H40V30 L 20'/> | <path d='M9 9H40V30'/>",
        "<path d='M9 9H40V30 # 20 20 V3'/> | <path d='M9 9H40V30'/>",
        "<path d='L9 9H40V30'/> | ",
        "<path d='M9 9H40V30,H7'/> | <path d='M9 9H40V30'/>",
        "<path d='M9 9H40V30A5 5 0 2 0 9 9'/> | <path d='M9 9H40V30'/>",
        "<path d='M9 9H40V30Z 3 4'/> | <path d='M9 9H40V30Z'/>",
        "<polygon points='9 9 40 9 40 30 7'/> | <polygon points='9 9 40 9 40 30'/>",
        "<polyline points='9 9 40 9 40 30 x 3 4'/> | <polyline points='9 9 40 9 40 30'/>",
        "<linearGradient id='h' href='#g' spreadMethod='round'/><path d='M9 9h30v30' fill='url(#h)'/>"
            + " | <path d='M9 9h30v30' fill='url(#g)'/>",
        "<linearGradient id='h' href='#g' gradientUnits='box' x2='far'/><path d='M9 9h30v30' fill='url(#h)'/>"
            + " | <path d='M9 9h30v30' fill='url(#g)'/>",
        "<linearGradient id='h' href='#g' gradientTransform='rotate'/><path d='M9 9h30v30' fill='url(#h)'/>"
            + " | <path d='M9 9h30v30' fill='url(#g)'/>",
        "<linearGradient id='h' href='other.svg#a'><stop stop-color='#00a'/></linearGradient>"
            + "<path d='M9 9h30v30' fill='url(#h)'/> | <path d='M9 9h30v30' fill='#00a'/>",
        "<path d='M9 9h30v30' fill='context-fill'/> | ",
        "<rect width='10vw' height='20'/> | <rect width='10' height='20'/>",
        "<style>@import url(http://a.example/b.css); rect{fill:#00a}</style><rect width='9' height='9'/>"
            + " | <rect width='9' height='9' fill='#00a'/>",
      })
  void aFaultyValueIsNotedAndCountsAsNotGiven(String form, String plain) throws Exception {
    same(form, plain, true);
  }

  /** What only an older grammar refuses is drawn without a note (SVG 2, 9.3.9 and 13.7.1). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "<path d='M9 9h20a5 5 0 01-5 9z'/> | <path d='M9 9h20a5 5 0 0 1 -5 9z'/>",
        "<path d='M9 9h20a5,5,0,1,1-5,9'/> | <path d='M9 9h20a5 5 0 1 1 -5 9'/>",
        "<path d='M9,9h20v9,'/> | <path d='M9 9h20v9'/>",
        "<path d='M9 9 30 9 30.5.5'/> | <path d='M9 9L30 9L30.5 .5'/>",
        "<style>@font-face{font-family:a;src:url(data:x)}</style><rect width='9' height='9'/>"
            + " | <rect width='9' height='9'/>",
        "<stop/><linearGradient id='h'><stop stop-color='#00a'/></linearGradient>"
            + "<path d='M9 9h30v30' fill='url(#h)'/> | <path d='M9 9h30v30' fill='#00a'/>",
      })
  void whatSvgHasNowIsDrawn(String form, String plain) throws Exception {
    same(form, plain, false);
  }

  /** SVG 2, 10.2 to 10.4: where the markers of a shape stand, by hand. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "rect x='10' y='10' width='40' height='20' | M10 10H50V30H10Z",
        "circle cx='40' cy='25' r='15' | M55 25A15 15 0 0 1 40 40A15 15 0 0 1 25 25A15 15 0 0 1 40 10A15 15 0 0 1 55 25Z",
        "ellipse cx='50%' cy='50%' rx='20%' ry='10' | M70 25A20 10 0 0 1 50 35A20 10 0 0 1 30 25A20 10 0 0 1 50 15A20 10 0 0 1 70 25Z",
        "rect x='10' y='10' width='40' height='20' rx='5' | M15 10H45A5 5 0 0 1 50 15V25A5 5 0 0 1 45 30H15A5 5 0 0 1 10 25V15A5 5 0 0 1 15 10Z",
      })
  void everyShapeHasMarkers(String shape, String d) throws Exception {
    String marker =
        "<marker id='m' markerUnits='userSpaceOnUse' markerWidth='6' markerHeight='6' refX='3'"
            + " refY='3' orient='auto'><path d='M0 0L6 3L0 6' fill='#a00'/></marker>"
            + "<g fill='none' stroke='#00a' marker-start='url(#m)' marker-mid='url(#m)'>";
    same(marker + "<" + shape + "/></g>", marker + "<path d='" + d + "'/></g>", false);
  }

  /** CSS Values 4, 7.1: a turn has 360 degrees, 400 grads and 2 pi. */
  @ParameterizedTest
  @CsvSource({"30deg", "33.333333grad", "0.5235988rad", "0.08333333turn"})
  void aMarkerTurnsByAnyUnit(String angle) throws Exception {
    String form =
        "<marker id='m' markerWidth='9' markerHeight='9' orient='%s'><path d='M0 0L9 3L0 6'/>"
            + "</marker><path d='M9 9H40' stroke='#000' stroke-width='2' marker-start='url(#m)'/>";
    same(String.format(form, angle), String.format(form, "30"), false);
  }

  /** Selectors 4, 14.3: what draws nothing, or is of another namespace, counts among siblings. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "<metadata/>",
        "<o:x xmlns:o='urn:o'><o:y/></o:x>",
        "<set/>",
        "<title/>",
        "<nonsense/>",
      })
  void whatIsLeftOutCountsAmongSiblings(String sibling) throws Exception {
    Drawing d =
        SameDrawing.read(
            SameDrawing.svg(
                VIEW,
                "<style>g :nth-child(3){width:30px}</style><g>"
                    + sibling
                    + "<desc/><rect width='9' height='9'/></g>"));
    assertEquals(30, d.inkedBox().right(), 1e-6);
  }

  @Test
  void aStyleSheetBesideTheDrawingIsNoted() throws Exception {
    Drawing d =
        SameDrawing.read(
            "<?xml-stylesheet href='a.css'?>"
                + SameDrawing.svg(VIEW, "<rect width='9' height='9'/>"));
    assertTrue(d.notes().toString().contains("xml-stylesheet"), () -> "" + d.notes());
    assertTrue(d.notes().get(0).changesPicture());
  }

  /** Every beginning of a path draws what its whole segments draw. */
  @Property(tries = 100)
  void aPathIsDrawnUpToItsFault(@ForAll @IntRange(min = 1, max = 60) int length) throws Exception {
    String[] whole = {"M10 10", "H90", "L 80 40", "C70 30 60 45 50 40", "Q 30 20 20 40", "Z"};
    String all = String.join(" ", whole);
    String begun = all.substring(0, Math.min(length, all.length()));
    StringBuilder plain = new StringBuilder();
    for (String segment : whole) {
      if (!begun.startsWith(plain + segment)) {
        break;
      }
      plain.append(segment).append(' ');
    }
    String path = "<path fill='none' stroke='#00a' d='%s'/>";
    String svg = SameDrawing.svg(VIEW, FRAME + String.format(path, begun + "!"));
    String to = plain.toString();
    // A number cut short is another number, and drawn as such: compared up to there alone.
    if (begun.strip().length() <= to.strip().length() || !begun.matches(".*\\d")) {
      SameDrawing.assertSame(svg, SameDrawing.svg(VIEW, FRAME + String.format(path, to)));
    }
    assertTrue(SameDrawing.read(svg).notes().toString().contains("up to its fault"));
  }
}
