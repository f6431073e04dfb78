package dev.placket.benchmarks.drawings;

import dev.placket.benchmarks.pages.PageException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Dimension2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.ref.WeakReference;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.ext.awt.RenderingHintsKeyExt;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Document;

/** Drawings as Batik alone renders them: parsed, built and painted, and nothing else. */
public final class PlainBatik {
  private PlainBatik() {}

  /**
   * The picture of a drawing, so many pixels across, on nothing.
   *
   * @throws PageException if Batik does not read it
   */
  public static BufferedImage render(byte[] svg, int width) {
    Document document;
    try {
      document =
          new SAXSVGDocumentFactory(null)
              .createDocument("file:///drawing.svg", new ByteArrayInputStream(svg));
    } catch (IOException e) {
      throw new PageException("Batik does not read the drawing: " + e.getMessage());
    }
    BridgeContext context = new BridgeContext(new UserAgentAdapter());
    GraphicsNode root = new GVTBuilder().build(context, document);
    Dimension2D size = context.getDocumentSize();
    double scale = width / size.getWidth();
    BufferedImage image =
        new BufferedImage(
            width,
            (int) Math.max(1, Math.ceil(size.getHeight() * scale)),
            BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.setRenderingHint(RenderingHintsKeyExt.KEY_BUFFERED_IMAGE, new WeakReference<>(image));
      g.scale(scale, scale);
      root.paint(g);
    } finally {
      g.dispose();
      context.dispose();
    }
    return image;
  }
}
