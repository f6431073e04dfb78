package dev.placket.layout.image;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.flat.InkedBox;
import java.awt.image.BufferedImage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A picture made of pixels, turned as its file says it is to be seen. */
public final class Raster implements Picture {
  /** Compression leaves noise beside the lines of a JPEG; a PNG has none. */
  private static final int JPEG_TOLERANCE = 24;

  private static final int TOLERANCE = 16;

  private final String name;
  private final String digest;
  private final RasterHead head;
  private final byte[] bytes;
  private final int width;
  private final int height;
  private final Ground ground;
  private final InkedBox ink;

  private Raster(String name, String digest, RasterHead head, byte[] bytes, Pixels pixels)
      throws PictureException {
    this.name = name;
    this.digest = digest;
    this.head = head;
    this.bytes = bytes;
    this.width = pixels.width();
    this.height = pixels.height();
    GroundFinder finder = finder(pixels);
    InkedBox box = finder.box();
    if (box == null) {
      throw new PictureException(name + ": is blank; export the picture again");
    }
    this.ground = finder.ground();
    this.ink = box;
  }

  static Raster read(String name, String digest, byte[] bytes, ReadLimits limits)
      throws PictureException {
    if (bytes[0] == (byte) 0x89) {
      Png png = Png.read(name, bytes, limits);
      return new Raster(name, digest, png.head(), bytes, PngPixels.read(png));
    }
    RasterHead head = Jpeg.head(name, bytes, limits);
    return new Raster(name, digest, head, bytes, Jpeg.pixels(name, bytes, head));
  }

  private GroundFinder finder(Pixels pixels) {
    return new GroundFinder(pixels, format().equals("JPEG") ? JPEG_TOLERANCE : TOLERANCE);
  }

  private Pixels decode() {
    try {
      return head.format().equals("PNG")
          ? PngPixels.read(Png.read(name, bytes, ReadLimits.UNLIMITED))
          : Jpeg.pixels(name, bytes, head);
    } catch (PictureException e) {
      throw new IllegalStateException("was read before: " + e.getMessage(), e);
    }
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String format() {
    return head.format();
  }

  @Override
  public String digest() {
    return digest;
  }

  @Override
  public List<String> notes() {
    return head.notes();
  }

  /** In pixels from the top left; the whole picture where its ground is neither clear nor white. */
  @Override
  public InkedBox inkedBox() {
    return ink;
  }

  /** Pixels across. */
  public int width() {
    return width;
  }

  /** Pixels down. */
  public int height() {
    return height;
  }

  /** The density that the file states, exactly, or null if it states none. */
  public @Nullable PixelDensity density() {
    return head.density();
  }

  /** Whether the pixels carry alpha. */
  public boolean alpha() {
    return head.alpha();
  }

  /** What lies where nothing is drawn. */
  public Ground ground() {
    return ground;
  }

  /** All pixels, decoded anew by each call: 8-bit sRGB, with alpha that is not multiplied in. */
  public BufferedImage image() {
    return decode().toImage(alpha());
  }

  /**
   * Crops to the inked box and averages down to at most the size wanted, never up; proportions are
   * kept to the pixel.
   *
   * @param wantedWidth most pixels across the inked box; above zero
   * @param wantedHeight most pixels down it; above zero
   * @param clearGround whether a near-white ground becomes transparent, from the border inwards
   * @throws IllegalArgumentException if a size is not above zero
   */
  public PreparedPicture prepare(int wantedWidth, int wantedHeight, boolean clearGround) {
    if (wantedWidth < 1 || wantedHeight < 1) {
      throw new IllegalArgumentException(
          "a picture has at least one pixel, not " + wantedWidth + " by " + wantedHeight);
    }
    Pixels pixels = decode();
    boolean cleared = clearGround && ground == Ground.OPAQUE_WHITE;
    if (cleared) {
      pixels = GroundClearing.clear(pixels, finder(pixels));
    }
    double scale = Math.min(1, Math.min(wantedWidth / ink.width(), wantedHeight / ink.height()));
    int w = (int) Math.max(1, Math.round(ink.width() * scale));
    int h = (int) Math.max(1, Math.round(ink.height() * scale));
    return new PreparedPicture(AreaAverage.of(pixels, ink, w, h).toImage(alpha() || cleared));
  }
}
