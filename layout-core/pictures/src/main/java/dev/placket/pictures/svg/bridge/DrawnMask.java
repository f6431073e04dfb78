package dev.placket.pictures.svg.bridge;

import java.awt.geom.Rectangle2D;
import org.apache.batik.ext.awt.image.renderable.Filter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.filter.Mask;
import org.apache.batik.gvt.filter.MaskRable8Bit;

/** A mask that knows what of it counts. */
public final class DrawnMask extends MaskRable8Bit {
  private final boolean byAlpha;

  DrawnMask(Filter source, GraphicsNode node, Rectangle2D region, boolean byAlpha) {
    super(source, node, region);
    this.byAlpha = byAlpha;
  }

  /** Whether a mask goes by its alpha and not by its luminance (CSS Masking 1, 7.10.1). */
  public static boolean isByAlpha(Mask mask) {
    return mask instanceof DrawnMask d && d.byAlpha;
  }
}
