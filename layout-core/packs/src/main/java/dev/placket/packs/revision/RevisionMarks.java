package dev.placket.packs.revision;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.callouts.LaidText;
import dev.placket.packs.page.Inked;
import dev.placket.packs.page.Page;
import dev.placket.packs.page.RevisionMark;
import dev.placket.packs.placed.PlacedFlat;
import dev.placket.packs.text.Cell;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TableRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds the places of a revision's marks on one page. */
public final class RevisionMarks {
  /** From a mark to any ink. */
  private static final double CLEAR = Length.mm(0.25).pt();

  /** Between a triangle and what it stands beside. */
  private static final double BESIDE = Length.mm(0.8).pt();

  /** How far apart the places are that are tried. */
  private static final double STEP = Length.mm(0.5).pt();

  /** What a printer may not reach at the edge of the paper (common practice). */
  private static final double EDGE = Length.mm(4).pt();

  private final Page page;
  private final List<PlacedFlat> flats;
  private final List<Inked> inked;
  private final MarkShape shape;
  private final PageInk ink;
  private final List<RevisionMark> marks = new ArrayList<>();

  private RevisionMarks(
      Page page, List<PlacedFlat> flats, List<Inked> inked, String code, Lettering lettering) {
    this.page = page;
    this.flats = flats;
    this.inked = inked;
    this.shape = new MarkShape(code, lettering);
    this.ink = new PageInk(page, inked, EDGE);
  }

  /**
   * The marks of a page.
   *
   * @param marks the marks where there is room for them
   * @param missing what has no mark, because there is no room beside it
   */
  public record OnPage(List<RevisionMark> marks, List<Marked> missing) {
    /** Nothing. */
    public static final OnPage NONE = new OnPage(List.of(), List.of());

    /** Copies the lists. */
    public OnPage {
      marks = List.copyOf(marks);
      missing = List.copyOf(missing);
    }
  }

  /**
   * Places the marks of what a page shows.
   *
   * @param id the sheet's identifier
   * @param flats the flats of the page
   * @param inked the same as they are drawn, in the same order
   */
  public static OnPage on(
      Revised revised,
      String id,
      Page page,
      List<PlacedFlat> flats,
      List<Inked> inked,
      Lettering lettering) {
    RevisionMarks its = new RevisionMarks(page, flats, inked, revised.code(), lettering);
    List<Marked> missing =
        revised.things().stream().filter(t -> isOn(id, t)).filter(t -> !its.mark(t)).toList();
    return new OnPage(its.marks, missing);
  }

  /** A table goes on over further sheets, whose identifiers have a number at the end. */
  private static boolean isOn(String id, Marked thing) {
    return thing.sheet().isEmpty()
        || thing.sheet().equals(id)
        || thing.kind() == Marked.Kind.ROW
            && id.startsWith(thing.sheet() + "-")
            && id.substring(thing.sheet().length() + 1).matches("[0-9]+");
  }

  /** Marks a thing; false where the page has it, but no room for the mark. */
  private boolean mark(Marked thing) {
    return switch (thing.kind()) {
      case CELL ->
          page.cells().stream()
              .filter(c -> c.name().equals(thing.name()))
              .allMatch(c -> cell(c, thing.before().getOrDefault(0, "")));
      case ROW ->
          page.rows().stream()
              .filter(r -> r.table().equals(thing.name()) && r.row() == thing.row())
              .allMatch(r -> row(r, thing.before()));
      case FLAT -> flat(thing.name()) == null || flat(inked.get(index(thing.name())));
      case CALLOUT ->
          flat(thing.name()) == null
              || inked.get(index(thing.name())).callouts().stream()
                  .filter(c -> c.id().equals(thing.part()))
                  .allMatch(this::callout);
    };
  }

  private @Nullable PlacedFlat flat(String id) {
    return flats.stream().filter(f -> f.flat().id().equals(id)).findFirst().orElse(null);
  }

  private int index(String id) {
    return flats.stream().map(f -> f.flat().id()).toList().indexOf(id);
  }

  private boolean cell(Cell cell, String before) {
    List<Rect> lines =
        cell.runs().stream()
            .filter(r -> !r.text().isBlank() && !before.contains(r.text().strip()))
            .map(PageInk::box)
            .toList();
    double both = shape.width() + BESIDE + shape.width(before);
    return beside(near(cell.box(), lines, both), before)
        || triangle(near(cell.box(), lines, shape.width()))
        || triangle(margins(cell.box(), shape.width()));
  }

  /** Places in a cell: beside its new lines, then ever farther from them, then anywhere. */
  private Stream<Rect> near(Rect box, List<Rect> lines, double width) {
    List<Rect> places = new ArrayList<>();
    for (double y = box.top() + CLEAR; y + shape.height() <= box.bottom(); y += STEP) {
      for (double x = box.left() + BESIDE; x + width <= box.right() - CLEAR; x += STEP) {
        places.add(Rect.ofSize(x, y, width, shape.height()));
      }
    }
    places.sort(Comparator.comparingDouble(p -> distance(p, lines)));
    Stream<Rect> beside = lines.stream().flatMap(l -> margins(l, width)).filter(box::contains);
    return Stream.of(
            beside, lines.isEmpty() ? Stream.<Rect>of() : places.stream(), inside(box, width))
        .flatMap(s -> s);
  }

