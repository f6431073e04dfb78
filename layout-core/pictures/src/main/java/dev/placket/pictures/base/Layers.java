package dev.placket.pictures.base;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Paints what a drawing puts together first and only then lays over what is under it. A drawing
 * looks for one under {@link #KEY} in the hints of what it paints on; without one it composites
 * pixels, which a graphics of a {@code BufferedImage} can show if its clip is within the image.
 */
public interface Layers {
  /** The rendering hint that holds a {@code Layers}. */
  RenderingHints.Key KEY = new Key();

  /**
   * Paints one layer, in the transform and within the clip of the graphics.
   *
   * @param g where it comes to lie; left as it was
   */
  void paint(Graphics2D g, Layer layer);

  /**
   * What is put together.
   *
   * @param content paints it, in the transform that the graphics has; its own graphics is given to
   *     it and it may change that
   * @param opacity from 0 to 1
   * @param blend how it meets what is under it
   * @param mask what of it is seen, or null for all
   */
  record Layer(Consumer<Graphics2D> content, double opacity, Blend blend, @Nullable Mask mask) {}

  /**
   * What is seen of a layer.
   *
   * @param content paints it; where it paints nothing, nothing is seen
   * @param byAlpha whether its alpha counts and not its luminance
   */
  record Mask(Consumer<Graphics2D> content, boolean byAlpha) {}

  /** The key, which takes layers alone. */
  final class Key extends RenderingHints.Key {
    private static final int NUMBER = 0x4c61;

    private Key() {
      super(NUMBER);
    }

    @Override
    public boolean isCompatibleValue(@Nullable Object value) {
      return value == null || value instanceof Layers;
    }
  }
}
