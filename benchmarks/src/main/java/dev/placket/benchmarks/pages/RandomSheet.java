package dev.placket.benchmarks.pages;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Order;
import dev.placket.layout.flat.Flat;
import dev.placket.layout.flat.InkedBox;
import dev.placket.layout.flat.Limits;
import dev.placket.layout.flat.Role;
import dev.placket.layout.flat.Spacing;
import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * A small random sheet cut from an arrangement that stands at common scale {@code planted}: the
 * page is cut in two again and again, and what comes out are flats and labelled cells.
 *
 * @param request one to six flats, up to three cells, captions, limits, groups and shares
 * @param planted a common scale at which all is known to fit
 */
public record RandomSheet(FitRequest request, double planted) {
  private static final double GAP = 8;
  private static final double STRIP = 10;

  /** The same seed gives the same sheet. */
  public static RandomSheet of(long seed) {
    return new Maker(new Random(seed)).make();
  }

  private static final class Maker {
    private final Random random;
    private final List<Rect> pieces = new ArrayList<>();
    private final double planted;

    Maker(Random random) {
      this.random = random;
      this.planted = between(0.3, 4);
    }

    RandomSheet make() {
      int flatCount = 1 + random.nextInt(6);
      int cellCount = random.nextInt(4);
      Rect inside = new Rect(15, 15, 15 + between(200, 700), 15 + between(200, 700));
      pieces.add(inside);
      while (pieces.size() < flatCount + cellCount) {
        cut();
      }
      pieces.sort(Comparator.comparingDouble(Maker::longest).reversed());
      List<LabelledCell> cells = new ArrayList<>();
      for (Rect b : pieces.subList(flatCount, pieces.size())) {
        cells.add(new LabelledCell("cell " + cells.size(), b));
      }
      PaperSize paper =
          new PaperSize("random", Length.pt(inside.right() + 15), Length.pt(inside.bottom() + 15));
      Sheet sheet = Sheet.open("random", paper, Margins.all(Length.pt(15)), cells);
      Length gap = Length.pt(GAP);
      FitRequest request =
          FitRequest.of(sheet, flats(flatCount), Spacing.NONE.withGap(gap).withClearance(gap))
              .withRules(
                  random.nextBoolean()
                      ? LeadRule.LISTED_IN_ORDER.takenFrom(LeadRule.ALL)
                      : LeadRule.NONE);
      return new RandomSheet(
          random.nextInt(4) == 0 ? request : request.withOrder(Order.NONE).withGrowth(false),
          planted);
    }

    private void cut() {
      pieces.sort(Comparator.comparingDouble(Maker::area).reversed());
      Rect b = pieces.remove(0);
      double share = between(0.3, 0.7);
      if (b.width() > b.height()) {
        double at = b.left() + (b.width() - GAP) * share;
        pieces.add(new Rect(b.left(), b.top(), at, b.bottom()));
        pieces.add(new Rect(at + GAP, b.top(), b.right(), b.bottom()));
      } else {
        double at = b.top() + (b.height() - GAP) * share;
        pieces.add(new Rect(b.left(), b.top(), b.right(), at));
        pieces.add(new Rect(b.left(), at + GAP, b.right(), b.bottom()));
      }
    }

    private List<Flat> flats(int count) {
      List<Flat> flats = new ArrayList<>();
      boolean grouped = random.nextBoolean();
      double lead = 0;
      for (Rect b : pieces.subList(0, count)) {
        double strip = random.nextInt(3) == 0 && b.height() > 4 * STRIP ? STRIP : 0;
        InkedBox ink = InkedBox.ofSize(b.width() / planted, (b.height() - strip) / planted);
        // With strips off a later flat may be the longer one; the front is the longest.
        lead = flats.isEmpty() ? ink.longestSide() : lead;
        double share = ink.longestSide() / lead;
        Role role = flats.isEmpty() ? Role.FRONT : random.nextBoolean() ? Role.SIDE : Role.SWATCH;
        Flat flat =
            Flat.of("flat " + flats.size(), role, ink)
                .withSurround(Surround.caption(Length.pt(strip), Length.ZERO));
        boolean single = share > 1 || (flats.size() > 0 && !grouped);
        if (share > 1) {
          continue;
        }
        flat = single ? flat.withShare(share) : flat.withGroup("all", 1);
        if (single && random.nextInt(3) == 0) {
          double size = ink.longestSide() * planted;
          Length least = Length.pt(size * between(0, 0.9));
          flat = flat.withLimits(new Limits(least, Length.pt(size * between(1.001, 2))));
        }
        flats.add(flat);
      }
      Collections.shuffle(flats, random);
      return flats;
    }

    private double between(double from, double to) {
      return from + (to - from) * random.nextDouble();
    }

    private static double area(Rect b) {
      return b.width() * b.height();
    }

    private static double longest(Rect b) {
      return Math.max(b.width(), b.height());
    }
  }
}
