package dev.placket.demo.workbook.read;

import dev.placket.demo.Refusal;
import dev.placket.demo.workbook.geometry.CellRange;
import dev.placket.demo.workbook.geometry.Grid;
import dev.placket.demo.workbook.geometry.PaperCode;
import dev.placket.demo.workbook.geometry.PrintSetup;
import dev.placket.demo.workbook.parts.Element;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Paper;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads how a worksheet goes on paper. */
final class PrintReader {
  private static final int WHOLE = 100;

  private final String what;
  private boolean fits;
  private int across = 1;
  private int down = 1;
  private int percent = WHOLE;
  private Paper paper = PaperCode.paper(PaperCode.UNSTATED).orElseThrow();
  private boolean landscape;
  private boolean stated;
  private boolean centredAcross;
  private boolean centredDown;
  private Margins margins =
      new Margins(Length.in(0.75), Length.in(0.7), Length.in(0.75), Length.in(0.7));
  private final SortedSet<Integer> columnBreaks = new TreeSet<>();
  private final SortedSet<Integer> rowBreaks = new TreeSet<>();
  private boolean inColumns;

  /**
   * A reader.
   *
   * @param what names the worksheet in messages
   */
  PrintReader(String what) {
    this.what = what;
  }

  void start(Element e) throws Refusal {
    switch (e.name()) {
      case "pageSetUpPr" -> fits = e.flag("fitToPage", false);
      case "printOptions" -> {
        centredAcross = e.flag("horizontalCentered", false);
        centredDown = e.flag("verticalCentered", false);
      }
      case "pageMargins" -> margins(e);
      case "pageSetup" -> page(e);
      case "rowBreaks" -> inColumns = false;
      case "colBreaks" -> inColumns = true;
      case "brk" -> (inColumns ? columnBreaks : rowBreaks).add(e.whole("id", 0));
      default -> {
        // Nothing of paper.
      }
    }
  }

  private void margins(Element e) {
    margins =
        new Margins(
            Length.in(e.number("top", 0.75)),
            Length.in(e.number("right", 0.7)),
            Length.in(e.number("bottom", 0.75)),
            Length.in(e.number("left", 0.7)));
  }

  private void page(Element e) throws Refusal {
    stated = e.get("paperSize") != null || e.get("paperWidth") != null;
    int code = e.whole("paperSize", PaperCode.UNSTATED);
    String width = e.get("paperWidth");
    String height = e.get("paperHeight");
    if (width != null && height != null) {
      paper = new Paper("paper", Length.parse(width), Length.parse(height));
    } else {
      paper =
          PaperCode.paper(code == 0 ? PaperCode.UNSTATED : code)
              .orElseThrow(
                  () ->
                      Refusal.input(
                          what
                              + ": is printed on paper number "
                              + code
                              + ", which is not known here; set it to A4, A3, A5, Letter or"
                              + " Legal."));
    }
    landscape = e.get("orientation", "").equals("landscape");
    percent = e.whole("scale", WHOLE);
    if (percent < 10 || percent > 400) {
      percent = WHOLE;
    }
    across = Math.max(0, e.whole("fitToWidth", 1));
    down = Math.max(0, e.whole("fitToHeight", 1));
  }

  /** What was read, with the names that a workbook gives to its printed ranges. */
  PrintSetup setup(Workbook workbook, Workbook.Entry entry) {
    List<CellRange> areas =
        workbook.named("_xlnm.Print_Area", entry.index()).map(References::ranges).orElse(List.of());
    List<CellRange> titles =
        workbook
            .named("_xlnm.Print_Titles", entry.index())
            .map(References::ranges)
            .orElse(List.of());
    return new PrintSetup(
        landscape ? paper.landscape() : paper.portrait(),
        margins,
        percent,
        fits ? new PrintSetup.FitPages(across, down) : null,
        centredAcross,
        centredDown,
        areas,
        first(titles, true),
        first(titles, false),
        columnBreaks,
        rowBreaks);
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!stated) {
      notes.add("names no paper; taken as Letter, as the standard has it");
    }
    return notes;
  }

  private static @Nullable CellRange first(List<CellRange> titles, boolean rows) {
    return titles.stream()
        .filter(t -> rows ? t.right() == Grid.COLUMNS : t.bottom() == Grid.ROWS)
        .findFirst()
        .orElse(null);
  }
}
