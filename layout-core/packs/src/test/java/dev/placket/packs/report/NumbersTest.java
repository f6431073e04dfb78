package dev.placket.packs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** Digits that do not depend on the JDK, by hand. */
class NumbersTest {
  @Test
  void computedNumbersHaveFifteenDigits() {
    // The double nearest to 1.0000000000213377 prints with 378 on JDK 17 and 376 on JDK 25.
    double factor = 1.0000000000213377;
    assertEquals(
        new BigDecimal("1.00000000002133"), Numbers.significant(factor, RoundingMode.FLOOR));
    assertEquals(
        new BigDecimal("1.00000000002134"), Numbers.significant(factor, RoundingMode.CEILING));
  }

  @Test
  void wholeNumbersAndZeroStayPlain() {
    assertEquals("0", Numbers.significant(0, RoundingMode.CEILING).toString());
    assertEquals("1200", Numbers.significant(1200, RoundingMode.FLOOR).toString());
    assertEquals("0.5", Numbers.significant(0.5, RoundingMode.HALF_EVEN).toString());
  }
}
