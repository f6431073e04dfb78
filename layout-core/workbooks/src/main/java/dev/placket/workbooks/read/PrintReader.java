package dev.placket.workbooks.read;

import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.PaperCode;
import dev.placket.workbooks.geometry.PrintSetup;
import dev.placket.workbooks.parts.XmlElement;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads how a worksheet goes on paper. */
final class PrintReader {
  private static final int WHOLE = 100;

  /** Longer than any roll is wide or any sheet long; a preview has a pixel for each point. */
  private static final double MOST_MM = 5000;

  /** The greatest margin in inches (ISO/IEC 29500-1, 18.3.1.62: less than 49). */
  private static final double MOST_MARGIN = 49;

  private final Collection<String> notes;
  private boolean fits;
  private int across = 1;
  private int down = 1;
  private int percent = WHOLE;
  private PaperSize paper = PaperCode.paper(PaperCode.UNSTATED).orElseThrow();
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
   * @param notes takes what a designer should know
   */
  PrintReader(Collection<String> notes) {
    this.notes = notes;
  }

  void start(XmlElement e) {
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

  private void margins(XmlElement e) {
    margins =
        new Margins(
            margin(e, "top", 0.75),
            margin(e, "right", 0.7),
            margin(e, "bottom", 0.75),
            margin(e, "left", 0.7));
  }

  private Length margin(XmlElement e, String side, double usual) {
    double inches = e.number(side, usual);
    if (inches >= 0 && inches < MOST_MARGIN) {
      return Length.in(inches);
    }
    notes.add("its " + side + " margin is " + e.get(side) + " in; taken as " + usual + " in");
    return Length.in(usual);
  }

  private void page(XmlElement e) {
    stated = true;
    String width = e.get("paperWidth");
    String height = e.get("paperHeight");
    if (width != null && height != null) {
      paper = paper(width, height);
    } else {
      paper = paper(e.get("paperSize"));
    }
    landscape = e.get("orientation", "").equals("landscape");
    percent = setting(e, "scale", WHOLE, 10, 400);
    across = setting(e, "fitToWidth", 1, 0, Integer.MAX_VALUE);
    down = setting(e, "fitToHeight", 1, 0, Integer.MAX_VALUE);
  }

  /** A whole number of the page; one out of range costs a note, a very large one counts as most. */
  private int setting(XmlElement e, String name, int usual, int least, int most) {
    String value = e.get(name, String.valueOf(usual)).strip();
    if (value.matches("[0-9]{1,18}")) {
      long number = Long.parseLong(value);
      if (number >= least && (number <= most || most == Integer.MAX_VALUE)) {
        return (int) Math.min(number, most);
      }
    }
    notes.add("its page has " + name + " " + value + "; taken as " + usual);
    return usual;
  }

  /** The paper of a number; 0 stands for none, which is what many writers state. */
  private PaperSize paper(@Nullable String number) {
    String code = number == null ? "" : number.strip();
    stated = !code.isEmpty() && !code.equals("0");
    PaperSize known =
        code.matches("[0-9]{1,3}") ? PaperCode.paper(Integer.parseInt(code)).orElse(null) : null;
    return known != null || !stated ? orUsual(known) : unknown("paper number " + code);
  }

  private PaperSize paper(String width, String height) {
    try {
      PaperSize own = new PaperSize("paper", Length.parse(width), Length.parse(height));
      if (Math.max(own.width().mm(), own.height().mm()) <= MOST_MM) {
        return own;
      }
    } catch (IllegalArgumentException e) {
      // Reported below.
    }
    return unknown("paper of " + width + " × " + height);
  }

  private PaperSize unknown(String what) {
    notes.add(
        "is printed on "
            + what
            + ", which is not known here; taken as Letter, so set it to A4, A3, A5, Letter or Legal"
            + " if that is not right");
    return orUsual(null);
  }

  private static PaperSize orUsual(@Nullable PaperSize paper) {
    return paper == null ? PaperCode.paper(PaperCode.UNSTATED).orElseThrow() : paper;
  }

  /** What was read, with the names that a workbook gives to its printed ranges. */
  PrintSetup setup(Workbook workbook, Workbook.Entry entry) {
    if (!stated) {
      notes.add("names no paper; read as Letter, the default of the standard");
    }
    List<CellRange> areas = ranges(workbook, entry, "_xlnm.Print_Area", "print area");
    List<CellRange> titles = ranges(workbook, entry, "_xlnm.Print_Titles", "print titles");
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

  private List<CellRange> ranges(
      Workbook workbook, Workbook.Entry entry, String name, String said) {
    String formula = workbook.named(name, entry.index()).orElse("");
    List<CellRange> ranges = NamedRanges.ranges(formula, entry.name());
    if (ranges.isEmpty() && !formula.isBlank()) {
      notes.add("its " + said + " names no cells ('" + formula + "') and is left out");
    }
    return ranges;
  }

  private static @Nullable CellRange first(List<CellRange> titles, boolean rows) {
    return titles.stream()
        .filter(t -> rows ? t.right() == Grid.COLUMNS : t.bottom() == Grid.ROWS)
        .findFirst()
        .orElse(null);
  }
}
