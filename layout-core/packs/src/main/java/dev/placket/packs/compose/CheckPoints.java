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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The table of a sample's points in the order of the list, out of tolerance in reverse. Several
 * sizes stand beside one another or, where they have no room so, in rows under each point.
 */
final class CheckPoints {
  /** The width of a column to write a value in, and where there is little room. */
  private static final double TO_WRITE = 20;

  private static final double LEAST_TO_WRITE = 14;

  /** A decision takes as much more. */
  private static final double DECISION = 6;

  private static final GridTrack SHARE = new GridTrack.Share(1);

  private final MeasuredList list;
  private final Rounding rounding;
  private final List<Round> earlier;
  private final SampleCheck check;
  private final List<JudgedSample> sizes;
  private final boolean form;
  private final boolean beside;
  private final double toWrite;
  private final List<Column> columns = new ArrayList<>();

  /**
   * A round.
   *
   * @param name what the sheet calls it
   * @param check what was found in it
   */
  record Round(Words name, SampleCheck check) {}

  /** A row: a point, in one size or in all of them. */
  private record Line(int point, List<JudgedSample> sizes) {}

  /** A column, with what it has in each row, and whether that is out of tolerance. */
  private record Column(PackColumn column, Function<Line, Words> value, Predicate<Line> out) {}

  /**
   * The table of a check.
   *
   * @param rounds those before it and its own, which is the last
   * @param wide whether several sizes stand beside one another, and columns to write in are wide
   */
  CheckPoints(MeasuredList list, List<Round> rounds, SampleCheck check, boolean wide) {
    this.list = list;
    this.rounding = list.shown().get(0);
    this.earlier = rounds.subList(0, rounds.size() - 1);
    this.check = check;
    this.sizes = check.sizes();
    this.form = check.isForm();
    this.beside = wide && !form || sizes.size() == 1;
    this.toWrite = wide ? TO_WRITE : LEAST_TO_WRITE;
  }

  FilledTable filled(PackTable said) {
    columns();
    List<List<Words>> rows = new ArrayList<>();
    Set<TableText.At> reversed = new HashSet<>();
    for (Line line : lines()) {
      List<Words> row = new ArrayList<>();
      for (Column column : columns) {
        if (column.out.test(line)) {
          reversed.add(new TableText.At(rows.size(), row.size()));
        }
        row.add(column.value.apply(line));
      }
      rows.add(row);
    }
    return new FilledTable(
        said.with(columns.stream().map(Column::column).toList(), rows), reversed);
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (int p = 0; p < list.table().points().size(); p++) {
      if (beside) {
        lines.add(new Line(p, sizes));
      } else {
        for (JudgedSample size : sizes) {
          lines.add(new Line(p, List.of(size)));
        }
      }
    }
    return lines;
  }

  private void columns() {
    String unit = " (" + rounding.unit().sign() + ")";
    GridTrack names = new GridTrack.Share(beside && sizes.size() > 1 ? 2 : 1);
    add(StockPhrase.POINT, "", new GridTrack.Fixed(MeasuredList.CODE), null, this::code);
    add(StockPhrase.MEASURED, unit, names, Align.LEFT, this::name);
    if (!beside) {
      add(StockPhrase.SIZE, "", null, Align.LEFT, l -> Words.of(l.sizes.get(0).size()));
      sized(sizes, l -> l.sizes.get(0), "", true);
    } else if (sizes.size() == 1) {
      sized(sizes, l -> sizes.get(0), "", true);
    } else {
      boolean shared = sizes.stream().allMatch(s -> hasTolerancesOf(s, sizes.get(0)));
      if (shared) {
        tolerance(sizes.subList(0, 1), l -> sizes.get(0), "");
      }
      for (JudgedSample size : sizes) {
        sized(List.of(size), l -> size, "\n" + size.size(), !shared);
      }
    }
    remarks();
  }

  private void add(
      StockPhrase heading,
      String more,
      @Nullable GridTrack width,
      @Nullable Align align,
      Function<Line, Words> value) {
    PackColumn column = MeasuredList.column(list.heading(heading, more), width, align);
    columns.add(new Column(column, value, line -> false));
  }

  private Align align() {
    return MeasuredList.align(rounding);
  }

