package dev.placket.demo.workbook;

import dev.placket.demo.result.Telling;
import dev.placket.demo.workbook.parts.WorkbookLimits;
import dev.placket.demo.workbook.place.Asked;
import dev.placket.layout.image.Typefaces;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;

/** The options of {@code placket fit} that only matter with {@code --onto}. */
public final class OntoOptions {
  @Option(
      names = "--worksheet",
      paramLabel = "NAME",
      description = "With --onto: the worksheet for the flats; else the first with room.")
  private String worksheet = "";

  @Option(
      names = "--window",
      paramLabel = "RANGE",
      description =
          "With --onto: a range or defined name that pictures may use; else all that is blank.")
  private List<String> windows = List.of();

  @Option(
      names = "--labelled",
      paramLabel = "RANGE",
      description = "With --onto: a range or defined name that stays uncovered whatever it holds.")
  private List<String> labelled = List.of();

  @Option(
      names = "--leeway",
      paramLabel = "PIXELS",
      description = "With --onto: by how much readers may differ on a column or row; else 1.")
  private int leeway = 1;

  @Option(
      names = "--most-worksheets",
      paramLabel = "N",
      description = "With --onto: refuses a workbook of more; else 200.")
  private int mostWorksheets = WorkbookLimits.DEFAULT.worksheets();

  @Option(
      names = "--most-cells",
      paramLabel = "N",
      description = "With --onto: refuses worksheets that hold more; else 100000.")
  private int mostCells = WorkbookLimits.DEFAULT.cells();

  @Option(
      names = "--most-mebibytes",
      paramLabel = "N",
      description = "With --onto: refuses a workbook that unpacks to more; else 512.")
  private int mostMebibytes = (int) (WorkbookLimits.DEFAULT.bytes() >> 20);

  /** The run that was asked for. */
  public OntoRun run(
      Path folder,
      Path onto,
      Path out,
      boolean replace,
      boolean allowSoft,
      Typefaces typefaces,
      Telling telling) {
    WorkbookLimits limits = WorkbookLimits.DEFAULT.with(mostWorksheets, mostCells, mostMebibytes);
    Asked asked = new Asked(windows, labelled);
    return new OntoRun(
        folder, onto, out, replace, allowSoft, worksheet, asked, leeway, limits, typefaces,
        telling);
  }
}
