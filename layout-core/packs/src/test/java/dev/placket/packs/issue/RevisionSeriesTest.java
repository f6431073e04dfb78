package dev.placket.packs.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The order of revisions. Letters without I and O are common practice, with no source. */
class RevisionSeriesTest {
  @ParameterizedTest
  @CsvSource({
    "A, B",
    "H, J",
    "N, P",
    "Z, AA",
    "AZ, BA",
    "ZZ, AAA",
    "3, 4",
    "9, 10",
    "09, 10",
    "007, 008",
    "proto 1, proto 2",
    "fit-9, fit-10",
    "size set 2, size set 3"
  })
  void theNextOne(String revision, String next) {
    assertEquals(next, RevisionSeries.next(revision));
    assertTrue(RevisionSeries.compare(revision, next).orElseThrow() < 0);
    assertTrue(RevisionSeries.compare(next, revision).orElseThrow() > 0);
  }

  @Test
  void otherSeriesAreNotCompared() {
    assertEquals("", RevisionSeries.next("final"));
    assertEquals("", RevisionSeries.next("I"));
    assertEquals(OptionalInt.empty(), RevisionSeries.compare("proto 2", "fit 1"));
    assertEquals(OptionalInt.empty(), RevisionSeries.compare("B", "2"));
    assertEquals(0, RevisionSeries.compare("C", "C").orElseThrow());
  }

  /** A walk of so many steps from A never has a letter that looks like a digit, nor comes back. */
  @Property(tries = 20)
  void theSeriesGoesOn(@ForAll @IntRange(min = 1, max = 2000) int steps) {
    String revision = "A";
    for (int i = 0; i < steps; i++) {
      String next = RevisionSeries.next(revision);
      assertTrue(RevisionSeries.compare(revision, next).orElseThrow() < 0, revision + " " + next);
      assertFalse(next.contains("I") || next.contains("O"), next);
      revision = next;
    }
    // 24 letters: the 25th is AA, the 601st AAA.
    assertEquals(steps < 24 ? 1 : steps < 600 ? 2 : 3, revision.length(), revision);
  }
}
