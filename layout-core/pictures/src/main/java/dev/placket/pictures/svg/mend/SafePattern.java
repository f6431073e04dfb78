package dev.placket.pictures.svg.mend;

import java.awt.Graphics2D;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.lang.ref.WeakReference;
import org.apache.batik.ext.awt.RenderingHintsKeyExt;
import org.jspecify.annotations.Nullable;

/** Patterns whose tiles Batik cannot make are drawn from an image of one tile. */
final class SafePattern {
  /** Larger tiles are not made at the size of the screen. */
  private static final double LARGEST = 4_000;

  private static final int SIDE = 1_024;

  private SafePattern() {}

  /** The tile as pixels, from its corner; each side at least 1 and at most a thousand or so. */
  static BufferedImage tile(
      org.apache.batik.gvt.PatternPaint pattern, double pixelWidth, double pixelHeight) {
    int width = (int) Math.max(1, Math.min(SIDE, Math.ceil(pixelWidth)));
    int height = (int) Math.max(1, Math.min(SIDE, Math.ceil(pixelHeight)));
    Rectangle2D tile = pattern.getPatternRect();
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.setRenderingHint(
          RenderingHintsKeyExt.KEY_TRANSCODING, RenderingHintsKeyExt.VALUE_TRANSCODING_VECTOR);
      g.setRenderingHint(RenderingHintsKeyExt.KEY_BUFFERED_IMAGE, new WeakReference<>(image));
      g.scale(width / tile.getWidth(), height / tile.getHeight());
      g.translate(-tile.getX(), -tile.getY());
      pattern.getGraphicsNode().paint(g);
    } finally {
      g.dispose();
    }
    return image;
  }

  /** Named as Batik's, since the writer of PDF knows patterns by the simple name of their class. */
  static final class PatternPaint extends org.apache.batik.gvt.PatternPaint {
    PatternPaint(org.apache.batik.gvt.PatternPaint p) {
      super(p.getGraphicsNode(), p.getPatternRect(), false, p.getPatternTransform());
    }

    @Override
    public PaintContext createContext(
        ColorModel model,
        Rectangle device,
        Rectangle2D user,
        AffineTransform toDevice,
        RenderingHints hints) {
      AffineTransform at = new AffineTransform(toDevice);
      if (getPatternTransform() != null) {
        at.concatenate(getPatternTransform());
      }
      Rectangle2D tile = getPatternRect();
      double width = Math.hypot(at.getScaleX(), at.getShearY()) * tile.getWidth();
      double height = Math.hypot(at.getShearX(), at.getScaleY()) * tile.getHeight();
      PaintContext batik = null;
      boolean upright =
          Math.abs(at.getDeterminant()) * tile.getWidth() * tile.getHeight()
              > width * height * 0.01;
      if (upright && width >= 1 && height >= 1 && width < LARGEST && height < LARGEST) {
        try {
          batik = super.createContext(model, device, user, toDevice, hints);
        } catch (RuntimeException e) {
          // Its numbers overflow: drawn from one tile.
        }
      }
      return new Context(this, at, width, height, batik);
    }
  }

  /** Batik's pixels, or where it gives none, those of one tile. */
  private static final class Context implements PaintContext {
    private final org.apache.batik.gvt.PatternPaint pattern;
    private final AffineTransform at;
    private final double width;
    private final double height;
    private @Nullable PaintContext batik;
    private @Nullable BufferedImage image;

    Context(
        org.apache.batik.gvt.PatternPaint pattern,
        AffineTransform at,
        double width,
        double height,
        @Nullable PaintContext batik) {
      this.pattern = pattern;
      this.at = at;
      this.width = width;
      this.height = height;
      this.batik = batik;
    }

    @Override
    public void dispose() {
      if (batik != null) {
        batik.dispose();
      }
    }

    @Override
    public ColorModel getColorModel() {
      return batik == null ? ColorModel.getRGBdefault() : batik.getColorModel();
    }

    @Override
    public Raster getRaster(int x, int y, int w, int h) {
      if (batik != null) {
        return batik.getRaster(x, y, w, h);
      }
      BufferedImage from = image;
      if (from == null) {
        from = tile(pattern, width, height);
        image = from;
      }
      WritableRaster out = ColorModel.getRGBdefault().createCompatibleWritableRaster(w, h);
      int[] row = new int[w];
      for (int j = 0; j < h; j++) {
        for (int i = 0; i < w; i++) {
          row[i] = pixel(from, x + i + 0.5, y + j + 0.5);
        }
        out.setDataElements(0, j, w, 1, row);
      }
      return out;
    }

    private int pixel(BufferedImage from, double x, double y) {
      Rectangle2D tile = pattern.getPatternRect();
      double d = at.getDeterminant();
      double dx = x - at.getTranslateX();
      double dy = y - at.getTranslateY();
      double u = ((dx * at.getScaleY() - dy * at.getShearX()) / d - tile.getX()) / tile.getWidth();
      double v = ((dy * at.getScaleX() - dx * at.getShearY()) / d - tile.getY()) / tile.getHeight();
      if (!Double.isFinite(u + v)) {
        return 0;
      }
      int i = (int) ((u - Math.floor(u)) * from.getWidth());
      int j = (int) ((v - Math.floor(v)) * from.getHeight());
      return from.getRGB(Math.min(i, from.getWidth() - 1), Math.min(j, from.getHeight() - 1));
    }
  }
}
