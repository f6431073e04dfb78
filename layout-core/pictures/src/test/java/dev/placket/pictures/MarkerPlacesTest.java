package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where markers stand and how they are turned (SVG 2, 9.5.1 and 13.7), by hand. */
class MarkerPlacesTest {
  private static final String VIEW = "viewBox='0 0 100 100'";
  private static final String ARROW = "M0 0L9 4L0 8Z";

  private static String marker(String more) {
    return "<marker id='m' overflow='visible' markerUnits='userSpaceOnUse' markerWidth='9' markerHeight='9' refX='4'"
        + " refY='4' orient='auto' "
        + more
        + "><path d='"
        + ARROW
        + "' fill='#080'/></marker>";
  }

  private static String arrow(String place) {
    String[] p = place.strip().split(" ");
    return "<path d='"
        + ARROW
        + "' fill='#080' transform='translate("
        + p[0]
        + " "
        + p[1]
        + ") rotate("
        + p[2]
        + ") translate(-4 -4)'/>";
  }

  /** Paths, and for each marker its place and the angle to which it is turned. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M20 20H80V80 | 20 20 0, 80 20 45, 80 80 90",
        "M20 20H80V80Z | 20 20 -67.5, 80 20 45, 80 80 157.5, 20 20 -67.5",
        "M20 20C20 20 50 50 80 50 | 20 20 45, 80 50 0",
        "M20 20C50 20 80 50 80 50 | 20 20 0, 80 50 45",
        "M20 20C20 20 80 50 80 50 | 20 20 26.565, 80 50 26.565",
        "M20 20C80 50 20 20 80 50 | 20 20 26.565, 80 50 26.565",
        "M20 20Q20 20 80 50 | 20 20 26.565, 80 50 26.565",
        "M20 20h0H80v0V80v0 | 20 20 0, 20 20 0, 80 20 45, 80 20 45, 80 80 90, 80 80 90",
        "M20 20A30 30 0 0 1 80 20 | 20 20 -90, 80 20 90",
        "M20 20A30 30 0 0 0 80 20 | 20 20 90, 80 20 -90",
        "M20 20H80M20 80H50V50 | 20 20 0, 80 20 0, 20 80 0, 50 80 -45, 50 50 -90",
        "M20 20H80V80ZH5 | 20 20 -67.5, 80 20 45, 80 80 157.5, 20 20 -67.5, 5 20 180",
      })
  void standsAndTurnsAsTheStandardSays(String d, String places) throws Exception {
    StringBuilder plain = new StringBuilder();
    for (String place : places.split(",")) {
      plain.append(arrow(place));
    }
    String line = "<path fill='none' stroke='#00f' d='" + d + "'";
    SameDrawing.assertSame(
        SameDrawing.svg(
            VIEW,
            marker("")
                + line
                + " marker-start='url(#m)' marker-mid='url(#m)' marker-end='url(#m)'/>"),
        SameDrawing.svg(VIEW, line + "/>" + plain));
  }

  /** What the marker itself is cut, faded and hidden by counts in its own units (CSS Masking 1). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "clip-path='url(#c)' | M4 0V8L0 8V0Z",
        "mask='url(#k)' | M4 0V8L0 8V0Z",
      })
  void aMarkerIsCutInItsOwnUnits(String cut, String left) throws Exception {
    String cuts =
        "<clipPath id='c'><rect width='4' height='8'/></clipPath><mask id='k'"
            + " maskUnits='userSpaceOnUse' x='0' y='0' width='9' height='9'>"
            + "<rect width='4' height='8' fill='#fff'/></mask>";
    String full = marker(cut).replace(ARROW, "M0 0H9V9H0Z");
    String line = "<path fill='none' stroke='#00f' d='M20 50H80' marker-end='url(#m)'/>";
    SameDrawing.assertSame(
        SameDrawing.svg(VIEW, cuts + full + line),
        SameDrawing.svg(VIEW, marker("").replace(ARROW, left) + line));
  }

  /** SVG 2, 13.7.1: left, center and right of the viewBox, or of the marker. */
  @ParameterizedTest
  @CsvSource({
    "'', left, top, 0, 0",
    "'', center, bottom, 4.5, 9",
    "'', right, center, 9, 4.5",
    "viewBox='2 2 5 5', left, top, 2, 2",
    "viewBox='2 2 5 5', right, bottom, 7, 7",
  })
  void aWordIsAPlaceOfTheMarker(String box, String x, String y, String atX, String atY)
      throws Exception {
    String line = "<path fill='none' stroke='#00f' d='M20 50H80V20' marker-mid='url(#m)'/>";
    String made = marker(box);
    SameDrawing.assertSame(
        SameDrawing.svg(VIEW, made.replace("refX='4' refY='4'", refs(x, y)) + line),
        SameDrawing.svg(VIEW, made.replace("refX='4' refY='4'", refs(atX, atY)) + line));
  }

