package dev.placket.pictures.svg.rewrite;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** The path that a rectangle, circle or ellipse stands for, in the order of SVG 2, 10.2 to 10.4. */
final class EquivalentPath {
  /** Sizes along which a share is one of the height. */
  private static final Set<String> UPRIGHT = Set.of("y", "height", "cy", "ry");

  private final StringBuilder d = new StringBuilder();

  private EquivalentPath() {}

  /** The data of the path, "" if nothing is drawn, or null where its size is not known here. */
  static @Nullable String of(Element shape) {
    return switch (String.valueOf(shape.getLocalName())) {
      case "rect" -> rect(shape);
      case "circle" -> oval(shape, "r", "r");
      default -> oval(shape, "rx", "ry");
    };
  }

  private static @Nullable String oval(Element e, String across, String down) {
    Double cx = length(e, "cx");
    Double cy = length(e, "cy");
    Double rx = length(e, across);
    Double ry = length(e, down);
    if (cx == null || cy == null || rx == null || ry == null) {
      return null;
    }
    if (rx <= 0 || ry <= 0) {
      return "";
    }
    EquivalentPath p = new EquivalentPath().to('M', cx + rx, cy);
    p.arc(rx, ry, cx, cy + ry).arc(rx, ry, cx - rx, cy);
    p.arc(rx, ry, cx, cy - ry).arc(rx, ry, cx + rx, cy);
    return p.d.append('Z').toString();
  }

  private static @Nullable String rect(Element e) {
    Double x = length(e, "x");
    Double y = length(e, "y");
    Double w = length(e, "width");
    Double h = length(e, "height");
    Double rx = length(e, e.hasAttributeNS(null, "rx") ? "rx" : "ry");
    Double ry = length(e, e.hasAttributeNS(null, "ry") ? "ry" : "rx");
    if (x == null || y == null || w == null || h == null || rx == null || ry == null) {
      return null;
    }
    if (w <= 0 || h <= 0) {
      return "";
    }
    double a = Math.min(rx, w / 2);
    double b = Math.min(ry, h / 2);
    EquivalentPath p = new EquivalentPath();
    if (a <= 0 || b <= 0) {
      p.to('M', x, y).to('L', x + w, y).to('L', x + w, y + h).to('L', x, y + h);
    } else {
      p.to('M', x + a, y).to('L', x + w - a, y).arc(a, b, x + w, y + b);
      p.to('L', x + w, y + h - b).arc(a, b, x + w - a, y + h);
      p.to('L', x + a, y + h).arc(a, b, x, y + h - b);
      p.to('L', x, y + b).arc(a, b, x + a, y);
    }
    return p.d.append('Z').toString();
  }

  private EquivalentPath to(char command, double x, double y) {
    d.append(command).append(x).append(' ').append(y);
    return this;
  }

  private EquivalentPath arc(double rx, double ry, double x, double y) {
    d.append('A').append(rx).append(' ').append(ry).append(" 0 0 1 ");
    d.append(x).append(' ').append(y);
    return this;
  }

  private static @Nullable Double length(Element e, String name) {
    String text = e.getAttributeNS(null, name).strip();
    if (text.isEmpty()) {
      return 0.0;
    }
    if (!text.endsWith("%")) {
      return TransformList.pixels(text);
    }
    double[] view = Transforms.view(e);
    double whole =
        name.equals("r")
            ? Math.hypot(view[0], view[1]) / Math.sqrt(2)
            : view[UPRIGHT.contains(name) ? 1 : 0];
    return whole > 0
        ? (Double) (Double.parseDouble(text.substring(0, text.length() - 1)) * whole / 100)
        : null;
  }
}
