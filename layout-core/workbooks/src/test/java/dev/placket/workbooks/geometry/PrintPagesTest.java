package dev.placket.workbooks.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.placket.layout.sheet.Margins;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.layout.units.Length;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Pages worked out by hand. */
class PrintPagesTest {
  /** 64 pixels are 48 points; rows are 15 points. */
  private static final Grid GRID =
      new Grid(
          new Tracks.Builder(64 * Emu.PER_PIXEL, Grid.COLUMNS).build(),
          new Tracks.Builder(15 * Emu.PER_POINT, Grid.ROWS).build());

  private static PrintSetup setup(
      int percent, PrintSetup.@Nullable FitPages fit, Integer... breaks) {
    // Letter with margins of 0.75 in leaves 504 by 684 points.
    return new PrintSetup(
        PaperSize.LETTER,
        Margins.all(Length.in(0.75)),
        percent,
        fit,
        false,
        false,
        List.of(),
        null,
        null,
        new TreeSet<>(List.of(breaks)),
        new TreeSet<>());
  }

  private static List<PrintPage> pages(int tolerance, PrintSetup setup, String area) {
    CellRange range = CellRange.parse(area);
    return new PrintPages(GRID, tolerance, setup).of(range, List.of(range));
  }

  @Test
  void tenColumnsOf48PointsGoOn504() {
    List<PrintPage> pages = pages(0, setup(100, null), "A1:P40");
    assertEquals(new CellRange(0, 0, 10, 40), pages.get(0).cells());
    assertEquals(new CellRange(10, 0, 16, 40), pages.get(1).cells());
    assertEquals(54, pages.get(0).left());
    assertEquals(100, pages.get(0).percent());
  }

  @Test
  void atHalfTwentyGo() {
    assertEquals(new CellRange(0, 0, 21, 40), pages(0, setup(50, null), "A1:Z40").get(0).cells());
  }

  @Test
  void columnsThatAreOnEitherPageAreOnNone() {
    // With 5 pixels more or less, 59 to 69 pixels are 44.25 to 51.75 points: 9 to 11 go on 504.
    List<PrintPage> pages = pages(5, setup(100, null), "A1:Z20");
    assertEquals(new CellRange(0, 0, 9, 20), pages.get(0).cells());
    assertEquals(11, pages.get(1).cells().left());
    assertEquals(18, pages.get(1).cells().right());
  }

  @Test
  void aBreakThatIsSetIsTheSameForAll() {
    List<PrintPage> pages = pages(5, setup(100, null, 4), "A1:Z20");
    assertEquals(new CellRange(0, 0, 4, 20), pages.get(0).cells());
    assertEquals(4, pages.get(1).cells().left());
  }

  @Test
  void rowsBreakToo() {
    // 684 / 15 = 45.6
    List<PrintPage> pages = pages(0, setup(100, null), "A1:B100");
    assertEquals(new CellRange(0, 0, 2, 45), pages.get(0).cells());
    assertEquals(new CellRange(0, 45, 2, 90), pages.get(1).cells());
    assertEquals(new CellRange(0, 90, 2, 100), pages.get(2).cells());
  }

  @Test
  void fittedToOneAcross() {
    // 26 columns are 1248 points; 504 / 1248 = 0.4038, whole hundredths rounded down.
    PrintSetup fitted = setup(100, new PrintSetup.FitPages(1, 0));
    assertEquals(40, pages(0, fitted, "A1:Z40").get(0).percent());
    assertEquals(new CellRange(0, 0, 26, 40), pages(1, fitted, "A1:Z40").get(0).cells());
  }

  @Test
  void fittingNeverEnlarges() {
    assertEquals(
        100, pages(0, setup(100, new PrintSetup.FitPages(1, 1)), "A1:B4").get(0).percent());
  }
}
