package dev.placket.pictures.svg.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import dev.placket.pictures.fault.ReadLimit;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.parser.PathHandler;
import org.apache.batik.parser.PathParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The memory of long paths and many uses is estimated, and refused, before anything is built. */
class DrawingMemoryTest {
  private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>";

  private static byte[] bytes(String inside) {
    return (SVG + inside + "</svg>").getBytes(StandardCharsets.UTF_8);
  }

  /** Counted by hand from SVG 2, 9.3: lines and full curves, smooth curves, arcs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0 | 1 | 0 | 0",
        "M0 0 1 1 2 2z | 4 | 0 | 0",
        "m0,0h1-1.5.5v1e-1 | 5 | 0 | 0",
        "M0 0h1 1-1-1.1.1 | 6 | 0 | 0",
        "M0 0c1 1 2 2 3 3 1 1 2 2 3 3q1 1 2 2 | 4 | 0 | 0",
        "M0 0s1 1 2 2t3 3 4 4 | 1 | 3 | 0",
        "M0 0a1 1 0 0 1 2 2 | 1 | 0 | 1",
        "M0 0a1 1 0 012 2 1 1 0 11-2-2 | 1 | 0 | 2",
        "M0 0zzz | 4 | 0 | 0",
        "M0 0h | 1 | 0 | 0",
        "none | 0 | 0 | 0",
      })
  void segmentsAreCounted(String data, long lines, long smooth, long arcs) {
    PathCount count = PathCount.path(data);
    assertEquals(
        List.of(lines, smooth, arcs), List.of(count.lines(), count.smooth(), count.arcs()));
  }

  @Test
  void pointsAreCountedByTwos() {
    assertEquals(3, PathCount.points("0,0 1-1 2.5.5").lines());
  }

  /** Batik's parser calls a handler for each segment. */
  @Property
  void asManyAsAParserFinds(@ForAll("data") String data) {
    long[] found = new long[3];
    PathHandler handler =
        (PathHandler)
            Proxy.newProxyInstance(
                getClass().getClassLoader(),
                new Class<?>[] {PathHandler.class},
                (proxy, method, args) -> {
                  String name = method.getName();
                  if (!name.equals("startPath") && !name.equals("endPath")) {
                    found[name.equals("arcRel") ? 2 : name.contains("Smooth") ? 1 : 0]++;
                  }
                  return null;
                });
    PathParser parser = new PathParser();
    parser.setPathHandler(handler);
    parser.parse(data);
    PathCount count = PathCount.path(data);
    assertEquals(found[0], count.lines(), data);
    assertEquals(found[1], count.smooth(), data);
    assertEquals(found[2], count.arcs(), data);
  }

  @Provide
  Arbitrary<String> data() {
    Arbitrary<String> number =
        Arbitraries.of(" 1", "-1", " .5", "-.5e1", " 25", "+3.25", " 1e-2", "\n7.");
    Arbitrary<String> flags = Arbitraries.of(" 0 0 ", " 01", " 1,0", " 11 ");
    Arbitrary<String> two = number.list().ofSize(2).map(n -> String.join("", n));
    Arbitrary<String> segment =
        Arbitraries.oneOf(
            number.map(n -> "h" + n),
            number.list().ofMinSize(1).ofMaxSize(4).map(n -> "v" + String.join("", n)),
            two.map(n -> "l" + n),
            two.map(n -> "t" + n),
            number.list().ofSize(8).map(n -> "s" + String.join("", n)),
            number.list().ofSize(12).map(n -> "c" + String.join("", n)),
            number.list().ofSize(4).map(n -> "q" + String.join("", n)),
            flags.map(f -> "a 1 2 0" + f + " 3 4"),
            Arbitraries.just("z"));
    return segment.list().ofMaxSize(12).map(all -> "M1 1" + String.join("", all));
  }

  /**
   * Twenty million characters, ten million segments; the parser refuses them, so that no document
   * exists that could be drawn.
   */
  @Test
  void aPathOfTenMillionSegmentsIsNeverBuilt() {
    byte[] drawing = bytes("<path d='M0 0h" + "1-".repeat(5_000_000) + "1'/>");
    PictureException e =
        assertThrows(
            PictureException.class,
            () -> parse("long.svg", drawing, ReadLimits.DEFAULT.with("elements", 9)));
    assertEquals(Optional.of(ReadLimit.MEMORY), e.limit());
    assertTrue(String.valueOf(e.getMessage()).contains("split its longest paths"), e.getMessage());
  }

  /** Each kind with the most segments that the limit has room for, and one more in a hundred. */
  @ParameterizedTest
  @CsvSource({"h1, 3000", "t1 1, 990", "a1 1 0 011 1, 650"})
  void aLimitOfAMillionBytesEndsThere(String segment, int fits) throws PictureException {
    ReadLimits limits = ReadLimits.DEFAULT.with("memory", 1_100_000);
    parse("fits.svg", bytes("<path d='M0 0" + segment.repeat(fits * 9 / 10) + "'/>"), limits);
    byte[] more = bytes("<path d='M0 0" + segment.repeat(fits * 12 / 10) + "'/>");
    assertThrows(PictureException.class, () -> parse("more.svg", more, limits));
  }

  /** The same path twice needs its kept share twice, but is built once at a time. */
  @Test
  void pathsAreBuiltOneAtATime() throws PictureException {
    String path = "<path d='M0 0" + "h1".repeat(2_000) + "'/>";
    ReadLimits limits = ReadLimits.DEFAULT.with("memory", 1_100_000);
    parse("two.svg", bytes(path + path), limits);
  }

  /** Each use is a copy; what is painted with one gradient is not. */
  @Test
  void usesAreCounted() throws PictureException {
    String part = "<g id='a'>" + "<path d='M1 1h9v9' stroke='#000'/>".repeat(100) + "</g>";
    ReadLimits limits = ReadLimits.DEFAULT.with("memory", 5_000_000);
    check(bytes("<defs>" + part + "</defs>" + "<use href='#a'/>".repeat(10)), limits);
    byte[] many = bytes("<defs>" + part + "</defs>" + "<use href='#a'/>".repeat(100));
    PictureException e = assertThrows(PictureException.class, () -> check(many, limits));
    assertEquals(Optional.of(ReadLimit.MEMORY), e.limit());
    String stops = "<stop offset='0'/>".repeat(100);
    check(
        bytes(
            "<linearGradient id='a'>"
                + stops
                + "</linearGradient>"
                + "<path d='M1 1h9' fill='url(#a)'/>".repeat(500)),
        limits);
  }

  private static SVGOMDocument parse(String name, byte[] drawing, ReadLimits limits)
      throws PictureException {
    return SvgParser.parse(name, drawing, limits, new ArrayList<>());
  }

  private static void check(byte[] drawing, ReadLimits limits) throws PictureException {
    var root = parse("uses.svg", drawing, limits).getDocumentElement();
    PlainReferences.adopt(root);
    SvgWeight.check("uses.svg", root, limits);
  }
}
