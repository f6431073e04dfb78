package dev.placket.packs.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** What a character is to the breaking of lines: the classes of UAX #14 that matter here. */
enum LineClass {
  /** Letter: everything that is nothing else, Hangul included. */
  AL,
  /** Em dash. */
  B2,
  /** A break may follow: hyphens, bars. */
  BA,
  /** A break may come before. */
  BB,
  /** Closing punctuation. */
  CL,
  /** Closing parenthesis. */
  CP,
  /** Exclamation, interrogation. */
  EX,
  /** Glue. */
  GL,
  /** Hyphen-minus. */
  HY,
  /** Ideograph, kana. */
  ID,
  /** Leader, ellipsis. */
  IN,
  /** Separator of numbers. */
  IS,
  /** Does not begin a line: small kana, marks of iteration and length, middle dots. */
  NS,
  /** Digit. */
  NU,
  /** Opening punctuation. */
  OP,
  /** Sign after a number. */
  PO,
  /** Sign before a number. */
  PR,
  /** Quote that opens or closes. */
  QU,
  /** Quote that opens. */
  QI,
  /** Quote that closes. */
  QF,
  /** Solidus. */
  SY;

  private static final int HEX = 16;
  private static final TreeMap<Integer, Entry> TABLE = table();

  private record Entry(int last, LineClass of, boolean wide) {}

  /** The class of a character. */
  static LineClass of(int c) {
    Entry entry = entry(c);
    return entry != null ? entry.of : Script.breaksAnywhere(c) ? ID : AL;
  }

  /** Whether a character is East Asian: full-width, wide or half-width, and no Hangul. */
  static boolean isEastAsian(int c) {
    Entry entry = entry(c);
    return entry == null ? Script.breaksAnywhere(c) : entry.wide;
  }

  private static @org.jspecify.annotations.Nullable Entry entry(int c) {
    Map.Entry<Integer, Entry> at = TABLE.floorEntry(c);
    return at == null || at.getValue().last < c ? null : at.getValue();
  }

  private static TreeMap<Integer, Entry> table() {
    TreeMap<Integer, Entry> table = new TreeMap<>();
    try (InputStream in = LineClass.class.getResourceAsStream("line-break.tsv");
        BufferedReader lines =
            new BufferedReader(
                new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))) {
      lines.lines().filter(l -> !l.startsWith("#")).forEach(l -> add(table, l));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return table;
  }

  private static void add(TreeMap<Integer, Entry> table, String line) {
    String[] columns = line.split("\t", -1);
    for (String range : columns[2].split(" ", -1)) {
      String[] ends = range.split("-", -1);
      int last = Integer.parseInt(ends[ends.length - 1], HEX);
      table.put(
          Integer.parseInt(ends[0], HEX),
          new Entry(last, valueOf(columns[0]), columns[1].equals("wide")));
    }
  }
}
