package dev.placket.benchmarks.workbooks;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a worksheet may gain, and nothing else. */
class DifferenceTest {
  private static final String WAS = "<worksheet><sheetData/><legacyDrawing r:id='r1'/></worksheet>";
  private static final String OWN = "<drawing xmlns:r='n' r:id='placket1'/>";

  private static boolean same(String is, Charset charset) {
    return Difference.same(WAS.getBytes(charset), is.getBytes(charset));
  }

  @Test
  void oneDrawingIsNoDifference() {
    String is = WAS.replace("<legacy", OWN + "<legacy");
    for (Charset c : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE)) {
      assertTrue(same(WAS, c));
      assertTrue(same(is, c));
    }
    assertTrue(
        same(WAS.replace("<legacy", "<x:drawing r:id='r2'/><legacy"), StandardCharsets.UTF_8));
  }

  @Test
  void anythingElseIs() {
    String is = WAS.replace("<legacy", OWN + "<legacy");
    for (String other :
        List.of(
            is.replace("<legacy", OWN + "<legacy"),
            is.replace("'r1'", "\"r1\""),
            is.replace("<sheetData/>", "<sheetData />"),
            is.replace("<sheetData/>", ""),
            WAS.replace("<legacy", "<picture r:id='r2'/><legacy"))) {
      assertFalse(same(other, StandardCharsets.UTF_8), other);
    }
  }
}
