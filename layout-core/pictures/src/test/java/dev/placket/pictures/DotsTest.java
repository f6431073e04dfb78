package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Subpaths without a length: round caps draw a dot, square caps a square along the axes, butt caps
 * nothing (SVG 2, 13.5.4).
 */
class DotsTest {
  private static final String VIEW = "viewBox='0 0 40 40'";
  private static final String CIRCLE = "<circle cx='20' cy='20' r='4' fill='#204080'/>";
  private static final String SQUARE = "<path d='M16 16H24V24H16Z' fill='#204080'/>";

  private static String stroked(String d, String cap) {
    return "<path fill='none' stroke='#204080' stroke-width='8' stroke-linecap='"
        + cap
        + "' d='"
        + d
        + "'/>";
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "M20 20z",
        "M20 20Z",
        "m20,20z",
        "M20 20h0",
        "M20 20h0z",
        "M20 20L20 20",
        "M20 20L20 20z",
        "M20 20 20 20z",
        "M20 20l0 0 0 0z",
        "M20 20H20V20Z",
        "M20 20C20 20 20 20 20 20z",
        "M20 20q0 0 0 0z",
        "M20 20s0 0 0 0z",
        "M10 10m10 10z",
        "M2e1 2e1z"
      })
  void aLoneDotIsDrawnAndMeasured(String d) throws PictureException {
    SameDrawing.assertSame(
        SameDrawing.svg(VIEW, stroked(d, "round")), SameDrawing.svg(VIEW, CIRCLE));
    SameDrawing.assertSame(
        SameDrawing.svg(VIEW, stroked(d, "square")), SameDrawing.svg(VIEW, SQUARE));
    InkedBox ink = SameDrawing.read(SameDrawing.svg(VIEW, stroked(d, "round"))).inkedBox();
    assertEquals("16 16 24 24", rounded(ink));
  }

  private static String rounded(InkedBox ink) {
    return Math.round(ink.left())
        + " "
        + Math.round(ink.top())
        + " "
        + Math.round(ink.right())
        + " "
        + Math.round(ink.bottom());
  }

  /** A line goes on from the dot as from the end of any closed subpath. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M20 20zL30 30 | M20 20h0M20 20L30 30",
        "M20 20zl10 0z | M20 20h0M20 20l10 0z",
        "M5 5h3v3zM20 20zm3 3z | M5 5h3v3zM20 20h0M23 23h0",
        "M5 5h3v3zzM20 20z | M5 5h3v3zM20 20h0",
        "M20 20h9zM8 8h0zM20 8z | M20 20h9zM8 8h0M20 8h0",
      })
  void whatComesAfterADotIsDrawn(String d, String plain) throws PictureException {
    for (String cap : new String[] {"round", "square", "butt"}) {
      SameDrawing.assertSame(
          SameDrawing.svg(VIEW, stroked(d, cap)), SameDrawing.svg(VIEW, stroked(plain, cap)));
    }
  }

  /** A point to which a pen only moves, and one without caps, draw nothing. */
  @Test
  void butNothingElse() {
    for (String blank : new String[] {stroked("M20 20", "round"), stroked("M20 20z", "butt")}) {
      assertThrows(PictureException.class, () -> SameDrawing.read(SameDrawing.svg(VIEW, blank)));
    }
  }

  /** The start and the end of it, one on the other. */
  @Test
  void aDotHasTwoVertices() throws PictureException {
    String marker =
        "<marker id='m' overflow='visible' markerUnits='userSpaceOnUse' refX='2' refY='2'>"
            + "<path d='M0 0H4V4H0Z' fill='#080' fill-opacity='0.5'/></marker>";
    String mark = "<path d='M18 18H22V22H18Z' fill='#080' fill-opacity='0.5'/>";
    SameDrawing.assertSame(
        SameDrawing.svg(
            VIEW,
            marker
                + "<path d='M20 20z' marker-start='url(#m)' marker-mid='url(#m)'"
                + " marker-end='url(#m)'/>"),
        SameDrawing.svg(VIEW, mark + mark));
  }
}
