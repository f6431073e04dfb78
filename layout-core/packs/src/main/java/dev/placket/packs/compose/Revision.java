package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.DescriptionText;
import dev.placket.packs.description.PackMeasurements;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.flats.Reading;
import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.MeasureText;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.sample.AskedValue;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.table.Csv;
import dev.placket.packs.table.CsvText;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The revised values of a sample, taken into the list of points of measure. What was measured
 * before stays judged by the values before: its rows get what was asked.
 */
public final class Revision {
  private static final String BOM = "\uFEFF";

  private final Described described;
  private final MeasuredList list;
  private final List<SampleRow> rows;
  private final List<Change> changes = new ArrayList<>();
  private final List<Kept> kept = new ArrayList<>();
  private final Map<String, CsvText> tables = new LinkedHashMap<>();

  /** The description with all its changes: places are those of the text as it was. */
  private @Nullable DescriptionText own;

  /**
   * A value of the list that changes.
   *
   * @param code the point's
   * @param size the size of which it is revised
   * @param before what is asked now, in the unit of the list
   * @param after what is asked from now on
   * @param graded whether all other sizes change by as much
   */
  public record Change(String code, String size, String before, String after, boolean graded) {}

  /**
   * A row that was measured before and keeps what was asked.
   *
   * @param sample of the row
   * @param size of the row
   * @param code its point's
   * @param asked what is written into it
   */
  public record Kept(String sample, String size, String code, String asked) {}

  private Revision(Described described, MeasuredList list, List<SampleRow> rows) {
    this.described = described;
    this.list = list;
    this.rows = rows;
  }

  /**
   * What taking the revised values of a sample changes; no file is written.
   *
   * @param described the description
   * @param sample one under checks
   * @param ranges reads ranges of workbooks
   * @throws Refusal if the description or a file that it names is at fault, there is no such
   *     sample, or a value cannot be taken
   */
  public static Revision of(Described described, String sample, RangeReader ranges) throws Refusal {
    TableFile files = new TableFile(described, new FlatFiles(described, Reading.DEFAULT), ranges);
    PackText text = PackText.of(described);
    MeasuredList list = Measurements.of(described, files, text.phrases());
    PackSamples samples = described.pack().samples();
    List<SampleRow> rows =
        samples == null ? List.of() : SampleFiles.read(described, samples, files);
    Map<String, SampleCheck> checks = SampleBook.of(described, list, text, rows).checks();
    described.faults().refuse();
    if (list == null || !checks.containsKey(sample)) {
      String known = checks.isEmpty() ? "" : ": " + String.join(", ", checks.keySet());
      throw Refusal.input(
          Fault.content(described.file(), "has no sample '" + sample + "' under checks")
              .remedy("name one that it has" + known));
    }
    Revision revision = new Revision(described, list, rows);
    for (SampleRow row : rows) {
      if (row.of("sample").equals(sample) && !row.of("revised").isEmpty()) {
        revision.take(row);
      }
    }
    described.faults().refuse();
    return revision;
  }

  /** The values of the list that change, in the order of the rows. */
  public List<Change> changes() {
    return List.copyOf(changes);
  }

  /** The rows that keep what was asked. */
  public List<Kept> kept() {
    return List.copyOf(kept);
  }

