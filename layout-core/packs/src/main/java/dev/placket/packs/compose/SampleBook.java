package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackSamples;
import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.MeasureText;
import dev.placket.packs.sample.AskedValue;
import dev.placket.packs.sample.CheckFacts;
import dev.placket.packs.sample.JudgedSample;
import dev.placket.packs.sample.SampleCheck;
import dev.placket.packs.sample.SampleValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Judges the samples of a pack, one after the other; slips in their files are noted. */
final class SampleBook {
  private static final List<String> VALUES =
      List.of("factory", "ours", "revised", "asked", "tolerance", "decision");

  private final Described described;
  private final PackSamples samples;
  private final MeasuredList list;
  private final PackText text;
  private final List<SampleRow> rows;
  private final Map<String, SampleCheck> checks = new LinkedHashMap<>();
  private final CommentBook comments;

  /**
   * All samples, judged.
   *
   * @param checks by their names, in the order of their rounds
   * @param notes what is likely a slip
   */
  record Judged(Map<String, SampleCheck> checks, List<String> notes) {
    /** No sample. */
    static final Judged NONE = new Judged(Map.of(), List.of());
  }

  private SampleBook(
      Described described,
      PackSamples samples,
      MeasuredList list,
      PackText text,
      List<SampleRow> rows) {
    this.described = described;
    this.samples = samples;
    this.list = list;
    this.text = text;
    this.rows = rows;
    this.comments = new CommentBook(described, rows);
  }

  /**
   * The checks by their names, in their order; none where there are no samples, or no list.
   *
   * @param rows of the files
   */
  static Judged of(
      Described described, @Nullable MeasuredList list, PackText text, List<SampleRow> rows) {
    PackSamples samples = described.pack().samples();
    if (samples == null) {
      return Judged.NONE;
    }
    if (described.pack().measurements() == null) {
      described
          .faults()
          .add(
              described.places().of("samples"),
              "samples in a pack without measurements",
              "the key measurements, whose values they are judged by");
    }
    if (list == null) {
      return Judged.NONE;
    }
    SampleBook book = new SampleBook(described, samples, list, text, rows);
    book.checkRows();
    samples.checks().forEach((name, said) -> book.checks.put(name, book.check(name, said)));
    new StaleValues(described, list, List.copyOf(samples.checks().keySet()), rows).check();
    return new Judged(book.checks, book.comments.reworded());
  }

  private void checkRows() {
    for (SampleRow row : rows) {
      if (!samples.checks().containsKey(row.of("sample"))) {
        row.unknown(described, "sample", "no sample under checks named", samples.checks().keySet());
      }
      String unit = row.of("unit");
      if (!unit.isEmpty() && !unit.equals(list.unit().sign())) {
        row.fault(described, "unit", "'" + unit + "'", list.unit().sign() + ", that of the list");
      }
      if (!row.of("point").isEmpty() && !list.lines().containsKey(row.of("point"))) {
        row.unknown(described, "point", "no point of measure", list.lines().keySet());
      } else {
        SentCheck.check(described, list, row);
      }
    }
  }

  private SampleCheck check(String name, PackSamples.Check said) {
    List<SampleRow> its = rows.stream().filter(r -> r.of("sample").equals(name)).toList();
    List<String> sizes = sizes(name, said, its);
    List<JudgedSample> judged = new ArrayList<>();
    for (String size : sizes) {
      judged.add(judge(name, size, sizes, its));
    }
    return new SampleCheck(name, facts(name, said), judged, comments.next(name, its));
  }

  private CheckFacts facts(String name, PackSamples.Check said) {
    String path = "samples/checks/" + name;
    String lead = text.phrases().languages().get(0);
    return new CheckFacts(
        text.in(said.stage(), lead, path + "/stage"),
        said.round(),
        text.in(said.colour(), lead, path + "/colour"),
        said.received(),
        said.measured(),
        said.wash(),
        text.in(said.substitutions(), lead, path + "/substitutions"),
        said.verdict(),
        said.by());
  }

