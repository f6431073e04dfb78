package dev.placket.pictures.svg.bridge;

import java.awt.geom.Path2D;
import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.SVGLineElementBridge;
import org.apache.batik.gvt.ShapeNode;
import org.w3c.dom.Element;

/**
 * A line as a path: Java2D draws its own line as a rectangle, also where skewing makes it a
 * parallelogram.
 */
final class LineBridge extends SVGLineElementBridge {
  @Override
  public Bridge getInstance() {
    return new LineBridge();
  }

  @Override
  protected void buildShape(BridgeContext context, Element e, ShapeNode node) {
    super.buildShape(context, e, node);
    node.setShape(new Path2D.Float(node.getShape()));
  }
}
