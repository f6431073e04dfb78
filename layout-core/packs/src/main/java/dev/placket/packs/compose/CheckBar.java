package dev.placket.packs.compose;

import dev.placket.layout.flat.Surround;
import dev.placket.layout.sheet.Rule;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.flats.FlatCaption;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
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

  /** From a line of text to the next. */
  private static final Length LINES = Length.mm(1);

  /** What the bar and its ticks need under the caption. */
  private static final Length STRIP = Length.mm(5.2);

  private CheckBar() {}

  /** A surround with room for the bar below the rest. */
  static Surround under(Surround caption, Phrases phrases, Lettering lettering) {
    Length width = caption.leastWidth();
    Length strip = STRIP;
    for (String line : lines(phrases)) {
      strip = strip.plus(height(line)).plus(LINES);
      width = longer(width, Length.pt(lettering.width(line, height(line))));
    }
    return Surround.caption(caption.bottom().plus(strip), longer(width, LENGTH.plus(LINE)));
  }

  private static Length longer(Length a, Length b) {
    return a.compareTo(b) > 0 ? a : b;
  }

  /** A line for each language. */
  private static List<String> lines(Phrases phrases) {
    String all = phrases.lines(language -> phrases.in(StockPhrase.CHECK_BAR, language));
    return all.lines().toList();
  }

  private static Length height(String line) {
    return Lettering.steps(line, Lettering.CAPTION, Lettering.CAPTION).get(0);
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
  public static List<TextRun> text(
      Rect ink, FlatCaption caption, Phrases phrases, Lettering lettering) {
    double y = base(ink, caption, lettering) + TICK.pt() / 2 + Length.mm(1).pt();
    double middle = (ink.left() + ink.right()) / 2;
    List<TextRun> runs = new ArrayList<>();
    for (String line : lines(phrases)) {
      Length height = height(line);
      y += height.pt();
      double left = middle - lettering.width(line, height) / 2;
      runs.addAll(lettering.line(line, left, y, height, false));
      y += LINES.pt();
    }
    return runs;
  }

  private static double base(Rect ink, FlatCaption caption, Lettering lettering) {
    return ink.bottom() + caption.surround(lettering).bottom().pt() + Length.mm(3).pt();
  }
}
