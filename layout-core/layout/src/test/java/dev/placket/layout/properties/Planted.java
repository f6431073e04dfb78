package dev.placket.layout.properties;

import dev.placket.layout.fit.FitRequest;
import dev.placket.layout.fit.LeadRule;
import dev.placket.layout.fit.Placement;
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
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * A random sheet drawn around an arrangement that is known to keep every hard rule at common scale
 * {@code scale}: the room is cut into slots, flats and labelled cells fill slots, and windows,
 * limits and held parts are chosen so that the arrangement stands.
 *
 * @param request the sheet with its flats; it knows nothing of the slots
 * @param scale the planted common scale
 * @param placements the planted arrangement, rounded as an answer is
 */
record Planted(FitRequest request, double scale, List<Placement> placements) {
  private static final double GAP = 9;
  private static final double CLEARANCE = 6;
  private static final double CAPTION = 11;

  /** The same seed gives the same sheet. */
  static Planted of(long seed, int flats) {
    return new Maker(new Random(seed)).make(flats);
  }

  private static final class Maker {
    private final Random random;
    private final List<Rect> slots = new ArrayList<>();
    private final double scale;
    private final Rect inside;

    Maker(Random random) {
      this.random = random;
      this.scale = between(0.2, 5);
      this.inside = new Rect(30, 40, 30 + between(200, 800), 40 + between(200, 800));
    }

    Planted make(int flats) {
      int cells = random.nextInt(4);
      slots.add(inside);
      while (slots.size() < flats + cells) {
        cut();
      }
      slots.sort(Comparator.comparingDouble(Maker::area).reversed());
      List<Rect> taken = new ArrayList<>();
      for (Rect slot : slots.subList(0, flats)) {
        taken.add(shrunk(slot, 0.1));
      }
      // Even a shrunken slot keeps what the caption, at most 11 pt, leaves.
      taken.sort(Comparator.comparingDouble(Maker::longestInk).reversed());
      List<LabelledCell> labelled = new ArrayList<>();
      List<Rule> rules = new ArrayList<>();
      for (Rect slot : slots.subList(flats, slots.size())) {
        block(shrunk(slot, 0.3), labelled, rules);
      }
      GridLines lines = lines();
      List<SheetWindow> windows = windows(lines, taken);
      PaperSize paper =
          new PaperSize("any", Length.pt(inside.right() + 20), Length.pt(inside.bottom() + 50));
      Margins margins = new Margins(Length.pt(40), Length.pt(20), Length.pt(50), Length.pt(30));
      Sheet sheet = new Sheet("planted", paper, margins, lines, windows, labelled, rules);
      Spacing spacing = Spacing.NONE.withGap(Length.pt(GAP)).withClearance(Length.pt(CLEARANCE));
      List<Flat> drawn = flats(taken, sheet);
      // Flats are planted in any order.
      FitRequest request =
          FitRequest.of(sheet, drawn, spacing)
              .withRules(LeadRule.LISTED_IN_ORDER.takenFrom(LeadRule.ALL));
      return new Planted(request, scale, placements(taken, drawn));
    }

    /**
     * A labelled cell, with a rule on an edge or not, or a rule alone. Half of the widest rule and
     * the clearance stay under the gap that parts the slots.
     */
    private void block(Rect at, List<LabelledCell> labelled, List<Rule> rules) {
      int kind = random.nextInt(4);
      if (kind < 3) {
        labelled.add(new LabelledCell("cell " + labelled.size(), at));
      }
      Length width = Length.pt(between(0, 2 * (GAP - CLEARANCE)));
      if (kind == 2) {
        rules.add(new Rule(new Rect(at.left(), at.top(), at.right(), at.top()), width));
      } else if (kind == 3) {
        double across = (at.left() + at.right()) / 2;
        rules.add(new Rule(new Rect(across, at.top(), across, at.bottom()), width));
      }
    }

    /** Cuts the largest slot in two, a gap apart. */
    private void cut() {
      slots.sort(Comparator.comparingDouble(Maker::area).reversed());
      Rect s = slots.remove(0);
      double share = between(0.3, 0.7);
      if (s.width() > s.height()) {
        double at = s.left() + (s.width() - GAP) * share;
        slots.add(new Rect(s.left(), s.top(), at, s.bottom()));
        slots.add(new Rect(at + GAP, s.top(), s.right(), s.bottom()));
      } else {
        double at = s.top() + (s.height() - GAP) * share;
        slots.add(new Rect(s.left(), s.top(), s.right(), at));
        slots.add(new Rect(s.left(), at + GAP, s.right(), s.bottom()));
      }
    }

    private Rect shrunk(Rect slot, double most) {
      // A hundredth of a point aside, so that rounding to 1e-6 finds room wherever things touch.
      double dx = (slot.width() - 20) * between(0, most) / 2 + 0.01;
      double dy = (slot.height() - 20) * between(0, most) / 2 + 0.01;
      return new Rect(slot.left() + dx, slot.top() + dy, slot.right() - dx, slot.bottom() - dy);
    }

    private GridLines lines() {
      return new GridLines(
          cuts(inside.left(), inside.right()), cuts(inside.top(), inside.bottom()));
    }

    private List<Double> cuts(double from, double to) {
      List<Double> at = new ArrayList<>(List.of(from, to));
      int more = random.nextInt(3);
      for (int i = 0; i < more; i++) {
        at.add(between(from, to));
      }
      at.sort(Comparator.naturalOrder());
      return at;
    }

