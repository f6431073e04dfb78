package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes of drawings at the edge of what can be drawn. */
class SvgSizeTest {
  /** One refusal that names the size and what to do, whatever is drawn. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "viewBox='0 0 1e38 1e38'",
        "viewBox='0 0 1e300 1e300'",
        "viewBox='1e38 0 10 10'",
        "viewBox='0 -1e38 10 10'",
        "viewBox='0 0 1e38 10'",
        "viewBox='0 0 1e-38 1e-38'",
        "width='1e38' height='1e38'",
        "viewBox='0 0 1e10 1e10' width='1e300' height='1'",
        "viewBox='0 0 10 10' width='1' height='1e-300'",
        "viewBox='0 0 1 1e300' width='1e10' height='1'",
        "viewBox='0 0 10 10' width='1e300' height='1e300' preserveAspectRatio='none'"
      })
  void aSizeThatCannotBeDrawnIsRefused(String root) {
    PictureException e =
        assertThrows(
            PictureException.class,
            () ->
                SameDrawing.read(
                    SameDrawing.svg(root, "<rect width='90%' height='90%' stroke='#000'/>")));
    String said = String.valueOf(e.getMessage());
    assertTrue(said.startsWith("try.svg: shows "), said);
    assertTrue(said.endsWith("; save it at a usual size."), said);
    assertEquals(1, said.lines().count());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0 0 1e12 1e12", "0 0 1e-9 1e-9", "-1e9 -1e9 2e9 2e9"})
  void aLargeOrSmallSizeIsNot(String box) throws PictureException {
    Drawing drawing =
        SameDrawing.read(
            SameDrawing.svg("viewBox='" + box + "'", "<rect width='40%' height='30%'/>"));
    // 0.3 of a square over 0.4 of it.
    assertEquals(0.75, drawing.inkedBox().height() / drawing.inkedBox().width(), 1e-3);
  }
}
