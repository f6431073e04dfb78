package dev.placket.packs.compose;

import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.flats.FlatCaption;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import java.util.List;

/**
 * The bar of 100 mm under a flat of true size, by which the print is checked before anything is
 * measured from it.
 */
public final class CheckBar {
  /** How long the bar is. */
  public static final Length LENGTH = Length.mm(100);

  private static final Length LINE = Length.mm(0.25);
  private static final Length TICK = Length.mm(2);

  /** What the bar, its ticks and its text need under the caption. */
  private static final Length STRIP = Length.mm(8);

  private static final String TEXT = "100 mm: check this length on the print";

  private CheckBar() {}

  /** A surround with room for the bar below the rest. */
  static Surround under(Surround caption) {
    Length half = LENGTH.plus(LINE);
    Length width = caption.leastWidth().compareTo(half) > 0 ? caption.leastWidth() : half;
    return Surround.caption(caption.bottom().plus(STRIP), width);
  }

  /** The bar's lines, in the middle under ink and caption. */
  public static List<Rule> rules(Rect ink, FlatCaption caption, Lettering lettering) {
    double y = base(ink, caption, lettering);
    double left = (ink.left() + ink.right()) / 2 - LENGTH.pt() / 2;
    double right = left + LENGTH.pt();
    double half = TICK.pt() / 2;
    return List.of(
        new Rule(new Rect(left, y, right, y), LINE),
        new Rule(new Rect(left, y - half, left, y + half), LINE),
        new Rule(new Rect(right, y - half, right, y + half), LINE));
  }

  /** The bar's text. */
  public static List<TextRun> text(Rect ink, FlatCaption caption, Lettering lettering) {
    double y =
        base(ink, caption, lettering) + TICK.pt() / 2 + Length.mm(1).pt() + Lettering.CAPTION.pt();
    double width = lettering.width(TEXT, Lettering.CAPTION);
    double left = (ink.left() + ink.right()) / 2 - width / 2;
    return lettering.line(TEXT, left, y, Lettering.CAPTION, false);
  }

  private static double base(Rect ink, FlatCaption caption, Lettering lettering) {
    return ink.bottom() + caption.surround(lettering).bottom().pt() + Length.mm(3).pt();
  }
}
