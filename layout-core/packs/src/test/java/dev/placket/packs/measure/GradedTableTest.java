package dev.placket.packs.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Graded values against tables worked by hand, and rounding against exact arithmetic. */
class GradedTableTest {
  private static BigDecimal cm(String number) {
    return MeasureText.parse(number, MeasureUnit.CM);
  }

  private static GradeRule rule(String add, String step, String... from) {
    Map<String, BigDecimal> breaks = new LinkedHashMap<>();
    for (int i = 0; i < from.length; i += 2) {
      breaks.put(from[i], cm(from[i + 1]));
    }
    return new GradeRule(cm(add), cm(step), breaks);
  }

  private static MeasurePoint graded(String value, Map<String, GradeRule> rules) {
    return new MeasurePoint("A", cm("1"), cm("1"), cm(value), rules, Map.of());
  }

  private static List<String> values(List<SizeGroup> groups, MeasurePoint point) {
    Rounding tenth = Rounding.usual(MeasureUnit.CM);
    return GradedTable.of(groups).with(point).points().get(0).values().values().stream()
        .map(v -> tenth.text(tenth.nearest(v)))
        .toList();
  }

  private static final List<SizeGroup> LETTERS =
      List.of(new SizeGroup("", List.of("XS", "S", "M", "L", "XL", "XXL"), "M"));

  /** By hand: 2.5 a size, 3 from XL on; 59.5 + 2.5 = 62, + 3 = 65, + 3 = 68; down by 2.5. */
  @Test
  void aStepThatChangesAtALargeSize() {
    assertEquals(
        List.of("54.5", "57", "59.5", "62", "65", "68"),
        values(LETTERS, graded("59.5", Map.of("", rule("0", "2.5", "XL", "3")))));
  }

  /** By hand: both ends change, and steps that are negative or nothing. */
  @Test
  void stepsThatChangeAtBothEndsAndStepsDownwards() {
    assertEquals(
        List.of("8", "9", "11", "13", "15", "15"),
        values(LETTERS, graded("11", Map.of("", rule("0", "2", "S", "2", "XS", "1", "XXL", "0")))));
    assertEquals(
        List.of("31", "30.5", "30", "29.5", "29", "28.5"),
        values(LETTERS, graded("30", Map.of("", rule("0", "-0.5")))));
    assertEquals(
        List.of("7.5", "7.5", "7.5", "7.5", "7.5", "7.5"),
        values(LETTERS, graded("7.5", Map.of("", rule("0", "0")))));
  }

  /** By hand: waist by inseam; the long group is 5 longer at its base and grows by 0.5 a size. */
  @Test
  void groupsOfSizesHaveRulesOfTheirOwn() {
    List<SizeGroup> inseams =
        List.of(
            new SizeGroup("regular", List.of("30", "32", "34"), "32"),
            new SizeGroup("long", List.of("30L", "32L", "34L"), "32L"));
    assertEquals(
        List.of("81", "81", "81", "85.5", "86", "86.5"),
        values(inseams, graded("81", Map.of("regular", rule("0", "0"), "long", rule("5", "0.5")))));
    assertEquals(
        List.of("39", "41.5", "44", "39", "41.5", "44"),
        values(inseams, graded("41.5", Map.of("", rule("0", "2.5")))));
  }

  @Test
  void rulesBeyondTheSizesAreRefused() {
    GradedTable letters = GradedTable.of(LETTERS);
    MeasurePoint unknown = graded("9", Map.of("", rule("0", "1", "3XL", "2")));
    MeasurePoint base = graded("9", Map.of("", rule("0", "1", "M", "2")));
    MeasurePoint group = graded("9", Map.of("tall", rule("0", "1")));
    for (MeasurePoint each : List.of(unknown, base, group)) {
      assertThrows(IllegalArgumentException.class, () -> letters.with(each));
    }
    MeasurePoint few =
        new MeasurePoint("A", null, null, null, Map.of(), Map.of("XS", cm("1"), "S", cm("2")));
    assertThrows(IllegalArgumentException.class, () -> letters.with(few));
  }

  /**
   * Girths of a published kind: a size chart of constant steps, as arithmetic. From memory of EN
   * 13402-3's centre values for women's bust girths: 76 to 104 in steps of 4.
   */
  @Test
  void aChartOfConstantStepsIsASum() {
    List<String> sizes = List.of("76", "80", "84", "88", "92", "96", "100", "104");
    List<SizeGroup> groups = List.of(new SizeGroup("", sizes, "88"));
    assertEquals(sizes, values(groups, graded("88", Map.of("", rule("0", "4")))));
  }

