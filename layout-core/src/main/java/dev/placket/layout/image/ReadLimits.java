package dev.placket.layout.image;

/**
 * How much a picture may ask for before it is refused; all counts, none of them time.
 *
 * @param pixels most pixels of a raster, checked from its header before any is decoded
 * @param bytes most bytes of a picture file
 * @param elements most elements of a drawing
 * @param depth most elements of a drawing inside one another
 * @param uses most elements of a drawing once every {@code use} stands for what it points to
 * @param characters most characters of path data, lists and text in a drawing, uses counted
 */
public record ReadLimits(
    long pixels, long bytes, int elements, int depth, int uses, long characters) {
  /**
   * 80 million pixels (an A3 scan at 600 to the inch), 256 MiB, 200,000 elements, 256 deep, 500,000
   * with uses, 64 million characters.
   */
  public static final ReadLimits DEFAULT =
      new ReadLimits(80_000_000, 256L << 20, 200_000, 256, 500_000, 64_000_000);

  /** For what has been read within limits before. */
  static final ReadLimits UNLIMITED =
      new ReadLimits(
          Long.MAX_VALUE,
          Long.MAX_VALUE,
          Integer.MAX_VALUE,
          Integer.MAX_VALUE,
          Integer.MAX_VALUE,
          Long.MAX_VALUE);

  /**
   * Checks that all are above zero.
   *
   * @throws IllegalArgumentException naming the limits, if one is not
   */
  public ReadLimits {
    if (pixels < 1 || bytes < 1 || elements < 1 || depth < 1 || uses < 1 || characters < 1) {
      throw new IllegalArgumentException(
          "limits are above zero: pixels "
              + pixels
              + ", bytes "
              + bytes
              + ", elements "
              + elements
              + ", depth "
              + depth
              + ", uses "
              + uses
              + ", characters "
              + characters);
    }
  }
}
