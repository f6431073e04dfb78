package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackMeasurements;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.description.Words;
import dev.placket.packs.table.Csv;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The points of measure as they are written, from the description or from its CSV file. */
final class MeasuredLines {
  private static final String GRADE = "grade";
  private static final List<String> HEADINGS =
      List.of("code", "name", "how", "measured", "tolerance", "value", GRADE);

  private final Described described;
  private final PackMeasurements list;
  private final List<String> sizes;

  /**
   * A point as it is written.
   *
   * @param code its code
   * @param said what is written
   * @param at where in the description
   * @param before what messages begin with: the file and its line; empty in the description
   */
  record Line(String code, PackMeasurements.Point said, TextPosition at, String before) {}

  MeasuredLines(Described described, PackMeasurements list, List<String> sizes) {
    this.described = described;
    this.list = list;
    this.sizes = sizes;
  }

  /** Those of the description. */
  List<Line> described() {
    List<Line> lines = new ArrayList<>();
    list.points()
        .forEach(
            (code, said) ->
                lines.add(
                    new Line(
                        code, said, described.places().of("measurements/points/" + code), "")));
    return lines;
  }

  /**
   * Those of a table; slips in its headings are noted.
   *
   * @param where what names a row of it, before its number
   */
  List<Line> of(List<Csv.Row> records, String where, TextPosition at) {
    List<String> headings = records.get(0).fields().stream().map(String::strip).toList();
    String first = where + records.get(0).line() + ": ";
    List<String> known = known();
    for (String heading : headings) {
      if (!known.contains(heading)) {
        described.faults().unknown(at, first + "the heading", heading, known);
      }
    }
    if (!headings.contains("code") || !headings.contains("name")) {
      described.faults().add(at, first + "headings without code and name", "both");
    }
    List<Line> lines = new ArrayList<>();
    for (Csv.Row record : records.subList(1, records.size())) {
      Map<String, String> fields = new LinkedHashMap<>();
      for (int i = 0; i < headings.size(); i++) {
        fields.put(headings.get(i), record.fields().get(i).strip());
      }
      String before = where + record.line() + ": ";
      lines.add(new Line(fields.getOrDefault("code", ""), point(fields), at, before));
    }
    return lines;
  }

  private List<String> known() {
    List<String> known = new ArrayList<>(HEADINGS);
    for (String language : described.pack().languages()) {
      known.add("name " + language);
      known.add("how " + language);
    }
    list.sizes().keySet().stream()
        .filter(g -> !g.isEmpty())
        .forEach(g -> known.add(GRADE + " " + g));
    known.addAll(sizes);
    return known;
  }

  /** Of a column, and of those for further languages. */
  private Words words(Map<String, String> fields, String heading) {
    List<String> languages = described.pack().languages();
    Map<String, String> texts = new LinkedHashMap<>();
    for (String language : languages) {
      String its = fields.getOrDefault(heading + " " + language, "");
      if (!its.isEmpty()) {
        texts.put(language, its);
      }
    }
    String plain = fields.getOrDefault(heading, "");
    if (texts.isEmpty() || plain.isEmpty()) {
      return texts.isEmpty() ? Words.of(plain) : new Words(texts);
    }
    texts.putIfAbsent(languages.get(0), plain);
    return new Words(texts);
  }

  private PackMeasurements.Point point(Map<String, String> fields) {
    Map<String, String> grade = new LinkedHashMap<>();
    fields.forEach(
        (heading, text) -> {
          if (!text.isEmpty() && (heading.equals(GRADE) || heading.startsWith(GRADE + " "))) {
            grade.put(heading.substring(GRADE.length()).strip(), text);
          }
        });
    List<String> typed = sizes.stream().map(s -> fields.getOrDefault(s, "")).toList();
    return new PackMeasurements.Point(
        words(fields, "name"),
        words(fields, "how"),
        fields.getOrDefault("measured", ""),
        fields.getOrDefault("tolerance", ""),
        fields.getOrDefault("value", ""),
        grade,
        typed.stream().allMatch(String::isEmpty) ? List.of() : typed);
  }
}
