package dev.placket.demo.sheet;

import dev.placket.demo.Refusal;
import dev.placket.demo.folder.PackNotes;
import dev.placket.demo.folder.PackNotes.Field;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Paper;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.Track;
import dev.placket.layout.sheet.Window;
import dev.placket.layout.units.Box;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The built-in flat sheet: a header of ruled cells, a window for the views, a window for the rest
 * to its right, and a foot with the cautions.
 *
 * <p>The same arrangement serves any landscape paper: the header's columns are shares, written as
 * the millimetres they have on A4.
 */
public final class FlatSheet {
  /** The window of the views. */
  public static final String VIEWS = "views";

  /** The window of everything that is no view. */
  public static final String DETAILS = "details";

  private static final Margins MARGINS = Margins.all(Length.mm(10));
  private static final Length HEADER_ROW = Length.mm(10);
  private static final Length FOOT_ROW = Length.mm(9);
  private static final double[] COLUMNS = {40, 34, 66, 22, 18, 18, 22, 29, 28};
  private static final List<Length> STRONG =
      List.of(Lettering.HEADING, Lettering.VALUE, Lettering.CAPTION);
  private static final List<Length> USUAL = List.of(Lettering.VALUE, Lettering.CAPTION);
  private static final List<Length> SMALL = List.of(Lettering.CAPTION);

  private final Paper paper;
  private final PackNotes notes;
  private final CellText text;
  private final List<Double> across;
  private final List<Double> down;

  /**
   * A flat sheet for a pack.
   *
   * @param paper the paper; used landscape
   * @param notes the header's values
   * @param lettering the typeface
   */
  public FlatSheet(Paper paper, PackNotes notes, Lettering lettering) {
    this.paper = paper.landscape();
    this.notes = notes;
    this.text = new CellText(lettering);
    List<Track> tracks = new ArrayList<>();
    for (double mm : COLUMNS) {
      tracks.add(new Track.Share(mm));
    }
    double left = MARGINS.left().pt();
    double top = MARGINS.top().pt();
    double width = this.paper.width().pt() - left - MARGINS.right().pt();
    double height = this.paper.height().pt() - top - MARGINS.bottom().pt();
    this.across = exactEnd(GridLines.lay(tracks, left, width), left + width);
    List<Track> rows =
        List.of(
            new Track.Fixed(HEADER_ROW),
            new Track.Fixed(HEADER_ROW),
            new Track.Share(1),
            new Track.Fixed(FOOT_ROW));
    this.down = exactEnd(GridLines.lay(rows, top, height), top + height);
  }

  /** What the windows have across together, in points. */
  public double windowsWidth() {
    return across.get(COLUMNS.length) - across.get(0);
  }

  /**
   * The page with its windows.
   *
   * @param divide where the window of details begins, in points from the left of the windows: 0
   *     gives them all the room, {@link #windowsWidth} none
   * @param densityNote what the foot says of the pictures
   * @throws Refusal naming every cell whose text does not go in
   */
  public Page page(double divide, String densityNote) throws Refusal {
    return page(divide, densityNote, "1 of 1");
  }

  /**
   * The same for one sheet of several.
   *
   * @param ofSheets what the header says of its number, as in {@code 2 of 3}
   */
  public Page page(double divide, String densityNote, String ofSheets) throws Refusal {
    double x = across.get(0) + divide;
    boolean views = divide > 0;
    boolean details = divide < windowsWidth();
    List<Double> columns = new ArrayList<>(across);
    int at = COLUMNS.length;
    if (views && details) {
      at = 0;
      while (columns.get(at) < x) {
        at++;
      }
      columns.add(at, x);
    }
    int last = columns.size() - 1;
    List<Window> windows = new ArrayList<>();
    if (views) {
      windows.add(new Window(VIEWS, new GridArea(0, 2, details ? at : last, 3)));
    }
    if (details) {
      windows.add(new Window(DETAILS, new GridArea(views ? at : 0, 2, last, 3)));
    }
    GridLines lines = new GridLines(columns, down);
    List<Cell> cells = cells(densityNote, ofSheets);
    List<Box> edges = new ArrayList<>();
    cells.forEach(c -> edges.add(c.box()));
    windows.forEach(w -> edges.add(lines.box(w.area())));
    Box frame = box(0, 0, COLUMNS.length, 4);
    Sheet sheet =
        new Sheet(
            "Flat sheet",
            paper,
            MARGINS,
            lines,
            windows,
            Page.labelled(cells),
            Ruling.of(frame, edges));
    return new Page(sheet, cells, List.of());
  }

