package dev.placket.pictures.svg.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.Drawing;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gradients and patterns without an inverse, or with numbers out of all proportion. */
class PaintMendingTest {
  private static final String FRAME =
      "<rect x='1' y='1' width='198' height='198' fill='none' stroke='black'/>";

  /**
   * The colour in the middle of a square of 160 filled with 'p', as 0xAARRGGBB. Expected values are
   * by hand from SVG 2: a flattened paint paints nothing; what repeats without end is its mean.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          flat matrix      | linearGradient gradientTransform='matrix(0 0 0 0 0 0)' | stops | 00000000
          scaled to nought | linearGradient gradientTransform='scale(1 0)'          | stops | 00000000
          flat, radial     | radialGradient gradientTransform='matrix(1 1 1 1 0 0)' | stops | 00000000
          flat pattern     | pattern width='.1' height='.1' patternTransform='scale(0)' | quarter | 00000000
          fine, reflected  | linearGradient gradientUnits='userSpaceOnUse' x2='1e-9' spreadMethod='reflect' | stops | FF800000
          fine, repeated   | linearGradient gradientUnits='userSpaceOnUse' x2='1e-9' spreadMethod='repeat' | stops | FF800000
          fine, padded     | linearGradient gradientUnits='userSpaceOnUse' x2='1e-9' | stops | FFFF0000
          fine, edge right | linearGradient gradientUnits='userSpaceOnUse' x1='150' x2='150.0001' | stops | FF000000
          fine, edge left  | linearGradient gradientUnits='userSpaceOnUse' x1='50' x2='50.00000001' | stops | FFFF0000
          without end      | linearGradient gradientUnits='userSpaceOnUse' x1='-1e30' x2='1e30' | stops | FF800000
          radius of nought | radialGradient gradientUnits='userSpaceOnUse' r='0' | stops | FFFF0000
          radius too small | radialGradient gradientUnits='userSpaceOnUse' r='1e-9' spreadMethod='reflect' | stops | FF800000
          radius too large | radialGradient gradientUnits='userSpaceOnUse' r='1e30' | stops | FF000000
          fine pattern     | pattern patternUnits='userSpaceOnUse' width='1e-4' height='1e-4' | quarter | 40000000
          scaled fine      | pattern patternUnits='userSpaceOnUse' width='1e-4' height='1e-4' patternTransform='scale(1e-9)' | quarter | 40000000
          """)
  void paintsAsSvgAsks(String name, String open, String kind, String argb) throws Exception {
    String inner =
        kind.equals("stops")
            ? "<stop offset='0'/><stop offset='1' stop-color='#f00'/>"
            : "<rect width='.00005' height='.00005'/>";
    String element = open.split(" ")[0];
    int got =
        middle(
            "<"
                + open
                + " id='p'>"
                + inner
                + "</"
                + element
                + ">"
                + FRAME
                + "<rect x='20' y='20' width='160' height='160' fill='url(#p)'/>");
    int wanted = Integer.parseUnsignedInt(argb, 16);
    for (int shift = 0; shift < 32; shift += 8) {
      assertEquals(wanted >>> shift & 255, got >>> shift & 255, 3, () -> Integer.toHexString(got));
    }
  }

  @Test
  void whatATransformFlattensIsNotDrawnAndEmptyGroupsDoNoHarm() throws Exception {
    int got =
        middle(
            FRAME
                + "<g/><g transform='scale(0)'><rect width='200' height='200'/><g/></g>"
                + "<g transform='matrix(1 1 1 1 0 0)'><rect width='200' height='200'/></g><g/>");
    assertEquals(0, got);
  }

  @Property(tries = 200)
  void drawsWhateverItReads(
      @ForAll("numbers") String a,
      @ForAll("numbers") String b,
      @ForAll("numbers") String c,
      @ForAll("numbers") String d,
      @ForAll("servers") String server)
      throws Exception {
    String made = String.format(server, a, b, c, d);
    try {
      middle(
          made
              + FRAME
              + "<rect x='20' y='20' width='160' height='160' fill='url(#p)'/>"
              + "<path d='M10 10L190 100' stroke='url(#p)' stroke-width='9'/>");
    } catch (PictureException e) {
      assertTrue(String.valueOf(e.getMessage()).startsWith("a.svg"), e.getMessage());
    }
  }

  @Provide
  Arbitrary<String> numbers() {
    return Arbitraries.of(
        "0", "-1", "1", "1e-30", "-1e-30", "1e30", "-1e30", "1e-9", "1e9", "0.5", "50", "200");
  }

  @Provide
  Arbitrary<String> servers() {
    String stops = "<stop offset='0.2'/><stop offset='0.7' stop-color='#f00' stop-opacity='.5'/>";
    String tile = "<rect width='1' height='.5'/>";
    return Arbitraries.of(
            "<linearGradient id='p' x1='%s' y1='%s' x2='%s' y2='%s'",
            "<linearGradient id='p' gradientTransform='matrix(%s %s %s %s 0 0)'",
            "<linearGradient id='p' gradientUnits='userSpaceOnUse' x1='%s' y1='%s' x2='%s' y2='%s'",
            "<radialGradient id='p' cx='%s' cy='%s' r='%s' fx='%s'",
            "<radialGradient id='p' gradientUnits='userSpaceOnUse' cx='%s' cy='%s' r='%s' fy='%s'",
            "<radialGradient id='p' gradientTransform='matrix(%s %s %s %s 5 5)'",
            "<pattern id='p' x='%s' y='%s' width='%s' height='%s'",
            "<pattern id='p' patternUnits='userSpaceOnUse' x='%s' y='%s' width='%s' height='%s'",
            "<pattern id='p' width='.1' height='.1' patternTransform='matrix(%s %s %s %s 0 0)'")
        .flatMap(
            open ->
                open.startsWith("<p")
                    ? Arbitraries.of("", " viewBox='0 0 1 1'")
                        .map(v -> open + v + ">" + tile + "</pattern>")
                    : Arbitraries.of("pad", "reflect", "repeat")
                        .map(
                            s ->
                                open
                                    + " spreadMethod='"
                                    + s
                                    + "'>"
                                    + stops
                                    + "</"
                                    + open.substring(1, open.indexOf(' '))
                                    + ">"));
  }

  private static int middle(String inner) throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 200'>" + inner + "</svg>";
    Drawing drawing =
        (Drawing)
            PictureReader.read(
                PictureSource.of("a.svg", svg.getBytes(StandardCharsets.UTF_8)),
                ReadLimits.DEFAULT);
    BufferedImage image = drawing.render(200, InkedBox.ofSize(200, 200));
    return image.getRGB(100, 100);
  }
}
