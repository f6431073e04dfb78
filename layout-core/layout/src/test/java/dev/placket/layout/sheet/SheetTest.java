package dev.placket.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.units.Length;
import dev.placket.layout.units.Rect;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a sheet refuses to be. */
class SheetTest {
  private static final PaperSize PAPER = new PaperSize("test", Length.pt(100), Length.pt(200));
  private static final Margins MARGINS =
      new Margins(Length.pt(1), Length.pt(2), Length.pt(3), Length.pt(4));
  private static final GridLines LINES =
      new GridLines(List.of(4.0, 50.0, 98.0), List.of(1.0, 197.0));
  private static final SheetWindow LEFT = new SheetWindow("left", new GridArea(0, 0, 1, 1));
  private static final SheetWindow RIGHT = new SheetWindow("right", new GridArea(1, 0, 2, 1));

  @Test
  void marginsRunTopRightBottomLeft() {
    assertEquals(new Rect(4, 1, 98, 197), sheet(LINES, LEFT, RIGHT).inside());
  }

  @Test
  void findsItsWindows() {
    Sheet sheet = sheet(LINES, LEFT, RIGHT);
    assertEquals(new Rect(50, 1, 98, 197), sheet.box(sheet.window("right")));
    Exception e = assertThrows(IllegalArgumentException.class, () -> sheet.window("top"));
    assertEquals("sheet s has no window 'top'; it has [left, right]", e.getMessage());
  }

  @Test
  void anOpenSheetIsOneWindow() {
    Sheet open = Sheet.open("o", PAPER, MARGINS, List.of());
    assertEquals(new Rect(4, 1, 98, 197), open.box(open.window("page")));
  }

  @Test
  void refusesMarginsThatLeaveNoRoom() {
    assertRefused("leave no room", () -> Sheet.open("o", PAPER, all(50), List.of()));
  }

  @Test
  void refusesAGridInTheMargins() {
    GridLines wide = new GridLines(List.of(4.0, 98.001), List.of(1.0, 197.0));
    assertRefused("runs into the margins", () -> sheet(wide));
  }

  @Test
  void refusesANameTwice() {
    assertRefused("'left' twice", () -> sheet(LINES, LEFT, new SheetWindow("left", RIGHT.area())));
    LabelledCell cell = new LabelledCell("style", new Rect(0, 0, 1, 1));
    assertRefused("'style' twice", () -> Sheet.open("o", PAPER, MARGINS, List.of(cell, cell)));
  }

  @Test
  void refusesWindowsThatOverlap() {
    SheetWindow both = new SheetWindow("both", new GridArea(0, 0, 2, 1));
    assertRefused("'right' and 'both' of sheet s overlap", () -> sheet(LINES, RIGHT, both));
  }

  @Test
  void refusesAWindowBeyondTheGrid() {
    SheetWindow beyond = new SheetWindow("beyond", new GridArea(0, 0, 3, 1));
    assertRefused("'beyond'", () -> sheet(LINES, beyond));
  }

  @Test
  void aRuleIsLevelOrUprightWithHalfItsWidthOnEachSide() {
    Rule level = new Rule(new Rect(10, 20, 90, 20), Length.pt(0.5));
    assertEquals(new Rect(9.75, 19.75, 90.25, 20.25), level.ink());
    Rect slant = new Rect(10, 20, 90, 21);
    assertThrows(IllegalArgumentException.class, () -> new Rule(slant, Length.pt(1)));
    Rect upright = new Rect(10, 20, 10, 90);
    assertThrows(IllegalArgumentException.class, () -> new Rule(upright, Length.pt(-1)));
  }

  @Test
  void refusesNegativeMargins() {
    assertThrows(IllegalArgumentException.class, () -> all(-0.001));
  }

  private static Margins all(double points) {
    return Margins.all(Length.pt(points));
  }

  private static Sheet sheet(GridLines lines, SheetWindow... windows) {
    return new Sheet("s", PAPER, MARGINS, lines, List.of(windows), List.of(), List.of());
  }

  private static void assertRefused(String part, org.junit.jupiter.api.function.Executable how) {
    Exception e = assertThrows(IllegalArgumentException.class, how);
    assertTrue(String.valueOf(e.getMessage()).contains(part), e.getMessage());
  }
}
