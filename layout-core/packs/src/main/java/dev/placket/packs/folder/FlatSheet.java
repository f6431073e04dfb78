package dev.placket.packs.folder;

import dev.placket.layout.fit.Order;
import dev.placket.layout.fit.Parting;
import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.sheet.Rule;
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
 * The built-in flat sheet: a header of ruled cells, a window for all flats, and a foot with the
 * cautions. A line is drawn between views and other flats where the fit parts them.
 */
public final class FlatSheet {
  /** The window of all flats. */
  public static final String FLATS = "flats";

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

  /** The width between the margins, in points. */
  public double width() {
    return inside.width();
  }

  /**
   * The page with its window.
   *
   * @param number which of the pack's sheets it is, from 1
   * @param count how many there are
   * @throws Refusal naming every cell whose text does not go in
   */
  public Page page(int number, int count) throws Refusal {
    return page(number, count, List.of());
  }

  /**
   * The same with a line between views and other flats.
   *
   * @param parting where they lie apart
   */
  public Page page(int number, int count, Parting parting) throws Refusal {
    double at = parting.middle();
    Rect line =
        parting.upright()
            ? new Rect(at, windows.top(), at, windows.bottom())
            : new Rect(windows.left(), at, windows.right(), at);
    return page(number, count, List.of(new Rule(line, Order.PARTING_LINE)));
  }

  private Page page(int number, int count, List<Rule> lines) throws Refusal {
    List<Double> columns = header.columns();
    List<Double> rows = List.of(inside.top(), windows.top(), windows.bottom(), inside.bottom());
    GridArea area = new GridArea(0, 1, columns.size() - 1, rows.size() - 2);
    List<Cell> cells = cells(HeaderSpot.ofSheets(notes, number, count));
    List<Rect> edges = new ArrayList<>();
    cells.forEach(c -> edges.add(c.box()));
    edges.add(windows);
    List<Rule> rules = new ArrayList<>(Ruling.of(inside, edges));
    rules.addAll(lines);
    Sheet sheet =
        new Sheet(
            "Flat sheet",
            paper,
            MARGINS,
            new GridLines(columns, rows),
            List.of(new SheetWindow(FLATS, area)),
            Page.labelled(cells),
            rules);
    return new Page(sheet, cells, List.of(), List.of(), List.of(), List.of());
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
