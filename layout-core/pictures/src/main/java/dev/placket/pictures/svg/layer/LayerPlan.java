package dev.placket.pictures.svg.layer;

import dev.placket.pictures.base.Blend;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.batik.gvt.GraphicsNode;
import org.jspecify.annotations.Nullable;

/** Which nodes are painted as layers; fixed once the drawing is read. */
public final class LayerPlan {
  private final Map<GraphicsNode, Spec> specs = new IdentityHashMap<>();

  /**
   * A node that is put together first.
   *
   * @param opacity of the whole
   * @param blend with what is under it
   */
  record Spec(double opacity, Blend blend) {}

  @Nullable Spec of(GraphicsNode node) {
    return specs.get(node);
  }

  void put(GraphicsNode node, double opacity, Blend blend) {
    specs.put(node, new Spec(opacity, blend));
  }
}
