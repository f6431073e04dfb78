package dev.placket.packs.dimensions;

import dev.placket.layout.units.PlanePoint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A point of measure on a flat, in drawing units.
 *
 * @param code the point's
 * @param from its first spot
 * @param to its second
 * @param run which way it runs
 * @param beside how far the line lies beside its spots: below a level line, right of an upright
 *     one, to the right of the way for others; extension lines lead there. Null leaves the place to
 *     the layout
 * @param way the line of the drawing that it runs along, as many short steps; else empty
 * @param along the length of that line; else 0
 */
public record MeasureLine(
    String code,
    PlanePoint from,
    PlanePoint to,
    DimensionRun run,
    @Nullable Double beside,
    List<PlanePoint> way,
    double along) {
  /** Copies the list. */
  public MeasureLine {
    way = List.copyOf(way);
  }

  /** A measure between two spots. */
  public MeasureLine(
      String code, PlanePoint from, PlanePoint to, DimensionRun run, @Nullable Double beside) {
    this(code, from, to, run, beside, List.of(), 0);
  }

  /** What is measured. */
  public double length() {
    if (run == DimensionRun.ALONG) {
      return along;
    }
    List<PlanePoint> ends = Segments.beside(run, from, to, 0);
    return Segments.length(ends.get(0), ends.get(1));
  }

  /** The line at its stated place, from first to last. */
  public List<PlanePoint> drawn() {
    double away = beside == null ? 0 : beside;
    return run == DimensionRun.ALONG
        ? Segments.offset(way, away)
        : Segments.beside(run, from, to, away);
  }
}
