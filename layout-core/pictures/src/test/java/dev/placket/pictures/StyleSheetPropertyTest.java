package dev.placket.pictures;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Sheets of rules and the same in attributes are one drawing; random sheets end in one message. */
class StyleSheetPropertyTest {
  private static final List<String> PROPERTIES = List.of("fill", "stroke", "stroke-width");
  private static final List<List<String>> VALUES =
      List.of(
          List.of("red", "#0f0", "rgb(0 0 255)", "hsl(60, 100%, 50%)"),
          List.of("black", "#808", "none", "rgb(10%, 20%, 30%)"),
          List.of("2", "calc(1px + 2px)", "4px", "0"));

  /** What the values above mean, worked out by hand. */
  private static final Map<String, String> PLAIN =
      Map.of(
          "rgb(0 0 255)", "#0000ff",
          "hsl(60, 100%, 50%)", "#ffff00",
          "rgb(10%, 20%, 30%)", "#1a334d",
          "calc(1px + 2px)", "3");

  /** A rule for a class, with a weight of its own. */
  private record Rule(String kind, String property, String value, boolean important) {
    String css() {
      return kind + "{" + property + ":" + value + (important ? "!important" : "") + "}";
    }
  }

  private static List<Rule> rules(Random random) {
    List<Rule> rules = new ArrayList<>();
    for (int i = random.nextInt(12); i >= 0; i--) {
      int p = random.nextInt(3);
      String kind = List.of("rect", ".a", ".b", "*", "#r0", "#r1").get(random.nextInt(6));
      String value = VALUES.get(p).get(random.nextInt(4));
      rules.add(new Rule(kind, PROPERTIES.get(p), value, random.nextInt(4) == 0));
    }
    return rules;
  }

  private static boolean matches(String kind, int rect) {
    return switch (kind) {
      case "*", "rect" -> true;
      case ".a" -> rect < 2;
      case ".b" -> rect > 0;
      default -> kind.equals("#r" + rect);
    };
  }

  private static int weight(Rule rule) {
    int kind =
        rule.kind.startsWith("#")
            ? 3
            : rule.kind.startsWith(".") ? 2 : rule.kind.equals("rect") ? 1 : 0;
    return kind + (rule.important ? 10 : 0);
  }

  private static String rect(int i, Map<String, String> attributes) {
    StringBuilder rect = new StringBuilder("<rect id='r" + i + "' x='" + (5 + 30 * i) + "' y='5'");
    rect.append(" width='20' height='20' class='").append(i < 2 ? "a " : "");
    rect.append(i > 0 ? "b" : "").append('\'');
    attributes.forEach((n, v) -> rect.append(' ').append(n).append("='").append(v).append('\''));
    return rect.append("/>").toString();
  }

  private static int[] pixels(String inner) throws PictureException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 30'>"
            + inner
            + "<path d='M0 29H90' style='fill:none!important;stroke:#123!important;"
            + "stroke-width:1!important'/></svg>";
    Drawing d =
        (Drawing)
            PictureReader.read(
                PictureSource.of("p.svg", svg.getBytes(StandardCharsets.UTF_8)),
                ReadLimits.DEFAULT);
    BufferedImage image = d.render(90, new InkedBox(0, 0, 90, 30));
    return image.getRGB(0, 0, 90, 30, null, 0, 90);
  }

  private static String drawing(List<Rule> rules) {
    StringBuilder svg = new StringBuilder("<style>");
    rules.forEach(rule -> svg.append(rule.css()));
    svg.append("</style>");
    for (int i = 0; i < 3; i++) {
      svg.append(rect(i, Map.of()));
    }
    return svg.toString();
  }

  @Property(tries = 60)
  void rulesWrittenIntoAttributesByHandChangeNoPixel(@ForAll long seed) throws Exception {
    List<Rule> rules = rules(new Random(seed));
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < 3; i++) {
      Map<String, String> attributes = new LinkedHashMap<>();
      Map<String, Integer> weights = new LinkedHashMap<>();
      for (Rule rule : rules) {
        int so = weights.getOrDefault(rule.property, -1);
        if (matches(rule.kind, i) && weight(rule) >= so) {
          weights.put(rule.property, weight(rule));
          attributes.put(rule.property, PLAIN.getOrDefault(rule.value, rule.value));
        }
      }
      plain.append(rect(i, attributes));
    }
    assertArrayEquals(pixels(plain.toString()), pixels(drawing(rules)));
  }

  @Property(tries = 40)
  void reorderingRulesThatDoNotMeetChangesNoPixel(@ForAll long seed) throws Exception {
    Random random = new Random(seed);
    List<Rule> rules = new ArrayList<>();
    for (String kind : List.of("rect", ".a", ".b", "#r0", "#r1")) {
      // One rule of each weight and property; .a and .b weigh the same and differ in property.
      int p = kind.equals(".a") ? 0 : kind.equals(".b") ? 1 : random.nextInt(3);
      rules.add(new Rule(kind, PROPERTIES.get(p), VALUES.get(p).get(random.nextInt(4)), false));
    }
    int[] before = pixels(drawing(rules));
    Collections.shuffle(rules, random);
    assertArrayEquals(before, pixels(drawing(rules)));
  }

  @Provide
  Arbitrary<String> css() {
    return Arbitraries.of(
            "{",
            "}",
            "(",
            ")",
            "[",
            "]",
            ":",
            ";",
            ",",
            "'",
            "\"",
            "\\",
            "/*",
            "*/",
            "@media",
            "@layer a",
            "print",
            "screen",
            "not ",
            ".a",
            "#r0",
            "rect",
            "*",
            ":not(",
            ":is(",
            ":nth-child(",
            "2n+1",
            "::before",
            "~",
            ">",
            "+",
            "&",
            "fill",
            "stroke",
            "--x",
            "var(",
            "var(--x",
            "calc(",
            "1px",
            "2%",
            "1e9",
            "red",
            "#f008",
            "rgb(",
            "hsl(",
            "!important",
            "inherit",
            "initial",
            "currentColor",
            "url(#a)",
            "font",
            "marker",
            "color",
            "\n",
            " ",
            "-",
            "e",
            "0",
            "é")
        .list()
        .ofMaxSize(40)
        .map(parts -> String.join("", parts));
  }

  @Property(tries = 1500)
  void anySheetEndsInADrawingOrOneMessage(@ForAll("css") String css) {
    try {
      pixels("<style><![CDATA[" + css + "]]></style>" + rect(0, Map.of()));
    } catch (PictureException e) {
      String message = String.valueOf(e.getMessage());
      if (!message.startsWith("p.svg") || message.contains("cannot be drawn")) {
        throw new AssertionError(message, e);
      }
    }
  }
}
