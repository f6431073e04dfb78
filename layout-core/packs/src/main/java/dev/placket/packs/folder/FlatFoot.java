package dev.placket.packs.folder;

import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextBlock;
import java.util.List;

/**
 * The foot of the built-in sheet: its cautions and how to print it, beside one another or, on a
 * narrow sheet, one after the other in as many lines as they take.
 *
 * @param parts its cells
 * @param top where it begins, in points from the top of the sheet
 */
record FlatFoot(List<Part> parts, double top) {
  private static final Length ROW = Length.mm(9);

  /** The cell of the cautions ends at this line of the wide header. */
  private static final int PARTED = 6;

  /**
   * A cell.
   *
   * @param name what messages call it
   * @param text what it says
   * @param box where it lies
   */
  record Part(String name, String text, Rect box) {
    List<Length> steps() {
      return Lettering.steps(text, Lettering.CAPTION, Lettering.CAPTION);
    }
  }

  static FlatFoot of(
      PaperSize paper, Rect inside, List<Double> columns, Phrases phrases, Lettering lettering) {
    if (columns.size() > PARTED && phrases.isEnglish()) {
      return parted(paper, inside, columns, phrases);
    }
    String all = phrases.lines(language -> all(paper, phrases, language));
    double room = inside.width() - 2 * TextBlock.INSET.pt();
    Length step = Lettering.steps(all, Lettering.CAPTION, Lettering.CAPTION).get(0);
    double text = TextBlock.height(lettering.wrap(all, step, room), step, lettering);
    double top = inside.bottom() - (TextBlock.INSET.pt() + text + TextBlock.FOOT.pt());
    Rect box = new Rect(inside.left(), top, inside.right(), inside.bottom());
    return new FlatFoot(List.of(new Part("Cautions", all, box)), top);
  }

  private static FlatFoot parted(
      PaperSize paper, Rect inside, List<Double> columns, Phrases phrases) {
    List<GridTrack> rows = List.of(new GridTrack.Share(1), new GridTrack.Fixed(ROW));
    double top = GridLines.lay(rows, inside.top(), inside.height()).get(1);
    double parted = columns.get(PARTED);
    Rect left = new Rect(inside.left(), top, parted, inside.bottom());
    Rect right = new Rect(parted, top, inside.right(), inside.bottom());
    String cautions =
        phrases.beside(StockPhrase.NO_MEASURING) + "\n" + phrases.beside(StockPhrase.NO_PATTERNS);
    String print = phrases.beside(language -> print(paper, phrases, language));
    return new FlatFoot(
        List.of(new Part("Cautions", cautions, left), new Part("Print", print, right)), top);
  }

  /** Both cautions and how to print, as one paragraph. */
  private static Phrases.Said all(PaperSize paper, Phrases phrases, String language) {
    Phrases.Said print = print(paper, phrases, language);
    String all =
        phrases.in(StockPhrase.NO_MEASURING, language).text()
            + " "
            + phrases.in(StockPhrase.NO_PATTERNS, language).text()
            + " "
            + print.text();
    return new Phrases.Said(print.language(), all);
  }

  private static Phrases.Said print(PaperSize paper, Phrases phrases, String language) {
    Phrases.Said said = phrases.in(StockPhrase.PRINT, language);
    return new Phrases.Said(said.language(), said.text().replace("{paper}", paper.name()));
  }
}
