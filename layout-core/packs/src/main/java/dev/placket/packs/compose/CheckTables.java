package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.packs.description.CheckPart;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.Words;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.sample.JudgedSample;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.sample.SampleComment;
import dev.placket.packs.sample.SampleVerdict;
import dev.placket.packs.sample.Verdict;
import dev.placket.packs.sample.Wash;
import dev.placket.packs.table.TableText;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The tables of the check of a sample. In a form, columns are empty and wide enough to write in.
 *
 * @param list the points of measure
 * @param samples what the description states of the samples
 * @param checks the checks by the names of their samples, in order
 */
record CheckTables(MeasuredList list, PackSamples samples, Map<String, SampleCheck> checks) {
  /** Empty rows under the comments of a form. */
  private static final int ROWS_TO_WRITE = 4;

  private static final GridTrack SHARE = new GridTrack.Share(1);

  /**
   * A table of the check of a sample.
   *
   * @param wide whether there is room for several sizes of a point beside one another, and for all
   *     that is stated of a sample
   */
  FilledTable filled(PackTable said, CheckPart part, String sample, boolean wide) {
    SampleCheck check = Objects.requireNonNull(checks.get(sample));
    return switch (part) {
      case HEADER -> FilledTable.of(header(said, check, wide));
      case TOTALS -> totals(said, check);
      case POINTS -> new CheckPoints(list, rounds(check), check, wide).filled(said);
      case COMMENTS -> FilledTable.of(comments(said, check));
    };
  }

  /** The checks before one, by how their rounds are called, and the check itself last. */
  private List<CheckPoints.Round> rounds(SampleCheck check) {
    List<CheckPoints.Round> rounds = new ArrayList<>();
    for (SampleCheck each : checks.values()) {
      rounds.add(new CheckPoints.Round(round(each), each));
      if (each == check) {
        break;
      }
    }
    return rounds;
  }

  private Words round(SampleCheck check) {
    String number = check.facts().round();
    return number.isEmpty()
        ? Words.of(check.name())
        : list.heading(StockPhrase.ROUND, " " + number);
  }

  private PackTable header(PackTable said, SampleCheck check, boolean wide) {
    PackSamples.Check its = Objects.requireNonNull(samples.checks().get(check.name()));
    List<PackColumn> columns = new ArrayList<>();
    List<Words> row = new ArrayList<>();
    String sizes = check.sizes().stream().map(JudgedSample::size).collect(Collectors.joining(", "));
    add(columns, row, StockPhrase.STAGE, its.stage(), 31);
    add(columns, row, StockPhrase.ROUND, Words.of(its.round()), 14);
    add(columns, row, StockPhrase.SIZE, Words.of(sizes), Math.max(18, 4 + 2.5 * sizes.length()));
    add(columns, row, StockPhrase.COLOUR, its.colour(), 24);
    add(columns, row, StockPhrase.RECEIVED, Words.of(its.received()), 23);
    add(columns, row, StockPhrase.MEASURED_ON, Words.of(its.measured()), 23);
    add(columns, row, StockPhrase.WASH, wash(its.wash()), 24);
    add(columns, row, StockPhrase.SUBSTITUTIONS, its.substitutions(), 50);
    add(columns, row, StockPhrase.VERDICT, verdict(its.verdict()), 44);
    add(columns, row, StockPhrase.CHECKED_BY, Words.of(its.by()), 26);
    return wide ? said.with(columns, List.of(row)) : upright(said, columns, row);
  }

