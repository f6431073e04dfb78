package dev.placket.packs.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.packs.measure.GradedTable;
import dev.placket.packs.measure.MeasurePoint;
import dev.placket.packs.measure.MeasureText;
import dev.placket.packs.measure.MeasureUnit;
import dev.placket.packs.measure.Rounding;
import dev.placket.packs.measure.SizeGroup;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Verdicts on three sheets that were worked by hand; that centimetres and inches agree; and that no
 * printed difference contradicts its verdict. That a limit met exactly is within is common
 * practice.
 */
class JudgedSampleTest {
  private static final List<SizeGroup> SIZES =
      List.of(new SizeGroup("", List.of("S", "M", "L"), "M"));

  private static @Nullable BigDecimal length(String text, MeasureUnit unit) {
    return text.isEmpty() ? null : MeasureText.parse(text, unit);
  }

  /** Of lines of code, plus, minus, and values of S, M and L, with semicolons between. */
  private static GradedTable list(MeasureUnit unit, String... lines) {
    GradedTable table = GradedTable.of(SIZES);
    for (String line : lines) {
      String[] f = line.split(";", -1);
      Map<String, BigDecimal> values = new java.util.LinkedHashMap<>();
      for (int i = 0; i < 3; i++) {
        values.put(SIZES.get(0).sizes().get(i), MeasureText.parse(f[3 + i], unit));
      }
      table =
          table.with(
              new MeasurePoint(
                  f[0], length(f[1], unit), length(f[2], unit), null, Map.of(), values));
    }
    return table;
  }

  /** Of lines of code, the factory's value and ours. */
  private static List<SampleValue> values(MeasureUnit unit, String... lines) {
    List<SampleValue> values = new ArrayList<>();
    for (String line : lines) {
      String[] f = line.split(";", -1);
      values.add(SampleValue.of(f[0], length(f[1], unit), length(f[2], unit)));
    }
    return values;
  }

  private static List<String> said(JudgedSample sample, Rounding rounding) {
    return sample.points().stream()
        .map(
            p ->
                (p.value().code() + " " + p.differenceText(rounding)).strip()
                    + " "
                    + p.verdict()
                    + " "
                    + p.trend())
        .toList();
  }

  private static JudgedSample judge(
      GradedTable list, String size, List<SampleValue> values, JudgedSample... before) {
    return JudgedSample.of(list, "fit", size, values, Map.of(), List.of(before));
  }

  /**
   * By hand, in centimetres, size L: A 57 against 56, +1, the limit; B 55 against 56, −1, the
   * limit; C 56.1 against 55, +1.1 over 1; D 20.4 against 20, +0.4 within +0.5; E 19.7 against 20,
   * −0.3 under −0.2; the factory's 20 counts where ours is missing.
   */
  @Test
  void limitsMetExactlyAndTolerancesApart() {
    GradedTable list =
        list(
            MeasureUnit.CM,
            "A;1;1;52;54;56",
            "B;1;1;52;54;56",
            "C;1;1;51;53;55",
            "D;0.5;0.2;20;20;20",
            "E;0.5;0.2;20;20;20",
            "F;0.5;0.2;19;19.5;20");
    JudgedSample judged =
        judge(
            list,
            "L",
            values(
                MeasureUnit.CM,
                "E;20;19.7",
                "A;56;57",
                "B;;55",
                "C;55.2;56.1",
                "D;;20.4",
                "F;20;"));
    assertEquals(
        List.of(
            "A +1 WITHIN NONE",
            "B \u22121 WITHIN NONE",
            "C +1.1 OVER NONE",
            "D +0.4 WITHIN NONE",
            "E \u22120.3 UNDER NONE",
            "F 0 WITHIN NONE"),
        said(judged, Rounding.usual(MeasureUnit.CM)));
    assertEquals(2, judged.out());
    assertEquals(4, judged.count(Verdict.WITHIN));
  }

  /**
   * By hand, in inches, size S: A 20 3/8 against 20 1/4, +1/8, the limit; B 20 against 20 1/4, −1/4
   * under −1/8; C 9 9/16 against 9 1/2, +1/16 over a tolerance of 1/32, printed as the nearest
   * eighth.
   */
  @Test
  void inchesWithFractions() {
    GradedTable list =
        list(
            MeasureUnit.INCH,
            "A;1/8;1/8;20 1/4;21 1/4;22 1/4",
            "B;1/4;1/8;20 1/4;21 1/4;22 1/4",
            "C;1/32;1/32;9 1/2;10;10 1/2");
    assertEquals(
        List.of("A +1/8 WITHIN NONE", "B \u22121/4 UNDER NONE", "C +1/8 OVER NONE"),
        said(
            judge(list, "S", values(MeasureUnit.INCH, "A;;20 3/8", "B;;20", "C;;9 9/16")),
            Rounding.usual(MeasureUnit.INCH)));
  }

