package dev.placket.packs.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.packs.table.Csv.CsvException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180, section 2: its seven rules with their own examples. */
class CsvTest {
  private static List<List<String>> read(String text) throws CsvException {
    return Csv.read(text).stream().map(Csv.Row::fields).toList();
  }

  private static final List<List<String>> TWO =
      List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));

  @Test
  void recordsAreLines() throws CsvException {
    // Rule 1.
    assertEquals(TWO, read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
  }

  @Test
  void theLastLineMayLackItsEnd() throws CsvException {
    // Rule 2.
    assertEquals(TWO, read("aaa,bbb,ccc\r\nzzz,yyy,xxx"));
  }

  @Test
  void blanksBelongToValues() throws CsvException {
    // Rule 4: "Spaces are considered part of a field and should not be ignored."
    assertEquals(List.of(List.of("aaa", " bbb ", "")), read("aaa, bbb ,"));
  }

  @Test
  void quotesMayStandRoundValues() throws CsvException {
    // Rule 5.
    assertEquals(TWO, read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"));
  }

  @Test
  void quotesHoldLineEndsAndCommas() throws CsvException {
    // Rule 6.
    assertEquals(
        List.of(List.of("aaa", "b\r\nbb", "c,cc"), List.of("zzz", "yyy", "xxx")),
        read("\"aaa\",\"b\r\nbb\",\"c,cc\"\r\nzzz,yyy,xxx"));
  }

  @Test
  void quotesInQuotesAreDoubled() throws CsvException {
    // Rule 7.
    assertEquals(List.of(List.of("aaa", "b\"bb", "ccc")), read("\"aaa\",\"b\"\"bb\",\"ccc\""));
  }

  @Test
  void linesCountWithinQuotes() throws CsvException {
    assertEquals(3, Csv.read("\"a\nb\",c\nd,e\n").get(1).line());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a,b\nc", "a,b\nc,d,e", "a\"b,c", "\"a\"b,c", "a,\"b", "a,b\rc,d", "a,b\n\n"})
  void whatIsNoneOfItIsRefusedWithItsLine(String text) {
    CsvException e = assertThrows(CsvException.class, () -> Csv.read(text));
    assertTrue(String.valueOf(e.getMessage()).startsWith("line "), e.getMessage());
  }
}
