package dev.placket.pictures.base;

/**
 * A picture of pixels on a page of a PDF.
 *
 * @param pixelWidth its pixels across
 * @param pixelHeight its pixels down
 * @param width how wide it lies on the page, in drawing units
 * @param height how high
 */
public record PlacedImage(int pixelWidth, int pixelHeight, double width, double height) {
  /** The fewer of its pixels for a drawing unit, across or down. */
  public double pixelsPerUnit() {
    return Math.min(pixelWidth / width, pixelHeight / height);
  }
}