  private static String refs(String x, String y) {
    return "refX='" + x + "' refY='" + y + "'";
  }

  /** SVG 2, 13.8: the order of painting holds inside of markers, patterns and masks as well. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<marker id='m' markerWidth='30' markerHeight='30'>X</marker><path d='M9 9h9' marker-end='url(#m)' stroke='#000'/>",
        "<pattern id='p' width='1' height='1'>X</pattern><rect width='60' height='60' fill='url(#p)'/>",
        "<mask id='k'><g>X</g></mask><rect width='60' height='60' fill='#a00' mask='url(#k)'/>",
      })
  void theOrderOfPaintingHoldsInside(String around) throws Exception {
    String shape = "<path d='M6 6H20V20H6Z' fill='#fff' stroke='#888' stroke-width='6' ";
    String under = shape.replace("fill='#fff'", "fill='none'") + "/>";
    String over = shape.replace("stroke='#888'", "stroke='none'") + "/>";
    SameDrawing.assertSame(
        SameDrawing.svg(VIEW, around.replace("X", shape + "paint-order='stroke'/>")),
        SameDrawing.svg(VIEW, around.replace("X", under + over)));
  }

  /** SVG 2, 8.11: what is measured by a box without area is passed over. */
  @Test
  void aFlatBoxMeasuresNothing() throws Exception {
    String line = "<path d='M10 50H90' stroke='#070' stroke-width='20' ";
    SameDrawing.assertSame(
        SameDrawing.svg(
            VIEW,
            "<clipPath id='c' clipPathUnits='objectBoundingBox'><rect width='1' height='1'/>"
                + "</clipPath>"
                + line
                + "clip-path='url(#c)'/>"),
        SameDrawing.svg(VIEW, line + "/>"));
    SameDrawing.assertSame(
        SameDrawing.svg(
            VIEW,
            "<pattern id='p' width='.1' height='.1'><rect width='9' height='9'/></pattern>"
                + line.replace("#070", "url(#p) #070")
                + "/>"),
        SameDrawing.svg(VIEW, line + "/>"));
  }

  /** SVG 2, 3.4: opacity and clip count on the pattern. */
  @Test
  void aPatternIsCutAndFadedItself() throws Exception {
    String tile =
        "<clipPath id='c'><rect width='5' height='20'/></clipPath><pattern id='p'"
            + " patternUnits='userSpaceOnUse' width='20' height='20' ";
    String shape = "<rect width='40' height='20' fill='url(#p)'/>";
    SameDrawing.assertSame(
        SameDrawing.svg(
            VIEW,
            tile
                + "opacity='.5' clip-path='url(#c)'><rect width='10' height='20'/></pattern>"
                + shape),
        SameDrawing.svg(VIEW, "<path opacity='.5' d='M0 0h5v20h-5zM20 0h5v20h-5z'/>"));
  }

  /** The audit sees what is blended in a marker or pattern, and coloured in a mask. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<pattern id='p' width='1' height='1'>X</pattern><rect width='9' height='9' fill='url(#p)'/> | style='mix-blend-mode:multiply' | without mixing",
        "<marker id='p'>X</marker><path d='M0 0h9' marker-end='url(#p)' stroke='#000'/> | style='mix-blend-mode:multiply' | without mixing",
        "<g>X</g> | style='mix-blend-mode:multiply' | ",
        "<mask id='p'>X</mask><rect width='9' height='9' mask='url(#p)'/> | fill='#0f0' | in colours",
        "<mask id='p'>X</mask><rect width='9' height='9' mask='url(#p)' fill='red'/> | fill='#eee' | ",
        "<mask id='p' mask-type='alpha'>X</mask><rect width='9' height='9' mask='url(#p)'/> | fill='#0f0' | ",
      })
  void whatIsRightElsewhereIsNotedThere(String around, String style, String note) throws Exception {
    Drawing d =
        SameDrawing.read(
            SameDrawing.svg(
                VIEW,
                "<path d='M0 0H50' stroke='#000'/>"
                    + around.replace("X", "<rect width='5' height='5' " + style + "/>")));
    assertEquals(note == null ? 0 : 1, d.notes().size(), () -> "" + d.notes());
    assertTrue(note == null || d.notes().toString().contains(note), () -> "" + d.notes());
  }
}
