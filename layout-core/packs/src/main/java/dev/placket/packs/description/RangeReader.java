package dev.placket.packs.description;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.nio.file.Path;

/** Reads ranges of workbooks (ISO/IEC 29500), for programs that have a reader for them. */
@FunctionalInterface
public interface RangeReader {
  /** Reads none. */
  RangeReader NONE =
      (file, range) -> {
        throw Refusal.input(
            Fault.content(file, "is a workbook, which this program does not read")
                .remedy("save the range as comma-separated values"));
      };

  /**
   * The values of a range; nothing is computed.
   *
   * @param file the workbook
   * @param range a defined name, or a worksheet and its cells, as in {@code Grading!A1:H20}
   * @throws Refusal if there is no such range, or the workbook is damaged or beyond the limits
   */
  CellTable read(Path file, String range) throws Refusal;
}
