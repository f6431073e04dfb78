package dev.placket.packs.report;

import dev.placket.layout.density.PrintState;
import dev.placket.packs.placed.PackWeight;
import java.util.ArrayList;
import java.util.List;

/**
 * What a run reports: the findings in words and units.
 *
 * @param findings the findings of the run
 * @param units the unit of lengths
 * @param sheets the sheets in order
 * @param made the files
 * @param next what to do next, in order; never empty
 */
public record ReportContent(
    Findings findings, Units units, List<OfSheet> sheets, WrittenFiles made, List<String> next) {
  /** Copies the lists. */
  public ReportContent {
    sheets = List.copyOf(sheets);
    next = List.copyOf(next);
  }

  /**
   * What is reported about a sheet.
   *
   * @param heading its number, name and paper
   * @param result what came of it
   * @param rows one for each flat
   * @param quality whether the scale is the largest, and what order cost
   */
  public record OfSheet(
      String heading, SheetResult result, List<FlatRow> rows, List<String> quality) {
    /** Copies the lists. */
    public OfSheet {
      rows = List.copyOf(rows);
      quality = List.copyOf(quality);
    }
  }

  /** Puts findings into words. */
  public static ReportContent of(Findings findings, ReportOptions reporting, WrittenFiles made) {
    Units units = reporting.units();
    List<OfSheet> sheets = new ArrayList<>();
    for (SheetResult result : findings.sheets()) {
      List<FlatRow> rows = new ArrayList<>();
      result.flats().forEach(f -> rows.add(FlatRow.of(f, reporting)));
      String heading =
          SheetWords.heading(result, sheets.size() + 1, findings.sheets().size(), units);
      sheets.add(new OfSheet(heading, result, rows, SheetWords.quality(result)));
    }
    return new ReportContent(
        findings, units, sheets, made, NextSteps.of(findings, sheets, reporting, made));
  }

  /** Whether a picture is soft or the file is over the size limit. */
  public boolean falls() {
    PackWeight weight = findings.weight();
    return count(PrintState.SOFT) > 0 || (weight != null && weight.isOver());
  }

  /** How many flats are in this state. */
  public long count(PrintState state) {
    return sheets.stream().flatMap(s -> s.rows().stream()).filter(r -> r.state() == state).count();
  }
}
