package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.sample.SentRow;

/** Compares a row of a form that came back with the row that was sent. */
final class SentCheck {
  private SentCheck() {}

  static void check(Described described, MeasuredList list, SampleRow row) {
    String mark = row.of("sent");
    String unit = list.unit().sign();
    if (mark.isEmpty() || !row.of("unit").equals(unit) && !row.of("unit").isEmpty()) {
      return;
    }
    SentRow came =
        new SentRow(
            row.of("sample"),
            row.of("size"),
            row.of("point"),
            row.of("asked"),
            row.of("tolerance"),
            unit);
    switch (came.against(mark, row.number())) {
      case SAME -> {}
      case MOVED ->
          row.fault(
              described,
              "sent",
              "a row that was sent as row " + sentAs(row, mark),
              "the order in which it was sent, or no value under 'sent'");
      case CHANGED ->
          row.fault(
              described,
              "sent",
              "sample, size, point, asked, tolerance or unit are not as they were sent",
              "the values that were sent, or no value under 'sent'");
      default -> throw new IllegalStateException(mark);
    }
  }

  /** The row of the file, whose headings may have moved with all rows. */
  private static int sentAs(SampleRow row, String mark) {
    return row.line() - row.number() + Integer.parseInt(mark.substring(0, mark.indexOf('-')));
  }
}
