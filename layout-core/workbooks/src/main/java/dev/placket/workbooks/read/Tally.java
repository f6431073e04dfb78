package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.parts.Parts;

/** Counts what worksheets hold against the limit. */
final class Tally {
  private final Parts parts;
  private int count;

  Tally(Parts parts) {
    this.parts = parts;
  }

  /** One more cell, range or drawn thing. */
  void one() throws Refusal {
    if (++count > parts.limits().cells()) {
      throw Refusal.input(
          parts.file()
              + ": its worksheets hold more than "
              + parts.limits().cells()
              + " cells, the limit; name fewer worksheets, or raise it with --max-cells.");
    }
  }
}
