package dev.placket.packs.report;

import dev.placket.packs.placed.PackWeight;
import java.util.List;

/** Writes what a designer reads on a terminal after a run; colour carries no meaning. */
public final class Report {
  private static final int NAME = 20;
  private static final int ROLE = 7;
  private static final int SIZE = 14;
  private static final int SCALE = 12;
  private static final int DENSITY = 5;

  /** What a row of the table takes. */
  private static final int TABLE = 80;

  private static final String INDENT = "  ";
  private static final String UNDER = "    ";

  private final TextLines lines;
  private final ReportContent account;

  private Report(ReportContent account, TextLines lines) {
    this.account = account;
    this.lines = lines;
  }

  /**
   * The report.
   *
   * @param account the content
   * @param lines the lines to write to; narrow ones break rows
   */
  public static String of(ReportContent account, TextLines lines) {
    Report report = new Report(account, lines);
    report.write();
    return lines.toString();
  }

  private void write() {
    Findings findings = account.findings();
    lines.heading(findings.title());
    lines.wrapped("", "Read from " + findings.source());
    findings.read().forEach(r -> lines.wrapped(INDENT, r));
    for (ReportContent.OfSheet sheet : account.sheets()) {
      lines.line("");
      lines.heading(sheet.heading());
      if (!sheet.rows().isEmpty()) {
        rows(sheet.rows());
      }
      sheet.quality().forEach(q -> lines.wrapped("", q));
    }
    if (!findings.closing().isEmpty()) {
      lines.line("");
      findings.closing().forEach(c -> lines.wrapped("", c));
    }
    PackWeight weight = findings.weight();
    if (weight != null) {
      lines.line("");
      WeightWords.of(weight).forEach(w -> lines.wrapped("", w));
    }
    written();
    next();
  }

  private void rows(List<FlatRow> rows) {
    if (lines.width() >= TABLE) {
      String printed = "printed " + account.units().sign();
      table("Flat", "role", printed, "scale", "px/in", "state");
      rows.forEach(this::row);
    } else {
      rows.forEach(this::parted);
    }
  }

  private void row(FlatRow row) {
    String name = row.caption();
    if (TextWidth.of(name) > NAME) {
      lines.wrapped(INDENT, name);
      name = "";
    }
    table(name, row.role(), row.size(), row.scale(), row.density(), state(row));
    row.changes().forEach(c -> lines.wrapped(UNDER, FlatRow.CHANGED + c));
    row.remarks().forEach(r -> lines.wrapped(UNDER, r));
  }

  private void table(
      String name, String role, String size, String scale, String density, String state) {
    lines.line(
        INDENT
            + TextLines.padded(name, NAME)
            + "  "
            + TextLines.padded(role, ROLE)
            + "  "
            + TextLines.padded(size, SIZE)
            + "  "
            + TextLines.padded(scale, SCALE)
            + " "
            + TextLines.flushRight(density, DENSITY)
            + "  "
            + state);
  }

  /** The same where a row has no room. */
  private void parted(FlatRow row) {
    lines.wrapped(INDENT, row.caption() + ", " + row.role());
    String density = row.density().equals("-") ? "" : ", " + row.density() + " px/in";
    String size = row.size() + " " + account.units().sign();
    lines.wrapped(UNDER, size + ", " + row.scale() + density + ", " + state(row));
    row.changes().forEach(c -> lines.wrapped(UNDER, FlatRow.CHANGED + c));
    row.remarks().forEach(r -> lines.wrapped(UNDER, r));
  }

  private static String state(FlatRow row) {
    return StateMark.initial(row.state()) + " " + StateMark.word(row.state());
  }

  private void written() {
    lines.line("");
    String written =
        account.made().written() ? "Written to " : "Checked only, nothing written. Files for ";
    lines.wrapped("", written + account.made().folder() + ":");
    account.made().names().forEach(n -> lines.wrapped(INDENT, n));
    if (!account.made().removed().isEmpty()) {
      String removed = String.join(", ", account.made().removed());
      lines.wrapped("", "Removed, since this run has no such sheet: " + removed + ".");
    }
  }

  private void next() {
    lines.line("");
    lines.heading("What to do next");
    int number = 0;
    for (String step : account.next()) {
      String counted = INDENT + ++number + ". ";
      lines.wrapped(counted, " ".repeat(counted.length()), step);
    }
  }
}
