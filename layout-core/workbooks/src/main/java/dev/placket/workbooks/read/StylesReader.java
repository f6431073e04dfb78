package dev.placket.workbooks.read;

import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.Visitor;
import dev.placket.workbooks.parts.XmlElement;
import dev.placket.workbooks.parts.XmlPart;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads fonts, fills, borders and cell formats. */
final class StylesReader implements Visitor {
  /** Drawn widths of border styles in pixels, as far as readers agree. */
  private static final Map<String, Double> WIDTHS =
      Map.of("hair", 0.5, "thick", 3.0, "double", 3.0, "none", 0.0);

  private record Font(String name, double points, boolean bold) {}

  private final Deque<String> open = new ArrayDeque<>();
  private final List<Font> fonts = new ArrayList<>();
  private final List<Boolean> fills = new ArrayList<>();
  private final List<Map<String, Double>> borders = new ArrayList<>();
  private final List<int[]> formats = new ArrayList<>();
  private final List<CellStyles.Align> aligns = new ArrayList<>();

  static CellStyles read(Parts parts, String part) throws Refusal {
    StylesReader reader = new StylesReader();
    XmlPart.walk(parts, part, reader);
    return reader.styles();
  }

  @Override
  public void start(XmlElement e) {
    String in = open.isEmpty() ? "" : open.peek();
    switch (in) {
      case "fonts" -> fonts.add(new Font("", CellStyles.Look.PLAIN.points(), false));
      case "font" -> font(e);
      case "fills" -> fills.add(false);
      case "fill" -> fill(e);
      case "patternFill" -> colour(e);
      case "borders" -> borders.add(new HashMap<>());
      case "border" -> border(e);
      case "cellXfs" -> format(e);
      case "xf" -> align(e);
      default -> {
        // Nothing of a cell's look.
      }
    }
    open.push(e.name());
  }

  @Override
  public void end(String name) {
    open.pop();
  }

  private boolean within(String outer) {
    return open.contains(outer);
  }

  private void font(XmlElement e) {
    if (!within("fonts")) {
      return;
    }
    Font f = fonts.remove(fonts.size() - 1);
    fonts.add(
        switch (e.name()) {
          case "name" -> new Font(e.get("val", ""), f.points, f.bold);
          case "sz" -> new Font(f.name, size(e.number("val", f.points), f.points), f.bold);
          case "b" -> new Font(f.name, f.points, e.flag("val", true));
          default -> f;
        });
  }

  /** No font is smaller than 1 point or larger than 409 (ISO/IEC 29500-1, 18.4.11, in practice). */
  private static double size(double points, double other) {
    return points >= 1 && points <= 409 ? points : other;
  }

  private void fill(XmlElement e) {
    if (within("fills")) {
      boolean pattern = e.name().equals("patternFill");
      boolean drawn = !pattern || !e.get("patternType", "none").equals("none");
      fills.set(fills.size() - 1, drawn);
    }
  }

  /** A solid ground of white is no fill to the eye. */
  private void colour(XmlElement e) {
    if (within("fills") && e.name().equals("fgColor") && white(e)) {
      fills.set(fills.size() - 1, false);
    }
  }

  private static boolean white(XmlElement e) {
    String rgb = e.get("rgb", "");
    return rgb.equalsIgnoreCase("FFFFFFFF")
        || rgb.equalsIgnoreCase("00FFFFFF")
        || (e.get("theme", "").equals("0") && e.number("tint", 0) >= 0)
        || e.get("indexed", "").equals("9")
        || e.get("indexed", "").equals("65");
  }

  private void border(XmlElement e) {
    if (within("borders")) {
      String style = e.get("style", "none");
      double usual = style.startsWith("medium") ? 2 : style.equals("slantDashDot") ? 2 : 1;
      borders.get(borders.size() - 1).put(e.name(), WIDTHS.getOrDefault(style, usual));
    }
  }

  private void format(XmlElement e) {
    formats.add(new int[] {e.whole("fontId", 0), e.whole("fillId", 0), e.whole("borderId", 0)});
    aligns.add(CellStyles.Align.LEFT);
  }

  private void align(XmlElement e) {
    if (!within("cellXfs") || !e.name().equals("alignment")) {
      return;
    }
    CellStyles.Align align =
        switch (e.get("horizontal", "general")) {
          case "right" -> CellStyles.Align.RIGHT;
          case "center" -> CellStyles.Align.CENTRE;
          case "fill", "justify", "distributed" -> CellStyles.Align.KEPT;
          default -> CellStyles.Align.LEFT;
        };
    boolean kept = e.flag("wrapText", false) || e.flag("shrinkToFit", false);
    aligns.set(aligns.size() - 1, kept ? CellStyles.Align.KEPT : align);
  }

  private CellStyles styles() {
    List<CellStyles.Look> looks = new ArrayList<>();
    for (int i = 0; i < formats.size(); i++) {
      int[] f = formats.get(i);
      Font font = f[0] >= 0 && f[0] < fonts.size() ? fonts.get(f[0]) : new Font("", 11, false);
      boolean filled = f[1] >= 0 && f[1] < fills.size() && fills.get(f[1]);
      Map<String, Double> b = f[2] >= 0 && f[2] < borders.size() ? borders.get(f[2]) : Map.of();
      looks.add(
          new CellStyles.Look(
              font.points,
              font.bold,
              aligns.get(i),
              filled,
              Math.max(b.getOrDefault("left", 0.0), b.getOrDefault("start", 0.0)),
              b.getOrDefault("top", 0.0),
              Math.max(b.getOrDefault("right", 0.0), b.getOrDefault("end", 0.0)),
              b.getOrDefault("bottom", 0.0)));
    }
    Font first = fonts.isEmpty() ? new Font("", 11, false) : fonts.get(0);
    return new CellStyles(first.name, first.points, looks);
  }
}
