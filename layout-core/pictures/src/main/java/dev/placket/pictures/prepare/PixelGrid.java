package dev.placket.pictures.prepare;

import dev.placket.pictures.base.PictureException;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.awt.image.SinglePixelPackedSampleModel;

/** Rows of pixels that are all in memory: four bytes each. */
public final class PixelGrid implements PixelRows {
  private final int width;
  private final int height;
  private final int[] argb;

  private PixelGrid(int width, int height, int[] argb) {
    this.width = width;
    this.height = height;
    this.argb = argb;
  }

  /**
   * The pixels of an image in 8-bit sRGB, copied.
   *
   * @throws IllegalArgumentException if it is not {@link BufferedImage#TYPE_INT_ARGB} or {@link
   *     BufferedImage#TYPE_INT_RGB}: other kinds do not give their values unchanged
   */
  public static PixelGrid of(BufferedImage image) {
    return new PixelGrid(image.getWidth(), image.getHeight(), pixels(image, true));
  }

  /** The same without a copy where the image allows: for one that is not to change any more. */
  static PixelGrid sharing(BufferedImage image) {
    return new PixelGrid(image.getWidth(), image.getHeight(), pixels(image, false));
  }

  /**
   * Reads all rows into memory.
   *
   * @throws PictureException if they cannot be read
   */
  public static PixelGrid of(PixelRows rows) throws PictureException {
    if (rows instanceof PixelGrid grid) {
      return grid;
    }
    int w = rows.width();
    int[] all = new int[Math.multiplyExact(w, rows.height())];
    int[] row = new int[w];
    try (Cursor in = rows.open()) {
      for (int at = 0; at < all.length; at += w) {
        in.next(row);
        System.arraycopy(row, 0, all, at, w);
      }
    }
    return new PixelGrid(w, rows.height(), all);
  }

  private static int[] pixels(BufferedImage image, boolean copy) {
    boolean alpha = image.getType() == BufferedImage.TYPE_INT_ARGB;
    if (!alpha && image.getType() != BufferedImage.TYPE_INT_RGB) {
      throw new IllegalArgumentException("an image of type INT_ARGB or INT_RGB, not " + image);
    }
    int w = image.getWidth();
    int h = image.getHeight();
    boolean whole =
        image.getRaster().getSampleModel() instanceof SinglePixelPackedSampleModel m
            && m.getScanlineStride() == w
            && image.getRaster().getDataBuffer().getSize() == w * h;
    if (alpha && whole && !copy) {
      return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }
    return image.getRGB(0, 0, w, h, null, 0, w);
  }

  @Override
  public int width() {
    return width;
  }

  @Override
  public int height() {
    return height;
  }

  /** The pixel in a column and a row, as {@code 0xAARRGGBB}. */
  public int at(int x, int y) {
    if (x < 0 || x >= width || y < 0 || y >= height) {
      throw new IndexOutOfBoundsException(x + "," + y + " of " + width + " by " + height);
    }
    return argb[y * width + x];
  }

  /** The pixels as an image, not shared: INT_RGB if all are opaque, else INT_ARGB. */
  public BufferedImage toImage() {
    int all = -1;
    for (int p : argb) {
      all &= p;
    }
    boolean opaque = all >>> 24 == 255;
    int type = opaque ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB;
    BufferedImage image = new BufferedImage(width, height, type);
    image.getRaster().setDataElements(0, 0, width, height, argb);
    return image;
  }

  @Override
  public Cursor open() {
    return new Cursor() {
      private int at;

      @Override
      public void next(int[] row) {
        System.arraycopy(argb, at, row, 0, width);
        at += width;
      }
    };
  }
}
