package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.placket.pictures.base.PictureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a clipPath lets through (CSS Masking 1, 5), against the region drawn as a shape. */
class ClipRegionTest {
  private static final String VIEW = "viewBox='0 0 100 100'";
  private static final String SHEET =
      "<rect width='100' height='100' fill='#248' clip-path='url(#c)'/>";

  private static void lets(String clips, String region) throws Exception {
    SameDrawing.assertSame(SameDrawing.svg(VIEW, clips + SHEET), SameDrawing.svg(VIEW, region));
  }

  @Test
  void aClipOfTheClipCutsIt() throws Exception {
    lets(
        "<clipPath id='d'><rect x='40' width='30' height='100'/></clipPath>"
            + "<clipPath id='c' clip-path='url(#d)'><rect y='20' width='100' height='30'/></clipPath>",
        "<rect x='40' y='20' width='30' height='30' fill='#248'/>");
  }

  @Test
  void aClipOfAShapeInsideCutsThatShapeAlone() throws Exception {
    lets(
        "<clipPath id='d'><rect x='40' width='30' height='100'/></clipPath><clipPath id='c'>"
            + "<rect y='20' width='100' height='30' clip-path='url(#d)'/>"
            + "<rect y='80' width='100' height='10'/></clipPath>",
        "<path d='M40 20h30v30h-30zM0 80h100v10h-100z' fill='#248'/>");
  }

  @Test
  void unitsOfTheBoxComeBeforeTheTransform() throws Exception {
    lets(
        "<clipPath id='c' clipPathUnits='objectBoundingBox' transform='translate(10 20)'>"
            + "<rect width='.5' height='.25'/></clipPath>",
        "<rect x='10' y='20' width='50' height='25' fill='#248'/>");
  }

  @Test
  void theRuleOfEachShapeHolds() throws Exception {
    String ring = "d='M10 10H90V90H10ZM30 30H70V70H30Z'";
    lets(
        "<clipPath id='c'><path clip-rule='evenodd' " + ring + "/></clipPath>",
        "<path fill-rule='evenodd' fill='#248' " + ring + "/>");
    lets(
        "<defs><path id='p' clip-rule='evenodd' "
            + ring
            + "/></defs><clipPath id='c'><use href='#p' x='5'/></clipPath>",
        "<path fill-rule='evenodd' fill='#248' transform='translate(5)' " + ring + "/>");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "<rect width='50' height='50' visibility='hidden'/>",
        "<rect width='50' height='50' display='none'/>",
        "<g><rect width='50' height='50'/></g>",
        "<use href='#group'/>",
        "<use href='#symbol'/>",
        "<rect width='0' height='50'/>",
        "<title>none</title>",
      })
  void aClipWithoutAShapeLetsNothingThrough(String inside) {
    String defs =
        "<defs><g id='group'><rect width='50' height='50'/></g>"
            + "<symbol id='symbol'><rect width='50' height='50'/></symbol></defs>";
    assertThrows(
        PictureException.class,
        () ->
            SameDrawing.read(
                SameDrawing.svg(
                    VIEW, defs + "<clipPath id='c'>" + inside + "</clipPath>" + SHEET)));
  }

  /** SVG 2, 14.3: content in units of the box begins at the corner of the tile. */
  @Test
  void aPatternsContentInUnitsOfTheBoxBeginsAtItsTile() throws Exception {
    String pattern =
        "<pattern id='p' patternContentUnits='objectBoundingBox' width='.5' height='.5'>"
            + "<rect width='.25' height='.25' fill='#060'/></pattern>";
    SameDrawing.assertSame(
        SameDrawing.svg(
            VIEW, pattern + "<rect x='20' y='20' width='40' height='40' fill='url(#p)'/>"),
        SameDrawing.svg(
            VIEW,
            "<path fill='#060' d='M20 20h10v10h-10zM40 20h10v10h-10zM20 40h10v10h-10zM40 40h10v10h-10z'/>"));
  }

  /** SVG 2, 14.3: the tile cuts its content off. */
  @Test
  void aPatternIsCutOffAtItsTile() throws Exception {
    for (String overflow : new String[] {"", " overflow='visible'"}) {
      SameDrawing.assertSame(
          SameDrawing.svg(
              VIEW,
              "<pattern id='p' patternUnits='userSpaceOnUse' width='20' height='20'"
                  + overflow
                  + "><rect x='15' width='15' height='30' fill='#060'/></pattern>"
                  + "<rect width='40' height='40' fill='url(#p)'/>"),
          SameDrawing.svg(VIEW, "<path fill='#060' d='M15 0h5v40h-5zM35 0h5v40h-5z'/>"));
    }
  }

  /** SVG 2, 13.4: a fill's opacity fades a pattern as it fades a colour. */
  @Test
  void aPatternIsFadedWithItsFill() throws Exception {
    String pattern =
        "<pattern id='p' patternUnits='userSpaceOnUse' width='20' height='20'>"
            + "<rect width='10' height='10' fill='#060'/></pattern>";
    SameDrawing.assertSame(
        SameDrawing.svg(
            VIEW, pattern + "<rect width='40' height='20' fill='url(#p)' fill-opacity='.5'/>"),
        SameDrawing.svg(
            VIEW, "<path fill='#060' opacity='.5' d='M0 0h10v10h-10zM20 0h10v10h-10z'/>"));
  }
}
