package dev.placket.pictures.svg.bridge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.css.engine.CSSStylableElement;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.w3c.dom.Element;

/** Sorts what a shape is painted with by {@code paint-order} (SVG 2, 13.8). */
public final class PaintOrder {
  private static final List<String> NORMAL = List.of("fill", "stroke", "markers");

  private PaintOrder() {}

  /** Sorts the painters of a built node and of all it holds. */
  public static void apply(GraphicsNode node, BridgeContext context) {
    if (node instanceof CompositeGraphicsNode group) {
      for (int i = 0; i < group.size(); i++) {
        apply((GraphicsNode) group.get(i), context);
      }
    } else if (node instanceof ShapeNode shape
        && shape.getShapePainter() instanceof CompositeShapePainter several) {
      shape.setShapePainter(placed(several));
      Element e = context.getElement(node);
      List<String> order = e == null ? NORMAL : order(e);
      if (!order.equals(NORMAL)) {
        List<ShapePainter> painters = new ArrayList<>();
        collect((CompositeShapePainter) shape.getShapePainter(), painters);
        painters.sort(Comparator.comparingInt(p -> order.indexOf(kind(p))));
        CompositeShapePainter sorted = new CompositeShapePainter(shape.getShape());
        painters.forEach(sorted::addShapePainter);
        shape.setShapePainter(sorted);
      }
    }
  }

  /** The same painters, with markers in their right places. */
  private static CompositeShapePainter placed(CompositeShapePainter several) {
    List<ShapePainter> painters = new ArrayList<>();
    collect(several, painters);
    if (painters.stream()
        .allMatch(p -> !(p instanceof MarkerShapePainter) || p instanceof PlacedMarkers)) {
      return several;
    }
    CompositeShapePainter all = new CompositeShapePainter(several.getShape());
    painters.forEach(
        p ->
            all.addShapePainter(
                p instanceof MarkerShapePainter markers ? new PlacedMarkers(markers) : p));
    return all;
  }

  private static void collect(CompositeShapePainter several, List<ShapePainter> painters) {
    for (int i = 0; i < several.getShapePainterCount(); i++) {
      ShapePainter each = several.getShapePainter(i);
      if (each instanceof CompositeShapePainter inner) {
        collect(inner, painters);
      } else {
        painters.add(each);
      }
    }
  }

  private static String kind(ShapePainter painter) {
    return painter instanceof FillShapePainter
        ? "fill"
        : painter instanceof MarkerShapePainter ? "markers" : "stroke";
  }

  /** Inherited, also into what a use shows; a value that is none leaves the order as it is. */
  private static List<String> order(Element e) {
    CSSStylableElement at = (CSSStylableElement) e;
    while (at != null) {
      String own = OwnProperties.own(at, "paint-order");
      if (!own.isEmpty() && !own.equals("inherit")) {
        return parsed(own);
      }
      at = CSSEngine.getParentCSSStylableElement(at);
    }
    return NORMAL;
  }

  private static List<String> parsed(String value) {
    List<String> words = List.of(value.strip().split("\\s+"));
    Set<String> order = new LinkedHashSet<>(words);
    if (order.size() != words.size() || !NORMAL.containsAll(order)) {
      return NORMAL;
    }
    order.addAll(NORMAL);
    return List.copyOf(order);
  }
}
