package dev.placket.workbooks.read;

import dev.placket.packs.description.CellTable;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import dev.placket.workbooks.geometry.CellRange;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.Visitor;
import dev.placket.workbooks.parts.XmlElement;
import dev.placket.workbooks.parts.XmlPart;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads the values of a range: texts as they are, numbers as they are stored. */
public final class RangeCells implements Visitor {
  /**
   * A stored number has noise behind its fifteenth digit, which cells never show; sums of lengths
   * have some before it.
   */
  private static final MathContext SHOWN = new MathContext(12);

  private final CellRange range;
  private final Cells cells;
  private boolean inData;

  private RangeCells(CellRange range, Cells cells) {
    this.range = range;
    this.cells = cells;
  }

  /**
   * The values of a range.
   *
   * @param name a defined name, or a worksheet and its cells
   * @throws Refusal if there is no such range of one piece, or a cell of it shows an error
   */
  public static CellTable read(Parts parts, Workbook workbook, String name) throws Refusal {
    String formula = workbook.named(name, -1).orElse(name);
    List<NamedRanges.Reference> found = NamedRanges.of(formula);
    if (found.size() != 1) {
      List<String> names = workbook.names().stream().map(Workbook.DefinedName::name).toList();
      throw Refusal.input(
          Fault.content(parts.file(), "has no range '" + name + "' of one piece")
              .remedy(
                  "name a worksheet and cells, as in Grading!A1:H20, or a defined name"
                      + (names.isEmpty() ? "" : ": " + String.join(", ", names))));
    }
    NamedRanges.Reference reference = found.get(0);
    Workbook.Entry entry = entry(parts, workbook, reference.sheet());
    Cells cells =
        new Cells(
            workbook.styles(),
            Strings.read(parts, workbook.strings()),
            new Tally(parts),
            new ArrayList<>());
    RangeCells reader = new RangeCells(reference.range(), cells);
    XmlPart.walk(parts, entry.part(), reader);
    return reader.table(parts, entry.name());
  }

  private static Workbook.Entry entry(Parts parts, Workbook workbook, String sheet) throws Refusal {
    if (sheet.isEmpty() && workbook.worksheets().size() == 1) {
      return workbook.worksheets().get(0);
    }
    List<String> names = workbook.worksheets().stream().map(Workbook.Entry::name).toList();
    return workbook
        .worksheet(sheet)
        .orElseThrow(
            () ->
                Refusal.input(
                    Fault.content(parts.file(), "has no worksheet '" + sheet + "'")
                        .remedy("it has " + String.join(", ", names))));
  }

  @Override
  public void start(XmlElement e) throws Refusal {
    if (inData) {
      cells.start(e);
    }
    inData |= e.name().equals("sheetData");
  }

  @Override
  public void text(String more) {
    if (inData) {
      cells.text(more);
    }
  }

  @Override
  public void end(String name) throws Refusal {
    if (name.equals("sheetData")) {
      inData = false;
    } else if (inData) {
      cells.end(name);
    }
  }

  private CellTable table(Parts parts, String worksheet) throws Refusal {
    Map<Integer, Map<Integer, String>> values = new TreeMap<>();
    int last = range.left();
    for (Cells.Cell cell : cells.cells()) {
      boolean inside =
          cell.column() >= range.left()
              && cell.column() < range.right()
              && cell.row() >= range.top()
              && cell.row() < range.bottom();
      if (inside && !cell.text().isBlank()) {
        if (cell.isError()) {
          CellRange at = CellRange.cell(cell.column(), cell.row());
          throw Refusal.input(
              Fault.content(parts.file(), "has a cell that shows " + cell.text())
                  .at(new Place.Cells(worksheet, at.toString()))
                  .remedy("correct the formula and save the workbook again"));
        }
        values.computeIfAbsent(cell.row(), row -> new TreeMap<>()).put(cell.column(), value(cell));
        last = Math.max(last, cell.column());
      }
    }
    List<CellTable.Row> rows = new ArrayList<>();
    for (Map.Entry<Integer, Map<Integer, String>> row : values.entrySet()) {
      List<String> fields = new ArrayList<>();
      for (int column = range.left(); column <= last; column++) {
        fields.add(row.getValue().getOrDefault(column, ""));
      }
      rows.add(new CellTable.Row(row.getKey() + 1, fields));
    }
    return new CellTable(worksheet, rows);
  }

  private static String value(Cells.Cell cell) {
    if (cell.isWords()) {
      return cell.text();
    }
    try {
      BigDecimal stored = new BigDecimal(cell.text().strip()).round(SHOWN);
      return stored.stripTrailingZeros().toPlainString();
    } catch (NumberFormatException e) {
      return cell.text();
    }
  }
}
