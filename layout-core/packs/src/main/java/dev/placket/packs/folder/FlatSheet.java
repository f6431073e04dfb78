package dev.placket.packs.folder;

import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.SheetWindow;
import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import dev.placket.packs.folder.PackNotes.Field;
import dev.placket.packs.page.Page;
import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.text.Cell;
import dev.placket.packs.text.CellText;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.TextRun;
import dev.placket.pictures.fault.Fault;
import java.util.ArrayList;
import java.util.List;

/**
 * The built-in flat sheet: a header of ruled cells, a window for the views, a window for the rest
 * to its right or, on a sheet that stands upright, below it, and a foot with the cautions.
 */
public final class FlatSheet {
  /** The window of the views. */
  public static final String VIEWS = "views";

  /** The window of everything that is no view. */
  public static final String DETAILS = "details";

  private static final Margins MARGINS = Margins.all(Length.mm(10));

  /** Between the margins no side is shorter. */
  private static final Length LEAST_SIDE = Length.mm(40);

  /** Header and foot leave at least this of the height. */
  private static final Length LEAST_WINDOWS = Length.mm(25);

  private final PaperSize paper;
  private final PackNotes notes;
  private final Lettering lettering;
  private final CellText text;
  private final HeaderLayout header;
  private final FlatFoot foot;
  private final Rect inside;
  private final Rect windows;

  /**
   * A flat sheet for a pack.
   *
   * @param paper the paper, the way up that it is used
   * @param notes the header's values
   * @param lettering the typeface
   * @throws Refusal if the paper leaves no room between header and foot
   */
  public FlatSheet(PaperSize paper, PackNotes notes, Lettering lettering) throws Refusal {
    this.paper = paper;
    this.notes = notes;
    this.lettering = lettering;
    this.text = new CellText(lettering);
    double left = MARGINS.left().pt();
    double top = MARGINS.top().pt();
    double right = paper.width().pt() - MARGINS.right().pt();
    double bottom = paper.height().pt() - MARGINS.bottom().pt();
    if (right - left < LEAST_SIDE.pt() || bottom - top < LEAST_SIDE.pt()) {
      throw tooSmall(paper);
    }
    this.inside = new Rect(left, top, right, bottom);
    this.header = HeaderLayout.of(inside, notes, lettering);
    this.foot = FlatFoot.of(paper, inside, header.columns(), notes.phrases(), lettering);
    if (foot.top() - header.bottom() < LEAST_WINDOWS.pt()) {
      throw tooSmall(paper);
    }
    this.windows = new Rect(left, header.bottom(), right, foot.top());
  }

  /** The same sheet on other paper. */
  public FlatSheet on(PaperSize other) throws Refusal {
    return new FlatSheet(other, notes, lettering);
  }

  /** Its paper, the way up that it is used. */
  public PaperSize paper() {
    return paper;
  }

  private static Refusal tooSmall(PaperSize paper) {
    return Refusal.input(
        Fault.setting(PackSetting.PAPER, paper.name(), "header and foot leave no room for drawings")
            .remedy("use larger paper")
            .remedy("shorten the values in " + PackNotes.FILE));
  }

  /** Whether the window of details lies below that of the views, rather than to its right. */
  private boolean stacked() {
    return windows.height() > windows.width();
  }

  /** What the windows have together along the line at which they are parted, in points. */
  public double windowsLength() {
    return stacked() ? windows.height() : windows.width();
  }

  /** The width between the margins, in points. */
  public double width() {
    return inside.width();
  }

  /**
   * The page with its windows, as one sheet alone.
   *
   * @param divide where the window of details begins, in points from where the windows begin: 0
   *     gives it all the room, {@link #windowsLength} none
   * @throws Refusal naming every cell whose text does not go in
   */
  public Page page(double divide) throws Refusal {
    return page(divide, 1, 1);
  }

