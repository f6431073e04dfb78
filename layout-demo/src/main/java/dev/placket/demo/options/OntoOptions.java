package dev.placket.demo.options;

import dev.placket.layout.density.DensityTargets;
import dev.placket.packs.compose.DescribedWorkbook;
import dev.placket.packs.description.Described;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.run.RunOptions;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.parts.WorkbookLimits;
import dev.placket.workbooks.place.Asked;
import dev.placket.workbooks.run.DescribedSource;
import dev.placket.workbooks.run.FolderSource;
import dev.placket.workbooks.run.OntoRun;
import dev.placket.workbooks.run.WorkbookRanges;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options of {@code placket fit} for workbooks. */
public final class OntoOptions {
  @Option(
      names = "--worksheet",
      paramLabel = "NAME",
      description = "The worksheet for the flats (default: the first with room).")
  private String worksheet = "";

  @Option(
      names = "--window",
      paramLabel = "RANGE",
      description =
          "A range or defined name where pictures may go; repeatable (default: all blank cells).")
  private List<String> windows = List.of();

  @Option(
      names = "--labelled",
      paramLabel = "RANGE",
      description = "A range or defined name that no picture covers, even if blank; repeatable.")
  private List<String> labelled = List.of();

  @Option(
      names = "--tolerance",
      paramLabel = "PIXELS",
      description =
          "The number of pixels by which programs may differ in the size of a column or row"
              + " (default: 1).")
  private int tolerance = 1;

  @Option(
      names = "--max-worksheets",
      paramLabel = "N",
      description = "The maximum number of worksheets of a workbook (default: 200).")
  private int mostWorksheets = WorkbookLimits.DEFAULT.worksheets();

  @Option(
      names = "--max-cells",
      paramLabel = "N",
      description = "The maximum number of cells read from a workbook (default: 100000).")
  private int mostCells = WorkbookLimits.DEFAULT.cells();

  @Option(
      names = "--max-mebibytes",
      paramLabel = "N",
      description = "The maximum unpacked size of a workbook, in MiB (default: 512).")
  private int mostMebibytes = (int) (WorkbookLimits.DEFAULT.bytes() >> 20);

  /** The run for a folder. */
  public OntoRun run(Path folder, Path onto, RunOptions how) {
    Asked asked = new Asked(windows, labelled);
    FolderSource flats =
        new FolderSource(folder, onto, worksheet, asked, how.allowSoft(), how.reading());
    return new OntoRun(flats, onto, tolerance, limits(), how);
  }

  /**
   * The run for a description that has a workbook.
   *
   * @param onto another workbook; null for the description's
   * @throws Refusal with every slip of the description
   */
  public OntoRun run(Described described, @Nullable Path onto, RunOptions how) throws Refusal {
    if (!worksheet.isEmpty() || !windows.isEmpty() || !labelled.isEmpty()) {
      throw Refusal.input(
          Fault.of(Fault.Kind.SETTING, described.file(), "names worksheets and ranges itself")
              .remedy("leave out --worksheet, --window and --labelled"));
    }
    DescribedWorkbook said =
        DescribedWorkbook.of(described, DensityTargets.DEFAULT, how.allowSoft(), how.reading());
    Path workbook = onto == null ? said.file() : onto;
    DescribedSource flats = new DescribedSource(said, workbook);
    return new OntoRun(flats, workbook, tolerance, limits(), how);
  }

  /** Reads ranges of workbooks that a description names. */
  public WorkbookRanges ranges() {
    return new WorkbookRanges(limits());
  }

  private WorkbookLimits limits() {
    return WorkbookLimits.DEFAULT.with(mostWorksheets, mostCells, mostMebibytes);
  }
}
