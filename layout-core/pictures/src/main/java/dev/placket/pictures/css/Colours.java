package dev.placket.pictures.css;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Colours in every notation of CSS Color 4 that names sRGB, brought to one that all readers know.
 */
final class Colours {
  /** CSS Color 4, 6.1, without transparent. */
  private static final Set<String> NAMES =
      Set.of(
          ("aliceblue antiquewhite aqua aquamarine azure beige bisque black blanchedalmond blue"
                  + " blueviolet brown burlywood cadetblue chartreuse chocolate coral"
                  + " cornflowerblue cornsilk crimson cyan darkblue darkcyan darkgoldenrod darkgray"
                  + " darkgreen darkgrey darkkhaki darkmagenta darkolivegreen darkorange darkorchid"
                  + " darkred darksalmon darkseagreen darkslateblue darkslategray darkslategrey"
                  + " darkturquoise darkviolet deeppink deepskyblue dimgray dimgrey dodgerblue"
                  + " firebrick floralwhite forestgreen fuchsia gainsboro ghostwhite gold goldenrod"
                  + " gray green greenyellow grey honeydew hotpink indianred indigo ivory khaki"
                  + " lavender lavenderblush lawngreen lemonchiffon lightblue lightcoral lightcyan"
                  + " lightgoldenrodyellow lightgray lightgreen lightgrey lightpink lightsalmon"
                  + " lightseagreen lightskyblue lightslategray lightslategrey lightsteelblue"
                  + " lightyellow lime limegreen linen magenta maroon mediumaquamarine mediumblue"
                  + " mediumorchid mediumpurple mediumseagreen mediumslateblue mediumspringgreen"
                  + " mediumturquoise mediumvioletred midnightblue mintcream mistyrose moccasin"
                  + " navajowhite navy oldlace olive olivedrab orange orangered orchid"
                  + " palegoldenrod palegreen paleturquoise palevioletred papayawhip peachpuff peru"
                  + " pink plum powderblue purple red rosybrown royalblue saddlebrown salmon"
                  + " sandybrown seagreen seashell sienna silver skyblue slateblue slategray"
                  + " slategrey snow springgreen steelblue tan teal thistle tomato turquoise violet"
                  + " wheat white whitesmoke yellow yellowgreen")
              .split(" "));

  /** Names that Batik 1.19 paints otherwise, with their values in CSS Color 4, 6.1. */
  private static final Map<String, String> MISREAD =
      Map.of(
          "gainsboro", "#dcdcdc",
          "lavenderblush", "#fff0f5",
          "salmon", "#fa8072",
          "thistle", "#d8bfd8");

  private Colours() {}

  /**
   * A colour as a name, as {@code #rgb} or {@code #rrggbb}, as {@code currentColor}, or, where one
   * can see through it, as {@code rgba(r,g,b,alpha)}; null if the text is no colour of sRGB.
   */
  static @Nullable String canonical(String text) {
    String low = text.toLowerCase(Locale.ROOT);
    if (NAMES.contains(low)) {
      return MISREAD.getOrDefault(low, low);
    }
    switch (low) {
      case "currentcolor":
        return "currentColor";
      case "transparent":
        return "rgba(0,0,0,0)";
      case "rebeccapurple":
        return "#663399";
      default:
        Seen seen = low.startsWith("#") ? hex(low.substring(1)) : function(low);
        if (seen == null) {
          return null;
        }
        boolean kept = low.startsWith("#") && seen.alpha == 1 && low.length() <= 7;
        return kept && low.length() != 5 ? low : seen.text();
    }
  }

  /** A colour's channels, 0 to 255, and its opacity, 0 to 1. */
  record Seen(int red, int green, int blue, double alpha) {
    String opaque() {
      return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }

    String text() {
      return alpha == 1
          ? opaque()
          : "rgba(" + red + "," + green + "," + blue + "," + Lengths.plain(alpha) + ")";
    }
  }

  /** The colour of a canonical text that one can see through; null of any other. */
  static @Nullable Seen seeThrough(@Nullable String canonical) {
    return canonical != null && canonical.startsWith("rgba(") ? function(canonical) : null;
  }

