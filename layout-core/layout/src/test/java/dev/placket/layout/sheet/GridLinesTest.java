package dev.placket.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tracks laid as CSS Grid 1, 7.2.4 and 11.7.1 ("find the size of an fr") lay them, by hand. */
class GridLinesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // lengths alone end where they end
        "100pt 50pt | 500 | 0 100 150",
        // (500 - 100) / 2 shares
        "100pt 1fr 1fr | 500 | 0 100 300 500",
        "1fr 100pt 3fr | 500 | 0 100 200 500",
        // 1 in = 72 pt, then all of the rest
        "1in 1fr | 100 | 0 72 100",
        // a sum of shares under 1 counts as 1, and the rest stays blank
        "0.3fr 0.5fr | 100 | 0 30 80",
        "0.5fr | 100 | 0 50",
        "40pt 0.25fr | 100 | 0 40 55",
        // shares under 1 whose sum is above 1 fill the room: 100 / 1.5
        "1fr 0.5fr | 150 | 0 100 150",
        // nothing left
        "100pt 1fr | 100 | 0 100 100"
      })
  void laysLengthsFirstThenShares(String tracks, double room, String lines) {
    List<GridTrack> parsed = Stream.of(tracks.split(" ")).map(GridTrack::parse).toList();
    List<Double> wanted = Stream.of(lines.split(" ")).map(Double::valueOf).toList();
    assertLines(wanted, GridLines.lay(parsed, 0, room), 0);
    assertLines(wanted, GridLines.lay(parsed, 36, room), 36);
  }

  private static void assertLines(List<Double> wanted, List<Double> lines, double start) {
    assertEquals(wanted.size(), lines.size());
    for (int i = 0; i < wanted.size(); i++) {
      assertEquals(start + wanted.get(i), lines.get(i), 1e-12);
    }
  }

  @Test
  void saysHowMuchTheLengthsAreTooLong() {
    List<GridTrack> tracks =
        List.of(GridTrack.parse("60mm"), GridTrack.parse("50mm"), GridTrack.parse("1fr"));
    Exception e =
        assertThrows(
            IllegalArgumentException.class, () -> GridLines.lay(tracks, 0, Length.mm(97.5).pt()));
    assertEquals("the tracks are 12.50 mm longer than their room", e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0fr", "-1fr", "NaNfr", "fr", "x fr", "1dfr", "0x1p3fr", "1.fr", "-1mm", "12", "auto"
      })
  void refusesOtherTracks(String text) {
    assertThrows(IllegalArgumentException.class, () -> GridTrack.parse(text));
  }

  @Test
  void readsTracks() {
    assertEquals(new GridTrack.Share(1.5), GridTrack.parse(" 1.5 fr "));
    assertEquals(new GridTrack.Fixed(Length.mm(12)), GridTrack.parse("12mm"));
    assertEquals(new GridTrack.Fixed(Length.ZERO), GridTrack.parse("0pt"));
  }

  @Test
  void anAreaIsTheRectangleBetweenItsLines() {
    GridLines lines = new GridLines(List.of(10.0, 20.0, 50.0), List.of(5.0, 5.0, 95.0));
    assertEquals(new Rect(10, 5, 50, 95), lines.box(new GridArea(0, 0, 2, 2)));
    assertEquals(new Rect(20, 5, 50, 5), lines.box(new GridArea(1, 0, 2, 1)));
    assertThrows(IndexOutOfBoundsException.class, () -> lines.box(new GridArea(0, 0, 3, 1)));
  }

  @Test
  void linesRise() {
    assertThrows(
        IllegalArgumentException.class, () -> new GridLines(List.of(0.0), List.of(0.0, 1.0)));
    Exception e =
        assertThrows(
            IllegalArgumentException.class,
            () -> new GridLines(List.of(0.0, 1.0), List.of(0.0, 2.0, 1.5)));
    assertTrue(String.valueOf(e.getMessage()).startsWith("row line 2 at 1.5"), e.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> new GridLines(List.of(0.0, Double.NaN), List.of(0.0, 1.0)));
  }

  @ParameterizedTest
  @CsvSource({"-1, 0, 1, 1", "0, -1, 1, 1", "1, 0, 1, 1", "0, 1, 1, 1", "2, 0, 1, 1"})
  void anAreaHoldsACell(int columnStart, int rowStart, int columnEnd, int rowEnd) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new GridArea(columnStart, rowStart, columnEnd, rowEnd));
  }
}
