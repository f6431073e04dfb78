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
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
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

  private static DimensionLayout.Result lay(
      List<MeasureLine> all, Map<String, PlanePoint> spots, ToDoubleFunction<Rect> dark) {
    return DimensionLayout.lay(all, id -> spot(spots, id), INK, dark, List.of(), 1, LETTERING);
  }

  private static PlanePoint spot(Map<String, PlanePoint> spots, String id) {
    return java.util.Objects.requireNonNull(spots.get(id));
  }

  private static Rectangle2D box(LaidDimension d) {
    return new Rectangle2D.Double(d.box().left(), d.box().top(), d.box().width(), d.box().height());
  }

  /** Codes keep clear of all lines but the gap of their own, and of one another. */
  @Property(tries = 1000)
  void noCodeMeetsALineOrAnotherCode(
      @ForAll @IntRange(min = 1, max = 7) int count, @ForAll int seed) {
    Random random = new Random(seed);
    Map<String, PlanePoint> spots = new TreeMap<>();
    List<MeasureLine> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (String end : List.of("a", "b")) {
        spots.put(
            end + i,
            new PlanePoint(20 + random.nextDouble() * 260, 20 + random.nextDouble() * 260));
      }
      DimensionRun run = DimensionRun.values()[random.nextInt(3)];
      double beside = random.nextBoolean() ? 0 : random.nextDouble() * 30 - 15;
      all.add(new MeasureLine("" + (char) ('A' + i), "a" + i, "b" + i, run, beside));
    }
    DimensionLayout.Result result = lay(all, spots, BLANK);
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

  /** By hand: a level line at 100 from 50 to 250, its code in a gap in the middle. */
  @Test
  void aLevelLineHasItsCodeInTheMiddle() {
    Map<String, PlanePoint> spots =
        Map.of("a", new PlanePoint(50, 100), "b", new PlanePoint(250, 140));
    MeasureLine level = new MeasureLine("A", "a", "b", DimensionRun.LEVEL, 0);
    LaidDimension laid = lay(List.of(level), spots, BLANK).dimensions().get(0);
    assertEquals(new PlanePoint(50, 100), laid.from());
    assertEquals(new PlanePoint(250, 100), laid.to());
    assertEquals(150, (laid.box().left() + laid.box().right()) / 2, 1e-9);
    assertEquals(100, (laid.box().top() + laid.box().bottom()) / 2, 1e-9);
    // From its second spot, 40 below, an extension line leads up to it and a millimetre beyond.
    assertEquals(3, laid.strokes().size());
    assertEquals(250, laid.strokes().get(0).get(1).x(), 1e-9);
    assertEquals(100 - 72 / 25.4, laid.strokes().get(0).get(1).y(), 1e-9);
    assertEquals(200, level.length(spot(spots, "a"), spot(spots, "b")), 1e-9);
  }

  @Test
  void aShortLineHasItsCodeBesideIt() {
    Map<String, PlanePoint> spots =
        Map.of("a", new PlanePoint(100, 100), "b", new PlanePoint(112, 100));
    MeasureLine level = new MeasureLine("K", "a", "b", DimensionRun.LEVEL, 0);
    LaidDimension laid = lay(List.of(level), spots, BLANK).dimensions().get(0);
    assertTrue(laid.box().bottom() < 100, laid.box().toString());
    assertEquals(1, laid.strokes().size());
  }

  /** Where the drawing is dark in the middle of a line, the code stands to the side of that. */
  @Test
  void aCodeAvoidsTheInkOfTheDrawing() {
    Map<String, PlanePoint> spots =
        Map.of("a", new PlanePoint(20, 100), "b", new PlanePoint(280, 100));
    MeasureLine level = new MeasureLine("A", "a", "b", DimensionRun.LEVEL, 0);
    ToDoubleFunction<Rect> dark = box -> box.left() < 160 && box.right() > 140 ? 0.3 : 0;
    Rect box = lay(List.of(level), spots, dark).dimensions().get(0).box();
    assertTrue(box.right() <= 140 || box.left() >= 160, box.toString());
  }

  /** A leader that runs down through the middle of the line. */
  @Test
  void aCodeAvoidsTheLeadersOfCallouts() {
    Map<String, PlanePoint> spots =
        Map.of("a", new PlanePoint(20, 100), "b", new PlanePoint(280, 100));
    MeasureLine level = new MeasureLine("A", "a", "b", DimensionRun.LEVEL, 0);
    List<PlanePoint> leader = List.of(new PlanePoint(150, 20), new PlanePoint(150, 200));
    Rect box =
        DimensionLayout.lay(
                List.of(level), id -> spot(spots, id), INK, BLANK, List.of(leader), 1, LETTERING)
            .dimensions()
            .get(0)
            .box();
    assertTrue(box.right() <= 150 || box.left() >= 150, box.toString());
  }

  @Test
  void aCodeWithoutAPlaceIsNamed() {
    Map<String, PlanePoint> spots = new TreeMap<>();
    List<MeasureLine> all = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      spots.put("a" + i, new PlanePoint(100, 100 + i * 2.0));
      spots.put("b" + i, new PlanePoint(112, 100 + i * 2.0));
      all.add(new MeasureLine("K" + i, "a" + i, "b" + i, DimensionRun.LEVEL, 0));
    }
    DimensionLayout.Result result = lay(all, spots, BLANK);
    assertTrue(result.stuck().startsWith("K"), result.stuck());
    assertEquals(List.of(), result.dimensions());
  }
}
