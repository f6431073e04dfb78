package dev.placket.packs.dimensions;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Finds places for the lines of a flat's measures and for their codes.
 *
 * <p>A line lies on the drawing where it meets no other and keeps 3 mm from its parallels, else in
 * a lane outside. Of all places those are taken in which, in this order, the fewest lines meet, no
 * code covers the drawing, the fewest lines lie outside, those outside come late in the list, the
 * fewest extension lines cross, and the extension lines are shortest: a depth-first search with
 * bounds, exact within its steps.
 */
public final class DimensionLayout {
  /** Places tried before the search takes the best that it knows. */
  private static final int STEPS = 200_000;

  /** So many times the steps are taken to find any places at all. */
  private static final int FIRST = 3;

  /** The same while lanes are planned, at many sizes. */
  static final int PLANNING = 20_000;

  /** Places tried for the codes of one set of lines. */
  private static final int CODE_STEPS = 20_000;

  /** A line is looked at so often, in points, and so far to its sides. */
  private static final double SAMPLE = Length.mm(0.5).pt();

  private static final double STROKE = Length.mm(0.3).pt();

  /** Where so much is dark, the line is hidden there; hidden for such a share, it is not seen. */
  private static final double DARK = 0.3;

  private static final double HIDDEN = 0.4;

  private final DimensionFrame frame;
  private final List<List<DrawnLine>> choices = new ArrayList<>();
  private final Map<DrawnLine, List<CodePlaces.Place>> places = new IdentityHashMap<>();

  /** Lines that have no place at all at which their codes are clear of the drawing. */
  private final List<Boolean> unclear = new ArrayList<>();

  private final List<DrawnLine> taken = new ArrayList<>();
  private final List<LaidDimension> laid = new ArrayList<>();
  private final List<List<CodePlaces.Place>> free = new ArrayList<>();
  private @Nullable Score best;
  private List<LaidDimension> found = List.of();
  private List<List<String>> meeting = List.of();
  private final int most;
  private int steps;
  private int codeSteps;
  private int deepest;

  private DimensionLayout(
      DimensionFrame frame, List<MeasureLine> lines, Lettering lettering, int most) {
    this.frame = frame;
    this.most = most;
    CodePlaces codes = new CodePlaces(frame, lettering);
    LineChoices all = new LineChoices(frame);
    for (MeasureLine line : lines) {
      List<DrawnLine> its = all.of(line);
      its.forEach(c -> places.put(c, codes.of(c)));
      List<DrawnLine> clear = its.stream().filter(this::isEverClear).toList();
      List<DrawnLine> seen = clear.stream().filter(c -> !isHidden(c)).toList();
      unclear.add(clear.isEmpty());
      choices.add(clear.isEmpty() ? its : seen.isEmpty() ? clear : seen);
    }
  }

  private boolean isEverClear(DrawnLine line) {
    return places(line).stream().anyMatch(p -> p.busy() == 0);
  }

  /** Whether a line lies on lines of the drawing for much of its way, or on dark cloth. */
  private boolean isHidden(DrawnLine line) {
    int hidden = 0;
    int all = 0;
    double length = line.length();
    for (double far = 0; far < length; far += SAMPLE) {
      PlanePoint at = Segments.at(line.line(), far)[0];
      Rect near = new Rect(at.x() - STROKE, at.y() - STROKE, at.x() + STROKE, at.y() + STROKE);
      hidden += frame.dark().applyAsDouble(near) > DARK ? 1 : 0;
      all++;
    }
    return hidden > HIDDEN * all;
  }

  private List<CodePlaces.Place> places(DrawnLine line) {
    return Objects.requireNonNull(places.get(line));
  }

  /**
   * What was found.
   *
   * @param dimensions in the order that they were given in
   * @param stuck the code for which no place was found; empty if all have one
   * @param meeting pairs of codes whose lines meet or run side by side too close
   * @param covering codes that stand on lines of the drawing, which white under them hides
   */
  public record Result(
      List<LaidDimension> dimensions,
      String stuck,
      List<List<String>> meeting,
      List<String> covering) {
    /** Copies the lists. */
    public Result {
      dimensions = List.copyOf(dimensions);
      meeting = meeting.stream().map(List::copyOf).toList();
      covering = List.copyOf(covering);
    }

    /** Pairs of lines that meet, and one more if codes cover the drawing. */
    public int faults() {
      return stuck.isEmpty() ? meeting.size() + (covering.isEmpty() ? 0 : 1) : STUCK;
    }
  }

  /** Worse than any number of lines that meet. */
  private static final int STUCK = 10_000;