  private static boolean hasTolerancesOf(JudgedSample size, JudgedSample other) {
    for (int p = 0; p < size.points().size(); p++) {
      AskedValue its = size.points().get(p).asked();
      AskedValue others = other.points().get(p).asked();
      if (!isSame(its.plus(), others.plus()) || !isSame(its.minus(), others.minus())) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(@Nullable BigDecimal a, @Nullable BigDecimal b) {
    return a == null || b == null ? a == b : a.compareTo(b) == 0;
  }

  /**
   * What is said of one size: asked, measured, difference, trend.
   *
   * @param covered the sizes that the columns are for
   * @param size that of a row
   */
  private void sized(
      List<JudgedSample> covered,
      Function<Line, JudgedSample> size,
      String more,
      boolean withTolerance) {
    Function<Line, JudgedPoint> point = l -> size.apply(l).points().get(l.point);
    add(StockPhrase.ASKED, more, null, align(), l -> length(point.apply(l).asked().value()));
    if (withTolerance) {
      tolerance(covered, size, more);
    }
    boolean factory = any(covered, p -> p.value().factory() != null);
    boolean ours = any(covered, p -> p.value().ours() != null);
    if (form || factory) {
      values(StockPhrase.FACTORY, more, point, SampleValue::factory);
    }
    if (form || ours || !factory) {
      values(StockPhrase.OURS, more, point, SampleValue::ours);
    }
    if (!form || toWrite == TO_WRITE) {
      // A narrow form leaves out what is computed when it comes back.
      difference(list.heading(StockPhrase.DIFFERENCE, more), point);
    }
    earlier(covered, size, more);
    if (any(covered, p -> word(p.trend()) != null)) {
      add(StockPhrase.TREND, more, null, Align.LEFT, l -> trend(point.apply(l)));
    }
    if (form || any(covered, p -> p.value().revised() != null)) {
      values(StockPhrase.REVISED, more, point, SampleValue::revised);
    }
  }

  private static boolean any(List<JudgedSample> covered, Predicate<JudgedPoint> is) {
    return covered.stream().anyMatch(s -> s.points().stream().anyMatch(is));
  }

  /** The differences of the rounds before, where they measured one of the sizes. */
  private void earlier(List<JudgedSample> covered, Function<Line, JudgedSample> size, String more) {
    for (Round round : earlier) {
      List<JudgedSample> its =
          covered.stream().flatMap(s -> before(round, s.size()).stream()).toList();
      if (any(its, p -> p.value().measured() != null)) {
        PackColumn column = MeasuredList.column(with(round.name, more), null, align());
        Function<Line, Optional<JudgedPoint>> then =
            l -> before(round, size.apply(l).size()).map(s -> s.points().get(l.point));
        columns.add(
            new Column(
                column,
                l -> then.apply(l).map(this::difference).orElse(Words.NONE),
                l -> then.apply(l).filter(p -> p.verdict().isOut()).isPresent()));
      }
    }
  }

  private static Optional<JudgedSample> before(Round round, String size) {
    return round.check.sizes().stream().filter(s -> s.size().equals(size)).findFirst();
  }

  private static Words with(Words words, String more) {
    Map<String, String> texts = new LinkedHashMap<>();
    words.byLanguage().forEach((language, text) -> texts.put(language, text + more));
    return new Words(texts);
  }

  private void values(
      StockPhrase heading,
      String more,
      Function<Line, JudgedPoint> point,
      Function<SampleValue, @Nullable BigDecimal> value) {
    add(heading, more, written(0), align(), l -> length(value.apply(point.apply(l).value())));
  }

  /** The width of a column that is written in by hand in a form; null in others. */
  private @Nullable GridTrack written(double more) {
    return form ? new GridTrack.Fixed(Length.mm(toWrite + more)) : null;
  }

  private void difference(Words heading, Function<Line, JudgedPoint> point) {
    columns.add(
        new Column(
            MeasuredList.column(heading, written(0), align()),
            l -> difference(point.apply(l)),
            l -> point.apply(l).verdict().isOut()));
  }

  private Words difference(JudgedPoint point) {
    return Words.of(point.differenceText(rounding));
  }

  private void tolerance(
      List<JudgedSample> covered, Function<Line, JudgedSample> size, String more) {
    boolean even = !any(covered, p -> !isSame(p.asked().plus(), p.asked().minus()));
    PackColumn column =
        even
            ? MeasuredList.column(Words.of("\u00b1" + more), null, align())
            : MeasuredList.column(list.heading(StockPhrase.TOLERANCE, more), null, Align.LEFT);
    columns.add(
        new Column(
            column,
            l -> tolerance(size.apply(l).points().get(l.point).asked(), even),
            line -> false));
  }

  private Words tolerance(AskedValue asked, boolean even) {
    return Words.of(MeasuredList.tolerance(asked.plus(), asked.minus(), rounding, even));
  }

  /** Decisions, comments and the numbers of comments. */
  private void remarks() {
    Function<Line, Words> decision = l -> said(l, SampleValue::decision);
    Function<Line, Words> comment = l -> said(l, SampleValue::comment);
    if (form || has(decision)) {
      add(StockPhrase.DECISION, "", written(DECISION), Align.LEFT, decision);
    }
    if (form || has(comment)) {
      add(StockPhrase.COMMENT, "", SHARE, Align.LEFT, comment);
    }
    if (has(this::numbers)) {
      add(StockPhrase.NUMBER, "", null, Align.RIGHT, this::numbers);
    }
  }

  private boolean has(Function<Line, Words> value) {
    return lines().stream().anyMatch(l -> !value.apply(l).blank());
  }

  private Words code(Line line) {
    return Words.of(codeOf(line));
  }

  private String codeOf(Line line) {
    return list.table().points().get(line.point).point().code();
  }

  private Words name(Line line) {
    return list.measured(Objects.requireNonNull(list.lines().get(codeOf(line))).said());
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

  /** Those of numbered comments on the point, by which they are found in their table. */
  private Words numbers(Line line) {
    boolean one = line.sizes.size() < sizes.size();
    return Words.of(
        check.comments().stream()
            .filter(c -> c.point().equals(codeOf(line)))
            .filter(c -> !one || c.size().isEmpty() || c.size().equals(line.sizes.get(0).size()))
            .map(SampleComment::number)
            .map(String::valueOf)
            .collect(Collectors.joining(", ")));
  }

  /** What is said of a point in each size, the size before it where there are several. */
  private Words said(Line line, Function<SampleValue, String> what) {
    List<String> all = new ArrayList<>();
    for (JudgedSample size : line.sizes) {
      String its = what.apply(size.points().get(line.point).value());
      if (!its.isEmpty()) {
        all.add(line.sizes.size() == 1 ? its : size.size() + ": " + its);
      }
    }
    return Words.of(CheckTables.asWritten(String.join("; ", all)));
  }
}