  /**
   * The files that change with their new texts, by their names beside the description: those of
   * samples first, so that a run that is cut short leaves nothing judged by other values.
   */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    tables.forEach((name, table) -> files.put(name, table.changed()));
    String points = listFile();
    String csv = files.remove(points);
    if (csv != null) {
      files.put(points, csv);
    }
    DescriptionText changed = own;
    if (changed != null) {
      files.put(name(), (isMarked() ? BOM : "") + changed.changed());
    }
    return files;
  }

  private String listFile() {
    PackMeasurements measures = measures();
    return measures.csv() == null ? "" : measures.csv();
  }

  private PackMeasurements measures() {
    PackMeasurements measures = described.pack().measurements();
    if (measures == null) {
      throw new IllegalStateException("a list without measurements");
    }
    return measures;
  }

  private void take(SampleRow row) {
    String code = row.of("point");
    String size = row.of("size").isEmpty() ? list.table().sample() : row.of("size");
    GradedPoint point =
        list.table().points().stream()
            .filter(p -> p.point().code().equals(code))
            .findFirst()
            .orElse(null);
    BigDecimal now = point == null ? null : point.values().get(size);
    BigDecimal revised = MeasureText.parse(row.of("revised"), list.unit());
    if (point == null || now == null || now.compareTo(revised) == 0) {
      return;
    }
    if (!point.typed() && !size.equals(list.table().sample())) {
      row.fault(
          described,
          "revised",
          "size " + size + " of point " + code + ", which is graded",
          "a value of size " + list.table().sample() + ", or another grade in the list");
      return;
    }
    String after = MeasureText.of(revised, list.unit());
    changes.add(new Change(code, size, MeasureText.of(now, list.unit()), after, !point.typed()));
    rows.stream().filter(r -> isJudged(r, point, size)).forEach(r -> keep(r, point));
    change(row, point, size, after);
  }

  /** Whether a row is judged by the value that changes: measured, and without one of its own. */
  private boolean isJudged(SampleRow row, GradedPoint point, String size) {
    String its = row.of("size").isEmpty() ? list.table().sample() : row.of("size");
    return row.of("point").equals(point.point().code())
        && (!point.typed() || its.equals(size))
        && row.of("asked").isEmpty()
        && row.hasAny(List.of("factory", "ours"));
  }

  private void keep(SampleRow row, GradedPoint point) {
    String size = row.of("size").isEmpty() ? list.table().sample() : row.of("size");
    AskedValue asked = AskedValue.of(point, size);
    String value = asked.valueText(list.unit());
    String tolerance = asked.toleranceText(list.unit());
    CsvText table = row.csv().isEmpty() ? null : table(row.csv());
    boolean done =
        table != null
            && table.set(row.line(), "asked", value)
            && (tolerance.isEmpty()
                || !row.of("tolerance").isEmpty()
                || table.set(row.line(), "tolerance", tolerance));
    if (!done) {
      row.fault(
          described,
          "asked",
          "no value, and none can be written there",
          value + " under 'asked' and '" + tolerance + "' under 'tolerance'");
    }
    kept.add(new Kept(row.of("sample"), size, point.point().code(), value));
  }

  private void change(SampleRow row, GradedPoint point, String size, String after) {
    String code = point.point().code();
    String column = point.typed() ? size : "value";
    boolean done;
    if (measures().csv() != null) {
      CsvText table = table(listFile());
      done = table != null && table.set(table.line("code", code), column, after);
    } else if (measures().workbook() == null) {
      done = inDescription(point, size, after);
    } else {
      row.fault(
          described,
          "revised",
          "a list in the workbook " + measures().workbook() + ", which is not written",
          after + " under '" + column + "' of " + code + " there, typed by hand");
      return;
    }
    if (!done) {
      row.fault(
          described, "revised", "a value that cannot be replaced in the list", "one as typed");
    }
  }

  private boolean inDescription(GradedPoint point, String size, String after) {
    String code = point.point().code();
    PackMeasurements.Point said = measures().points().get(code);
    int column = list.table().sizes().indexOf(size);
    String path = "measurements/points/" + code + (point.typed() ? "/values/" + column : "/value");
    TextPosition at = described.places().of(path);
    String before = said == null ? "" : point.typed() ? said.values().get(column) : said.value();
    String whole = text(name());
    if (whole == null || before.isEmpty()) {
      return false;
    }
    DescriptionText text = own;
    if (text == null) {
      text = new DescriptionText(isMarked() ? whole.substring(1) : whole);
      own = text;
    }
    return text.replace(at, before, after);
  }

  private String name() {
    return String.valueOf(described.file().getFileName());
  }

  private boolean isMarked() {
    String whole = text(name());
    return whole != null && whole.startsWith(BOM);
  }

  private @Nullable CsvText table(String name) {
    CsvText known = tables.get(name);
    String text = known == null ? text(name) : null;
    if (known != null || text == null) {
      return known;
    }
    try {
      CsvText table = new CsvText(text);
      tables.put(name, table);
      return table;
    } catch (Csv.CsvException e) {
      return null;
    }
  }

  private @Nullable String text(String name) {
    Path file = described.folder().resolve(name);
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      return null;
    }
  }
}
