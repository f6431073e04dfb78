package dev.placket.layout.fit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.sheet.GridArea;
import dev.placket.layout.sheet.GridLines;
import dev.placket.layout.sheet.LabelledCell;
import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.Paper;
import dev.placket.layout.sheet.Sheet;
import dev.placket.layout.sheet.Window;
import dev.placket.layout.units.Box;
import dev.placket.layout.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A line that is moved as far as it can stops at the next one, however sums round. */
class MovedLineTest {
  private static final double LEFT = Length.mm(10).pt();
  private static final double RIGHT = Paper.A4.landscape().width().pt() - Length.mm(10).pt();

  @Test
  void noLineIsMovedPastTheNext() {
    for (int tenths = 200; tenths < 1200; tenths++) {
      double line = LEFT + Length.mm(tenths / 10.0).pt();
      List<MovedLine> lines = MovedLine.of(beside(line));
      assertFalse(lines.isEmpty());
      for (MovedLine moved : lines) {
        List<Double> columns = moved.by(moved.most()).lines().columns();
        assertTrue(columns.get(1) <= columns.get(2), () -> columns.toString());
      }
    }
  }

  /** A window, and to its right a labelled cell. */
  private static Sheet beside(double line) {
    return new Sheet(
        "beside",
        Paper.A4.landscape(),
        Margins.all(Length.mm(10)),
        new GridLines(List.of(LEFT, line, RIGHT), List.of(100.0, 140.0)),
        List.of(new Window("shown", new GridArea(0, 0, 1, 1))),
        List.of(new LabelledCell("text", new Box(line, 100, RIGHT, 140))),
        List.of());
  }
}
