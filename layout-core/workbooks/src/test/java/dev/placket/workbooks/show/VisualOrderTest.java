package dev.placket.workbooks.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Lines worked out by hand from the rules of the Unicode Bidirectional Algorithm (UAX 9): letters
 * of Hebrew go from right to left (L2), numbers among them from left to right (I1, I2), brackets
 * are mirrored (L4), and the first letter says which way the line goes (P2, P3).
 */
class VisualOrderTest {
  @Test
  void latinStaysAsItIs() {
    assertEquals("Front (1) é 前", VisualOrder.of("Front (1) é 前"));
  }

  @Test
  void tabsBecomeBlanks() {
    assertEquals("a b", VisualOrder.of("a\tb"));
  }

  @Test
  void hebrewIsTurned() {
    assertEquals("\u05d2\u05d1\u05d0", VisualOrder.of("\u05d0\u05d1\u05d2"));
  }

  @Test
  void wordsOfHebrewInALatinLineAreTurnedInTheirPlace() {
    assertEquals("car \u05d2\u05d1\u05d0.", VisualOrder.of("car \u05d0\u05d1\u05d2."));
  }

  @Test
  void numbersStayAmongTurnedWords() {
    assertEquals("\u05d3\u05d2 12 \u05d1\u05d0", VisualOrder.of("\u05d0\u05d1 12 \u05d2\u05d3"));
  }

  @Test
  void bracketsAreMirrored() {
    assertEquals("(\u05d1)\u05d0", VisualOrder.of("\u05d0(\u05d1)"));
  }
}
