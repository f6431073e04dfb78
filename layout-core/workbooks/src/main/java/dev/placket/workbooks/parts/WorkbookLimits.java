package dev.placket.workbooks.parts;

/**
 * How much a workbook may ask for before it is refused; all counts, none of them time.
 *
 * @param worksheets most worksheets
 * @param cells most cells, ranges and drawn things of the worksheets in play together
 * @param entries most zip entries
 * @param bytes most bytes once unpacked, all parts together
 * @param depth most XML elements inside one another
 */
public record WorkbookLimits(int worksheets, int cells, int entries, long bytes, int depth) {
  /** 200 worksheets, 100,000 cells, 10,000 entries, 512 MiB unpacked, 64 deep. */
  public static final WorkbookLimits DEFAULT =
      new WorkbookLimits(200, 100_000, 10_000, 512L << 20, 64);

  /** These limits with other counts of worksheets, cells and MiB. */
  public WorkbookLimits with(int mostWorksheets, int mostCells, int mostMebibytes) {
    return new WorkbookLimits(
        mostWorksheets, mostCells, entries, (long) mostMebibytes << 20, depth);
  }
}