    /** Every grid cell that a flat stands on is a window; of the others, every other one. */
    private List<SheetWindow> windows(GridLines lines, List<Rect> taken) {
      List<SheetWindow> windows = new ArrayList<>();
      for (int c = 0; c + 1 < lines.columns().size(); c++) {
        for (int r = 0; r + 1 < lines.rows().size(); r++) {
          GridArea area = new GridArea(c, r, c + 1, r + 1);
          Rect box = lines.box(area);
          if (taken.stream().anyMatch(box::overlaps) || random.nextBoolean()) {
            windows.add(new SheetWindow("window " + c + " " + r, area));
          }
        }
      }
      return windows;
    }

    private List<Flat> flats(List<Rect> taken, Sheet sheet) {
      List<Flat> flats = new ArrayList<>();
      Rect front = taken.get(0);
      List<Role> roles = roles(taken);
      for (int i = 0; i < taken.size(); i++) {
        Rect at = taken.get(i);
        double caption = at.height() > 30 ? CAPTION : 0;
        Rect ink = new Rect(at.left(), at.top(), at.right(), at.bottom() - caption);
        InkedBox drawn = InkedBox.ofSize(ink.width() / scale, ink.height() / scale);
        // At most what the ink keeps across once its greatest size has made it small.
        double across = at.width() * between(0, 0.59);
        Flat flat =
            Flat.of("flat " + i, roles.get(i), drawn)
                .withSurround(Surround.caption(Length.pt(caption), Length.pt(across)))
                .withShare(Math.min(1, longest(ink) / longestInk(front)));
        flats.add(bound(flat, i, at, ink, sheet));
      }
      Collections.shuffle(flats, random);
      return flats;
    }

    private List<Placement> placements(List<Rect> taken, List<Flat> flats) {
      List<Placement> placements = new ArrayList<>();
      for (Flat f : flats) {
        Rect at = taken.get(Integer.parseInt(f.id().substring("flat ".length())));
        double most = f.limits().greatestPt() / f.ink().longestSide();
        placements.add(
            new Placement(
                f.id(),
                new BigDecimal(Math.min(most, scale)).round(new MathContext(12, RoundingMode.DOWN)),
                BigDecimal.valueOf(at.left()).setScale(6, RoundingMode.HALF_EVEN),
                BigDecimal.valueOf(at.top()).setScale(6, RoundingMode.HALF_EVEN),
                most < scale));
      }
      return placements;
    }

    /** Details are what is no view and stands clearly under the least of the views. */
    private List<Role> roles(List<Rect> taken) {
      List<Role> roles = new ArrayList<>(List.of(Role.FRONT));
      taken.subList(1, taken.size()).forEach(at -> roles.add(role(taken.get(0), at)));
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < roles.size(); i++) {
        least = roles.get(i).isView() ? Math.min(least, longestInk(taken.get(i))) : least;
      }
      for (int i = 0; i < roles.size(); i++) {
        boolean under = !roles.get(i).isView() && longestInk(taken.get(i)) < 0.9 * least;
        roles.set(i, under && random.nextBoolean() ? Role.DETAIL : roles.get(i));
      }
      return roles;
    }

    /** No detail yet; a back only where it stands behind the front. */
    private Role role(Rect front, Rect at) {
      boolean behind = at.left() >= front.right() + GAP || at.top() >= front.bottom() + GAP;
      if (behind && random.nextInt(3) == 0) {
        return Role.BACK;
      }
      return List.of(Role.SIDE, Role.INSIDE, Role.SWATCH, Role.PHOTO, Role.STEP)
          .get(random.nextInt(5));
    }

    private Flat bound(Flat flat, int index, Rect at, Rect ink, Sheet sheet) {
      Flat bound = flat;
      double size = longest(ink);
      boolean grouped = flat.role().isView() && random.nextInt(3) > 0;
      if (grouped) {
        bound = bound.withGroup("views", 1);
      }
      if (random.nextInt(3) == 0) {
        boolean poor = flat.role() == Role.SWATCH;
        Length most = Length.pt(size * (poor ? between(0.6, 1.5) : between(1.001, 2)));
        Length least = Length.pt(size * between(0, 0.59));
        boolean limited = random.nextBoolean() && flat.role() != Role.FRONT;
        bound = bound.withLimits(new Limits(least, limited ? most : null));
      }
      if (random.nextInt(3) == 0) {
        bound =
            bound.withWindows(
                sheet.windows().stream()
                    .filter(w -> sheet.box(w).overlaps(at))
                    .map(SheetWindow::name)
                    .toList());
      }
      if (index > 0 && !grouped && bound.limits().greatest() == null && random.nextInt(8) == 0) {
        bound = bound.withHeld(held(at, ink));
      }
      return bound;
    }

    private Held held(Rect at, Rect ink) {
      Length left = random.nextBoolean() ? Length.pt(ink.left()) : null;
      Length top = random.nextBoolean() ? Length.pt(at.top()) : null;
      return new Held(left, top, random.nextBoolean() ? scale : null);
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

    /** The longest side of the ink that a place holds once its caption is off. */
    private static double longestInk(Rect at) {
      double caption = at.height() > 30 ? CAPTION : 0;
      return Math.max(at.width(), at.height() - caption);
    }
  }
}
