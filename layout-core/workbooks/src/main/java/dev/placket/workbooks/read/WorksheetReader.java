package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.geometry.ColumnWidth;
import dev.placket.workbooks.geometry.DigitWidth;
import dev.placket.workbooks.geometry.Emu;
import dev.placket.workbooks.geometry.Grid;
import dev.placket.workbooks.geometry.Tracks;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.Relation;
import dev.placket.workbooks.parts.Relations;
import dev.placket.workbooks.parts.Visitor;
import dev.placket.workbooks.parts.XmlElement;
import dev.placket.workbooks.parts.XmlPart;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads one worksheet and the parts that hang on it. */
public final class WorksheetReader {
  private static final int USUAL_CHARACTERS = 8;

  private final Parts parts;
  private final Workbook workbook;
  private final List<String> strings;
  private final Tally tally;

  /**
   * A reader for worksheets of one workbook.
   *
   * @throws Refusal if the shared texts are damaged
   */
  public WorksheetReader(Parts parts, Workbook workbook) throws Refusal {
    this.parts = parts;
    this.workbook = workbook;
    this.strings = Strings.read(parts, workbook.strings());
    this.tally = new Tally(parts);
  }

  /**
   * Reads a worksheet.
   *
   * @throws Refusal if it is damaged or beyond the limits
   */
  public Worksheet read(Workbook.Entry entry) throws Refusal {
    Set<String> notes = new LinkedHashSet<>();
    if (entry.hidden()) {
      notes.add("is hidden; unhide it to see and print the flats");
    }
    Sheet sheet = new Sheet(notes);
    XmlPart.walk(parts, entry.part(), sheet);
    Relations relations = Relations.of(parts, entry.part());
    List<Mark> marks = new ArrayList<>();
    for (CellRange r : sheet.validated) {
      marks.add(new Mark(r, Mark.Why.TO_FILL_IN, ""));
    }
    for (Relation r : relations.list()) {
      beside(r, marks, new Ranges(notes));
    }
    List<DrawnThing> things = new ArrayList<>(sheet.controls.things());
    Relation drawing = relations.get(sheet.drawing);
    if (sheet.drawing != null && (drawing == null || !parts.has(drawing.target()))) {
      throw Refusal.input(
          Fault.content(parts.file(), "is damaged, its drawing is missing")
              .at(Place.worksheet(entry.name()))
              .remedy("save the workbook again"));
    }
    if (drawing != null) {
      DrawnReader drawn = new DrawnReader();
      XmlPart.walk(parts, drawing.target(), drawn);
      for (DrawnThing thing : drawn.things()) {
        tally.one();
        things.add(thing);
      }
    }
    Tracks columns = sheet.columns();
    Tracks rows = sheet.cells.rows();
    Gather gather = new Gather(workbook.styles(), columns, sheet.merges);
    gather.cells(sheet.cells, sheet.columnLooks);
    marks.addAll(gather.marks());
    return new Worksheet(
        entry,
        new Grid(columns, rows),
        marks,
        gather.rules(),
        sheet.merges,
        gather.used(marks),
        things,
        drawing == null ? null : drawing.target(),
        sheet.print.setup(workbook, entry),
        notes(notes));
  }

  private List<String> notes(Set<String> notes) {
    CellStyles styles = workbook.styles();
    if (!DigitWidth.knows(styles.font())) {
      notes.add(
          (styles.font().isEmpty()
                  ? "names no default font"
                  : "its default font, " + styles.font() + ", is not known here")
              + "; a digit is taken as "
              + styles.digit()
              + " pixels wide");
    }
    return List.copyOf(notes);
  }

  /** Comments, tables and the like lie in parts of their own. */
  private void beside(Relation relation, List<Mark> marks, Ranges ranges) throws Refusal {
    switch (relation.type()) {
      case "comments", "threadedComment" ->
          ranges(relation, "comment,threadedComment", Mark.Why.COMMENT, marks, ranges);
      case "table" -> ranges(relation, "table", Mark.Why.TABLE, marks, ranges);
      case "pivotTable" -> ranges(relation, "location", Mark.Why.TABLE, marks, ranges);
      default -> {
        // Other relations cover no cells.
      }
    }
  }

