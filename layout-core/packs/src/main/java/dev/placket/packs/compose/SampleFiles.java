package dev.placket.packs.compose;

import dev.placket.packs.description.CellTable;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.table.Csv;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the files of samples: all rows in their order; slips are noted. */
final class SampleFiles {
  /** The columns that a file may have. */
  static final List<String> COLUMNS =
      List.of(
          "sample",
          "size",
          "point",
          "unit",
          "asked",
          "tolerance",
          "factory",
          "ours",
          "revised",
          "decision",
          "comment",
          "number",
          "action",
          "state",
          "photograph",
          "at",
          "sent");

  /** Columns for whoever fills a sheet in; they are not read. */
  private static final List<String> AIDS = List.of("measured");

  private final Described described;
  private final TableFile files;
  private final List<SampleRow> rows = new ArrayList<>();

  private SampleFiles(Described described, TableFile files) {
    this.described = described;
    this.files = files;
  }

  static List<SampleRow> read(Described described, PackSamples samples, TableFile files) {
    SampleFiles all = new SampleFiles(described, files);
    for (int i = 0; i < samples.files().size(); i++) {
      all.read(samples.files().get(i), "samples/files/" + i);
    }
    return all.rows;
  }

  private void read(PackSamples.Source source, String path) {
    TextPosition at = described.places().of(path);
    String file = source.file();
    if (source.ranges().isEmpty()) {
      files.records(file, path).ifPresent(r -> add(r, file, file + ", line ", at));
    }
    for (String range : source.ranges()) {
      files
          .range(file, range, path)
          .ifPresent(
              t -> add(records(t), "", file + ", worksheet " + t.worksheet() + ", row ", at));
    }
  }

  private static List<Csv.Row> records(CellTable table) {
    return table.rows().stream().map(r -> new Csv.Row(r.number(), r.values())).toList();
  }

  private void add(List<Csv.Row> records, String csv, String where, TextPosition at) {
    List<String> headings = records.get(0).fields().stream().map(String::strip).toList();
    int first = records.get(0).line();
    for (String heading : headings) {
      if (!COLUMNS.contains(heading) && !AIDS.contains(heading)) {
        described.faults().unknown(at, where + first + ": the heading", heading, COLUMNS);
      }
    }
    if (!headings.contains("sample") || headings.stream().distinct().count() < headings.size()) {
      String found = headings.contains("sample") ? "one heading twice" : "no heading 'sample'";
      described.faults().add(at, where + first + ": " + found, "each once, 'sample' among them");
      return;
    }
    for (Csv.Row record : records.subList(1, records.size())) {
      Map<String, String> fields = new LinkedHashMap<>();
      for (int i = 0; i < headings.size(); i++) {
        fields.put(headings.get(i), record.fields().get(i).strip());
      }
      if (fields.values().stream().anyMatch(v -> !v.isEmpty())) {
        rows.add(
            new SampleRow(
                csv, fields, record.line() - first, record.line(), at, where + record.line()));
      }
    }
  }
}
