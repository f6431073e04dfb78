package dev.placket.layout.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths against CSS Values 4, 5.2 and the EMU of ISO/IEC 29500 (DrawingML). */
class LengthTest {
  @ParameterizedTest
  @CsvSource({
    // CSS Values 4, 5.2: 1in = 2.54cm = 72pt; 1cm = 96px/2.54; 1mm = 1/10 cm; 1pt = 1/72 in
    "1in, 72",
    "2.54cm, 72",
    "25.4mm, 72",
    "72pt, 72",
    "1pt, 1",
    "1cm, 28.346456692913385",
    "1mm, 2.8346456692913385",
    "10mm, 28.346456692913385",
    // of either sign, with or without blanks and a leading nought, whatever the letter case
    "-1in, -72",
    "+.5in, 36",
    "' 0.5  in ', 36",
    "1IN, 72",
    "12Pt, 12",
    "0mm, 0",
    "007pt, 7"
  })
  void readsTheUnitsOfCss(String text, double points) {
    assertEquals(points, Length.parse(text).pt(), Math.abs(points) * 1e-15);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "12",
        "mm",
        "1.mm",
        "1,5mm",
        "1e3mm",
        "12 furlongs",
        "1mm 2mm",
        "--1mm",
        "1fr"
      })
  void refusesOtherTextAndNamesIt(String text) {
    Exception e = assertThrows(IllegalArgumentException.class, () -> Length.parse(text));
    assertTrue(
        String.valueOf(e.getMessage()).startsWith("'" + text + "' is no length"), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    // ISO/IEC 29500, DrawingML: 914,400 to the inch, 360,000 to the cm, 12,700 to the point
    "1in, 914400",
    "1cm, 360000",
    "1pt, 12700",
    "210mm, 7560000",
    "297mm, 10692000",
    // 635 to the twip, which is 1/20 pt
    "0.05pt, 635",
    "-1in, -914400"
  })
  void countsEmu(String text, long emu) {
    assertEquals(emu, Length.parse(text).emu());
    assertEquals(Length.parse(text).pt(), Length.emu(emu).pt(), 1e-11);
  }

  @Test
  void everyFactoryNamesItsUnit() {
    assertEquals(Length.in(1), Length.pt(72));
    assertEquals(Length.mm(25.4), Length.in(1));
    assertEquals(Length.cm(2.54), Length.in(1));
    assertEquals(Length.emu(914_400), Length.in(1));
    assertEquals(25.4, Length.in(1).mm());
    assertEquals(2, Length.pt(144).in());
  }

  @Test
  void addsMultipliesAndCompares() {
    assertEquals(Length.pt(5), Length.pt(2).plus(Length.pt(3)));
    assertEquals(Length.pt(-1), Length.pt(2).plus(Length.pt(-3)));
    assertEquals(Length.pt(5), Length.pt(2).times(2.5));
    assertTrue(Length.mm(1).compareTo(Length.pt(2)) > 0);
    assertTrue(Length.mm(1).compareTo(Length.pt(3)) < 0);
    assertEquals(0, Length.mm(25.4).compareTo(Length.in(1)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNoNumber(double points) {
    Exception e = assertThrows(IllegalArgumentException.class, () -> Length.pt(points));
    assertTrue(String.valueOf(e.getMessage()).contains(String.valueOf(points)), e.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> Length.pt(Double.MAX_VALUE).times(2).plus(Length.ZERO));
  }

  @Property
  void emuComeBackWhole(@ForAll @LongRange(min = -2_000_000_000, max = 2_000_000_000) long emu) {
    assertEquals(emu, Length.emu(emu).emu());
  }

  @Property
  void millimetresComeBack(@ForAll @DoubleRange(min = -5000, max = 5000) double mm) {
    assertEquals(mm, Length.mm(mm).mm(), Math.abs(mm) * 4e-16);
  }
}
