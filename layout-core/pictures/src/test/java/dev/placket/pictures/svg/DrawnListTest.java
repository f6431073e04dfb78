package dev.placket.pictures.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.svg.DrawnCase.Idle;
import dev.placket.pictures.svg.DrawnCase.Note;
import dev.placket.pictures.svg.DrawnCase.Point;
import dev.placket.pictures.svg.DrawnCase.Points;
import dev.placket.pictures.svg.DrawnCase.Refused;
import dev.placket.pictures.svg.DrawnCase.Said;
import dev.placket.pictures.svg.DrawnCase.Same;
import dev.placket.pictures.svg.Shots.Shot;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Each case of the list against plain drawings, points or notes worked out by hand. */
class DrawnListTest {
  private final Shots shots = new Shots();
  private final DrawnList list = DrawnList.shipped();

  @TestFactory
  Stream<DynamicContainer> everyCase() {
    Map<String, List<DrawnCase>> byEntry =
        DrawnCases.all().stream()
            .collect(Collectors.groupingBy(this::entry, TreeMap::new, Collectors.toList()));
    return byEntry.entrySet().stream()
        .map(
            e ->
                DynamicContainer.dynamicContainer(
                    e.getKey(),
                    e.getValue().stream()
                        .map(c -> DynamicTest.dynamicTest(c.title(), () -> check(c)))));
  }

  private String entry(DrawnCase c) {
    return c.name().isEmpty() ? "what interacts" : c.name();
  }

  private void check(DrawnCase c) {
    for (String drawing : c.drawings()) {
      if (c.check() instanceof Refused) {
        assertThrows(PictureException.class, () -> Shots.read(drawing));
        continue;
      }
      Shot shot = shots.of(drawing);
      if (c.check() instanceof Note note) {
        noted(c, drawing, shot, text(c, note.key()));
      } else if (c.check() instanceof Said said) {
        noted(c, drawing, shot, said.text());
      } else {
        assertEquals(List.of(), shot.notes(), () -> "no note is expected: " + drawing);
        shown(c, drawing, shot);
      }
    }
  }

  private void shown(DrawnCase c, String drawing, Shot shot) {
    if (c.check() instanceof Same same) {
      same(drawing, shot, shots.of(same.fragment()));
      differs(c, drawing, shot);
    } else if (c.check() instanceof Points points) {
      points.points().forEach(p -> at(drawing, shot, p, points.levels()));
      differs(c, drawing, shot);
    } else if (c.check() instanceof Idle) {
      same(drawing, shot, shots.of(c.without()));
    }
  }

  private static void same(String drawing, Shot shot, Shot expected) {
    assertTrue(
        Alike.worst(shot.pixels(), expected.pixels()) <= Alike.LEVELS,
        () ->
            "differs "
                + Alike.where(shot.pixels(), expected.pixels(), Shots.SIDE * Shots.ZOOM)
                + ": "
                + drawing);
  }

  private static void at(String drawing, Shot shot, Point p, int levels) {
    int found = shot.over(p.x(), p.y());
    assertTrue(
        Alike.difference(found | 0xff000000, p.rgb() | 0xff000000) <= levels,
        () ->
            String.format(
                "#%06x at %s,%s where #%06x is expected: %s",
                found, p.x(), p.y(), p.rgb(), drawing));
  }

  /** Else the case could not fail: without the property, or with another value, it looks other. */
  private void differs(DrawnCase c, String drawing, Shot shot) {
    Stream<String> others =
        Stream.concat(
            c.name().isEmpty() ? Stream.of() : Stream.of(c.without()), c.contrasts().stream());
    assertTrue(
        others.anyMatch(o -> Alike.clearlyDiffer(shot.pixels(), shots.of(o).pixels())),
        () -> "looks the same without it; add a line 'or VALUE' that looks other: " + drawing);
  }

  private String text(DrawnCase c, String key) {
    return list.note(key)
        .replace("{name}", Noted.shortened(c.name()))
        .replace("{value}", Noted.shortened(c.value()));
  }

  private void noted(DrawnCase c, String drawing, Shot shot, String note) {
    String left = "the style '" + c.name() + ": ";
    assertTrue(
        shot.notes().stream().anyMatch(n -> n.startsWith(note) || n.startsWith(left)),
        () -> "the note '" + note + "' is expected, not " + shot.notes() + ": " + drawing);
    String without = c.without();
    assertFalse(
        shots.of(without).notes().stream().anyMatch(n -> n.startsWith(note)),
        () -> "the note comes without the value too: " + without);
  }
}