  /**
   * By hand, four rounds of size M: without a tolerance nothing is judged; A is out, in, not
   * measured, out; B is out twice, then in twice. A round of another size does not count.
   */
  @Test
  void noToleranceAndTrends() {
    GradedTable list = list(MeasureUnit.CM, "A;1;1;9;10;11", "B;1;1;9;10;11", "C;;;9;10;11");
    Rounding tenth = Rounding.usual(MeasureUnit.CM);
    JudgedSample first = judge(list, "M", values(MeasureUnit.CM, "A;;12", "B;;8", "C;;15"));
    JudgedSample other = judge(list, "L", values(MeasureUnit.CM, "A;;11", "B;;11"));
    JudgedSample second =
        judge(list, "M", values(MeasureUnit.CM, "A;;10.5", "B;;8.5"), first, other);
    JudgedSample third = judge(list, "M", values(MeasureUnit.CM, "B;;9"), first, other, second);
    JudgedSample fourth =
        judge(list, "M", values(MeasureUnit.CM, "A;;8", "B;;10"), first, second, third);
    assertEquals(
        List.of("A +2 OVER NONE", "B \u22122 UNDER NONE", "C +5 NO_TOLERANCE NONE"),
        said(first, tenth));
    assertEquals(
        List.of("A +0.5 WITHIN IN_AGAIN", "B \u22121.5 UNDER STILL_OUT", "C NOT_MEASURED NONE"),
        said(second, tenth));
    assertEquals(
        List.of("A NOT_MEASURED NONE", "B \u22121 WITHIN IN_AGAIN", "C NOT_MEASURED NONE"),
        said(third, tenth));
    assertEquals(
        List.of("A \u22122 UNDER NOW_OUT", "B 0 WITHIN STILL_IN", "C NOT_MEASURED NONE"),
        said(fourth, tenth));
  }

  /** By hand: 11 is asked now, but 10 ± 0.5 was asked in that round, so that 10.4 is within. */
  @Test
  void aRoundIsJudgedByWhatWasAskedThen() {
    GradedTable list = list(MeasureUnit.CM, "A;0.2;0.2;10;11;12");
    List<SampleValue> values = values(MeasureUnit.CM, "A;;10.4");
    AskedValue then = new AskedValue(new BigDecimal(100), new BigDecimal(5), new BigDecimal("5.0"));
    JudgedSample judged = JudgedSample.of(list, "fit", "M", values, Map.of("A", then), List.of());
    assertEquals(Verdict.WITHIN, judged.points().get(0).verdict());
    assertEquals(Verdict.UNDER, judge(list, "M", values).points().get(0).verdict());
  }

  @Test
  void whatIsNotInTheListIsRefused() {
    GradedTable list = list(MeasureUnit.CM, "A;1;1;9;10;11");
    List<SampleValue> one = values(MeasureUnit.CM, "A;;10");
    List<SampleValue> twice = values(MeasureUnit.CM, "A;;10", "A;;11");
    List<SampleValue> unknown = values(MeasureUnit.CM, "B;;10");
    assertThrows(IllegalArgumentException.class, () -> judge(list, "XL", one));
    assertThrows(IllegalArgumentException.class, () -> judge(list, "M", twice));
    assertThrows(IllegalArgumentException.class, () -> judge(list, "M", unknown));
  }

  /** Thirty-seconds of an inch, typed as such and exactly in centimetres (2.54/32 = 0.079375). */
  @Property
  void centimetresAndInchesGiveTheSameVerdict(
      @ForAll @IntRange(min = 100, max = 900) int asked,
      @ForAll @IntRange(min = -20, max = 20) int off,
      @ForAll @IntRange(min = 0, max = 16) int plus,
      @ForAll @IntRange(min = 0, max = 16) int minus) {
    Verdict inInches = verdict(asked, off, plus, minus, MeasureUnit.INCH);
    assertEquals(inInches, verdict(asked, off, plus, minus, MeasureUnit.CM));
    Verdict byWholeNumbers =
        off > plus ? Verdict.OVER : -off > minus ? Verdict.UNDER : Verdict.WITHIN;
    assertEquals(byWholeNumbers, inInches);
  }

  private static Verdict verdict(int asked, int off, int plus, int minus, MeasureUnit unit) {
    AskedValue value = new AskedValue(typed(asked, unit), typed(plus, unit), typed(minus, unit));
    return Verdict.of(typed(asked + off, unit), value);
  }

  private static BigDecimal typed(int parts, MeasureUnit unit) {
    String text =
        unit == MeasureUnit.INCH
            ? parts / 32 + " " + parts % 32 + "/32"
            : new BigDecimal("0.079375").multiply(BigDecimal.valueOf(parts)).toPlainString();
    return MeasureText.parse(text, unit);
  }

  /** Read back, the printed difference lies on the side of the printed tolerance that it should. */
  @Property
  void noPrintedDifferenceContradictsItsVerdict(
      @ForAll @IntRange(min = -2000, max = 2000) int difference,
      @ForAll @IntRange(min = 0, max = 1500) int tolerance,
      @ForAll @IntRange(min = 0, max = 3) int step) {
    Rounding rounding =
        switch (step) {
          case 0 -> Rounding.usual(MeasureUnit.CM);
          case 1 -> new Rounding(MeasureUnit.CM, new BigDecimal("0.5"));
          case 2 -> Rounding.usual(MeasureUnit.INCH);
          default -> Rounding.usual(MeasureUnit.MM);
        };
    BigDecimal hundredths = new BigDecimal("0.01");
    BigDecimal limit = hundredths.multiply(BigDecimal.valueOf(tolerance));
    AskedValue asked = new AskedValue(new BigDecimal(500), limit, limit);
    BigDecimal measured = asked.value().add(hundredths.multiply(BigDecimal.valueOf(difference)));
    SampleValue value = SampleValue.of("A", null, measured);
    JudgedPoint point = new JudgedPoint(asked, value, Trend.NONE);
    String text = point.differenceText(rounding);
    BigDecimal printed = MeasureText.parse(text, rounding.unit());
    String own = rounding.text(rounding.tolerance(limit));
    boolean looksOut = printed.abs().compareTo(MeasureText.parse(own, rounding.unit())) > 0;
    assertEquals(Math.abs(difference) > tolerance, looksOut, text + " beside " + own);
    assertTrue(printed.signum() * difference >= 0, "sign of " + text);
  }
}
