package dev.placket.pictures.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.units.PlanePoint;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths along paths of drawings against closed forms. */
class DrawnPathTest {
  private static final double EXACT = 1e-9;

  private static Drawing drawing(String element) throws Exception {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='-400 -400 1000 1000' fill='none'"
            + " stroke='black'><rect x='-390' y='-390' width='2' height='2'/>"
            + element
            + "</svg>";
    PictureSource source = PictureSource.of("drawn.svg", svg.getBytes(StandardCharsets.UTF_8));
    return (Drawing) PictureReader.read(source, ReadLimits.DEFAULT);
  }

  private static DrawnPath path(String element) throws Exception {
    return Objects.requireNonNull(drawing(element).path("p"));
  }

  /**
   * Circles: 2 pi r. The ellipse with half axes 1 and 1/2: 4 E(3/4), the complete elliptic integral
   * of Abramowitz and Stegun, table 17.1 (E = 1.211056027568); digits beyond the table from memory.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<circle id='p' cx='10' cy='20' r='100'/> | 628.318530717958648",
        "<circle id='p' cx='10' cy='20' r='100' transform='rotate(30)'/> | 628.318530717958648",
        "<ellipse id='p' rx='128' ry='64'/> | 620.060686115051",
        "<circle id='p' r='64' transform='rotate(20) scale(2 1)'/> | 620.060686115051",
        "<path id='p' d='M 128,0 A 128 64 0 0 1 0,64'/> | 155.015171528763",
        "<path id='p' d='M 0,64 A 128 64 0 0 0 128,0'/> | 155.015171528763",
        "<path id='p' d='M 128,0 A 128 64 0 1 1 0,-64'/> | 465.045514586288",
        "<path id='p' d='M 64,0 A 64 64 0 0 1 -64,0'/> | 201.061929829746768",
        // A radius that is too small grows until the arc reaches: a half circle of 100.
        "<path id='p' d='M -100,0 A 10 10 0 0 1 100,0'/> | 314.159265358979324",
        // The parabola y = x² from 0 to 1: half the root of 5, and arsinh(2) / 4; 256 times as
        // large.
        "<path id='p' d='M 0,0 Q 128,0 256,256'/> | 378.609371531417",
        // A line of 3 and 4, and back: closed, with its own end given again.
        "<path id='p' d='M 0,0 L 30,40 Z'/> | 100",
        "<polyline id='p' points='0,0 30,40 30,140'/> | 150",
        "<g id='p' transform='scale(2)'><path d='M 0,0 L 30,40'/></g> | 100"
      })
  void agreesWithTheClosedForm(String element, double length) throws Exception {
    assertEquals(length, path(element.strip()).length(), EXACT * length);
  }

  /** A cubic that is a straight line, run through at an uneven speed, with a point of rest. */
  @Test
  void aStraightCurveIsAsLongAsItsLine() throws Exception {
    assertEquals(300, path("<path id='p' d='M 0,0 C 0,0 300,0 300,0'/>").length(), 1e-7);
  }

  /** A quarter of a circle between two spots near it, and the shorter way round a closed one. */
  @Test
  void thePartBetweenTwoSpots() throws Exception {
    DrawnPath circle = path("<circle id='p' r='100'/>");
    DrawnPath.Part quarter = circle.between(new PlanePoint(0, -110), new PlanePoint(103, 0));
    assertEquals(50 * Math.PI, quarter.length(), 1e-6);
    assertEquals(10, quarter.off(), 1e-9);
    for (PlanePoint p : quarter.way()) {
      assertEquals(100, Math.hypot(p.x(), p.y()), 1e-6);
      assertTrue(p.x() > -1 && p.y() < 1, p.toString());
    }
    PlanePoint first = quarter.way().get(0);
    assertEquals(-100, first.y(), 1e-4);
  }

  /** Forth and back along an open path is as long, and begins at the spot named first. */
  @Property(tries = 200)
  void forthIsAsLongAsBack(
      @ForAll @DoubleRange(min = 0, max = 256) double a,
      @ForAll @DoubleRange(min = 0, max = 256) double b)
      throws Exception {
    DrawnPath parabola = path("<path id='p' d='M 0,0 Q 128,0 256,256'/>");
    PlanePoint from = new PlanePoint(a, a * a / 256);
    PlanePoint to = new PlanePoint(b, b * b / 256);
    DrawnPath.Part forth = parabola.between(from, to);
    DrawnPath.Part back = parabola.between(to, from);
    assertEquals(forth.length(), back.length(), 1e-9);
    assertEquals(from.x(), forth.way().get(0).x(), 1e-4);
    assertEquals(to.x(), back.way().get(0).x(), 1e-4);
    // By the closed form of the parabola, whose parameter is x.
    double whole = Math.abs(parabolaTo(b) - parabolaTo(a));
    assertEquals(whole, forth.length(), 1e-4);
  }

  private static double parabolaTo(double x) {
    double t = 2 * x / 256;
    return 256 * (t * Math.sqrt(1 + t * t) + Math.log(t + Math.sqrt(1 + t * t))) / 4;
  }

  @Test
  void whatIsNoOnePathHasNone() throws Exception {
    assertNull(drawing("<g id='p'><path d='M 0,0 H 9'/><path d='M 0,9 H 9'/></g>").path("p"));
    assertNull(drawing("<path id='p' d='M 0,0 H 9 M 0,9 H 9'/>").path("p"));
    assertNull(drawing("<path id='q' d='M 0,0 H 9'/>").path("p"));
  }
}
