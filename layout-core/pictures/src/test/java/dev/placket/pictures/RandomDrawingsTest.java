package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Small drawings of degenerate values: read, probed and drawn, or refused in one message. */
class RandomDrawingsTest {
  /** An object's default text: its class, an at sign, its hash. */
  private static final Pattern HASH = Pattern.compile("\\w@[0-9a-f]{4,}");

  @Property(tries = 400)
  void isDrawnOrRefusedInOneMessage(@ForAll("drawings") String inner) {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
            + " viewBox='0 0 200 200'><path d='M1 1H199V199Z' fill='none' stroke='#000'/>"
            + inner
            + "</svg>";
    PictureSource source = PictureSource.of("a.svg", svg.getBytes(StandardCharsets.UTF_8));
    ReadLimits limits = ReadLimits.DEFAULT.with("steps", 500_000);
    String read = "";
    try {
      Drawing d = (Drawing) PictureReader.read(source, limits);
      d.render(60, InkedBox.ofSize(200, 200));
      d.notes().forEach(n -> assertFalse(HASH.matcher(n.text()).find(), n.text()));
    } catch (PictureException e) {
      read = String.valueOf(e.getMessage());
      assertTrue(read.startsWith("a.svg") && read.contains("; "), read);
      assertFalse(HASH.matcher(read).find() || read.contains("\n"), read);
    }
    String probed = "";
    try {
      PictureReader.probe(source, limits);
    } catch (PictureException e) {
      probed = String.valueOf(e.getMessage());
    }
    assertEquals(read, probed, "what is probed is read, and the reverse");
  }

  @Provide
  Arbitrary<String> drawings() {
    return element(3).list().ofMinSize(1).ofMaxSize(5).map(all -> String.join("", all));
  }

  private static Arbitrary<String> element(int deep) {
    Arbitrary<String> names =
        Arbitraries.of(
            "rect",
            "circle",
            "ellipse",
            "line",
            "path",
            "polygon",
            "g",
            "use",
            "marker",
            "mask",
            "clipPath",
            "pattern",
            "linearGradient",
            "radialGradient",
            "stop",
            "symbol",
            "text",
            "tspan",
            "svg",
            "a",
            "switch",
            "textPath",
            "defs",
            "filter");
    Arbitrary<String> inner =
        deep == 0
            ? Arbitraries.of("", "A")
            : Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(2, Arbitraries.of("", "A")),
                net.jqwik.api.Tuple.of(
                    1,
                    Arbitraries.lazy(() -> element(deep - 1))
                        .list()
                        .ofMaxSize(2)
                        .map(all -> String.join("", all))));
    return Combinators.combine(names, attribute().list().ofMaxSize(6), inner)
        .as(
            (name, attributes, content) -> {
              StringBuilder open = new StringBuilder("<" + name);
              for (String a : attributes) {
                String key = " " + a.substring(0, a.indexOf('=') + 1);
                if (open.indexOf(key) < 0) {
                  open.append(' ').append(a);
                }
              }
              return open + ">" + content + "</" + name + ">";
            });
  }

  private static Arbitrary<String> attribute() {
    Arbitrary<String> number =
        Arbitraries.of("0", "-1", "1e-30", "1e30", "NaN", "", "1", "20", "50%", "-1e30", "1e-9");
    Arbitrary<String> id = Arbitraries.of("a", "b", "c", "missing");
    List<String> sizes =
        List.of(
            "x",
            "y",
            "width",
            "height",
            "r",
            "rx",
            "cx",
            "cy",
            "x1",
            "x2",
            "y2",
            "offset",
            "stroke-width",
            "font-size",
            "markerWidth",
            "refX",
            "stroke-dasharray",
            "opacity",
            "stroke-miterlimit",
            "stroke-dashoffset",
            "fx",
            "startOffset",
            "letter-spacing");
    return Arbitraries.oneOf(
        Combinators.combine(Arbitraries.of(sizes), number).as((k, n) -> k + "='" + n + "'"),
        id.map(i -> "id='" + i + "'"),
        id.map(i -> "href='#" + i + "'"),
        Combinators.combine(
                Arbitraries.of(
                    "fill", "stroke", "mask", "clip-path", "marker-mid", "marker-end", "filter"),
                id)
            .as((k, i) -> k + "='url(#" + i + ")'"),
        Combinators.combine(number, number, number, number)
            .as((a, b, c, d) -> "d='M" + a + " " + b + "L" + c + " " + d + "C1 1 2 2 90 90Z'"),
        Combinators.combine(number, number, number, number)
            .as((a, b, c, d) -> "viewBox='" + a + " " + b + " " + c + " " + d + "'"),
        Combinators.combine(
                Arbitraries.of("transform", "gradientTransform", "patternTransform"),
                Arbitraries.of("scale", "skewX", "rotate"),
                number)
            .as((k, f, n) -> k + "='" + f + "(" + n + ")'"),
        Arbitraries.of(
            "patternUnits='userSpaceOnUse'",
            "gradientUnits='userSpaceOnUse'",
            "spreadMethod='reflect'",
            "markerUnits='userSpaceOnUse'",
            "orient='auto'",
            "maskUnits='userSpaceOnUse'",
            "clipPathUnits='objectBoundingBox'",
            "stroke='red'",
            "points='0,0 1e30,1 5 5'",
            "display='none'",
            "preserveAspectRatio='none'"));
  }
}
