package dev.placket.packs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import dev.placket.layout.fit.Proof;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prices of order, as they are said. */
class SheetWordsTest {
  /** By hand: 100 is 2.44 % below 102.5, 0.04 % below 100.04, and 1 millionth below 100.0001. */
  @ParameterizedTest
  @CsvSource({
    "100, the largest possible",
    "100.00009, the largest possible",
    "100.04, at most 0.1 % below the largest possible",
    "100.11, at most 0.2 % below the largest possible",
    "102.5, at most 2.5 % below the largest possible",
    "200, at most 50.0 % below the largest possible"
  })
  void whatIsSaidOfTheScaleIsRoundedUp(double bound, String said) {
    assertEquals(said, SheetWords.scale(new Proof(new BigDecimal("100"), bound, 1, false)));
  }

  @Test
  void aPriceIsSaidAlsoWhereTheWishIsOnlyComeNear() {
    OrderWish lines = OrderWish.DETAILS_IN_LINE;
    assertEquals(
        "details in line cost 3.2 % of the scale",
        SheetWords.price(new OrderStep(lines, true, 0.032)));
    assertEquals("details in line relaxed", SheetWords.price(new OrderStep(lines, false, 0)));
    assertEquals(
        "details in line relaxed (approaching it cost 3.2 % of the scale)",
        SheetWords.price(new OrderStep(lines, false, 0.032)));
  }
}
