package dev.placket.pictures.svg.parse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A drawing that refers to what is missing looks like one written by hand without the reference, as
 * SVG 2, CSS Masking 1 and Filter Effects 1 describe it.
 */
class ReferencesTest {
  private static final String REST = "<path d='M5 5H95V95Z' fill='none' stroke='#00f'/>";

  /** Elements that none of the references may lead to. */
  private static final List<String> WRONG =
      List.of("", "<title id='x'>a</title>", "<style id='x'/>", "<defs id='x'/>", "<desc id='x'/>");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          <use href='#x'/>                                   |
          <g id='y'><use xlink:href='#x'/></g><use href='#y'/> |
          <use id='y' href='#x'/><use href='#y'/>            |
          <rect width='9' height='9' fill='url(#x)'/>        | <rect width='9' height='9' fill='none'/>
          <rect width='9' height='9' fill='url(#x) #f00'/>   | <rect width='9' height='9' fill='#f00'/>
          <rect width='9' height='9' fill='url(#x) none'/>   | <rect width='9' height='9' fill='none'/>
          <rect width='9' height='9' stroke='url("#x") red'/> | <rect width='9' height='9' stroke='red'/>
          <rect width='9' height='9' style='fill:url(#x) red;stroke:#0f0'/> | <rect width='9' height='9' style='fill:red;stroke:#0f0'/>
          <g fill='url(#x)'><rect width='9' height='9'/></g> | <g fill='none'><rect width='9' height='9'/></g>
          <style>.a{fill:url(#x)}</style><rect class='a' width='9' height='9'/> | <rect width='9' height='9' fill='none'/>
          <rect width='9' height='9' clip-path='url(#x)'/>   | <rect width='9' height='9'/>
          <rect width='9' height='9' style="clip-path:url('#x')"/> | <rect width='9' height='9'/>
          <rect width='9' height='9' mask='url(#x)'/>        | <rect width='9' height='9'/>
          <rect width='9' height='9' filter='url(#x)'/>      | <rect width='9' height='9'/>
          <path d='M0 0H9V9' marker-end='url(#x)'/>          | <path d='M0 0H9V9'/>
          <path d='M0 0H9V9' style='marker:url(#x)'/>        | <path d='M0 0H9V9'/>
          <path d='M0 0H9V9' marker-mid='url(#x)' marker-start='url(#x)'/> | <path d='M0 0H9V9'/>
          <linearGradient id='g' href='#x'><stop stop-color='red'/></linearGradient><rect width='9' height='9' fill='url(#g)'/> | <rect width='9' height='9' fill='red'/>
          <radialGradient id='g' xlink:href='#x'/><rect width='9' height='9' fill='url(#g)'/> | <rect width='9' height='9' fill='none'/>
          <text><textPath href='#x'>Hem</textPath></text>    |
          """)
  void looksAsIfItDidNotRefer(String refers, String without) throws Exception {
    int[] wanted = pixels(read(without == null ? "" : without));
    for (String there : WRONG) {
      Drawing drawing = read(there + refers);
      assertArrayEquals(wanted, pixels(drawing), there);
      assertTrue(
          drawing.notes().stream().anyMatch(n -> n.text().contains("'x'")),
          () -> drawing.notes().toString());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<rect width='9' height='9' filter='url(#f)'/><filter id='f'><feImage href='#f'/></filter>",
        "<rect width='9' height='9' filter='url(#f)'/>"
            + "<filter id='f'><feDropShadow flood-color='hsl(9 9% 9%)'/></filter>",
        "<rect width='9' height='9' style='filter:blur(2px) drop-shadow(1px 1px red)'/>",
        "<rect width='9' height='9' filter='url(#f) blur(2)'/><filter id='f' filterUnits='x'/>"
      })
  void aFilterIsLeftOutWithANote(String filtered) throws Exception {
    Drawing drawing = read(filtered);
    assertArrayEquals(pixels(read("<rect width='9' height='9'/>")), pixels(drawing));
    assertEquals(1, drawing.notes().size(), drawing.notes()::toString);
    assertTrue(drawing.notes().get(0).changesPicture());
  }

  @Test
  void ofTwoElementsWithOneIdTheFirstCounts() throws Exception {
    Drawing drawing =
        read(
            "<defs><rect id='x' width='9' height='9'/><rect id='x' width='50' height='50'/></defs>"
                + "<use href='#x'/>");
    assertArrayEquals(pixels(read("<rect width='9' height='9'/>")), pixels(drawing));
    assertTrue(drawing.notes().toString().contains("'x' is given more than once"));
  }

  @Test
  void whatIsThereIsLeftAlone() throws Exception {
    Drawing drawing =
        read(
            "<style>.mask:hover,.filter:not(.b){fill:red}</style><clipPath id='x'>"
                + "<rect width='5' height='9'/></clipPath>"
                + "<rect width='9' height='9' clip-path='url(#x)' filter='none'/>");
    assertArrayEquals(pixels(read("<rect width='5' height='9'/>")), pixels(drawing));
    assertTrue(drawing.notes().isEmpty(), drawing.notes()::toString);
  }

  @Test
  void aThousandMissingIdsMakeOneShortNote() throws Exception {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < 1000; i++) {
      all.append("<use href='#m").append(i).append("'/>");
    }
    Drawing drawing = read(all.toString());
    assertEquals(1, drawing.notes().size());
    assertTrue(drawing.notes().get(0).text().length() < 200);
    assertFalse(drawing.notes().get(0).changesPicture());
  }

  private static Drawing read(String inner) throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
            + " viewBox='0 0 100 100'>"
            + REST
            + inner
            + "</svg>";
    return (Drawing)
        PictureReader.read(
            PictureSource.of("a.svg", svg.getBytes(StandardCharsets.UTF_8)), ReadLimits.DEFAULT);
  }

  private static int[] pixels(Drawing d) {
    return d.render(100, InkedBox.ofSize(100, 100)).getRGB(0, 0, 100, 100, null, 0, 100);
  }
}