  /** Those stated and those of the rows, in the order of the list. */
  private List<String> sizes(String name, PackSamples.Check said, List<SampleRow> its) {
    Set<String> all = new LinkedHashSet<>();
    List<String> known = list.table().sizes();
    for (String size : said.sizes()) {
      if (!known.contains(size)) {
        String path = "samples/checks/" + name + "/sizes";
        described.faults().unknown(described.places().of(path), "the size", size, known);
      }
      all.add(size);
    }
    for (SampleRow row : its) {
      if (!row.of("size").isEmpty() && !known.contains(row.of("size"))) {
        row.unknown(described, "size", "no size of the list", known);
      } else if (!row.of("size").isEmpty()) {
        all.add(row.of("size"));
      }
    }
    String usual = list.table().sample();
    if (all.isEmpty() && usual.isEmpty()) {
      String path = "samples/checks/" + name;
      described.faults().add(described.places().of(path), "a sample without size", "sizes");
    } else if (all.isEmpty()) {
      all.add(usual);
    }
    return known.stream().filter(all::contains).toList();
  }

  private JudgedSample judge(String name, String size, List<String> sizes, List<SampleRow> its) {
    Map<String, SampleRow> byCode = new LinkedHashMap<>();
    for (SampleRow row : its) {
      String code = row.of("point");
      boolean here = row.of("size").equals(size) || row.of("size").isEmpty();
      if (code.isEmpty() || !list.lines().containsKey(code) || !here || !isValued(row)) {
        continue;
      }
      if (row.of("size").isEmpty() && sizes.size() > 1) {
        row.fault(described, "size", "no size", "one of " + String.join(", ", sizes));
      }
      SampleRow before = byCode.putIfAbsent(code, row);
      if (before != null) {
        row.fault(
            described,
            "point",
            "values of " + code + " again",
            "one row (see " + before.where() + ")");
      }
    }
    List<SampleValue> values = new ArrayList<>();
    Map<String, AskedValue> stood = new LinkedHashMap<>();
    for (GradedPoint point : list.table().points()) {
      String code = point.point().code();
      SampleRow row = byCode.get(code);
      if (row != null) {
        values.add(value(code, row));
        stood.put(code, asked(AskedValue.of(point, size), row));
      }
    }
    List<JudgedSample> before = checks.values().stream().flatMap(c -> c.sizes().stream()).toList();
    return JudgedSample.of(list.table(), name, size, values, stood, before);
  }

  /** Whether a row says something of a point itself, not in a numbered comment alone. */
  private static boolean isValued(SampleRow row) {
    return row.hasAny(VALUES) || row.of("number").isEmpty() && !row.of("comment").isEmpty();
  }

  private SampleValue value(String code, SampleRow row) {
    boolean numbered = !row.of("number").isEmpty();
    return new SampleValue(
        code,
        length(row, "factory"),
        length(row, "ours"),
        length(row, "revised"),
        row.of("decision"),
        numbered ? "" : row.of("comment"));
  }

  private AskedValue asked(AskedValue now, SampleRow row) {
    BigDecimal value = Objects.requireNonNullElse(length(row, "asked"), now.value());
    if (row.of("tolerance").isEmpty()) {
      return new AskedValue(value, now.plus(), now.minus());
    }
    try {
      ToleranceText tolerance = ToleranceText.parse(row.of("tolerance"), list.unit());
      return new AskedValue(value, tolerance.plus(), tolerance.minus());
    } catch (IllegalArgumentException e) {
      row.fault(described, "tolerance", String.valueOf(e.getMessage()), "one as in 0.5 or +1 -0.5");
      return new AskedValue(value, null, null);
    }
  }

  private @Nullable BigDecimal length(SampleRow row, String column) {
    if (row.of(column).isEmpty()) {
      return null;
    }
    try {
      BigDecimal mm = MeasureText.parse(row.of(column), list.unit());
      if (mm.signum() >= 0) {
        return mm;
      }
      row.fault(described, column, "'" + row.of(column) + "'", "a length, not below zero");
    } catch (IllegalArgumentException e) {
      row.fault(
          described, column, String.valueOf(e.getMessage()), MeasuredList.lengthForm(list.unit()));
    }
    return null;
  }
}
