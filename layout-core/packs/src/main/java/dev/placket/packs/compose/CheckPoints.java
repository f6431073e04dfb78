package dev.placket.packs.compose;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import dev.placket.packs.description.PackColumn;
import dev.placket.packs.description.PackColumn.Align;
import dev.placket.packs.description.PackTable;
import dev.placket.packs.description.Words;
import dev.placket.packs.language.StockPhrase;
import dev.placket.packs.measure.Rounding;
import dev.placket.packs.sample.AskedValue;
import dev.placket.packs.sample.JudgedPoint;
import dev.placket.packs.sample.JudgedSample;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.sample.SampleComment;
import dev.placket.packs.sample.SampleValue;
import dev.placket.packs.sample.Trend;
import dev.placket.packs.table.TableText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The table of a sample's points: a row for each of the list, out of tolerance in reverse. */
final class CheckPoints {
  /** A column to write a value in. */
  private static final GridTrack TO_WRITE = new GridTrack.Fixed(Length.mm(15));

  private static final GridTrack SHARE = new GridTrack.Share(1);

  private final MeasuredList list;
  private final Rounding rounding;
  private final List<Round> earlier;
  private final SampleCheck check;
  private final boolean form;
  private final List<Column> columns = new ArrayList<>();

  /**
   * A round.
   *
   * @param name what the sheet calls it
   * @param check what was found in it
   */
  record Round(Words name, SampleCheck check) {}

  /** A column, with what it has of each point; {@code outs} are the points that it reverses. */
  private record Column(
      PackColumn column, Function<Integer, Words> value, Function<Integer, Boolean> outs) {}

  CheckPoints(MeasuredList list, List<Round> rounds, SampleCheck check) {
    this.list = list;
    this.rounding = list.shown().get(0);
    this.earlier = rounds.subList(0, rounds.size() - 1);
    this.check = check;
    this.form = check.isForm();
  }

  FilledTable filled(PackTable said) {
    List<JudgedSample> sizes = check.sizes();
    String unit = " (" + rounding.unit().sign() + ")";
    add(StockPhrase.POINT, "", new GridTrack.Fixed(MeasuredList.CODE), null, this::code);
    GridTrack names = new GridTrack.Share(sizes.size() == 1 ? 1 : 2);
    add(StockPhrase.MEASURED, unit, names, Align.LEFT, this::name);
    boolean shared = sizes.stream().allMatch(s -> hasTolerancesOf(s, sizes.get(0)));
    if (shared && sizes.size() > 1) {
      tolerance(sizes.get(0), "");
    }
    for (JudgedSample size : sizes) {
      String more = sizes.size() == 1 ? "" : "\n" + size.size();
      add(StockPhrase.ASKED, more, null, align(), p -> length(asked(size, p).value()));
      if (!shared || sizes.size() == 1) {
        tolerance(size, more);
      }
      size(size, more);
    }
    remarks();
    List<List<Words>> rows = new ArrayList<>();
    Set<TableText.At> reversed = new HashSet<>();
    for (int p = 0; p < list.table().points().size(); p++) {
      List<Words> row = new ArrayList<>();
      for (Column column : columns) {
        if (column.outs.apply(p)) {
          reversed.add(new TableText.At(p, row.size()));
        }
        row.add(column.value.apply(p));
      }
      rows.add(row);
    }
    return new FilledTable(
        said.with(columns.stream().map(Column::column).toList(), rows), reversed);
  }

  private void add(
      StockPhrase heading,
      String more,
      @Nullable GridTrack width,
      @Nullable Align align,
      Function<Integer, Words> value) {
    PackColumn column = MeasuredList.column(list.heading(heading, more), width, align);
    columns.add(new Column(column, value, p -> false));
  }

  private Align align() {
    return MeasuredList.align(rounding);
  }

