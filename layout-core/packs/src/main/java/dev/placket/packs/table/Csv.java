package dev.placket.packs.table;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads comma-separated values as RFC 4180 has them; a line may also end with LF alone.
 *
 * <p>Every record has as many fields as the first, blanks belong to fields, and a record in quotes
 * may hold commas, line ends and doubled quotes.
 */
public final class Csv {
  private final String text;
  private final char separator;
  private final String ends;
  private final List<List<Place>> places = new ArrayList<>();
  private int at;
  private int line = 1;

  private Csv(String text, char separator) {
    this.text = text;
    this.separator = separator;
    this.ends = separator + "\r\n";
  }

  /**
   * A record.
   *
   * @param line the line it begins on, from 1
   * @param fields its values
   */
  public record Row(int line, List<String> fields) {
    /** Copies the list. */
    public Row {
      fields = List.copyOf(fields);
    }
  }

  /**
   * Where a field stands in the text, its quotes with it.
   *
   * @param from its first character
   * @param to behind its last character
   */
  record Place(int from, int to) {}

  /** What is wrong with a file, and where. */
  public static final class CsvException extends Exception {
    private static final long serialVersionUID = 1;

    CsvException(int line, String what) {
      super("line " + line + ": " + what);
    }
  }

  /**
   * The records of a text. O(n).
   *
   * @throws CsvException naming the line, if quotes are wrong or records differ in length
   */
  public static List<Row> read(String text) throws CsvException {
    return read(text, ',');
  }

  /**
   * The same where another character parts the values.
   *
   * @param separator as in a semicolon
   */
  public static List<Row> read(String text, char separator) throws CsvException {
    return new Csv(text.startsWith("\uFEFF") ? text.substring(1) : text, separator).rows();
  }

  /** Where the fields of each record stand in a text without a byte order mark. */
  static List<List<Place>> places(String text) throws CsvException {
    Csv csv = new Csv(text, ',');
    csv.rows();
    return csv.places;
  }

  private List<Row> rows() throws CsvException {
    List<Row> rows = new ArrayList<>();
    while (at < text.length()) {
      Row row = row();
      int wanted = rows.isEmpty() ? row.fields().size() : rows.get(0).fields().size();
      if (row.fields().size() != wanted) {
        throw new CsvException(
            row.line(), row.fields().size() + " values, the first line has " + wanted);
      }
      rows.add(row);
    }
    return rows;
  }

  private Row row() throws CsvException {
    int begin = line;
    List<String> fields = new ArrayList<>();
    List<Place> its = new ArrayList<>();
    places.add(its);
    while (true) {
      int from = at;
      fields.add(field());
      its.add(new Place(from, at));
      if (at < text.length() && text.charAt(at) == separator) {
        at++;
        continue;
      }
      endLine();
      return new Row(begin, fields);
    }
  }

  private void endLine() throws CsvException {
    if (at < text.length() && text.charAt(at) == '\r') {
      at++;
      if (at == text.length() || text.charAt(at) != '\n') {
        throw new CsvException(line, "a carriage return without a line feed");
      }
    }
    if (at < text.length()) {
      at++;
      line++;
    }
  }

  private String field() throws CsvException {
    if (at < text.length() && text.charAt(at) == '"') {
      return quoted();
    }
    int begin = at;
    while (at < text.length() && ends.indexOf(text.charAt(at)) < 0) {
      if (text.charAt(at) == '"') {
        throw new CsvException(
            line, "a quote inside a value; put the whole value in quotes and double it");
      }
      at++;
    }
    return text.substring(begin, at);
  }

  private String quoted() throws CsvException {
    int begin = line;
    StringBuilder value = new StringBuilder();
    at++;
    while (at < text.length()) {
      char c = text.charAt(at++);
      if (c != '"') {
        line += c == '\n' ? 1 : 0;
        value.append(c);
      } else if (at < text.length() && text.charAt(at) == '"') {
        value.append('"');
        at++;
      } else {
        checkAfterQuote();
        return value.toString();
      }
    }
    throw new CsvException(begin, "a quote that is never closed");
  }

  private void checkAfterQuote() throws CsvException {
    if (at < text.length() && ends.indexOf(text.charAt(at)) < 0) {
      throw new CsvException(line, "text after a closing quote");
    }
  }
}
