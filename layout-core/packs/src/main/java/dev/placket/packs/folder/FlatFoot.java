package dev.placket.packs.folder;

import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
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
  private static final String MEASURE = "Do not take measurements from the drawings.";
  private static final String PATTERNS =
      "Patterns are made and checked to the measured table, never cut from a drawing.";

  /** The cell of the cautions ends at this line of the wide header. */
  private static final int PARTED = 6;

  /**
   * A cell.
   *
   * @param name what messages call it
   * @param text what it says
   * @param box where it lies
   */
  record Part(String name, String text, Rect box) {}

  static FlatFoot of(PaperSize paper, Rect inside, List<Double> columns, Lettering lettering) {
    String print = "Print on " + paper.name() + " at full size (100 %).";
    if (columns.size() > PARTED) {
      List<GridTrack> rows = List.of(new GridTrack.Share(1), new GridTrack.Fixed(ROW));
      double top = GridLines.lay(rows, inside.top(), inside.height()).get(1);
      double parted = columns.get(PARTED);
      Rect left = new Rect(inside.left(), top, parted, inside.bottom());
      Rect right = new Rect(parted, top, inside.right(), inside.bottom());
      String cautions = MEASURE + "\n" + PATTERNS;
      return new FlatFoot(
          List.of(new Part("Cautions", cautions, left), new Part("Print", print, right)), top);
    }
    String all = MEASURE + " " + PATTERNS + " " + print;
    double room = inside.width() - 2 * TextBlock.INSET.pt();
    int lines = lettering.wrap(all, Lettering.CAPTION, room).size();
    double leading = lettering.leading(Lettering.CAPTION).pt();
    double text = Lettering.CAPTION.pt() + (lines - 1) * leading;
    double top = inside.bottom() - (TextBlock.INSET.pt() + text + TextBlock.FOOT.pt());
    Rect box = new Rect(inside.left(), top, inside.right(), inside.bottom());
    return new FlatFoot(List.of(new Part("Cautions", all, box)), top);
  }
}
