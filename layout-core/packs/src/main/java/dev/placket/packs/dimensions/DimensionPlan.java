package dev.placket.packs.dimensions;

import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.FlatShape;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.text.Lettering;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * The measures of a flat, and the lanes for them that the flat may have outside of its ink.
 *
 * @param lines the measures
 * @param own what stands round the ink besides
 * @param sides whether lanes may lie left and right of the ink, where no labels stand
 * @param dark what share of a box in drawing units the drawing covers
 * @param options one or more, those with fewer lanes first
 */
public record DimensionPlan(
    List<MeasureLine> lines,
    Surround own,
    boolean sides,
    ToDoubleFunction<Rect> dark,
    List<Option> options) {
  /** No measures. */
  public static final DimensionPlan NONE =
      new DimensionPlan(
          List.of(), Surround.NONE, false, box -> 0, List.of(new Option(Lanes.NONE, Length.ZERO)));

  /** Lanes on one side at most. */
  private static final int MOST_LANES = 6;

  /** Most options of a flat. */
  private static final int MOST = 4;

  private static final Length SMALLEST = Length.mm(30);
  private static final Length LARGEST = Length.mm(400);

  /** From one size that is tried to the next. */
  private static final double STEP = 1.25;

  /**
   * Lanes that will do.
   *
   * @param lanes on each side
   * @param least the longest side of the ink from which on they do
   */
  public record Option(Lanes lanes, Length least) {}

  /** Copies the lists. */
  public DimensionPlan {
    lines = List.copyOf(lines);
    options = List.copyOf(options);
  }

  /**
   * The lanes that lines on a flat need at one size or another.
   *
   * @param sides whether upright lines may lie left and right, where no labels stand
   * @param dark what share of a box in drawing units the drawing covers
   */
  public static DimensionPlan of(
      Flat flat,
      List<MeasureLine> lines,
      boolean sides,
      ToDoubleFunction<Rect> dark,
      Lettering lettering) {
    if (lines.isEmpty()) {
      return NONE;
    }
    DimensionPlan all = new DimensionPlan(lines, flat.surround(), sides, dark, List.of());
    List<Option> options = new ArrayList<>();
    Length greatest = flat.limits().greatest();
    Length size = greatest == null ? LARGEST : least(LARGEST, greatest);
    Length smallest = least(size, SMALLEST);
    while (size.compareTo(smallest) >= 0 && options.size() < MOST) {
      int last = options.size() - 1;
      Lanes here = all.needed(flat, size, lettering);
      // Lines that hide another at a large size may not at a small one: what was needed stays.
      Lanes needed = last < 0 ? here : here.and(options.get(last).lanes());
      if (last >= 0 && options.get(last).lanes().equals(needed)) {
        options.set(last, new Option(needed, size));
      } else {
        options.add(new Option(needed, size));
      }
      size = size.times(1 / STEP);
    }
    // A size below is not refused for its lines; what they meet there is a matter of the layout.
    int last = options.size() - 1;
    options.set(last, new Option(options.get(last).lanes(), Length.ZERO));
    return new DimensionPlan(lines, flat.surround(), sides, dark, options);
  }

  private static Length least(Length one, Length other) {
    return one.compareTo(other) < 0 ? one : other;
  }

  private Lanes needed(Flat flat, Length size, Lettering lettering) {
    InkedBox ink = flat.ink();
    double scale = size.pt() / ink.longestSide();
    int beside = sides ? MOST_LANES : 0;
    DimensionFrame frame =
        frame(
            p -> new PlanePoint((p.x() - ink.left()) * scale, (p.y() - ink.top()) * scale),
            Rect.ofSize(0, 0, ink.width() * scale, ink.height() * scale),
            flat,
            scale,
            new Lanes(beside, MOST_LANES, beside, MOST_LANES),
            List.of());
    return used(
        DimensionLayout.lay(lines, frame, lettering, DimensionLayout.PLANNING), frame.ink());
  }

  /**
   * The flat on its sheet.
   *
   * @param place where a point of the drawing lies on the sheet
   * @param at where the ink lies on the sheet
   * @param scale points to the drawing unit
   * @param others lines of callouts on the flat
   */
  public DimensionFrame frame(
      UnaryOperator<PlanePoint> place,
      Rect at,
      Flat flat,
      double scale,
      Lanes lanes,
      List<List<PlanePoint>> others) {
    InkedBox ink = flat.ink();
    ToDoubleFunction<Rect> covered =
        box ->
            dark.applyAsDouble(
                new Rect(
                    ink.left() + (box.left() - at.left()) / scale,
                    ink.top() + (box.top() - at.top()) / scale,
                    ink.left() + (box.right() - at.left()) / scale,
                    ink.top() + (box.bottom() - at.top()) / scale));
    return new DimensionFrame(place, at, scale, lanes, covered, others);
  }

  private static Lanes used(DimensionLayout.Result result, Rect ink) {
    int[] most = new int[4];
    for (LaidDimension each : result.dimensions()) {
      if (each.outside()) {
        PlanePoint a = each.line().get(0);
        double[] beyond = {
          ink.left() - a.x(), ink.top() - a.y(), a.x() - ink.right(), a.y() - ink.bottom()
        };
        for (int side = 0; side < beyond.length; side++) {
          most[side] = Math.max(most[side], Lanes.at(beyond[side]));
        }
      }
    }
    return new Lanes(most[0], most[1], most[2], most[3]);
  }

  /**
   * The footprints of the flat with lanes, for each footprint that it has without.
   *
   * @param bare how it stands otherwise
   * @param from the first of the options to offer
   */
  public List<FlatShape> around(FlatShape bare, int from) {
    List<FlatShape> all = new ArrayList<>();
    for (Option option : options.subList(from, options.size())) {
      Length least = option.least().compareTo(bare.least()) > 0 ? option.least() : bare.least();
      all.add(new FlatShape(option.lanes().around(bare.surround()), least));
    }
    return all;
  }

  /** The number of the option that a placed flat was given, by its footprint; -1 for none. */
  public int chosen(Flat placed) {
    for (int i = 0; i < options.size(); i++) {
      Surround with = options.get(i).lanes().around(own);
      Surround its = placed.surround();
      boolean beside = with.left().equals(its.left()) && with.right().equals(its.right());
      if (with.top().equals(its.top())
          && with.bottom().equals(its.bottom())
          && (beside || !sides)) {
        return i;
      }
    }
    return -1;
  }

  /** The lanes of a placed flat; none where its footprint is another. */
  public Lanes lanes(Flat placed) {
    int chosen = chosen(placed);
    return chosen < 0 ? Lanes.NONE : options.get(chosen).lanes();
  }

  /** How far below the ink of a placed flat its caption begins. */
  public Length below(Flat placed) {
    return Lanes.depth(lanes(placed).bottom());
  }
}
