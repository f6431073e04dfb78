package dev.placket.packs.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Changes to single values in the text of a CSV file; all else stays as it was written. */
public final class CsvText {
  private static final String MARK = "\uFEFF";

  private final String mark;
  private final String text;
  private final List<Csv.Row> rows;
  private final List<List<Csv.Place>> places;
  private final List<Edit> edits = new ArrayList<>();

  /** Columns behind those of the text, and their values by record. */
  private final List<String> added = new ArrayList<>();

  private final Map<Integer, Map<String, String>> more = new HashMap<>();

  private record Edit(Csv.Place place, String by) {}

  /**
   * A text without changes.
   *
   * @param whole the file, with its byte order mark if it has one
   * @throws Csv.CsvException if it is not comma-separated values
   */
  public CsvText(String whole) throws Csv.CsvException {
    this.mark = whole.startsWith(MARK) ? MARK : "";
    this.text = whole.substring(mark.length());
    this.rows = Csv.read(text);
    this.places = Csv.places(text);
  }

  /**
   * Puts a value in the place of one; a column that is missing comes behind all others.
   *
   * @param line the line that its record begins on
   * @param heading of its column, in the first record
   * @return whether there is such a record
   */
  public boolean set(int line, String heading, String value) {
    int column = rows.get(0).fields().stream().map(String::strip).toList().indexOf(heading);
    for (int r = 1; r < rows.size(); r++) {
      if (rows.get(r).line() == line && column >= 0) {
        edits.add(new Edit(places.get(r).get(column), quoted(value)));
        return true;
      }
      if (rows.get(r).line() == line) {
        if (!added.contains(heading)) {
          added.add(heading);
        }
        more.computeIfAbsent(r, n -> new HashMap<>()).put(heading, value);
        return true;
      }
    }
    return false;
  }

  /** The line of the first record with a value in a column; 0 if there is none. */
  public int line(String heading, String value) {
    int column = rows.get(0).fields().stream().map(String::strip).toList().indexOf(heading);
    return rows.stream()
        .skip(1)
        .filter(r -> column >= 0 && r.fields().get(column).strip().equals(value))
        .mapToInt(Csv.Row::line)
        .findFirst()
        .orElse(0);
  }

  private static String quoted(String value) {
    boolean plain = value.chars().noneMatch(c -> ",\"\r\n".indexOf(c) >= 0);
    return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
  }

  /** The file with the changes. */
  public String changed() {
    StringBuilder changed = new StringBuilder(text);
    // At the end of a record the columns behind it come first, since each edit pushes on the last.
    List<Edit> all = new ArrayList<>(behind());
    all.addAll(edits);
    all.stream()
        .sorted(Comparator.comparingInt((Edit e) -> e.place.from()).reversed())
        .forEach(e -> changed.replace(e.place.from(), e.place.to(), e.by));
    return mark + changed;
  }

  private List<Edit> behind() {
    List<Edit> behind = new ArrayList<>();
    for (int r = 0; r < rows.size() && !added.isEmpty(); r++) {
      StringBuilder values = new StringBuilder();
      for (String heading : added) {
        String value = r == 0 ? heading : more.getOrDefault(r, Map.of()).getOrDefault(heading, "");
        values.append(',').append(quoted(value));
      }
      List<Csv.Place> its = places.get(r);
      int end = its.get(its.size() - 1).to();
      behind.add(new Edit(new Csv.Place(end, end), values.toString()));
    }
    return behind;
  }
}
