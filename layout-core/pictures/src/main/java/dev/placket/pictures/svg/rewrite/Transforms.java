package dev.placket.pictures.svg.rewrite;

import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The property {@code transform} with its {@code transform-origin} (CSS Transforms 1) becomes the
 * attribute, as one matrix.
 */
final class Transforms implements Rewriting {
  private static final Set<String> GRADIENTS = Set.of("linearGradient", "radialGradient");

  private static final Pattern SPATIAL =
      Pattern.compile(
          "3d|perspective|rotate[xyz]|translatez|scalez|calc", Pattern.CASE_INSENSITIVE);

  @Override
  public void rewrite(Element root, List<String> notes) {
    for (Element e : Styles.all(root)) {
      String property = Styles.declared(e, "transform");
      String origin = Styles.own(e, "transform-origin");
      if (property != null || !origin.isEmpty()) {
        rewrite(e, property, origin, notes);
      }
    }
  }

  private static void rewrite(
      Element e, @Nullable String property, String origin, List<String> notes) {
    String name = attribute(e);
    double[] view = view(e);
    String text = property == null ? e.getAttributeNS(null, name) : property;
    Styles.remove(e, "transform-origin");
    if (property != null) {
      String kept = e.getAttributeNS(null, name);
      Styles.remove(e, "transform");
      if (!kept.isEmpty()) {
        e.setAttributeNS(null, name, kept);
      }
    }
    if (text.isBlank() || text.equals("none")) {
      e.removeAttributeNS(null, name);
      return;
    }
    AffineTransform at = TransformList.read(text, view[0], view[1]);
    if (at == null) {
      if (SPATIAL.matcher(text).find()) {
        notes.add("a transform in space or with a formula is left out; flatten it before export");
      }
      return;
    }
    double[] about = TransformList.origin(origin, view[0], view[1]);
    AffineTransform whole = AffineTransform.getTranslateInstance(about[0], about[1]);
    whole.concatenate(at);
    whole.translate(-about[0], -about[1]);
    e.setAttributeNS(null, name, TransformList.write(whole));
  }

  private static String attribute(Element e) {
    String name = String.valueOf(e.getLocalName());
    return GRADIENTS.contains(name)
        ? "gradientTransform"
        : name.equals("pattern") ? "patternTransform" : "transform";
  }

  /** The size of the viewport that an element stands in, in its units. */
  static double[] view(Element e) {
    for (Node n = e.getParentNode(); n instanceof Element at; n = n.getParentNode()) {
      String name = String.valueOf(at.getLocalName());
      if (name.equals("svg") || name.equals("symbol")) {
        String[] box = at.getAttributeNS(null, "viewBox").strip().split("\\s*,\\s*|\\s+");
        double[] size =
            box.length == 4
                ? numbers(box[2], box[3])
                : numbers(at.getAttributeNS(null, "width"), at.getAttributeNS(null, "height"));
        if (size != null) {
          return size;
        }
      }
    }
    return new double[2];
  }

  private static double @Nullable [] numbers(String width, String height) {
    Double w = TransformList.pixels(width);
    Double h = TransformList.pixels(height);
    return w == null || h == null || Double.isNaN(w + h) ? null : new double[] {w, h};
  }
}
