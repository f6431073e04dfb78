package dev.placket.packs.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.fit.OrderStep;
import dev.placket.layout.fit.OrderWish;
import org.junit.jupiter.api.Test;

/** Prices of order, as they are said. */
class SheetWordsTest {
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