  /** The headings in one column, their values in another. */
  private static PackTable upright(PackTable said, List<PackColumn> columns, List<Words> row) {
    List<List<Words>> rows = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      rows.add(List.of(columns.get(i).heading(), row.get(i)));
    }
    PackColumn names =
        MeasuredList.column(Words.NONE, new GridTrack.Fixed(Length.mm(40)), PackColumn.Align.LEFT);
    PackColumn values = MeasuredList.column(Words.NONE, SHARE, PackColumn.Align.LEFT);
    return said.with(List.of(names, values), rows);
  }

  /** A column with one value; about as wide in millimetres on A4 landscape. */
  private void add(
      List<PackColumn> columns, List<Words> row, StockPhrase heading, Words value, double width) {
    GridTrack track = new GridTrack.Share(width);
    columns.add(MeasuredList.column(list.heading(heading, ""), track, PackColumn.Align.LEFT));
    row.add(value);
  }

  private Words wash(@Nullable Wash wash) {
    return wash == null
        ? Words.NONE
        : list.heading(wash == Wash.BEFORE ? StockPhrase.BEFORE_WASH : StockPhrase.AFTER_WASH, "");
  }

  private Words verdict(@Nullable SampleVerdict verdict) {
    return verdict == null
        ? Words.NONE
        : list.heading(
            switch (verdict) {
              case APPROVED -> StockPhrase.APPROVED;
              case APPROVED_WITH_COMMENTS -> StockPhrase.APPROVED_WITH_COMMENTS;
              case RESUBMIT -> StockPhrase.RESUBMIT;
            },
            "");
  }

  private FilledTable totals(PackTable said, SampleCheck check) {
    List<PackColumn> columns =
        List.of(
            column(StockPhrase.SIZE, PackColumn.Align.LEFT),
            column(StockPhrase.POINTS_MEASURED, PackColumn.Align.RIGHT),
            column(StockPhrase.WITHIN_TOLERANCE, PackColumn.Align.RIGHT),
            column(StockPhrase.OUT_OF_TOLERANCE, PackColumn.Align.RIGHT),
            column(StockPhrase.NO_TOLERANCE, PackColumn.Align.RIGHT),
            column(StockPhrase.NOT_MEASURED, PackColumn.Align.RIGHT));
    boolean form = check.isForm();
    List<List<Words>> rows = new ArrayList<>();
    Set<TableText.At> reversed = new HashSet<>();
    for (JudgedSample size : check.sizes()) {
      if (size.out() > 0) {
        reversed.add(new TableText.At(rows.size(), 3));
      }
      long not = size.count(Verdict.NOT_MEASURED);
      rows.add(
          List.of(
              Words.of(size.size()),
              number(form, size.points().size() - not),
              number(form, size.count(Verdict.WITHIN)),
              number(form, size.out()),
              number(form, size.count(Verdict.NO_TOLERANCE)),
              number(form, not)));
    }
    return new FilledTable(said.with(columns, rows), reversed);
  }

  private static Words number(boolean form, long number) {
    return form ? Words.NONE : Words.of("" + number);
  }

  private PackColumn column(StockPhrase phrase, PackColumn.@Nullable Align align) {
    return MeasuredList.column(list.heading(phrase, ""), null, align);
  }

  private PackTable comments(PackTable said, SampleCheck check) {
    List<PackColumn> columns =
        List.of(
            column(StockPhrase.NUMBER, PackColumn.Align.RIGHT),
            column(StockPhrase.SINCE, PackColumn.Align.LEFT),
            column(StockPhrase.POINT, PackColumn.Align.LEFT),
            MeasuredList.column(
                list.heading(StockPhrase.COMMENT, ""), SHARE, PackColumn.Align.LEFT),
            column(StockPhrase.ACTION, PackColumn.Align.LEFT),
            column(StockPhrase.STATE, PackColumn.Align.LEFT));
    List<List<Words>> rows = new ArrayList<>();
    for (SampleComment comment : check.comments()) {
      rows.add(
          List.of(
              Words.of("" + comment.number()),
              Objects.requireNonNull(samples.checks().get(comment.since())).stage(),
              Words.of(point(comment, check)),
              Words.of(asWritten(comment.text())),
              Words.of(asWritten(comment.action())),
              list.heading(state(comment), "")));
    }
    for (int i = 0; check.isForm() && i < ROWS_TO_WRITE; i++) {
      rows.add(java.util.Collections.nCopies(columns.size(), Words.NONE));
    }
    return said.with(columns, rows);
  }

  private static StockPhrase state(SampleComment comment) {
    return !comment.open()
        ? StockPhrase.CLOSED
        : comment.carried() ? StockPhrase.STILL_OPEN : StockPhrase.OPEN;
  }

  /** A text of a file, whose braces are no fields. */
  static String asWritten(String text) {
    return text.replace("{", "{{").replace("}", "}}");
  }

  /** The code, with its size where the sample has several. */
  private static String point(SampleComment comment, SampleCheck check) {
    boolean several = check.sizes().size() > 1 && !comment.size().isEmpty();
    return several ? (comment.point() + " " + comment.size()).strip() : comment.point();
  }
}
