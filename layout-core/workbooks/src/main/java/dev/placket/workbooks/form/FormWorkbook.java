package dev.placket.workbooks.form;

import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.sample.JudgedPoint;
import dev.placket.packs.sample.JudgedSample;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.sample.SampleComment;
import dev.placket.packs.sample.SentRow;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.ProtectionOption;
import org.dhatim.fastexcel.Range;
import org.dhatim.fastexcel.SheetProtectionOption;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The form of a sample as a workbook (ISO/IEC 29500) to fill in: a worksheet for each of its sizes,
 * with the columns that a file of samples has. Codes, asked values and open comments are text in
 * locked cells; the rest is empty.
 *
 * @param bytes the file
 * @param ranges where its rows are, by which a description names them
 */
public record FormWorkbook(byte[] bytes, List<String> ranges) {
  /** Rows under the points for further comments. */
  private static final int SPARE = 20;

  /** The longest name that a worksheet may have. */
  private static final int LONGEST = 31;

  private static final String TEXT = "@";

  /** Each column with its width in characters. */
  private static final Map<String, Integer> COLUMNS = columns();

  /** Those that the worksheet has already; all others are to be filled in. */
  private static final List<String> LOCKED =
      List.of("sample", "size", "point", "measured", "unit", "asked", "tolerance", "sent");

  /** Copies the list. */
  public FormWorkbook {
    bytes = bytes.clone();
    ranges = List.copyOf(ranges);
  }

  @Override
  public byte[] bytes() {
    return bytes.clone();
  }

  private static Map<String, Integer> columns() {
    Map<String, Integer> columns = new LinkedHashMap<>();
    columns.put("sample", 14);
    columns.put("size", 6);
    columns.put("point", 7);
    columns.put("measured", 34);
    columns.put("unit", 5);
    columns.put("asked", 9);
    columns.put("tolerance", 10);
    columns.put("factory", 9);
    columns.put("ours", 9);
    columns.put("revised", 9);
    columns.put("decision", 20);
    columns.put("number", 8);
    columns.put("comment", 40);
    columns.put("action", 14);
    columns.put("state", 8);
    columns.put("photograph", 20);
    columns.put("at", 10);
    columns.put("sent", 11);
    return columns;
  }

  /**
   * The form of a sample. The same sample gives the same bytes.
   *
   * @param list the points of measure
   * @param check of a sample, of which only what was asked and the open comments are written
   */
  public static FormWorkbook of(MeasureList list, SampleCheck check) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    List<String> ranges = new ArrayList<>();
    Set<String> names = new HashSet<>();
    try (Workbook workbook = new Workbook(bytes, "placket", null)) {
      for (JudgedSample size : check.sizes()) {
        String name = name(check.name() + "-" + size.size(), names);
        Worksheet sheet = workbook.newWorksheet(name);
        int rows = new FormSheet(sheet, list, check, size).write();
        // A part of its own for names is written in any case, and may not be empty.
        sheet.range(0, 0, rows - 1, COLUMNS.size() - 1).setName("rows_" + (ranges.size() + 1));
        ranges.add(name + "!" + range(rows));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new FormWorkbook(Repacked.of(bytes.toByteArray()), ranges);
  }

  private static String range(int rows) {
    return "A1:" + (char) ('A' + COLUMNS.size() - 1) + rows;
  }

  /** Letters, digits, hyphens and underscores, which need no quotes; no two alike. */
  private static String name(String wanted, Set<String> taken) {
    String all = wanted.replaceAll("[^\\p{L}\\p{N}_-]", "_");
    String name = all.substring(0, Math.min(all.length(), LONGEST));
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      String mark = "-" + i;
      name = all.substring(0, Math.min(all.length(), LONGEST - mark.length())) + mark;
    }
    return name;
  }

  /** One worksheet. */
  private static final class FormSheet {
    private final Worksheet sheet;
    private final MeasureList list;
    private final SampleCheck check;
    private final JudgedSample size;
    private final List<String> columns = List.copyOf(COLUMNS.keySet());
    private int row;