  private void ranges(
      Relation relation, String elements, Mark.Why why, List<Mark> marks, Ranges ranges)
      throws Refusal {
    List<String> wanted = List.of(elements.split(","));
    XmlPart.walk(
        parts,
        relation.target(),
        e -> {
          String ref = wanted.contains(e.name()) ? e.get("ref") : null;
          for (CellRange range : ranges.of(e.name(), ref == null ? "" : ref)) {
            tally.one();
            marks.add(new Mark(range, why, ""));
          }
        });
  }

  /** The worksheet's own part. */
  private final class Sheet implements Visitor {
    private final Set<String> notes;
    private final Ranges ranges;
    private final PrintReader print;
    private final Cells cells;
    private final DrawnReader controls = new DrawnReader();
    private final List<CellRange> merges = new ArrayList<>();
    private final List<CellRange> validated = new ArrayList<>();
    private final List<Cells.Whole> columnLooks = new ArrayList<>();
    private final int digit = workbook.styles().digit();
    private @Nullable String drawing;
    private final Sizes columns;
    private double usualWidth = ColumnWidth.ofCharacters(USUAL_CHARACTERS, digit);
    private boolean inData;
    private boolean inValidation;
    private boolean inSqref;

    Sheet(Set<String> notes) {
      this.notes = notes;
      this.ranges = new Ranges(notes);
      this.print = new PrintReader(notes);
      this.cells = new Cells(workbook.styles(), strings, tally, notes);
      this.columns = new Sizes("columns", notes);
    }

    @Override
    public void start(XmlElement e) throws Refusal {
      if (inData) {
        cells.start(e);
        return;
      }
      print.start(e);
      controls.start(e);
      switch (e.name()) {
        case "sheetProtection" -> {
          if (e.flag("sheet", false) && e.flag("objects", false)) {
            notes.add("is protected; lift the protection to move or change its pictures");
          }
        }
        case "sheetFormatPr" -> format(e);
        case "col" -> column(e);
        case "sheetData" -> inData = true;
        case "mergeCell" -> {
          tally.one();
          merges.addAll(ranges.of("merged cell", e.get("ref", "")));
        }
        case "dataValidation" -> {
          inValidation = true;
          validated(e.get("sqref", ""));
        }
        case "sqref" -> inSqref = inValidation;
        case "drawing" -> drawing = e.depth() == 1 ? e.relation("id") : drawing;
        default -> {
          // Nothing that covers cells.
        }
      }
    }

    @Override
    public void text(String more) throws Refusal {
      if (inData) {
        cells.text(more);
      } else {
        controls.text(more);
        if (inSqref) {
          validated(more);
        }
      }
    }

    @Override
    public void end(String name) throws Refusal {
      if (name.equals("sheetData")) {
        inData = false;
        controls.end(name);
      } else if (inData) {
        cells.end(name);
      } else {
        controls.end(name);
        inSqref = false;
        inValidation &= !name.equals("dataValidation");
      }
    }

    Tracks columns() {
      return columns.tracks(width(usualWidth), Grid.COLUMNS);
    }

    private void validated(String sqref) throws Refusal {
      for (CellRange r : ranges.of("data validation", sqref)) {
        tally.one();
        validated.add(r);
      }
    }

    private void format(XmlElement e) {
      int characters = e.whole("baseColWidth", USUAL_CHARACTERS);
      usualWidth = e.number("defaultColWidth", ColumnWidth.ofCharacters(characters, digit));
      cells.usualHeight(e.number("defaultRowHeight", 15), e.flag("zeroHeight", false));
    }

    private void column(XmlElement e) {
      int first = Math.max(0, e.whole("min", 1) - 1);
      int end = Math.min(Grid.COLUMNS, e.whole("max", first + 1));
      if (end <= first) {
        notes.add("its columns " + e.get("min") + " to " + e.get("max") + " are none; left out");
        return;
      }
      boolean hidden = e.flag("hidden", false);
      columns.add(first, end, hidden ? 0 : width(e.number("width", usualWidth)));
      CellStyles.Look look = workbook.styles().look(e.whole("style", 0));
      columnLooks.add(new Cells.Whole(new CellRange(first, 0, end, Grid.ROWS), look));
    }

    private long width(double digits) {
      return ColumnWidth.pixels(Math.max(0, digits), digit) * Emu.PER_PIXEL;
    }
  }
}
