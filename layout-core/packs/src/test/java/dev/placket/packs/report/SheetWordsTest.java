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
        "details in line 3.2 % of scale", SheetWords.price(new OrderStep(lines, true, 0.032)));
    assertEquals("details in line not kept", SheetWords.price(new OrderStep(lines, false, 0)));
    assertEquals(
        "details in line not kept (3.2 % of scale to come near it)",
        SheetWords.price(new OrderStep(lines, false, 0.032)));
  }
}
