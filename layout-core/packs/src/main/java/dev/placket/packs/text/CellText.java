package dev.placket.packs.text;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sets the text of a cell: it wraps, then shrinks by a step, and never leaves the cell. */
public final class CellText {
  private static final Length INSET = TextBlock.INSET;

  /** From the caption's baseline to the room of the value. */
  private static final Length UNDER = Length.mm(0.6);

  private final Lettering lettering;

  /** Cell text in a typeface. */
  public CellText(Lettering lettering) {
    this.lettering = lettering;
  }

  /**
   * A cell with a caption above its value.
   *
   * @param steps the capital heights to try for the value, the preferred first
   * @throws Refusal naming the cell, if the value does not go in at the smallest
   */
  public Cell captioned(String name, String value, Rect box, List<Length> steps) throws Refusal {
    return captioned(name, name, value, box, steps);
  }

  /** The same where messages call the cell otherwise than its caption. */
  public Cell captioned(String name, String caption, String value, Rect box, List<Length> steps)
      throws Refusal {
    List<TextRun> runs = new ArrayList<>();
    lettering.check(caption, "caption of " + name);
    Length height = captionHeight(caption);
    double captionBase = box.top() + INSET.pt() + height.pt();
    runs.addAll(
        lettering.line(
            fitted(caption, box, height), box.left() + INSET.pt(), captionBase, height, false));
    double top = captionBase + UNDER.pt();
    runs.addAll(onFoot(name, value, new Rect(box.left(), top, box.right(), box.bottom()), steps));
    return new Cell(name, box, runs);
  }

  /** The height of a caption's capitals. */
  private static Length captionHeight(String caption) {
    return Lettering.steps(caption, Lettering.CAPTION, Lettering.CAPTION).get(0);
  }

  /** How wide a caption is, in points. */
  public static double captionWidth(String caption, Lettering lettering) {
    return lettering.width(caption, captionHeight(caption));
  }

  /** Whether a cell has room for its caption and its value. */
  public static boolean fits(
      String caption, String value, Rect box, List<Length> steps, Lettering lettering) {
    double top = box.top() + INSET.pt() + captionHeight(caption).pt() + UNDER.pt();
    if (top > box.bottom() || captionWidth(caption, lettering) > box.width() - 2 * INSET.pt()) {
      return false;
    }
    Rect below = new Rect(box.left(), top, box.right(), box.bottom());
    return TextBlock.fit(
            value,
            below,
            legible(value, steps),
            TextBlock.Align.LEFT,
            TextBlock.Stand.FOOT,
            lettering)
        != null;
  }

  /** Those of the steps at which a script is legible. */
  private static List<Length> legible(String value, List<Length> steps) {
    return Lettering.steps(value, steps.get(0), steps.get(steps.size() - 1));
  }

  /** A cell that holds nothing but lines of text, the last of them at its foot. */
  public Cell plain(String name, String value, Rect box, List<Length> steps) throws Refusal {
    return new Cell(name, box, onFoot(name, value, box, steps));
  }

  /**
   * How high a captioned cell has to be for a value: for one line of it if that goes in at one of
   * the steps, else for its lines at the smallest.
   *
   * @param room the width of a line, in points
   */
  public static double heightOf(
      String caption, String value, double room, List<Length> steps, Lettering lettering) {
    double lines = 0;
    for (Length step : value.isBlank() ? List.<Length>of() : legible(value, steps)) {
      List<String> wrapped = lettering.wrap(value, step, room);
      int count = wrapped.size();
      lines = TextBlock.height(wrapped, step, lettering);
      if (count == 1 && lettering.width(value, step) <= room) {
        break;
      }
    }
    double captionBase = INSET.pt() + captionHeight(caption).pt();
    // A hair more, so that what was reckoned to go in does.
    return captionBase + UNDER.pt() + lines + TextBlock.FOOT.pt() + 0.001;
  }

  private String fitted(String caption, Rect box, Length height) throws Refusal {
    if (lettering.width(caption, height) > box.width() - 2 * INSET.pt()) {
      throw tooLong(caption, caption);
    }
    return caption;
  }

  /** A line of text at the foot of a box, at the largest of the sizes at which it goes in. */
  public List<TextRun> onFoot(String name, String value, Rect box, List<Length> steps)
      throws Refusal {
    if (value.isBlank()) {
      return List.of();
    }
    lettering.check(value, name);
    TextBlock block =
        TextBlock.fit(
            value,
            box,
            legible(value, steps),
            TextBlock.Align.LEFT,
            TextBlock.Stand.FOOT,
            lettering);
    if (block != null) {
      return block.runs();
    }
    throw tooLong(name, value);
  }

  private static Refusal tooLong(String name, String value) {
    return Refusal.input(
        Fault.content(
                "",
                "'"
                    + LanguageMarks.without(value)
                    + "' does not fit at the minimum lettering of "
                    + String.format(Locale.ROOT, "%.1f mm", captionHeight(value).mm()))
            .in("cell '" + name + "'")
            .remedy("shorten it"));
  }
}
