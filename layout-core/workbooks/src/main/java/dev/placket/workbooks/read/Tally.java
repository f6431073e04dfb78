package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.refusal.WorkbookSetting;

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
          Fault.limit(
                  parts.file(),
                  "its worksheets have more than " + parts.limits().cells() + " cells, the limit")
              .remedy("name fewer worksheets")
              .remedy("raise it", WorkbookSetting.MAXIMUM_CELLS));
    }
  }
}
