package dev.placket.packs.language;

import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.table.Csv;
import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Texts in several languages: comma-separated values (RFC 4180, also with semicolons or tabs) whose
 * first line names the languages, each further line one text in all of them.
 */
public final class Glossary {
  /** No texts. */
  public static final Glossary NONE = new Glossary(List.of(), List.of());

  private static final int MOST_BYTES = 5_000_000;
  private static final String SEPARATORS = ",;\t";
  private static final Pattern FIELD = Pattern.compile("\\{[^{}\\n]*}");
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private final List<String> languages;
  private final List<List<String>> rows;
  private final List<Map<String, Integer>> byText = new ArrayList<>();

  private Glossary(List<String> languages, List<List<String>> rows) {
    this.languages = languages;
    this.rows = rows;
    for (int c = 0; c < languages.size(); c++) {
      Map<String, Integer> column = new HashMap<>();
      for (int r = 0; r < rows.size(); r++) {
        column.putIfAbsent(key(rows.get(r).get(c)), r);
      }
      column.remove("");
      byText.add(column);
    }
  }

  /**
   * Reads a file.
   *
   * @throws Refusal naming every line at fault, or that the file cannot be read
   */
  public static Glossary read(Path file) throws Refusal {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    } catch (IOException e) {
      throw Refusal.input(
          Fault.unreadable(file, "cannot be opened")
              .remedy("check that the glossary exists and is readable"));
    }
    if (bytes.length > MOST_BYTES) {
      throw Refusal.input(
          Fault.limit(file, "has more than " + MOST_BYTES + " bytes, the limit")
              .remedy("divide the glossary"));
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return of(file, Csv.read(text, separator(text)));
    } catch (CharacterCodingException e) {
      throw Refusal.input(Fault.content(file, "is not in UTF-8").remedy("save it as UTF-8"));
    } catch (Csv.CsvException e) {
      throw Refusal.input(
          Fault.content(file, String.valueOf(e.getMessage()))
              .remedy("write comma-separated values (RFC 4180)"));
    }
  }

  /** The first separator of the line of languages; spreadsheets differ by country. */
  private static char separator(String text) {
    String first = text.lines().findFirst().orElse("");
    return (char) first.chars().filter(c -> SEPARATORS.indexOf(c) >= 0).findFirst().orElse(',');
  }

  private static Glossary of(Path file, List<Csv.Row> records) throws Refusal {
    List<Fault> wrong = new ArrayList<>();
    List<String> languages =
        records.isEmpty()
            ? List.of()
            : records.get(0).fields().stream().map(String::strip).toList();
    if (languages.size() < 2 || !languages.stream().allMatch(LanguageTag::isTag)) {
      throw Refusal.input(
          Fault.content(file, "does not begin with two languages or more")
              .at(Place.line(1))
              .remedy("name them in the first line, as in en,zh-Hans"));
    }
    if (new HashSet<>(languages).size() < languages.size()) {
      wrong.add(at(file, 1, "names a language twice").remedy("give each language one column"));
    }
    List<List<String>> rows = new ArrayList<>();
    Map<String, Integer> lines = new HashMap<>();
    for (Csv.Row record : records.subList(1, records.size())) {
      List<String> row = record.fields().stream().map(String::strip).toList();
      Integer before =
          row.get(0).isEmpty() ? null : lines.putIfAbsent(key(row.get(0)), record.line());
      if (before != null) {
        wrong.add(
            at(file, record.line(), "has '" + row.get(0) + "' again, as line " + before)
                .remedy("remove one of the two lines"));
      }
      checkFields(file, record.line(), languages, row, wrong);
      rows.add(row);
    }
    if (!wrong.isEmpty()) {
      throw Refusal.input(wrong);
    }
    return new Glossary(languages, rows);
  }

  /** A translation that lacks a field would print a sheet without its value. */
  private static void checkFields(
      Path file, int line, List<String> languages, List<String> row, List<Fault> wrong) {
    Set<String> fields = fields(row.get(0));
    for (int c = 1; c < row.size(); c++) {
      Set<String> its = fields(row.get(c));
      if (!row.get(0).isEmpty() && !row.get(c).isEmpty() && !its.equals(fields)) {
        wrong.add(
            at(file, line, "has the fields " + its + " in " + languages.get(c) + ", not " + fields)
                .remedy("write the fields of the first column, braces included"));
      }
    }
  }

  private static Set<String> fields(String text) {
    Set<String> fields = new TreeSet<>();
    Matcher m = FIELD.matcher(text);
    while (m.find()) {
      fields.add(m.group());
    }
    return fields;
  }

  private static Fault at(Path file, int line, String found) {
    return Fault.content(file, found).at(Place.line(line));
  }

  static Glossary ofStock(List<Csv.Row> records) {
    List<List<String>> rows =
        records.subList(1, records.size()).stream().map(Csv.Row::fields).toList();
    return new Glossary(records.get(0).fields(), rows);
  }

  /** Whether it has no texts. */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** The languages of its columns. */
  public List<String> languages() {
    return List.copyOf(languages);
  }

  /** A text in a language; null where it has none. Differences in blanks do not count. */
  public @Nullable String in(String text, String language) {
    String key = key(text);
    for (Map<String, Integer> column : byText) {
      Integer row = column.get(key);
      if (row != null) {
        return cell(rows.get(row), language);
      }
    }
    return null;
  }

  /** The column of just this language, else the first that serves for it. */
  private @Nullable String cell(List<String> row, String language) {
    int column = languages.indexOf(language);
    for (int c = 0; c < languages.size() && column < 0; c++) {
      column = LanguageTag.serves(languages.get(c), language) ? c : -1;
    }
    return column < 0 || row.get(column).isEmpty() ? null : row.get(column);
  }

  private static String key(String text) {
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    return BLANKS.matcher(composed).replaceAll(" ").strip();
  }
}
