package dev.placket.packs.compose;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackBox;
import dev.placket.packs.description.PackCell;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.text.Cell;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock;
import dev.placket.packs.text.TextBlock.Stand;
import dev.placket.packs.text.TextRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Sets the cells of a description; what does not go in is a slip at its place. */
final class CellSetter {
  /** From a caption's last baseline to the room of the text. */
  private static final Length UNDER = Length.mm(0.6);

  private final Described described;
  private final Lettering lettering;
  private final PackText text;
  private final Set<String> shrunk;

  /**
   * For one sheet.
   *
   * @param shrunk takes a line for every text that had to shrink
   */
  CellSetter(Described described, Lettering lettering, PackText text, Set<String> shrunk) {
    this.described = described;
    this.lettering = lettering;
    this.text = text;
    this.shrunk = shrunk;
  }

  /**
   * The height of capitals at which the text of a cell goes in; its stated height where it has no
   * text, or where it does not go in.
   */
  Length step(PackCell cell, Rect box, String path, Stand usual) {
    String value = text.setLines(cell.text(), path + "/text");
    if (value.isBlank() || lettering.fault(value) != null) {
      return cell.size();
    }
    Rect below = under(cell, box, path);
    Stand stand = cell.stand() == null ? usual : cell.stand();
    List<Length> steps = Lettering.steps(value, cell.size(), cell.least());
    TextBlock block = TextBlock.fit(value, below, steps, cell.align(), stand, lettering);
    return block == null ? cell.size() : block.step();
  }

  /** What the caption of a cell leaves of it. */
  Rect under(PackCell cell, Rect box, String path) {
    String stated = text.setBeside(cell.caption(), path + "/caption");
    return under(stated.isBlank() ? List.of() : captionLines(stated, box), stated, box);
  }

  private static Length captionHeight(String caption) {
    return Lettering.steps(caption, Lettering.CAPTION, Lettering.CAPTION).get(0);
  }

  private List<String> captionLines(String caption, Rect box) {
    double room = box.width() - 2 * TextBlock.INSET.pt();
    Length height = captionHeight(caption);
    return caption.lines().flatMap(l -> lettering.wrap(l, height, room).stream()).toList();
  }

  /** What the lines of a caption leave of a box. */
  private Rect under(List<String> lines, String caption, Rect box) {
    if (lines.isEmpty()) {
      return box;
    }
    Length height = captionHeight(caption);
    double last =
        TextBlock.INSET.pt() + height.pt() + (lines.size() - 1) * lettering.leading(height).pt();
    double top = box.top() + last + UNDER.pt();
    return new Rect(box.left(), Math.min(top, box.bottom()), box.right(), box.bottom());
  }

  /**
   * A cell with its text.
   *
   * @param most text is set no larger
   */
  Cell set(PackCell cell, String name, Rect box, String path, Stand usual, Length most) {
    String stated = text.setBeside(cell.caption(), path + "/caption");
    PackBox hands = cell.box();
    String caption = hands == null ? stated : boxed(stated, hands);
    String value = text.setLines(cell.text(), path + "/text");
    List<TextRun> runs = new ArrayList<>();
    Rect below = box;
    if (!caption.isBlank() && settable(caption, path + "/caption")) {
      double room = box.width() - 2 * TextBlock.INSET.pt();
      Length height = captionHeight(caption);
      double base = box.top() + TextBlock.INSET.pt() + height.pt();
      List<String> lines = captionLines(caption, box);
      for (String line : lines) {
        if (lettering.width(line, height) > room) {
          tooLong(
              path + "/caption",
              "the caption '" + LanguageMarks.without(line) + "'",
              "fewer letters, or a wider cell");
        }
        runs.addAll(lettering.line(line, box.left() + TextBlock.INSET.pt(), base, height, false));
        base += lettering.leading(height).pt();
      }
      below = under(lines, caption, box);
    }
    if (!value.isBlank() && settable(value, path + "/text")) {
      Stand stand = cell.stand() == null ? usual : cell.stand();
      runs.addAll(block(cell, value, below, stand, path, most));
    }
    if (hands != null && hands != PackBox.SWATCH) {
      runs.addAll(signed(box));
    }
    return new Cell(name, box, runs);
  }

  /** What an empty box is for, under what it is called. */
  private String boxed(String stated, PackBox hands) {
    StockPhrase phrase =
        switch (hands) {
          case SWATCH -> StockPhrase.ATTACH_SWATCH;
          case LAB_DIP -> StockPhrase.LAB_DIP_APPROVED;
          case TRIM -> StockPhrase.TRIM_APPROVED;
          case SIGN_OFF -> StockPhrase.APPROVED;
        };
    String own = text.phrases().beside(phrase);
    return stated.isBlank() ? own : stated + "\n" + own;
  }

  /** By whom and when, along the foot, with room behind each to write. */
  private List<TextRun> signed(Rect box) {
    List<TextRun> runs = new ArrayList<>();
    double base = box.bottom() - TextBlock.INSET.pt();
    double left = box.left() + TextBlock.INSET.pt();
    for (StockPhrase phrase : List.of(StockPhrase.BY, StockPhrase.ON)) {
      String word = text.phrases().beside(phrase);
      Length height = Lettering.steps(word, Lettering.CAPTION, Lettering.CAPTION).get(0);
      runs.addAll(lettering.line(word, left, base, height, false));
      left += box.width() / 2;
    }
    return runs;
  }

  private List<TextRun> block(
      PackCell cell, String value, Rect box, Stand stand, String path, Length most) {
    List<Length> steps = Lettering.steps(value, cell.size(), cell.least());
    TextBlock block = TextBlock.fit(value, box, steps, cell.align(), stand, lettering);
    if (block == null) {
      String least = mm(steps.get(steps.size() - 1));
      tooLong(
          path + "/text",
          "text too long for its cell at the least lettering of "
              + least
              + ": '"
              + cut(value)
              + "'",
          "shorter text, or a larger cell");
      return List.of();
    }
    if (block.step().compareTo(cell.size()) < 0) {
      TextPosition at = described.places().of(path + "/text");
      shrunk.add(
          "line " + at.line() + ": set at " + mm(block.step()) + " to fit: '" + cut(value) + "'");
    }
    if (block.step().compareTo(most) <= 0) {
      return block.runs();
    }
    List<Length> smaller = steps.stream().filter(s -> s.compareTo(most) <= 0).toList();
    TextBlock less =
        smaller.isEmpty()
            ? null
            : TextBlock.fit(value, box, smaller, cell.align(), stand, lettering);
    return less == null ? block.runs() : less.runs();
  }

  private boolean settable(String value, String path) {
    String fault = lettering.fault(value);
    if (fault != null) {
      described
          .faults()
          .add(described.places().of(path), fault, "letters that one of the fonts has");
    }
    return fault == null;
  }

  private void tooLong(String path, String found, String expected) {
    described.faults().add(described.places().of(path), found, expected);
  }

  static String mm(Length height) {
    return String.format(Locale.ROOT, "%.1f mm", height.mm());
  }

  static String cut(String value) {
    String line = LanguageMarks.without(value).lines().findFirst().orElse("");
    return line.length() <= 40 ? line : line.substring(0, 39) + "…";
  }
}