  private static double distance(Rect place, List<Rect> lines) {
    return lines.stream().mapToDouble(place::separation).min().orElse(0);
  }

  private boolean row(TableRow row, Map<Integer, String> before) {
    Map<Integer, String> changed = new TreeMap<>(before);
    changed.keySet().removeIf(c -> c >= row.cells().size());
    boolean done = false;
    for (var each : changed.entrySet()) {
      Rect box = row.cells().get(each.getKey());
      double both = shape.width() + BESIDE + shape.width(each.getValue());
      if (!done && beside(inside(box, both), each.getValue())) {
        done = true;
      } else if (done) {
        old(box, each.getValue());
      }
    }
    List<Rect> boxes = new ArrayList<>();
    changed.keySet().forEach(c -> boxes.add(row.cells().get(c)));
    for (int c = row.cells().size() - 1; c >= 0; c--) {
      boxes.add(row.cells().get(c));
    }
    for (Rect box : boxes) {
      done = done || triangle(inside(box, shape.width()));
    }
    return done || triangle(margins(row.box(), shape.width()));
  }

  /** A triangle with the old value after it, both in one place; false where none has room. */
  private boolean beside(Stream<Rect> places, String before) {
    if (!MarkShape.isShown(before)) {
      return false;
    }
    Rect place = places.filter(this::isClear).findFirst().orElse(null);
    if (place == null) {
      return false;
    }
    add(shape.triangle(left(place)));
    double middle = (place.top() + place.bottom()) / 2;
    add(shape.struck(before, place.left() + shape.width() + BESIDE, middle));
    return true;
  }

  private void old(Rect box, String before) {
    if (MarkShape.isShown(before)) {
      inside(box, shape.width(before))
          .filter(this::isClear)
          .findFirst()
          .ifPresent(b -> add(shape.struck(before, b.left(), (b.top() + b.bottom()) / 2)));
    }
  }

  private Rect left(Rect place) {
    return Rect.ofSize(place.left(), place.top(), shape.width(), shape.height());
  }

  private boolean triangle(Stream<Rect> places) {
    Rect place = places.filter(this::isClear).findFirst().orElse(null);
    if (place != null) {
      add(shape.triangle(place));
    }
    return place != null;
  }

  /** Clear of ink, and a little farther from letters to the left and right. */
  private boolean isClear(Rect b) {
    return ink.isClear(new Rect(b.left() - CLEAR, b.top(), b.right() + CLEAR, b.bottom()), CLEAR);
  }

  private void add(RevisionMark mark) {
    marks.add(mark);
    ink.add(MarkShape.box(mark));
  }

  /** Places of a width in a box, from the left; in the middle of its height, then lower, higher. */
  private Stream<Rect> inside(Rect box, double width) {
    List<Rect> places = new ArrayList<>();
    double room = box.height() - shape.height();
    double[] tops = {
      box.top() + room / 2, box.bottom() - shape.height() - BESIDE, box.top() + BESIDE
    };
    for (double top : tops) {
      for (double x = box.left() + BESIDE; x + width <= box.right() - CLEAR; x += STEP) {
        Rect place = Rect.ofSize(x, top, width, shape.height());
        if (room >= 0 && box.contains(place)) {
          places.add(place);
        }
      }
    }
    return places.stream();
  }

  /** Right and left of a box, at its height. */
  private Stream<Rect> margins(Rect box, double width) {
    double top = (box.top() + box.bottom() - shape.height()) / 2;
    return Stream.of(
        Rect.ofSize(box.right() + BESIDE, top, width, shape.height()),
        Rect.ofSize(box.left() - BESIDE - width, top, width, shape.height()));
  }

  private boolean flat(Inked flat) {
    List<Rect> places = new ArrayList<>();
    flat.caption().stream()
        .filter(r -> !r.text().isBlank())
        .map(PageInk::box)
        .forEach(b -> margins(b, shape.width()).forEach(places::add));
    around(flat.ink(), places);
    return clearOfCells(places);
  }

  private boolean callout(LaidText callout) {
    List<Rect> places = new ArrayList<>();
    margins(callout.box(), shape.width()).forEach(places::add);
    around(callout.box(), places);
    return clearOfCells(places);
  }

  private boolean clearOfCells(List<Rect> places) {
    return triangle(places.stream().filter(b -> ink.isClearOfCells(b, CLEAR)));
  }

  /** Along the four sides of a box, outside of it. */
  private void around(Rect box, List<Rect> places) {
    double w = shape.width();
    double h = shape.height();
    for (double y = box.top(); y + h <= box.bottom(); y += 2 * STEP) {
      places.add(Rect.ofSize(box.right() + BESIDE, y, w, h));
      places.add(Rect.ofSize(box.left() - BESIDE - w, y, w, h));
    }
    for (double x = box.right() - w; x >= box.left(); x -= 2 * STEP) {
      places.add(Rect.ofSize(x, box.top() - BESIDE - h, w, h));
      places.add(Rect.ofSize(x, box.bottom() + BESIDE, w, h));
    }
  }
}