  private static boolean hasTolerancesOf(JudgedSample size, JudgedSample other) {
    for (int p = 0; p < size.points().size(); p++) {
      AskedValue its = asked(size, p);
      if (!isSame(its.plus(), asked(other, p).plus())
          || !isSame(its.minus(), asked(other, p).minus())) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(@Nullable BigDecimal a, @Nullable BigDecimal b) {
    return a == null || b == null ? a == b : a.compareTo(b) == 0;
  }

  /** What one size has: measured, difference, trend. */
  private void size(JudgedSample size, String more) {
    boolean both =
        size.points().stream().anyMatch(p -> p.value().factory() != null)
            && size.points().stream().anyMatch(p -> p.value().ours() != null);
    if (both || form) {
      values(StockPhrase.FACTORY, more, size, SampleValue::factory);
      values(StockPhrase.OURS, more, size, SampleValue::ours);
    } else {
      boolean ours = size.points().stream().anyMatch(p -> p.value().ours() != null);
      values(ours ? StockPhrase.OURS : StockPhrase.FACTORY, more, size, SampleValue::measured);
    }
    difference(list.heading(StockPhrase.DIFFERENCE, more), size, form ? TO_WRITE : null);
    for (Round round : earlier) {
      before(round, size.size())
          .filter(s -> s.points().stream().anyMatch(p -> p.value().measured() != null))
          .ifPresent(s -> difference(with(round.name, more), s, null));
    }
    if (size.points().stream().anyMatch(p -> word(p.trend()) != null)) {
      add(StockPhrase.TREND, more, null, Align.LEFT, p -> trend(size.points().get(p)));
    }
    if (form || size.points().stream().anyMatch(p -> p.value().revised() != null)) {
      values(StockPhrase.REVISED, more, size, SampleValue::revised);
    }
  }

  private static Optional<JudgedSample> before(Round round, String size) {
    return round.check.sizes().stream().filter(s -> s.size().equals(size)).findFirst();
  }

  private static Words with(Words words, String more) {
    java.util.Map<String, String> texts = new java.util.LinkedHashMap<>();
    words.byLanguage().forEach((language, text) -> texts.put(language, text + more));
    return new Words(texts);
  }

  private void values(
      StockPhrase heading,
      String more,
      JudgedSample size,
      Function<SampleValue, @Nullable BigDecimal> value) {
    add(
        heading,
        more,
        form ? TO_WRITE : null,
        align(),
        p -> length(value.apply(size.points().get(p).value())));
  }

  private void difference(Words heading, JudgedSample size, @Nullable GridTrack width) {
    PackColumn column = MeasuredList.column(heading, width, align());
    columns.add(
        new Column(
            column,
            p -> Words.of(size.points().get(p).differenceText(rounding)),
            p -> size.points().get(p).verdict().isOut()));
  }

  private void tolerance(JudgedSample size, String more) {
    boolean even =
        size.points().stream().allMatch(p -> isSame(p.asked().plus(), p.asked().minus()));
    PackColumn column =
        even
            ? MeasuredList.column(Words.of("\u00b1" + more), null, align())
            : MeasuredList.column(list.heading(StockPhrase.TOLERANCE, more), null, Align.LEFT);
    columns.add(
        new Column(
            column,
            p ->
                Words.of(
                    MeasuredList.tolerance(
                        asked(size, p).plus(), asked(size, p).minus(), rounding, even)),
            p -> false));
  }

  private static AskedValue asked(JudgedSample size, int point) {
    return size.points().get(point).asked();
  }

  /** Decisions, comments and the numbers of comments. */
  private void remarks() {
    if (form || has(this::decision)) {
      add(
          StockPhrase.DECISION,
          "",
          form ? new GridTrack.Fixed(Length.mm(26)) : null,
          Align.LEFT,
          this::decision);
    }
    if (form || has(this::comment)) {
      add(StockPhrase.COMMENT, "", SHARE, Align.LEFT, this::comment);
    }
    if (has(this::numbers)) {
      add(StockPhrase.NUMBER, "", null, Align.RIGHT, this::numbers);
    }
  }

  private boolean has(Function<Integer, Words> value) {
    for (int p = 0; p < list.table().points().size(); p++) {
      if (!value.apply(p).blank()) {
        return true;
      }
    }
    return false;
  }

  private Words code(int point) {
    return Words.of(codeOf(point));
  }

  private String codeOf(int point) {
    return list.table().points().get(point).point().code();
  }

  private Words name(int point) {
    return list.measured(Objects.requireNonNull(list.lines().get(codeOf(point))).said());
  }

  private Words length(@Nullable BigDecimal mm) {
    return mm == null ? Words.NONE : Words.of(rounding.text(rounding.nearest(mm)));
  }

  private Words trend(JudgedPoint point) {
    StockPhrase word = word(point.trend());
    return word == null ? Words.NONE : list.heading(word, "");
  }

  private static @Nullable StockPhrase word(Trend trend) {
    return switch (trend) {
      case NONE, STILL_IN -> null;
      case IN_AGAIN -> StockPhrase.IN_AGAIN;
      case NOW_OUT -> StockPhrase.NOW_OUT;
      case STILL_OUT -> StockPhrase.STILL_OUT;
    };
  }

  private Words decision(int point) {
    return Words.of(said(point, SampleValue::decision));
  }

  private Words comment(int point) {
    return Words.of(said(point, SampleValue::comment));
  }

  /** Those of numbered comments, by which they are found in their table. */
  private Words numbers(int point) {
    return Words.of(
        check.comments().stream()
            .filter(c -> c.point().equals(codeOf(point)))
            .map(SampleComment::number)
            .map(String::valueOf)
            .collect(Collectors.joining(", ")));
  }

  /** What is said of a point in each size, the size before it where there are several. */
  private String said(int point, Function<SampleValue, String> what) {
    List<String> all = new ArrayList<>();
    for (JudgedSample size : check.sizes()) {
      String its = what.apply(size.points().get(point).value());
      if (!its.isEmpty()) {
        all.add(check.sizes().size() == 1 ? its : size.size() + ": " + its);
      }
    }
    return CheckTables.asWritten(String.join("; ", all));
  }
}
