package dev.placket.pictures.svg.mend;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.lang.ref.WeakReference;
import org.apache.batik.ext.awt.RenderingHintsKeyExt;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.filter.Mask;

/**
 * A part under its mask, drawn with pixels of a bounded number. Batik's own masks ask a page for as
 * many as its finest unit has, and are drawn anew for each tile.
 */
final class MaskedNode extends CompositeGraphicsNode {
  /** Along the longest side of the view: some 300 to the inch on a sheet of A4. */
  private static final double FINE = 3_000;

  /** Of one mask; two images of so many stand in memory. */
  private static final double MOST = 1 << 22;

  private final Mask mask;
  private final double longest;

  private MaskedNode(Mask mask, double longest) {
    this.mask = mask;
    this.longest = longest;
  }

  /** Puts a masked child of a group under a node that draws its mask. */
  static void replace(CompositeGraphicsNode group, int at, double longest) {
    GraphicsNode child = (GraphicsNode) group.get(at);
    MaskedNode masked = new MaskedNode(child.getMask(), longest);
    group.set(at, masked);
    child.setMask(null);
    masked.add(child);
  }

  @Override
  public void paint(Graphics2D g) {
    GraphicsNode part = (GraphicsNode) get(0);
    AffineTransform own = part.getTransform() == null ? new AffineTransform() : part.getTransform();
    Rectangle2D box = part.getTransformedBounds(new AffineTransform());
    if (box == null || mask.getMaskNode() == null) {
      return;
    }
    box = box.createIntersection(own.createTransformedShape(mask.getFilterRegion()).getBounds2D());
    if (g.getClip() != null) {
      box = box.createIntersection(g.getClip().getBounds2D());
    }
    AffineTransform device = g.getTransform();
    double scale = Math.sqrt(Math.abs(device.getDeterminant()));
    double finest = FINE / longest * Math.sqrt(Math.abs(getGlobalTransform().getDeterminant()));
    boolean asShown = scale <= finest && device.getShearX() == 0 && device.getShearY() == 0;
    if (box.isEmpty() || !Double.isFinite(box.getWidth() + box.getHeight()) || !(scale > 0)) {
      return;
    }
    if (asShown) {
      box = onPixels(box, device);
    }
    double area = box.getWidth() * box.getHeight();
    double s = Math.min(Math.min(scale, finest), Math.sqrt(MOST / area));
    boolean exact = asShown && s == scale;
    int width = pixels(box.getWidth() * (exact ? Math.abs(device.getScaleX()) : s));
    int height = pixels(box.getHeight() * (exact ? Math.abs(device.getScaleY()) : s));
    AffineTransform toPixels =
        AffineTransform.getScaleInstance(width / box.getWidth(), height / box.getHeight());
    toPixels.translate(-box.getX(), -box.getY());
    BufferedImage shown = masked(part, own, toPixels, width, height);
    Graphics2D placed = (Graphics2D) g.create();
    placed.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    AffineTransform back = AffineTransform.getTranslateInstance(box.getX(), box.getY());
    back.scale(box.getWidth() / width, box.getHeight() / height);
    placed.drawImage(shown, back, null);
    placed.dispose();
  }

  private static int pixels(double length) {
    return (int) Math.max(1, Math.min(MOST, Math.round(length)));
  }

  /** Grown to whole pixels of the screen, so that none is shown between two. */
  private static Rectangle2D onPixels(Rectangle2D box, AffineTransform device) {
    double x = device.getScaleX();
    double y = device.getScaleY();
    Rectangle2D there = device.createTransformedShape(box).getBounds2D();
    double left = Math.floor(there.getMinX() + 1e-6);
    double top = Math.floor(there.getMinY() + 1e-6);
    double right = Math.ceil(there.getMaxX() - 1e-6);
    double bottom = Math.ceil(there.getMaxY() - 1e-6);
    Rectangle2D.Double grown = new Rectangle2D.Double();
    grown.setFrameFromDiagonal(
        (left - device.getTranslateX()) / x,
        (top - device.getTranslateY()) / y,
        (right - device.getTranslateX()) / x,
        (bottom - device.getTranslateY()) / y);
    return grown;
  }

  private BufferedImage masked(
      GraphicsNode part, AffineTransform own, AffineTransform toPixels, int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = graphics(image, toPixels);
    part.paint(g);
    g.dispose();
    BufferedImage light = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    g = graphics(light, toPixels);
    g.transform(own);
    g.clip(mask.getFilterRegion());
    mask.getMaskNode().paint(g);
    g.dispose();
    int[] row = new int[width];
    int[] by = new int[width];
    for (int y = 0; y < height; y++) {
      image.getRaster().getDataElements(0, y, width, 1, row);
      light.getRaster().getDataElements(0, y, width, 1, by);
      for (int x = 0; x < width; x++) {
        row[x] = row[x] & 0xFFFFFF | (int) Math.round((row[x] >>> 24) * share(by[x])) << 24;
      }
      image.getRaster().setDataElements(0, y, width, 1, row);
    }
    return image;
  }

  private static Graphics2D graphics(BufferedImage image, AffineTransform toPixels) {
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
    g.setRenderingHint(
        RenderingHintsKeyExt.KEY_TRANSCODING, RenderingHintsKeyExt.VALUE_TRANSCODING_VECTOR);
    g.setRenderingHint(RenderingHintsKeyExt.KEY_BUFFERED_IMAGE, new WeakReference<>(image));
    g.transform(toPixels);
    return g;
  }

  /** Luminance times alpha: Filter Effects 1, luminanceToAlpha, which CSS Masking 1 refers to. */
  private static double share(int argb) {
    double light = 0.2125 * (argb >> 16 & 255) + 0.7154 * (argb >> 8 & 255) + 0.0721 * (argb & 255);
    return light / 255 * (argb >>> 24) / 255;
  }
}