  /**
   * The same for one sheet of several.
   *
   * @param number which of them it is, from 1
   * @param count how many there are
   */
  public Page page(double divide, int number, int count) throws Refusal {
    boolean views = divide > 0;
    boolean details = divide < windowsLength();
    boolean both = views && details;
    List<Double> columns = new ArrayList<>(header.columns());
    List<Double> rows =
        new ArrayList<>(List.of(inside.top(), windows.top(), windows.bottom(), inside.bottom()));
    int at = 0;
    if (both) {
      at = insert(stacked() ? rows : columns, divide + (stacked() ? windows.top() : inside.left()));
    }
    int right = columns.size() - 1;
    int bottom = rows.size() - 2;
    List<SheetWindow> named = new ArrayList<>();
    if (views) {
      named.add(
          new SheetWindow(
              VIEWS,
              new GridArea(
                  0, 1, both && !stacked() ? at : right, both && stacked() ? at : bottom)));
    }
    if (details) {
      named.add(
          new SheetWindow(
              DETAILS,
              new GridArea(
                  both && !stacked() ? at : 0, both && stacked() ? at : 1, right, bottom)));
    }
    GridLines lines = new GridLines(columns, rows);
    List<Cell> cells = cells(HeaderSpot.ofSheets(notes, number, count));
    List<Rect> edges = new ArrayList<>();
    cells.forEach(c -> edges.add(c.box()));
    named.forEach(w -> edges.add(lines.box(w.area())));
    Sheet sheet =
        new Sheet(
            "Flat sheet",
            paper,
            MARGINS,
            lines,
            named,
            Page.labelled(cells),
            Ruling.of(inside, edges));
    return new Page(sheet, cells, List.of());
  }

  private static int insert(List<Double> lines, double line) {
    int at = 0;
    while (lines.get(at) < line) {
      at++;
    }
    lines.add(at, line);
    return at;
  }

  private List<Cell> cells(String ofSheets) throws Refusal {
    List<Cell> cells = new ArrayList<>();
    List<Fault> wrong = new ArrayList<>();
    header.boxes().forEach((spot, box) -> collect(cells, wrong, () -> cell(spot, box, ofSheets)));
    for (FlatFoot.Part part : foot.parts()) {
      collect(cells, wrong, () -> text.plain(part.name(), part.text(), part.box(), part.steps()));
    }
    if (!wrong.isEmpty()) {
      throw Refusal.input(wrong);
    }
    return cells;
  }

  private Cell cell(HeaderSpot spot, Rect box, String ofSheets) throws Refusal {
    String value = spot.value(notes, ofSheets);
    if (spot != HeaderSpot.KIND) {
      return text.captioned(spot.name(), spot.caption(notes), value, box, spot.steps());
    }
    if (header.twoRows()) {
      return label(box);
    }
    return value.isBlank()
        ? text.plain("Label", spot.caption(notes), box, HeaderSpot.USUAL)
        : text.captioned("Label", spot.caption(notes), value, box, spot.steps());
  }

  /** The label's name above, what kind of sheet this is below. */
  private Cell label(Rect box) throws Refusal {
    double half = (box.top() + box.bottom()) / 2;
    Rect upper = new Rect(box.left(), box.top(), box.right(), half + Length.mm(1).pt());
    Rect lower = new Rect(box.left(), half, box.right(), box.bottom());
    List<TextRun> runs = new ArrayList<>();
    runs.addAll(text.onFoot("Label", notes.value(Field.LABEL), upper, HeaderSpot.TITLE));
    runs.addAll(text.onFoot("Label", HeaderSpot.KIND.caption(notes), lower, HeaderSpot.USUAL));
    return new Cell("Label", box, runs);
  }

  private interface CellSetter {
    Cell set() throws Refusal;
  }

  private static void collect(List<Cell> cells, List<Fault> wrong, CellSetter setter) {
    try {
      cells.add(setter.set());
    } catch (Refusal e) {
      wrong.addAll(e.faults());
    }
  }

  /** The last line is the margin itself, not a sum that came near it. */
  static List<Double> exactEnd(List<Double> lines, double end) {
    List<Double> exact = new ArrayList<>(lines);
    exact.set(exact.size() - 1, end);
    return List.copyOf(exact);
  }
}