  private static @Nullable Seen hex(String digits) {
    if (!digits.matches("[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8}")) {
      return null;
    }
    boolean brief = digits.length() <= 4;
    int[] c = {0, 0, 0, 255};
    for (int i = 0; i < digits.length() / (brief ? 1 : 2); i++) {
      c[i] =
          brief
              ? 17 * Character.digit(digits.charAt(i), 16)
              : Integer.parseInt(digits.substring(2 * i, 2 * i + 2), 16);
    }
    return new Seen(c[0], c[1], c[2], c[3] / 255.0);
  }

  private static @Nullable Seen function(String low) {
    int open = low.indexOf('(');
    String name = open < 0 ? "" : low.substring(0, open);
    String inside = Scan.arguments(low, name);
    if (inside == null || !Set.of("rgb", "rgba", "hsl", "hsla", "hwb").contains(name)) {
      return null;
    }
    List<String> parts = List.of(inside.strip().split("\\s*[,/]\\s*|\\s+"));
    if (parts.size() < 3 || parts.size() > 4) {
      return null;
    }
    Double alpha = parts.size() == 4 ? share(parts.get(3)) : (Double) 1.0;
    if (alpha == null) {
      return null;
    }
    double a = clamp(alpha);
    return name.startsWith("rgb") ? rgb(parts, inside.contains(","), a) : turned(name, parts, a);
  }

  /** The notation with commas takes three numbers or three percentages (CSS Color 4, 5.1). */
  private static @Nullable Seen rgb(List<String> parts, boolean commas, double alpha) {
    int[] c = new int[3];
    long percents = parts.subList(0, 3).stream().filter(part -> part.endsWith("%")).count();
    if (commas && percents % 3 != 0) {
      return null;
    }
    for (int i = 0; i < 3; i++) {
      Double value = share(parts.get(i));
      if (value == null) {
        return null;
      }
      boolean percent = parts.get(i).endsWith("%");
      c[i] = (int) Math.round(Math.max(0, Math.min(255, percent ? value * 255 : value)));
    }
    return new Seen(c[0], c[1], c[2], alpha);
  }

  /** Colours by their hue (CSS Color 4, clauses 7 and 8). */
  private static @Nullable Seen turned(String name, List<String> parts, double alpha) {
    Double hue = parts.get(0).equals("none") ? (Double) 0.0 : Lengths.degrees(parts.get(0));
    Double second = hundredths(parts.get(1));
    Double third = hundredths(parts.get(2));
    if (hue == null || second == null || third == null) {
      return null;
    }
    double[] c = new double[3];
    if (name.equals("hwb")) {
      double white = second + third > 1 ? second / (second + third) : second;
      double black = second + third > 1 ? third / (second + third) : third;
      for (int i = 0; i < 3; i++) {
        c[i] = fromHsl(hue, 1, 0.5, i) * (1 - white - black) + white;
      }
    } else {
      for (int i = 0; i < 3; i++) {
        c[i] = fromHsl(hue, second, third, i);
      }
    }
    return new Seen(byteOf(c[0]), byteOf(c[1]), byteOf(c[2]), alpha);
  }

  private static double fromHsl(double hue, double saturation, double lightness, int channel) {
    double at = channel == 0 ? 0 : channel == 1 ? 8 : 4;
    double k = ((at + hue / 30) % 12 + 12) % 12;
    double a = saturation * Math.min(lightness, 1 - lightness);
    return lightness - a * Math.max(-1, Math.min(Math.min(k - 3, 9 - k), 1));
  }

  private static int byteOf(double c) {
    return (int) Math.round(255 * clamp(c));
  }

  /** Percent of saturation, lightness and the like; the sign may be missing. */
  private static @Nullable Double hundredths(String text) {
    Double value = share(text);
    return value == null ? null : (Double) clamp(text.endsWith("%") ? value : value / 100);
  }

  private static @Nullable Double share(String text) {
    return text.equals("none") ? (Double) 0.0 : Lengths.share(text);
  }

  private static double clamp(double c) {
    return Math.max(0, Math.min(1, c));
  }
}
