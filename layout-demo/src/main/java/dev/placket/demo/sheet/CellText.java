package dev.placket.demo.sheet;

import dev.placket.demo.Refusal;
import dev.placket.layout.units.Box;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Sets the text of a cell: it wraps, then shrinks by a step, and never leaves the cell. */
final class CellText {
  private static final Length INSET = TextBlock.INSET;

  private final Lettering lettering;

  CellText(Lettering lettering) {
    this.lettering = lettering;
  }

  /**
   * A cell with a caption above its value.
   *
   * @param steps the capital heights to try for the value, the preferred first
   * @throws Refusal naming the cell, if the value does not go in at the smallest
   */
  Cell captioned(String name, String value, Box box, List<Length> steps) throws Refusal {
    List<TextRun> runs = new ArrayList<>();
    double captionBase = box.top() + INSET.pt() + Lettering.CAPTION.pt();
    runs.addAll(
        lettering.line(
            fitted(name, box, Lettering.CAPTION),
            box.left() + INSET.pt(),
            captionBase,
            Lettering.CAPTION,
            false));
    double top = captionBase + Length.mm(0.6).pt();
    runs.addAll(onFoot(name, value, new Box(box.left(), top, box.right(), box.bottom()), steps));
    return new Cell(name, box, runs);
  }

  /** A cell that holds nothing but lines of text, the last of them at its foot. */
  Cell plain(String name, String value, Box box, List<Length> steps) throws Refusal {
    return new Cell(name, box, onFoot(name, value, box, steps));
  }

  private String fitted(String caption, Box box, Length height) throws Refusal {
    if (lettering.width(caption, height) > box.width() - 2 * INSET.pt()) {
      throw tooLong(caption, caption);
    }
    return caption;
  }

  List<TextRun> onFoot(String name, String value, Box box, List<Length> steps) throws Refusal {
    if (value.isBlank()) {
      return List.of();
    }
    lettering.check(value, name);
    TextBlock block =
        TextBlock.fit(value, box, steps, TextBlock.Align.LEFT, TextBlock.Stand.FOOT, lettering);
    if (block != null) {
      return block.runs();
    }
    throw tooLong(name, value);
  }

  private static Refusal tooLong(String name, String value) {
    return Refusal.input(
        "cell '"
            + name
            + "': '"
            + value
            + "' does not go in at the least lettering of 1.8 mm; shorten it.");
  }
}
