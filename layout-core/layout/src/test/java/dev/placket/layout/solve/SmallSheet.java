package dev.placket.layout.solve;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.Held;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A random sheet that is small enough for {@link BruteForce}: at most five flats and closed places
 * together, with everything the model knows: captions, least widths, limits, groups, shares, the
 * rules for front and back, held edges and scales, a corner that no window covers, gaps and
 * clearances by role.
 *
 * @param request the sheet as the library takes it
 * @param items the same flats as bare numbers
 * @param walls what each item keeps out of, by item
 * @param gaps between two items
 * @param frame left, top, right, bottom
 * @param rules whether the rules for the front hold; the first item is the front
 */
record SmallSheet(
    FitRequest request,
    List<Item> items,
    List<List<double[]>> walls,
    double[][] gaps,
    double[] frame,
    boolean rules) {

  /**
   * A flat as bare numbers.
   *
   * @param width of its ink in its own units
   * @param height of its ink in its own units
   * @param perT its scale at common scale 1
   * @param least its least scale
   * @param greatest its greatest scale
   * @param strip the caption's height in points
   * @param leastWidth of the footprint in points
   * @param heldX its left edge, or NaN
   * @param heldY its top edge, or NaN
   * @param back whether it is a back
   */
  record Item(
      double width,
      double height,
      double perT,
      double least,
      double greatest,
      double strip,
      double leastWidth,
      double heldX,
      double heldY,
      boolean back) {
    double scale(double t) {
      return Math.max(least, Math.min(greatest, perT * t));
    }

    double longest() {
      return Math.max(width, height);
    }
  }

  /** The same seed gives the same sheet. */
  static SmallSheet of(long seed) {
    return new Maker(new Random(seed)).make();
  }

  private static final class Maker {
    private static final double GAP = 9;
    private static final double WIDE_GAP = 17;
    private static final double CLEARANCE = 5;
    private static final double WIDE_CLEARANCE = 12;
    private static final Role WIDE = Role.PHOTO;

    private final Random random;
    private final List<Item> items = new ArrayList<>();
    private final List<Flat> flats = new ArrayList<>();

    Maker(Random random) {
      this.random = random;
    }

    SmallSheet make() {
      int flatCount = 1 + random.nextInt(4);
      int closed = random.nextInt(6 - flatCount);
      Rect inside = new Rect(20, 30, 20 + between(150, 600), 30 + between(150, 600));
      boolean corner = closed > 0 && random.nextBoolean();
      boolean rules = random.nextBoolean();
      boolean grouped = random.nextBoolean();
      for (int i = 0; i < flatCount; i++) {
        addFlat(i, inside, grouped, rules);
      }
      List<LabelledCell> cells = new ArrayList<>();
      for (int c = corner ? 1 : 0; c < closed; c++) {
        cells.add(new LabelledCell("cell " + c, inside(inside)));
      }
      double cutX = between(inside.left() + 20, inside.right() - 20);
      double cutY = between(inside.top() + 20, inside.bottom() - 20);
      Sheet sheet = sheet(inside, cells, corner, cutX, cutY);
      Rect out = corner ? new Rect(cutX, cutY, inside.right(), inside.bottom()) : null;
      List<List<double[]>> walls = new ArrayList<>();
      for (Flat f : flats) {
        walls.add(walls(f.role() == WIDE ? WIDE_CLEARANCE : CLEARANCE, cells, out));
      }
      Spacing spacing =
          Spacing.NONE
              .withGap(Length.pt(GAP))
              .withClearance(Length.pt(CLEARANCE))
              .withPairs(List.of(new Spacing.PairGap(WIDE, WIDE, Length.pt(WIDE_GAP))))
              .withRoles(List.of(new Spacing.RoleClearance(WIDE, Length.pt(WIDE_CLEARANCE))));
      FitRequest request =
          FitRequest.of(sheet, flats, spacing)
              .withRules(rules ? LeadRule.LISTED_IN_ORDER.takenFrom(LeadRule.ALL) : LeadRule.NONE)
              .withOrder(Order.NONE)
              .withGrowth(false);
      double[] frame = {inside.left(), inside.top(), inside.right(), inside.bottom()};
      return new SmallSheet(request, items, walls, gaps(), frame, rules);
    }

    private Sheet sheet(
        Rect inside, List<LabelledCell> cells, boolean corner, double cutX, double cutY) {
      PaperSize paper =
          new PaperSize("any", Length.pt(inside.right() + 20), Length.pt(inside.bottom() + 30));
      Margins margins = new Margins(Length.pt(30), Length.pt(20), Length.pt(30), Length.pt(20));
      if (!corner) {
        return Sheet.open("small", paper, margins, cells);
      }
      GridLines lines =
          new GridLines(
              List.of(inside.left(), cutX, inside.right()),
              List.of(inside.top(), cutY, inside.bottom()));
      List<SheetWindow> windows =
          List.of(
              new SheetWindow("near", new GridArea(0, 0, 1, 1)),
              new SheetWindow("right", new GridArea(1, 0, 2, 1)),
              new SheetWindow("below", new GridArea(0, 1, 1, 2)));
      return new Sheet("small", paper, margins, lines, windows, cells, List.of());
    }

    private void addFlat(int i, Rect inside, boolean grouped, boolean rules) {
      double width = between(20, 300);
      double height = between(20, 300);
      double longest = Math.max(width, height);
      boolean back = i > 0 && rules && random.nextInt(3) == 0;
      Role role =
          i == 0 ? Role.FRONT : back ? Role.BACK : random.nextBoolean() ? WIDE : Role.SWATCH;
      Flat flat = Flat.of("flat " + i, role, InkedBox.ofSize(width, height));
      double perT = 1;
      double ratio = between(0.4, 1);
      boolean inGroup = grouped && (i == 0 || random.nextBoolean());
      if (inGroup) {
        perT = i == 0 ? 1 : ratio;
        flat = flat.withGroup("all", perT);
      } else if (i > 0) {
        perT = ratio * items.get(0).longest() / longest;
        flat = flat.withShare(ratio);
      }
      double strip = random.nextBoolean() ? between(5, 20) : 0;
      double leastWidth = random.nextInt(3) == 0 ? between(10, 120) : 0;
      double least = 0;
      double greatest = Double.POSITIVE_INFINITY;
      boolean limited = !grouped && random.nextInt(3) == 0;
      if (limited) {
        least = between(5, 60);
        greatest = random.nextBoolean() ? between(61, 250) : Double.POSITIVE_INFINITY;
        // Now and then one size only.
        greatest = random.nextInt(4) == 0 ? least : greatest;
        Length most = greatest < Double.POSITIVE_INFINITY ? Length.pt(greatest) : null;
        flat = flat.withLimits(new Limits(Length.pt(least), most));
      }
      double leastScale = least / longest;
      double greatestScale = greatest / longest;
      double heldX = Double.NaN;
      double heldY = Double.NaN;
      if (i > 0 && random.nextInt(6) == 0) {
        leastWidth = 0;
        heldX = random.nextBoolean() ? between(inside.left(), inside.right() - 60) : heldX;
        heldY = random.nextBoolean() ? between(inside.top(), inside.bottom() - 60) : heldY;
        double scale = between(0.1, 1);
        boolean fixed = !grouped && !limited && random.nextInt(3) == 0;
        if (fixed) {
          leastScale = scale;
          greatestScale = scale;
        }
        flat = flat.withHeld(new Held(length(heldX), length(heldY), fixed ? scale : null));
      }
      flat = flat.withSurround(Surround.caption(Length.pt(strip), Length.pt(leastWidth)));
      flats.add(flat);
      items.add(
          new Item(
              width,
              height,
              perT,
              leastScale,
              greatestScale,
              strip,
              leastWidth,
              heldX,
              heldY,
              back));
    }

    private static @Nullable Length length(double at) {
      return Double.isNaN(at) ? null : Length.pt(at);
    }

    private Rect inside(Rect inside) {
      double left = between(inside.left() - 20, inside.right());
      double top = between(inside.top() - 20, inside.bottom());
      return new Rect(
          Math.max(20, left), Math.max(30, top), left + between(40, 200), top + between(40, 200));
    }

    private static List<double[]> walls(
        double clearance, List<LabelledCell> cells, @Nullable Rect out) {
      List<double[]> walls = new ArrayList<>();
      for (LabelledCell c : cells) {
        Rect b = c.box();
        walls.add(
            new double[] {
              b.left() - clearance,
              b.top() - clearance,
              b.right() + clearance,
              b.bottom() + clearance
            });
      }
      if (out != null) {
        walls.add(new double[] {out.left(), out.top(), out.right(), out.bottom()});
      }
      return walls;
    }

    private double[][] gaps() {
      double[][] gaps = new double[flats.size()][flats.size()];
      for (int i = 0; i < flats.size(); i++) {
        for (int j = 0; j < flats.size(); j++) {
          boolean wide = flats.get(i).role() == WIDE && flats.get(j).role() == WIDE;
          gaps[i][j] = wide ? WIDE_GAP : GAP;
        }
      }
      return gaps;
    }

    private double between(double from, double to) {
      return from + (to - from) * random.nextDouble();
    }
  }
}
