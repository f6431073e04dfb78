package dev.placket.demo.made;

import com.fasterxml.jackson.databind.JsonNode;
import dev.placket.layout.flat.InkedBox;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Element;
import org.w3c.dom.svg.SVGDocument;

/**
 * A flat as it looks by itself, at the size and place that {@code fit.json} states. Drawings go
 * through plain Batik, pictures through plain ImageIO; of this program only the inked box is used,
 * to know which part of the picture the stated place is about.
 */
final class OwnRendering {
  private OwnRendering() {}

  /**
   * The part of the page that the flat alone would show.
   *
   * @param whole moved to whole pixels, where Java draws a picture of about its own size
   */
  static BufferedImage of(Path source, JsonNode placement, Rectangle part, boolean whole)
      throws IOException, PictureException {
    BufferedImage image = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, part.width, part.height);
    g.addRenderingHints(Pages.hints());
    AffineTransform place = place(source, placement, part);
    if (whole) {
      double[] m = new double[6];
      place.getMatrix(m);
      place.setTransform(m[0], m[1], m[2], m[3], Math.rint(m[4]), Math.rint(m[5]));
    }
    g.transform(place);
    if (source.toString().endsWith(".svg")) {
      drawing(source).paint(g);
    } else {
      g.drawImage(ImageIO.read(source.toFile()), 0, 0, null);
    }
    g.dispose();
    return image;
  }

  /** From the picture's own units to pixels of the part. */
  private static AffineTransform place(Path source, JsonNode placement, Rectangle part)
      throws PictureException {
    InkedBox ink = PictureReader.read(PictureSource.of(source), ReadLimits.DEFAULT).inkedBox();
    double scale = placement.path("scale").asDouble() * Pages.PER_POINT;
    JsonNode at = placement.path("inkedBox");
    AffineTransform place = new AffineTransform();
    place.translate(
        at.path("left").asDouble() * Pages.PER_POINT - part.x - ink.left() * scale,
        at.path("top").asDouble() * Pages.PER_POINT - part.y - ink.top() * scale);
    place.scale(scale, scale);
    return place;
  }

  /** A viewport as large as the viewBox at its origin shows one drawing unit as one unit. */
  private static GraphicsNode drawing(Path source) throws IOException {
    SVGDocument document =
        new SAXSVGDocumentFactory(null).createSVGDocument(source.toUri().toString());
    Element root = document.getDocumentElement();
    String[] box = root.getAttribute("viewBox").split("[ ,]+");
    root.setAttribute("width", box[2]);
    root.setAttribute("height", box[3]);
    GraphicsNode node = new GVTBuilder().build(new BridgeContext(new UserAgentAdapter()), document);
    AffineTransform back =
        AffineTransform.getTranslateInstance(
            Double.parseDouble(box[0]), Double.parseDouble(box[1]));
    AffineTransform own = node.getTransform();
    if (own != null) {
      back.concatenate(own);
    }
    node.setTransform(back);
    return node;
  }
}