    FormSheet(Worksheet sheet, MeasureList list, SampleCheck check, JudgedSample size) {
      this.sheet = sheet;
      this.list = list;
      this.check = check;
      this.size = size;
    }

    /** Writes it; the number of its rows. */
    int write() {
      headings();
      List<GradedPoint> points = list.table().points();
      for (int p = 0; p < points.size(); p++) {
        point(size.points().get(p), list.names().getOrDefault(points.get(p).point().code(), ""));
      }
      check.comments().stream().filter(SampleComment::open).forEach(this::comment);
      for (int i = 0; i < SPARE; i++) {
        row(Map.of(), columns.subList(columns.indexOf("point"), columns.indexOf("point") + 1));
      }
      sheet.freezePane(columns.indexOf("unit"), 1);
      sheet.paperSize(PaperSize.A4_PAPER);
      sheet.pageOrientation("landscape");
      sheet.fitToWidth((short) 1);
      sheet.fitToHeight((short) 0);
      protect();
      return row;
    }

    /** All but filling in is locked; there is no password, so that whoever must can unlock it. */
    private void protect() {
      sheet.protect(
          "",
          SheetProtectionOption.SHEET,
          SheetProtectionOption.OBJECTS,
          SheetProtectionOption.SCENARIOS,
          SheetProtectionOption.AUTO_FILTER,
          SheetProtectionOption.SORT,
          SheetProtectionOption.INSERT_ROWS,
          SheetProtectionOption.INSERT_COLUMNS,
          SheetProtectionOption.INSERT_HYPERLINKS,
          SheetProtectionOption.DELETE_ROWS,
          SheetProtectionOption.DELETE_COLUMNS,
          SheetProtectionOption.PIVOT_TABLES);
    }

    private void headings() {
      for (int c = 0; c < columns.size(); c++) {
        String heading = columns.get(c);
        sheet.value(0, c, heading);
        sheet.style(0, c).bold().format(TEXT).protectionOption(ProtectionOption.LOCKED, true).set();
        sheet.width(c, COLUMNS.getOrDefault(heading, 10));
      }
      row = 1;
    }

    private void point(JudgedPoint point, String name) {
      String code = point.value().code();
      String asked = point.asked().valueText(list.unit());
      String tolerance = point.asked().toleranceText(list.unit());
      Map<String, String> values = new LinkedHashMap<>();
      values.put("point", code);
      values.put("measured", name);
      values.put("unit", list.unit().sign());
      values.put("asked", asked);
      values.put("tolerance", tolerance);
      values.put("sent", sent(code, asked, tolerance));
      row(values, List.of());
    }

    private String sent(String code, String asked, String tolerance) {
      String unit = list.unit().sign();
      return new SentRow(check.name(), size.size(), code, asked, tolerance, unit).mark(row);
    }

    private void comment(SampleComment comment) {
      Map<String, String> values = new LinkedHashMap<>();
      values.put("point", comment.point());
      values.put("number", "" + comment.number());
      values.put("comment", comment.text());
      values.put("action", comment.action());
      values.put("sent", sent(comment.point(), "", ""));
      row(values, List.of());
    }

    /** A row of the sample: what is given is locked, what is to be filled in is not. */
    private void row(Map<String, String> values, List<String> open) {
      for (int c = 0; c < columns.size(); c++) {
        String column = columns.get(c);
        String value =
            column.equals("sample")
                ? check.name()
                : column.equals("size") ? size.size() : values.getOrDefault(column, "");
        boolean locked = !open.contains(column) && (LOCKED.contains(column) || !value.isEmpty());
        if (!value.isEmpty()) {
          sheet.value(row, c, value);
        }
        Range cell = sheet.range(row, c, row, c);
        cell.style()
            .format(locked || list.unit().isTypedAsText() ? TEXT : "General")
            .protectionOption(ProtectionOption.LOCKED, locked)
            .fillColor(locked ? "EEEEEE" : "FFFFFF")
            .borderStyle("thin")
            .set();
      }
      row++;
    }
  }
}