  /** The measures of a flat. */
  public static Result lay(List<MeasureLine> lines, DimensionFrame frame, Lettering lettering) {
    return lay(lines, frame, lettering, STEPS);
  }

  /**
   * The same within a number of steps.
   *
   * @param most places tried before the search takes the best that it knows
   */
  static Result lay(List<MeasureLine> lines, DimensionFrame frame, Lettering lettering, int most) {
    DimensionLayout layout = new DimensionLayout(frame, lines, lettering, most);
    layout.search(0, Score.NONE);
    if (layout.best == null) {
      return new Result(List.of(), lines.get(layout.deepest).code(), List.of(), List.of());
    }
    List<String> covering =
        layout.found.stream()
            .filter(d -> CodePlaces.busy(frame, d.box()) > 0)
            .map(LaidDimension::code)
            .toList();
    return new Result(layout.found, "", layout.meeting, covering);
  }

  private List<List<String>> meetings() {
    List<List<String>> pairs = new ArrayList<>();
    for (int i = 0; i < taken.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (taken.get(i).meets(taken.get(j))) {
          pairs.add(List.of(taken.get(j).its().code(), taken.get(i).its().code()));
        }
      }
    }
    return pairs;
  }

  private void search(int next, Score so) {
    if (isOver() || best != null && so.compareTo(best) >= 0) {
      return;
    }
    if (next == choices.size()) {
      end(so);
      return;
    }
    for (DrawnLine each : choices.get(next)) {
      steps++;
      Score with = with(each, next, so);
      taken.add(each);
      search(next + 1, with);
      taken.remove(taken.size() - 1);
    }
  }

  /** Whether the steps are used up; while nothing is known, a few times as many are taken. */
  private boolean isOver() {
    return steps > (best == null ? FIRST * most : most);
  }

  private Score with(DrawnLine each, int number, Score so) {
    int meetings = so.meetings();
    int crossings = so.crossings() + each.crossings(frame.others());
    for (DrawnLine other : taken) {
      meetings += each.meets(other) ? 1 : 0;
      crossings += each.crossings(other);
    }
    long rank = each.outside() ? 1L << Math.max(0, Long.SIZE - 2 - number) : 0;
    return new Score(
        meetings,
        0,
        so.lanes() + (each.outside() ? 1 : 0),
        so.rank() + rank,
        crossings,
        so.extension() + each.extension());
  }

  /** All lines have places: now their codes. */
  private void end(Score so) {
    if (codes(true)) {
      keep(so);
    } else if ((best == null || so.covering().compareTo(best) < 0) && codes(false)) {
      keep(so.covering());
    }
  }

  private void keep(Score so) {
    best = so;
    found = List.copyOf(laid);
    meeting = meetings();
  }

  private boolean codes(boolean clear) {
    laid.clear();
    codeSteps = 0;
    free.clear();
    for (int i = 0; i < taken.size(); i++) {
      List<CodePlaces.Place> its = free(i, clear);
      if (its.isEmpty()) {
        deepest = Math.max(deepest, i);
        return false;
      }
      free.add(its);
    }
    return place(0);
  }

  /** The places of a code that are clear of all lines, whatever the other codes take. */
  private List<CodePlaces.Place> free(int own, boolean clear) {
    List<CodePlaces.Place> its = new ArrayList<>();
    for (CodePlaces.Place each : places(taken.get(own))) {
      if (each.busy() > 0 && clear && !unclear.get(own) || isOver()) {
        break;
      }
      steps++;
      if (isClear(each.laid().box(), own)) {
        its.add(each);
      }
    }
    return its;
  }

  private boolean place(int next) {
    if (next == taken.size()) {
      return true;
    }
    deepest = Math.max(deepest, next);
    for (CodePlaces.Place each : free.get(next)) {
      steps++;
      if (++codeSteps > CODE_STEPS || isOver()) {
        return false;
      }
      if (laid.stream().noneMatch(l -> l.box().overlaps(each.laid().box()))) {
        laid.add(each.laid());
        if (place(next + 1)) {
          return true;
        }
        laid.remove(laid.size() - 1);
      }
    }
    return false;
  }

  private boolean isClear(Rect box, int own) {
    for (int i = 0; i < taken.size(); i++) {
      DrawnLine line = taken.get(i);
      if (enters(i == own ? line.more() : line.lines(), box)) {
        return false;
      }
    }
    return !enters(frame.others(), box);
  }

  private static boolean enters(List<List<PlanePoint>> lines, Rect box) {
    for (List<PlanePoint> line : lines) {
      for (int i = 1; i < line.size(); i++) {
        if (Segments.enters(line.get(i - 1), line.get(i), box)) {
          return true;
        }
      }
    }
    return false;
  }
}
