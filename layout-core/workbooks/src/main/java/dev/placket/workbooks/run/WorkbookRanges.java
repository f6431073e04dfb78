package dev.placket.workbooks.run;

import dev.placket.packs.description.CellTable;
import dev.placket.packs.description.RangeReader;
import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.read.RangeCells;
import dev.placket.workbooks.read.WorkbookReader;
import java.nio.file.Path;

/**
 * Reads ranges of workbooks: values alone, as they were last saved.
 *
 * @param limits what a workbook may hold
 */
public record WorkbookRanges(WorkbookLimits limits) implements RangeReader {
  @Override
  public CellTable read(Path file, String range) throws Refusal {
    try (Parts parts = Parts.open(file, limits)) {
      return RangeCells.read(parts, WorkbookReader.read(parts), range);
    }
  }
}
