package dev.placket.packs.revision;

import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.PlanePoint;
import dev.placket.layout.units.Rect;
import dev.placket.packs.page.RevisionMark;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The parts of a mark: an equilateral triangle as large as its code needs, and an old value struck
 * through.
 */
final class MarkShape {
  /** As long as that, an old value stands in the list of changes only. */
  private static final int LONGEST = 40;

  /** A code of no more characters stands in the triangle as it is. */
  private static final int SHORT = 3;

  private static final double LEAST_HEIGHT = Length.mm(3.6).pt();
  private static final double BELOW_CODE = Length.mm(0.5).pt();
  private static final double BESIDE_CODE = Length.mm(0.15).pt();
  private static final Length STRIKE = Length.mm(0.18);

  /** Side over height of an equilateral triangle. */
  private static final double SIDE = 2 / Math.sqrt(3);

  private static final Length HEIGHT = Lettering.CAPTION;

  private final String code;
  private final Lettering lettering;
  private final double height;

  MarkShape(String code, Lettering lettering) {
    this.code = initials(code);
    this.lettering = lettering;
    // Above its foot a triangle narrows; the code is as wide as it is at the top of its letters.
    double needed = lettering.width(this.code, HEIGHT) + 2 * BESIDE_CODE;
    this.height = Math.max(LEAST_HEIGHT, needed / SIDE + BELOW_CODE + HEIGHT.pt());
  }

  /** Of a code of more than three characters, as in {@code proto 2}, its initials and numbers. */
  private static String initials(String code) {
    if (code.length() <= SHORT) {
      return code;
    }
    StringBuilder initials = new StringBuilder();
    for (String word : code.strip().split("[^\\p{L}\\p{N}]+", -1)) {
      if (!word.isEmpty()) {
        int first = word.codePointAt(0);
        initials.append(Character.isDigit(first) ? word : Character.toString(first));
      }
    }
    return initials.toString().toUpperCase(Locale.ROOT);
  }

  double height() {
    return height;
  }

  double width() {
    return height * SIDE;
  }

  /** The triangle in a box of its size. */
  RevisionMark triangle(Rect box) {
    double middle = (box.left() + box.right()) / 2;
    double left = middle - lettering.width(code, HEIGHT) / 2;
    return new RevisionMark(
        List.of(
            new PlanePoint(middle, box.top()),
            new PlanePoint(box.right(), box.bottom()),
            new PlanePoint(box.left(), box.bottom())),
        lettering.line(code, left, box.bottom() - BELOW_CODE, HEIGHT, false),
        List.of());
  }

  /** Whether an old value is short enough to stand on the sheet. */
  static boolean isShown(String old) {
    return !old.isBlank() && old.length() <= LONGEST && old.lines().count() == 1;
  }

  /** How wide an old value is. */
  double width(String old) {
    return lettering.width(old, HEIGHT);
  }

  /** An old value with its line through it, from a left end, about a height in the middle. */
  RevisionMark struck(String old, double left, double middle) {
    double base = middle + HEIGHT.pt() / 2;
    List<TextRun> runs = lettering.line(old, left, base, HEIGHT, false);
    Rect line = new Rect(left, middle, left + width(old), middle);
    return new RevisionMark(List.of(), runs, List.of(new Rule(line, STRIKE)));
  }

  /** The box of all letters of a mark and of its lines. */
  static Rect box(RevisionMark mark) {
    List<Rect> parts = new ArrayList<>();
    mark.runs().stream().filter(r -> !r.text().isBlank()).map(PageInk::box).forEach(parts::add);
    mark.strikes().forEach(s -> parts.add(s.ink()));
    mark.triangle().forEach(p -> parts.add(new Rect(p.x(), p.y(), p.x(), p.y())));
    Rect all = parts.get(0);
    for (Rect b : parts) {
      all =
          new Rect(
              Math.min(all.left(), b.left()),
              Math.min(all.top(), b.top()),
              Math.max(all.right(), b.right()),
              Math.max(all.bottom(), b.bottom()));
    }
    return all;
  }
}
