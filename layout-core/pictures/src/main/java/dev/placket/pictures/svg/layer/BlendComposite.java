package dev.placket.pictures.svg.layer;

import dev.placket.pictures.base.Blend;
import java.awt.Composite;
import java.awt.CompositeContext;
import java.awt.RenderingHints;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/** Lays pixels over others by a blend mode (Compositing and Blending 1, 5.8 and 10). */
final class BlendComposite implements Composite {
  private final Blend blend;
  private final double opacity;

  BlendComposite(Blend blend, double opacity) {
    this.blend = blend;
    this.opacity = opacity;
  }

  @Override
  public CompositeContext createContext(ColorModel over, ColorModel under, RenderingHints hints) {
    return new CompositeContext() {
      @Override
      public void dispose() {
        // Nothing is held.
      }

      @Override
      public void compose(Raster source, Raster below, WritableRaster out) {
        int width = Math.min(source.getWidth(), below.getWidth());
        int height = Math.min(source.getHeight(), below.getHeight());
        Object pixel = null;
        for (int y = 0; y < height; y++) {
          for (int x = 0; x < width; x++) {
            int s =
                over.getRGB(
                    source.getDataElements(x + source.getMinX(), y + source.getMinY(), null));
            int b =
                under.getRGB(below.getDataElements(x + below.getMinX(), y + below.getMinY(), null));
            pixel = under.getDataElements(laid(s, b), pixel);
            out.setDataElements(x + out.getMinX(), y + out.getMinY(), pixel);
          }
        }
      }
    };
  }

  /** Both without premultiplied alpha. */
  private int laid(int source, int backdrop) {
    double as = (source >>> 24) / 255.0 * opacity;
    double ab = (backdrop >>> 24) / 255.0;
    double a = as + ab * (1 - as);
    if (a == 0) {
      return 0;
    }
    double[] cs = channels(source);
    double[] cb = channels(backdrop);
    double[] mixed = BlendModes.mixed(blend, cb, cs);
    int out = (int) Math.round(a * 255) << 24;
    for (int i = 0; i < 3; i++) {
      double own = (1 - ab) * cs[i] + ab * mixed[i];
      double c = (as * own + (1 - as) * ab * cb[i]) / a;
      out |= (int) Math.round(Math.max(0, Math.min(1, c)) * 255) << (16 - 8 * i);
    }
    return out;
  }

  private static double[] channels(int rgb) {
    return new double[] {(rgb >> 16 & 255) / 255.0, (rgb >> 8 & 255) / 255.0, (rgb & 255) / 255.0};
  }
}
