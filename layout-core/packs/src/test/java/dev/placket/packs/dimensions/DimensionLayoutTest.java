package dev.placket.packs.dimensions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Lines of measure and their codes, against the geometry of {@code java.awt.geom}. */
class DimensionLayoutTest {
  private static final Rect INK = new Rect(0, 0, 300, 300);
  private static final Lettering LETTERING = Lettering.load();
  private static final ToDoubleFunction<Rect> BLANK = box -> 0;

  private static DimensionLayout.Result lay(List<MeasureLine> all, ToDoubleFunction<Rect> dark) {
    return lay(all, dark, List.of());
  }

  private static DimensionLayout.Result lay(
      List<MeasureLine> all, ToDoubleFunction<Rect> dark, List<List<PlanePoint>> others) {
    return DimensionLayout.lay(
        all, new DimensionFrame(p -> p, INK, 1, Lanes.NONE, dark, others), LETTERING);
  }

  private static MeasureLine line(
      String code, double x, double y, double toX, double toY, DimensionRun run) {
    return new MeasureLine(code, new PlanePoint(x, y), new PlanePoint(toX, toY), run, null);
  }

  private static Rectangle2D box(LaidDimension d) {
    return new Rectangle2D.Double(d.box().left(), d.box().top(), d.box().width(), d.box().height());
  }

  /** Codes keep clear of all lines but the gap of their own, and of one another. */
  @Property(tries = 1000)
  void noCodeMeetsALineOrAnotherCode(
      @ForAll @IntRange(min = 1, max = 7) int count, @ForAll int seed) {
    Random random = new Random(seed);
    List<MeasureLine> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      PlanePoint from = spot(random);
      PlanePoint to = spot(random);
      DimensionRun run = DimensionRun.values()[random.nextInt(3)];
      Double beside = random.nextBoolean() ? null : random.nextDouble() * 30 - 15;
      all.add(new MeasureLine("" + (char) ('A' + i), from, to, run, beside));
    }
    DimensionLayout.Result result = lay(all, BLANK);
    if (!result.stuck().isEmpty()) {
      assertEquals(List.of(), result.dimensions());
      return;
    }
    for (LaidDimension d : result.dimensions()) {
      Rectangle2D inner = box(d);
      double grown = 1e-6;
      inner.setRect(
          inner.getX() + grown,
          inner.getY() + grown,
          inner.getWidth() - 2 * grown,
          inner.getHeight() - 2 * grown);
      for (LaidDimension other : result.dimensions()) {
        for (List<PlanePoint> stroke : other.strokes()) {
          PlanePoint a = stroke.get(0);
          PlanePoint b = stroke.get(1);
          boolean meets = inner.intersectsLine(new Line2D.Double(a.x(), a.y(), b.x(), b.y()));
          assertFalse(meets, d.code() + " and a line of " + other.code());
        }
        if (d != other) {
          assertFalse(inner.intersects(box(other)), d.code() + " and " + other.code());
        }
      }
    }
  }

  private static PlanePoint spot(Random random) {
    return new PlanePoint(20 + random.nextDouble() * 260, 20 + random.nextDouble() * 260);
  }

  /** By hand: a level line at 100 from 50 to 250, its code in a gap in the middle. */
  @Test
  void aLevelLineHasItsCodeInTheMiddle() {
    MeasureLine level = line("A", 50, 100, 250, 140, DimensionRun.LEVEL);
    LaidDimension laid = lay(List.of(level), BLANK).dimensions().get(0);
    assertEquals(List.of(new PlanePoint(50, 100), new PlanePoint(250, 100)), laid.line());
    assertEquals(150, (laid.box().left() + laid.box().right()) / 2, 1e-9);
    assertEquals(100, (laid.box().top() + laid.box().bottom()) / 2, 1e-9);
    // From its second spot, 40 below, an extension line leads up to it and a millimetre beyond.
    assertEquals(3, laid.strokes().size());
    assertEquals(250, laid.strokes().get(0).get(1).x(), 1e-9);
    assertEquals(100 - 72 / 25.4, laid.strokes().get(0).get(1).y(), 1e-9);
    assertEquals(200, level.length(), 1e-9);
  }

  @Test
  void aShortLineHasItsCodeBesideIt() {
    MeasureLine level = line("K", 100, 100, 112, 100, DimensionRun.LEVEL);
    LaidDimension laid = lay(List.of(level), BLANK).dimensions().get(0);
    assertTrue(laid.box().bottom() < 100, laid.box().toString());
    assertEquals(1, laid.strokes().size());
  }

  /** Where the drawing is dark in the middle of a line, the code stands to the side of that. */
  @Test
  void aCodeAvoidsTheInkOfTheDrawing() {
    MeasureLine level = line("A", 20, 100, 280, 100, DimensionRun.LEVEL);
    ToDoubleFunction<Rect> dark = box -> box.left() < 160 && box.right() > 140 ? 0.3 : 0;
    Rect box = lay(List.of(level), dark).dimensions().get(0).box();
    assertTrue(box.right() <= 140 || box.left() >= 160, box.toString());
  }

  /** A leader that runs down through the middle of the line. */
  @Test
  void aCodeAvoidsTheLeadersOfCallouts() {
    MeasureLine level = line("A", 20, 100, 280, 100, DimensionRun.LEVEL);
    List<PlanePoint> leader = List.of(new PlanePoint(150, 20), new PlanePoint(150, 200));
    Rect box = lay(List.of(level), BLANK, List.of(leader)).dimensions().get(0).box();
    assertTrue(box.right() <= 150 || box.left() >= 150, box.toString());
  }

  @Test
  void aCodeWithoutAPlaceIsNamed() {
    List<MeasureLine> all = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      all.add(line("K" + i, 100, 100 + i * 2.0, 112, 100 + i * 2.0, DimensionRun.LEVEL));
    }
    DimensionLayout.Result result = lay(all, BLANK);
    assertTrue(result.stuck().startsWith("K"), result.stuck());
    assertEquals(List.of(), result.dimensions());
  }
}
