package dev.placket.packs.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Changed values stand in their records, and every other character of the file as it was. */
class CsvTextTest {
  private static final List<String> VALUES =
      List.of("", "A", "51.5", "23 7/16", "a, b", "two\nlines", "say \"yes\"", " blank ", "ä½");

  private static String any(Random random) {
    return VALUES.get(random.nextInt(VALUES.size()));
  }

  private static String written(String value, boolean quoted) {
    boolean must = value.contains(",") || value.contains("\"") || value.contains("\n");
    return must || quoted ? '"' + value.replace("\"", "\"\"") + '"' : value;
  }

  @Property(tries = 500)
  void onlyWhatIsSetChanges(@ForAll int seed) throws Csv.CsvException {
    Random random = new Random(seed);
    int columns = 1 + random.nextInt(4);
    int records = 1 + random.nextInt(5);
    String end = random.nextBoolean() ? "\n" : "\r\n";
    List<List<String>> model = new ArrayList<>();
    StringBuilder text = new StringBuilder(random.nextBoolean() ? "\uFEFF" : "");
    for (int r = 0; r <= records; r++) {
      List<String> record = new ArrayList<>();
      for (int c = 0; c < columns; c++) {
        String value = r == 0 ? "h" + c : any(random);
        // A record of one blank value cannot be told from the end of the file.
        value = columns == 1 && value.isEmpty() ? "x" : value;
        record.add(value);
        text.append(c == 0 ? "" : ",").append(written(value, random.nextInt(4) == 0));
      }
      text.append(r == records && random.nextBoolean() ? "" : end);
      model.add(record);
    }
    CsvText changed = new CsvText(text.toString());
    assertEquals(text.toString(), changed.changed());
    List<Csv.Row> rows = Csv.read(text.toString());
    int more = random.nextInt(3);
    for (int m = 0; m < more; m++) {
      for (List<String> record : model) {
        record.add(record == model.get(0) ? "more" + m : "");
      }
    }
    for (int r = 1; r <= records; r++) {
      int c = random.nextInt(columns + more);
      String value = any(random) + "!";
      changed.set(rows.get(r).line(), model.get(0).get(c), value);
      model.get(r).set(c, value);
    }
    List<List<String>> expected = new ArrayList<>();
    List<Csv.Row> read = Csv.read(changed.changed());
    List<String> headings = read.get(0).fields();
    for (List<String> record : model) {
      // Only columns that got a value are there, in the order in which they came.
      expected.add(headings.stream().map(h -> record.get(model.get(0).indexOf(h))).toList());
    }
    assertEquals(expected, read.stream().map(Csv.Row::fields).toList());
  }
}