  private List<Cell> cells(String densityNote, String ofSheets) throws Refusal {
    List<Cell> cells = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    collect(cells, wrong, () -> label(box(0, 0, 1, 2)));
    field(cells, wrong, "Style no.", Field.STYLE_NUMBER, box(1, 0, 2, 1), STRONG);
    field(cells, wrong, "Style name", Field.STYLE_NAME, box(2, 0, 3, 1), STRONG);
    field(cells, wrong, "Season", Field.SEASON, box(3, 0, 4, 1), USUAL);
    field(cells, wrong, "Stage", Field.STAGE, box(4, 0, 6, 1), USUAL);
    field(cells, wrong, "Revision", Field.REVISION, box(6, 0, 7, 1), USUAL);
    field(cells, wrong, "Date", Field.DATE, box(7, 0, 8, 1), USUAL);
    collect(cells, wrong, () -> text.captioned("Sheet", ofSheets, box(8, 0, 9, 1), USUAL));
    field(cells, wrong, "Size range", Field.SIZE_RANGE, box(1, 1, 2, 2), USUAL);
    field(cells, wrong, "Fabric", Field.FABRIC, box(2, 1, 3, 2), USUAL);
    field(cells, wrong, "Sample size", Field.SAMPLE_SIZE, box(3, 1, 4, 2), USUAL);
    field(cells, wrong, "Unit", Field.UNIT, box(4, 1, 5, 2), USUAL);
    field(cells, wrong, "Factory", Field.FACTORY, box(5, 1, 8, 2), USUAL);
    field(cells, wrong, "Issued by", Field.ISSUED_BY, box(8, 1, 9, 2), USUAL);
    String cautions =
        "Do not take measurements from the drawings.\n"
            + "Patterns are made and checked to the measured table, never cut from a drawing.";
    String print = "Print on " + paper.name() + " at full size (100 %).\n" + densityNote;
    collect(cells, wrong, () -> text.plain("Cautions", cautions, box(0, 3, 6, 4), SMALL));
    collect(cells, wrong, () -> text.plain("Print", print, box(6, 3, 9, 4), SMALL));
    if (!wrong.isEmpty()) {
      throw new Refusal(Refusal.INPUT, wrong);
    }
    return cells;
  }

  /** The label's name above, what kind of sheet this is below. */
  private Cell label(Box box) throws Refusal {
    double half = (box.top() + box.bottom()) / 2;
    Box upper = new Box(box.left(), box.top(), box.right(), half + Length.mm(1).pt());
    Box lower = new Box(box.left(), half, box.right(), box.bottom());
    List<TextRun> runs = new ArrayList<>();
    List<Length> steps =
        List.of(Lettering.TITLE, Lettering.HEADING, Lettering.VALUE, Lettering.CAPTION);
    runs.addAll(text.onFoot("Label", notes.value(Field.LABEL), upper, steps));
    runs.addAll(text.onFoot("Label", "Flat sheet", lower, USUAL));
    return new Cell("Label", box, runs);
  }

  private void field(
      List<Cell> cells,
      List<String> wrong,
      String caption,
      Field field,
      Box box,
      List<Length> steps) {
    collect(cells, wrong, () -> text.captioned(caption, notes.value(field), box, steps));
  }

  private interface CellSetter {
    Cell set() throws Refusal;
  }

  private static void collect(List<Cell> cells, List<String> wrong, CellSetter setter) {
    try {
      cells.add(setter.set());
    } catch (Refusal e) {
      wrong.addAll(e.messages());
    }
  }

  private Box box(int columnStart, int rowStart, int columnEnd, int rowEnd) {
    return new Box(
        across.get(columnStart), down.get(rowStart), across.get(columnEnd), down.get(rowEnd));
  }

  /** The last line is the margin itself, not a sum that came near it. */
  private static List<Double> exactEnd(List<Double> lines, double end) {
    List<Double> exact = new ArrayList<>(lines);
    exact.set(exact.size() - 1, end);
    return List.copyOf(exact);
  }
}
