package dev.placket.pictures.svg.layer;

import dev.placket.pictures.base.Blend;
import dev.placket.pictures.base.Layers;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/** Layers as pixels of the image that is drawn on, each as large as the clip. */
public final class PixelLayers implements Layers {
  @Override
  public void paint(Graphics2D g, Layer layer) {
    AffineTransform at = g.getTransform();
    // An image in memory does not say how large it is, so who draws on one sets the clip.
    Shape clip = g.getClip();
    Rectangle device =
        clip == null
            ? g.getDeviceConfiguration().getBounds()
            : at.createTransformedShape(clip).getBounds();
    if (device.isEmpty()) {
      return;
    }
    BufferedImage image = painted(g, at, device, layer.content());
    Mask mask = layer.mask();
    if (mask != null) {
      cover(image, painted(g, at, device, mask.content()), mask.byAlpha());
    }
    Graphics2D own = (Graphics2D) g.create();
    try {
      own.setTransform(new AffineTransform());
      float opacity = (float) layer.opacity();
      own.setComposite(
          layer.blend() == Blend.NORMAL
              ? AlphaComposite.SrcOver.derive(opacity)
              : new BlendComposite(layer.blend(), opacity));
      own.drawImage(image, device.x, device.y, null);
    } finally {
      own.dispose();
    }
  }

  private static BufferedImage painted(
      Graphics2D like, AffineTransform at, Rectangle device, Consumer<Graphics2D> content) {
    BufferedImage image =
        new BufferedImage(device.width, device.height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHints(like.getRenderingHints());
      g.setClip(0, 0, device.width, device.height);
      g.translate(-device.x, -device.y);
      g.transform(at);
      content.accept(g);
    } finally {
      g.dispose();
    }
    return image;
  }

  /** CSS Masking 1, 7.10: luminance of the colours as they are encoded, times alpha. */
  private static void cover(BufferedImage image, BufferedImage mask, boolean byAlpha) {
    int width = image.getWidth();
    int[] row = new int[width];
    int[] seen = new int[width];
    for (int y = 0; y < image.getHeight(); y++) {
      image.getRGB(0, y, width, 1, row, 0, width);
      mask.getRGB(0, y, width, 1, seen, 0, width);
      for (int x = 0; x < width; x++) {
        double share = (seen[x] >>> 24) / 255.0;
        if (!byAlpha) {
          int rgb = seen[x];
          share *=
              (0.2125 * (rgb >> 16 & 255) + 0.7154 * (rgb >> 8 & 255) + 0.0721 * (rgb & 255)) / 255;
        }
        long alpha = Math.round((row[x] >>> 24) * share);
        row[x] = (int) alpha << 24 | (row[x] & 0xffffff);
      }
      image.setRGB(0, y, width, 1, row, 0, width);
    }
  }
}
