package dev.placket.pictures;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.base.ViewBox;
import dev.placket.pictures.raster.MemorySource;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings small enough to be measured by hand. */
class DrawingTest {
  private static final String OPEN = "<svg xmlns='http://www.w3.org/2000/svg' ";

  private static Drawing read(String svg) throws PictureException {
    return (Drawing)
        PictureReader.read(
            PictureSource.of("try.svg", svg.getBytes(StandardCharsets.UTF_8)), ReadLimits.DEFAULT);
  }

  private static String refused(String svg) {
    String message =
        String.valueOf(assertThrows(PictureException.class, () -> read(svg)).getMessage());
    assertTrue(message.startsWith("try.svg"), message);
    assertTrue(message.contains("; "), message);
    return message;
  }

  private static void assertBox(double l, double t, double r, double b, InkedBox box) {
    assertEquals(l, box.left(), 1e-4, box::toString);
    assertEquals(t, box.top(), 1e-4, box::toString);
    assertEquals(r, box.right(), 1e-4, box::toString);
    assertEquals(b, box.bottom(), 1e-4, box::toString);
  }

  @Test
  void strokesCountAndTheViewBoxClips() throws Exception {
    Drawing d =
        read(
            OPEN
                + "viewBox='-10 5 100 50'><rect x='10' y='20' width='30' height='10' fill='none'"
                + " stroke='#000' stroke-width='4'/><path d='M50 25H400' stroke='red'"
                + " stroke-width='2'/></svg>");
    assertBox(8, 18, 90, 32, d.inkedBox());
    assertEquals(new ViewBox(-10, 5, 100, 50), d.viewBox());
    assertEquals(2.0, requireNonNull(d.fineDetail().line()), 1e-6);
    assertNull(d.statedWidth());
  }

  @Test
  void aSlantedLineOutOfTheViewBoxIsCutWhereItLeaves() throws Exception {
    // From (10,10) down at 45 degrees: it leaves the bottom at x = 50 (and half a stroke's slant).
    Drawing d = read(OPEN + "viewBox='0 0 100 50'><path d='M10 10L200 200' stroke='#000'/></svg>");
    assertBox(10 - Math.sqrt(0.125), 10 - Math.sqrt(0.125), 50 + Math.sqrt(0.5), 50, d.inkedBox());
  }

  @Test
  void curvesReachToTheirExtremesNotToTheirControlPoints() throws Exception {
    // The top of this arch is at t = 1/2: y = 3/4 of the way to its control points.
    Drawing d = read(OPEN + "viewBox='0 0 100 100'><path d='M10 80C10 0 90 0 90 80Z'/></svg>");
    assertBox(10, 20, 90, 80, d.inkedBox());
  }

  @Test
  void widthAndHeightAloneMakeTheViewBox() throws Exception {
    // CSS Values 4, 5.2: 2.54cm = 96px.
    Drawing d = read(OPEN + "width='2.54cm' height='1in'><rect width='9' height='9'/></svg>");
    assertEquals(96, d.viewBox().width(), 1e-9);
    assertEquals(96, d.viewBox().height(), 1e-9);
    assertEquals(Length.in(1).pt(), requireNonNull(d.statedWidth()).pt(), 1e-9);
    assertBox(0, 0, 9, 9, d.inkedBox());
  }

  @Test
  void statedSizeDoesNotChangeTheUnits() throws Exception {
    Drawing d =
        read(
            OPEN
                + "width='300mm' height='90mm' viewBox='0 0 10 10'>"
                + "<rect id='r' x='2' y='4' width='4' height='2'/></svg>");
    assertBox(2, 4, 6, 6, d.inkedBox());
    PlanePoint centre = requireNonNull(d.points().get("r"));
    assertEquals(4, centre.x(), 1e-5);
    assertEquals(5, centre.y(), 1e-5);
  }

  @Test
  void whiteBehindTheGarmentIsGround() throws Exception {
    Drawing d =
        read(
            OPEN
                + "viewBox='0 0 100 100'><rect width='100' height='100' fill='#fff'/>"
                + "<rect x='20' y='30' width='5' height='5'/></svg>");
    assertBox(20, 30, 25, 35, d.inkedBox());
  }

  @Test
  void opacityIsFolded() throws Exception {
    Drawing d =
        read(
            OPEN
                + "viewBox='0 0 10 10'><g opacity='0.5'><rect width='10' height='10'"
                + " opacity='0.5'/></g></svg>");
    BufferedImage image = d.render(10, new InkedBox(0, 0, 10, 10));
    // 0.5 × 0.5 of 255 is 63.75.
    assertEquals(64, image.getRGB(5, 5) >>> 24, 1);
  }

