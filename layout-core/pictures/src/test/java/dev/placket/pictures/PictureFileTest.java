package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PicturePart;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.typeface.Typefaces;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Parts of an SVG as drawings of their own; boxes are reckoned by hand. */
class PictureFileTest {
  private static PictureFile open(String inside) throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
            + " xmlns:x='urn:x' viewBox='0 0 100 50'>"
            + inside
            + "</svg>";
    return PictureFile.open(
        PictureSource.of("style.svg", svg.getBytes(StandardCharsets.UTF_8)),
        ReadLimits.DEFAULT,
        Typefaces.SHIPPED);
  }

  private static InkedBox ink(PictureFile file, String part) throws PictureException {
    return file.read(file.part(part), false, Set.of()).inkedBox();
  }

  private static List<String> keys(PictureFile file) {
    return file.parts().stream().map(PicturePart::key).toList();
  }

  private static final String TWO =
      "<g id='front'><rect x='5' y='5' width='20' height='30'/></g>"
          + "<g id='back'><rect x='60' y='10' width='10' height='20'/></g>";

  @Test
  void groupsAtTheTopAreParts() throws Exception {
    PictureFile file = open(TWO);
    assertEquals(List.of("front", "back"), keys(file));
    assertFalse(file.hasLooseContent());
    assertEquals(new InkedBox(5, 5, 25, 35), ink(file, "front"));
    assertEquals(new InkedBox(60, 10, 70, 30), ink(file, "back"));
    assertEquals("style.svg#front", file.read(file.part("front"), false, Set.of()).name());
    assertEquals(new InkedBox(5, 5, 70, 35), file.read(file.whole(), false, Set.of()).inkedBox());
  }

  @Test
  void wrappersWithoutANameAreLookedThrough() throws Exception {
    assertEquals(List.of("front", "back"), keys(open("<g><g>" + TWO + "</g></g>")));
    assertEquals(List.of("all"), keys(open("<g id='all'>" + TWO + "</g>")));
  }

  @Test
  void hiddenGroupsAreNoParts() throws Exception {
    String hidden =
        "<g id='a' display='none'><path d='M0 0h9v9z'/></g>"
            + "<g id='b' style='fill:red; display : none'><path d='M0 0h9v9z'/></g>"
            + "<g id='c' visibility='hidden'><path d='M0 0h9v9z'/></g>"
            + "<defs><g id='d'/></defs>";
    PictureFile file = open(hidden + TWO);
    assertEquals(List.of("front", "back"), keys(file));
    assertFalse(file.hasLooseContent());
  }

  @Test
  void aLabelOrATitleNamesAGroup() throws Exception {
    PictureFile file =
        open(
            "<g id='g1' aria-label='Coat front'><path d='M0 0h9v9z'/></g>"
                + "<g id='g2' x:label='Coat back'><path d='M20 0h9v9z'/></g>"
                + "<g id='g3'><title> Collar </title><path d='M40 0h9v9z'/></g>");
    assertEquals(
        List.of("Coat front", "Coat back", "Collar"),
        file.parts().stream().map(PicturePart::called).toList());
    assertEquals(new InkedBox(20, 0, 29, 9), ink(file, "coat BACK"));
    assertEquals(new InkedBox(40, 0, 49, 9), ink(file, "g3"));
  }

  @Test
  void whatIsDrawnOutsideOfGroupsIsKnown() throws Exception {
    assertTrue(open(TWO + "<path d='M0 0h9'/>").hasLooseContent());
    assertTrue(open("<g><text>x</text>" + TWO + "</g>").hasLooseContent());
    assertFalse(open(TWO + "<defs><path d='M0 0h9'/></defs>").hasLooseContent());
  }

  @Test
  void viewsShowTheirPartOfThePlane() throws Exception {
    PictureFile file =
        open("<view id='left' viewBox='0 0 15 50'/><view id='right' viewBox='50 0 50 50'/>" + TWO);
    assertEquals(List.of("left", "right"), keys(file));
    assertEquals(new InkedBox(5, 5, 15, 35), ink(file, "left"));
    assertEquals(new InkedBox(60, 10, 70, 30), ink(file, "right"));
  }

  @Test
  void drawingsInsideAreParts() throws Exception {
    PictureFile file =
        open(
            "<svg id='front' x='0' width='40' height='50'><path d='M10 0h90v10h-90z'/></svg>"
                + "<svg id='back' x='50' width='40' height='50'><path d='M0 0h9v9h-9z'/></svg>");
    assertEquals(List.of("front", "back"), keys(file));
    assertEquals(new InkedBox(10, 0, 40, 10), ink(file, "front"));
    assertEquals(new InkedBox(50, 0, 59, 9), ink(file, "back"));
  }

  @Test
  void aPartKeepsWhatItRefersToBesideIt() throws Exception {
    PictureFile file =
        open(
            "<g id='stamp'><path id='dot' d='M0 0h4v4h-4z'/></g>"
                + "<g id='front'><use xlink:href='#dot' x='30' y='10'/></g>");
    assertEquals(new InkedBox(30, 10, 34, 14), ink(file, "front"));
  }

  @Test
  void rulesOfAStyleSheetCountAsInTheWholeDrawing() throws Exception {
    PictureFile file = open("<style>svg > g:nth-child(3) > rect { width: 40px }</style>" + TWO);
    assertEquals(new InkedBox(60, 10, 100, 30), ink(file, "back"));
  }

  @Test
  void anyElementWithAnIdentifierCanBeNamed() throws Exception {
    PictureFile file = open("<g id='all'><path id='dot' d='M0 0h4v4h-4z'/>" + TWO + "</g>");
    assertEquals(new InkedBox(0, 0, 4, 4), ink(file, "dot"));
    PictureException e = assertThrows(PictureException.class, () -> ink(file, "frnt"));
    assertEquals(
        "style.svg#frnt: no element of the drawing has the id 'frnt'; check the name.",
        e.getMessage());
  }

  @Test
  void aRasterHasNoParts() throws Exception {
    byte[] gif = {'G', 'I', 'F', '8', '9', 'a', 1, 0, 1, 0, 0, 0, 0};
    PictureFile file =
        PictureFile.open(PictureSource.of("a.gif", gif), ReadLimits.DEFAULT, Typefaces.SHIPPED);
    assertEquals(List.of(), file.parts());
    PictureException e = assertThrows(PictureException.class, () -> file.part("front"));
    assertEquals(
        "a.gif#front: has no such part; it is one drawing: write its name alone.", e.getMessage());
  }
}
