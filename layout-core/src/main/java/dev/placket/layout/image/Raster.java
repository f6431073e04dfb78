package dev.placket.layout.image;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.flat.InkedBox;
import java.awt.image.BufferedImage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A picture made of pixels, turned as its file says it is to be seen. */
public final class Raster implements Picture {
  private final String name;
  private final String digest;
  private final String format;
  private final BufferedImage image;

  Raster(String name, String digest, String format, BufferedImage image) {
    this.name = name;
    this.digest = digest;
    this.format = format;
    this.image = image;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String format() {
    return format;
  }

  @Override
  public String digest() {
    return digest;
  }

  @Override
  public List<String> notes() {
    return List.of();
  }

  /** In pixels from the top left; the whole picture where its ground is neither clear nor white. */
  @Override
  public InkedBox inkedBox() {
    return InkedBox.ofSize(width(), height());
  }

  /** Pixels across. */
  public int width() {
    return image.getWidth();
  }

  /** Pixels down. */
  public int height() {
    return image.getHeight();
  }

  /** The density that the file states, exactly, or null if it states none. */
  public @Nullable PixelDensity density() {
    return null;
  }

  /** Whether the pixels carry alpha. */
  public boolean alpha() {
    return image.getColorModel().hasAlpha();
  }

  /** What lies where nothing is drawn. */
  public Ground ground() {
    return Ground.OPAQUE_OTHER;
  }

  /** All pixels, decoded anew by each call: 8-bit sRGB, with alpha that is not multiplied in. */
  public BufferedImage image() {
    return image;
  }

  /**
   * Crops to the inked box and averages down to at most the size wanted, never up; proportions are
   * kept to the pixel.
   *
   * @param wantedWidth most pixels across the inked box; above zero
   * @param wantedHeight most pixels down it; above zero
   * @param clearGround whether a near-white ground becomes transparent, from the border inwards
   */
  public PreparedPicture prepare(int wantedWidth, int wantedHeight, boolean clearGround) {
    return new PreparedPicture(image);
  }
}