  @Test
  void usesAndSymbolsAreFollowed() throws Exception {
    Drawing d =
        read(
            OPEN
                + "xmlns:xlink='http://www.w3.org/1999/xlink' viewBox='0 0 100 100'><defs>"
                + "<rect id='b' width='5' height='5'/></defs><use xlink:href='#b' x='10' y='20'/>"
                + "</svg>");
    assertBox(10, 20, 15, 25, d.inkedBox());
  }

  @Test
  void aPlainDoctypeIsRead() throws Exception {
    Drawing d =
        read(
            "<?xml version='1.0'?><!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
                + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>"
                + OPEN
                + "viewBox='0 0 9 9'><rect width='3' height='3'/></svg>");
    assertBox(0, 0, 3, 3, d.inkedBox());
  }

  @Test
  void nestedUsesAreRefusedWithoutBeingDrawn() {
    // Ten to the eighth rectangles in eight levels.
    StringBuilder b = new StringBuilder(OPEN + "viewBox='0 0 9 9'><defs><rect id='l0'/>");
    for (int level = 1; level <= 8; level++) {
      b.append("<g id='l").append(level).append("'>");
      b.append(("<use href='#l" + (level - 1) + "'/>").repeat(10)).append("</g>");
    }
    String message = refused(b + "</defs><use href='#l8'/></svg>");
    assertTrue(message.contains("elements") || message.contains("uses"), message);
  }

  @Test
  void circlesOfUsesAreRefused() {
    refused(OPEN + "viewBox='0 0 9 9'><g id='a'><use href='#a'/></g></svg>");
  }

  @Test
  void greatDepthIsRefused() {
    refused(
        OPEN + "viewBox='0 0 9 9'>" + "<g>".repeat(100_000) + "</g>".repeat(100_000) + "</svg>");
  }

  @Test
  void anEntityIsRefusedWithItsLine() {
    String message =
        refused(
            "<?xml version='1.0'?>\n<!DOCTYPE svg [\n<!ENTITY x SYSTEM 'file:///etc/passwd'>\n]>\n"
                + OPEN
                + "viewBox='0 0 9 9'><text>&x;</text></svg>");
    assertTrue(message.contains("line 3"), message);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "><rect width='3' height='3'/>",
        "viewBox='0 0 0 10'><rect width='3' height='3'/>",
        "viewBox='0 0 10'><rect width='3' height='3'/>",
        "width='100%' height='100%'><rect width='3' height='3'/>",
        "width='0' height='9'><rect width='3' height='3'/>",
        "viewBox='0 0 9 9'>",
        "viewBox='0 0 9 9'><script>1</script>",
        "viewBox='0 0 9 9' onload='x()'>",
        "viewBox='0 0 9 9'><foreignObject/>",
        "viewBox='0 0 9 9'><use href='http://example.org/a.svg#b'/>",
        "viewBox='0 0 9 9'><use href='other.svg#b'/>",
        "viewBox='0 0 9 9'><image href='file:///etc/passwd'/>",
        "viewBox='0 0 9 9'><style>@import url(http://example.org/a.css);</style>",
        "viewBox='0 0 9 9'><style>rect{fill:url(http://example.org/a.svg#b)}</style>",
        "viewBox='0 0 9 9'><rect style='fill:u\\72l(http://example.org/a)' width='3'/>",
        "viewBox='0 0 9 9'><path d='M 0 0 L what'/>",
        "viewBox='0 0 9 9'><g>",
      })
  void whatCannotBeDrawnIsRefused(String rest) {
    refused(OPEN + rest + "</svg>");
  }

  @Test
  void otherXmlIsRefused() {
    refused("<html><body/></html>");
  }

  /** By hand: a quadratic curve reaches half-way to its control point, so to 30, not to 60. */
  @Test
  void theMiddleOfACurveIsThatOfWhatIsDrawn() throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'><g id='hem'"
            + " transform='translate(10 20)'><path d='M0 0Q20 60 40 0' fill='none' stroke='#000'/>"
            + "</g></svg>";
    Drawing drawing =
        (Drawing)
            PictureReader.read(
                new MemorySource("hem.svg", svg.getBytes(StandardCharsets.UTF_8)),
                ReadLimits.DEFAULT);
    PlanePoint middle = requireNonNull(drawing.points().get("hem"));
    assertEquals(30, middle.x(), 1e-4);
    assertEquals(35, middle.y(), 1e-4);
  }
}