  @ParameterizedTest
  @CsvSource({
    // 1 in = 25.4 mm exactly (ISO 80000-3), so 23 7/16 in = 595.3125 mm.
    "23 7/16, in, 595.3125",
    "7/16, in, 11.1125",
    "-1/64, in, -0.396875",
    "−1 1/2, in, -38.1",
    "0.5 in, in, 12.7",
    "59.5, cm, 595",
    "59.5 cm, cm, 595",
    "+3, mm, 3",
    ".5, cm, 5"
  })
  void typedLengthsAreExact(String text, String sign, String mm) {
    MeasureUnit unit = MeasureUnit.of(sign).orElseThrow();
    assertEquals(0, new BigDecimal(mm).compareTo(MeasureText.parse(text, unit)));
  }

  @ParameterizedTest
  @CsvSource({
    "1/3, in, which is no fraction of an inch",
    "9/8, in, which is no fraction of an inch",
    "1/2, cm, which is no fraction of an inch",
    "'59,5', cm, which is no length",
    "59.5 in, cm, in a list in cm",
    "abc, mm, which is no length",
    "1 0/0, in, which is no fraction of an inch"
  })
  void whatIsNoLengthIsSaidToBeNone(String text, String sign, String why) {
    MeasureUnit unit = MeasureUnit.of(sign).orElseThrow();
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> MeasureText.parse(text, unit));
    assertTrue(refused.toString().contains(why), refused.toString());
  }

  @ParameterizedTest
  @CsvSource({
    // 59.5 / 2.54 = 23.425…, whose nearest sixteenth is 23 7/16 = 23.4375, nearest eighth 23 3/8.
    "595, in, 0.0625, 23 7/16",
    "595, in, 0.125, 23 3/8",
    "595, in, 0.5, 23 1/2",
    "595, in, 1, 23",
    "-6.35, in, 0.125, −1/4",
    "0, in, 0.125, 0",
    "594.5, cm, 0.1, 59.5",
    "-594.5, cm, 0.1, −59.5",
    "596.2, cm, 0.5, 59.5",
    "596.3, cm, 0.25, 59.75",
    "596.25, cm, 0.25, 59.75",
    "1000, cm, 0.5, 100"
  })
  void roundedOnceWithHalvesAwayFromZero(String mm, String sign, String step, String text) {
    Rounding to = new Rounding(MeasureUnit.of(sign).orElseThrow(), new BigDecimal(step));
    assertEquals(text, to.text(to.nearest(new BigDecimal(mm))));
  }

  @ParameterizedTest
  @CsvSource({
    // 5 mm are 0.197 in: 1/8 would take away a third, 3/16 = 0.1875 a twentieth.
    "5, in, 0.125, 3/16",
    "10, in, 0.125, 3/8",
    "2, in, 0.5, 5/64",
    "3, cm, 0.5, 0.3",
    "0.5, cm, 0.1, 0.05",
    "3.175, mm, 1, 3",
    "0, in, 0.125, 0"
  })
  void tolerancesAreNotRoundedAway(String mm, String sign, String step, String text) {
    Rounding to = new Rounding(MeasureUnit.of(sign).orElseThrow(), new BigDecimal(step));
    assertEquals(text, to.text(to.tolerance(new BigDecimal(mm))));
  }

  /** Never wider than it was, and never less than four fifths where a 64th is as fine as that. */
  @Property(tries = 500)
  void noToleranceIsWidened(@ForAll @IntRange(min = 0, max = 4000) int hundredths) {
    BigDecimal mm = BigDecimal.valueOf(hundredths, 2);
    BigDecimal shown =
        Rounding.usual(MeasureUnit.INCH).tolerance(mm).multiply(new BigDecimal("25.4"));
    assertTrue(shown.compareTo(mm) <= 0);
    boolean fine = mm.compareTo(new BigDecimal("1.99")) > 0;
    assertTrue(!fine || shown.compareTo(mm.multiply(new BigDecimal("0.8"))) >= 0, mm.toString());
  }

  @Test
  void stepsOfThirdsOfAnInchAreRefused() {
    for (String step : List.of("0.3", "0", "-1", "0.0078125")) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new Rounding(MeasureUnit.INCH, new BigDecimal(step)));
    }
  }

  /** Between the two nearest fractions of long division by hand, the nearer one is taken. */
  @Property(tries = 500)
  void noFractionIsNearer(
      @ForAll @IntRange(min = -99_999, max = 99_999) int hundredths,
      @ForAll @IntRange(min = 0, max = 6) int power) {
    BigDecimal mm = BigDecimal.valueOf(hundredths, 2);
    BigDecimal step = BigDecimal.ONE.divide(BigDecimal.valueOf(1L << power));
    Rounding to = new Rounding(MeasureUnit.INCH, step);
    BigDecimal inches = mm.divide(new BigDecimal("25.4"), 40, RoundingMode.HALF_EVEN);
    BigDecimal off = to.nearest(mm).subtract(inches).abs();
    assertTrue(off.compareTo(step.divide(BigDecimal.valueOf(2)).add(new BigDecimal("1e-30"))) <= 0);
    // A tolerance is never wider than it was.
    assertTrue(to.within(mm).abs().compareTo(inches.abs()) <= 0);
    assertTrue(inches.abs().subtract(to.within(mm).abs()).compareTo(step) < 0);
    // What is shown is read back as what it is.
    BigDecimal again = MeasureText.parse(to.text(to.nearest(mm)), MeasureUnit.INCH);
    assertEquals(0, again.compareTo(to.nearest(mm).multiply(new BigDecimal("25.4"))));
  }

  /** Grading then converting is converting and rounding the table typed from the exact values. */
  @Property(tries = 200)
  void gradedAndTypedTablesConvertAlike(
      @ForAll @IntRange(min = 10, max = 1500) int tenths,
      @ForAll @IntRange(min = -40, max = 40) int step) {
    BigDecimal base = BigDecimal.valueOf(tenths);
    GradeRule rule = new GradeRule(BigDecimal.ZERO, BigDecimal.valueOf(step), Map.of());
    GradedTable table =
        GradedTable.of(LETTERS)
            .with(new MeasurePoint("A", null, null, base, Map.of("", rule), Map.of()));
    Map<String, BigDecimal> typed = new LinkedHashMap<>();
    List<String> sizes = LETTERS.get(0).sizes();
    for (int i = 0; i < sizes.size(); i++) {
      typed.put(sizes.get(i), BigDecimal.valueOf(tenths + (i - 2L) * step));
    }
    GradedTable other =
        GradedTable.of(LETTERS).with(new MeasurePoint("A", null, null, null, Map.of(), typed));
    Rounding to = Rounding.usual(MeasureUnit.INCH);
    List<BigDecimal> a = new ArrayList<>();
    List<BigDecimal> b = new ArrayList<>();
    table.points().get(0).values().values().forEach(v -> a.add(to.nearest(v)));
    other.points().get(0).values().values().forEach(v -> b.add(to.nearest(v)));
    assertEquals(b, a);
  }

  private static List<GradeNote> notes(String tolerance, String... typed) {
    Map<String, BigDecimal> values = new LinkedHashMap<>();
    for (int i = 0; i < typed.length; i++) {
      values.put(LETTERS.get(0).sizes().get(i), cm(typed[i]));
    }
    return GradeNote.of(
        GradedTable.of(LETTERS)
            .with(new MeasurePoint("A", cm(tolerance), cm(tolerance), null, Map.of(), values)));
  }

  @Test
  void slipsOfTypingAreNoted() {
    assertEquals(List.of(), notes("1", "54.5", "57", "59.5", "62", "65", "68"));
    assertEquals(List.of(), notes("1", "7.5", "7.5", "8.5", "8.5", "9.5", "9.5"));
    // 6.2 for 62, 57 and 59.5 exchanged, a last value that turns back.
    assertEquals(
        List.of(new GradeNote(GradeNote.Kind.OUT_OF_RUN, "A", "L")),
        notes("1", "54.5", "57", "59.5", "6.2", "65", "68"));
    assertEquals(
        List.of(new GradeNote(GradeNote.Kind.OUT_OF_RUN, "A", "XXL")),
        notes("1", "54.5", "57", "59.5", "62", "65", "56"));
    assertEquals(
        List.of(new GradeNote(GradeNote.Kind.OUT_OF_RUN, "A", "XS")),
        notes("1", "75.5", "57", "59.5", "62", "65", "68"));
    assertEquals(
        List.of(new GradeNote(GradeNote.Kind.TOLERANCE_OVER_STEP, "A", "")),
        notes("1", "14", "14.4", "14.8", "15.2", "15.6", "16"));
  }
}
