package dev.placket.pictures;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import dev.placket.layout.units.Length;
import dev.placket.pictures.base.FineDetail;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.PrintLimits;
import dev.placket.pictures.base.PrintedDetail;
import dev.placket.pictures.base.PrintedDetail.Kind;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finest lines, lettering and gaps of drawings that are measured by hand. */
class FineDetailTest {
  private static FineDetail of(String body) throws PictureException {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 100'>" + body + "</svg>";
    PictureSource source = PictureSource.of("a.svg", svg.getBytes(StandardCharsets.UTF_8));
    return ((Drawing) PictureReader.read(source, ReadLimits.DEFAULT)).fineDetail();
  }

  @Test
  void theFinestLineIsFoundAfterTransforms() throws Exception {
    FineDetail d =
        of(
            "<path d='M10 10H90' stroke='#000' stroke-width='2'/><g transform='scale(0.5 2)'>"
                + "<path d='M30 20H150' stroke='#000' stroke-width='3'/></g>");
    // Squeezed to a half across, a stroke of 3 is 1.5 wide where it runs upright.
    assertEquals(1.5, requireNonNull(d.line()), 1e-9);
    assertNull(d.gap());
    assertNull(d.lettering());
  }

  @Test
  void whatIsNotSeenDoesNotCount() throws Exception {
    FineDetail d =
        of(
            "<path d='M10 10H90' stroke='#000' stroke-width='2'/>"
                + "<path d='M10 20H90' stroke='#fff' stroke-width='1'/>"
                + "<path d='M10 30H90' stroke='#000' stroke-opacity='0' stroke-width='1'/>"
                + "<path d='M10 300H90' stroke='#000' stroke-width='1'/>"
                + "<path d='M10 40H90' stroke='#000' stroke-width='1' visibility='hidden'/>");
    assertEquals(2, requireNonNull(d.line()), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    // Caps that are round or square reach half the width of 2 into the gap from each end.
    "butt,8 5,5",
    "round,8 5,3",
    "square,8 5,3",
    "round,8 1.5,0",
    "butt,6 4 2 1,1",
    // Three lengths take turns as dash and gap: every one is a gap once.
    "butt,6 4 2,2"
  })
  void gapsAreClearOfTheirCaps(String cap, String dashes, double clear) throws Exception {
    FineDetail d =
        of(
            "<g transform='scale(0.5)'><path d='M10 10H190' stroke='#000' stroke-width='2'"
                + " stroke-linecap='"
                + cap
                + "' stroke-dasharray='"
                + dashes
                + "'/></g>");
    assertEquals(clear / 2, requireNonNull(d.gap()), 1e-6);
  }

  @Test
  void letteringIsMeasuredByItsCapitals() throws Exception {
    FineDetail d =
        of(
            "<text x='10' y='50' font-size='20'>HEM</text><g transform='scale(0.5)'>"
                + "<text x='10' y='150' font-size='16'>fold</text></g>");
    // A capital is about 0.7 of the font size (from memory), and 16 is halved.
    assertEquals(5.6, requireNonNull(d.lettering()), 0.2);
  }

  @Test
  void aLimitThatIsMetIsNoWarning() {
    FineDetail d = new FineDetail(1.0, 10.0, 2.0);
    // One unit prints at 0.18 mm: line 0.18, capitals 1.8, gap 0.36.
    PrintedDetail printed = d.printed(Length.mm(0.18));
    assertEquals(
        List.of(Kind.GAP),
        printed.under(PrintLimits.DEFAULT).stream().map(PrintedDetail.Warning::kind).toList());
    assertEquals(0.36, printed.under(PrintLimits.DEFAULT).get(0).printed().mm(), 1e-9);
    assertEquals(3, d.printed(Length.mm(0.17)).under(PrintLimits.DEFAULT).size());
    assertEquals(List.of(), FineDetail.NONE.printed(Length.mm(1)).under(PrintLimits.DEFAULT));
  }
}
