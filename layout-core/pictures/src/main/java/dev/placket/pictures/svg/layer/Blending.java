package dev.placket.pictures.svg.layer;

import dev.placket.pictures.base.Blend;
import dev.placket.pictures.svg.rewrite.Compositing;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Element;

/** Which nodes blend with what lies under them, and within which others they do (isolation). */
public final class Blending {
  private final BridgeContext context;
  private final GraphicsNode root;
  private final Map<GraphicsNode, Blend> blends = new IdentityHashMap<>();
  private final Set<GraphicsNode> around = Collections.newSetFromMap(new IdentityHashMap<>());

  private Blending(BridgeContext context, GraphicsNode root) {
    this.context = context;
    this.root = root;
  }

  /** Looks at a built tree, whose elements the context still knows. */
  public static Blending of(GraphicsNode root, BridgeContext context) {
    Blending b = new Blending(context, root);
    b.look(root);
    return b;
  }

  /** Whether a node or something in it blends. */
  private boolean look(GraphicsNode node) {
    Element e = context.getElement(node);
    String word = e == null ? "normal" : Compositing.blend(e);
    Blend blend = Blend.of(word);
    // A mode that is not known is on no list of what is drawn right, and noted by the audit.
    if (blend != null && blend != Blend.NORMAL) {
      blends.put(node, blend);
    }
    boolean inside = false;
    if (node instanceof CompositeGraphicsNode group) {
      for (int i = 0; i < group.size(); i++) {
        inside |= look((GraphicsNode) group.get(i));
      }
    }
    if (node.getMask() != null && node.getMask().getMaskNode() != null) {
      look(node.getMask().getMaskNode());
    }
    if (inside) {
      around.add(node);
    }
    return inside || blends.containsKey(node);
  }

  Blend of(GraphicsNode node) {
    return blends.getOrDefault(node, Blend.NORMAL);
  }

  /**
   * Whether what blends in a node does so within it alone (SVG 2, 3.6; Compositing and Blending 1,
   * 3.3): a root, and what is faded, clipped, masked or isolated.
   */
  boolean isIsolated(GraphicsNode node, boolean faded) {
    if (!around.contains(node)) {
      return false;
    }
    Element e = context.getElement(node);
    return node == root
        || faded
        || node.getClip() != null
        || node.getMask() != null
        || (e != null && Compositing.isolates(e));
  }
}
