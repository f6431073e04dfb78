package dev.placket.pictures.base;

import dev.placket.pictures.fault.Fault;
import dev.placket.pictures.fault.ReadLimit;
import java.util.List;

/**
 * How much a picture may ask for before it is refused; all counts, none of them time.
 *
 * @param pixels most pixels of a raster, checked from its header before any is decoded
 * @param bytes most bytes of a picture file
 * @param memory most bytes of memory that reading one picture may take, reckoned from its header
 * @param elements most elements of a drawing
 * @param depth most elements of a drawing inside one another
 * @param uses most elements of a drawing once every {@code use} stands for what it points to
 * @param characters most characters of path data, lists and text in a drawing, uses counted
 * @param dashes most dashes and markers that the lines of a drawing come to
 * @param steps most steps of drawing a drawing once, a step being about one segment of a path
 */
public record ReadLimits(
    long pixels,
    long bytes,
    long memory,
    int elements,
    int depth,
    int uses,
    long characters,
    long dashes,
    long steps) {
  /**
   * 200 million pixels (an A2 scan at 600 to the inch), files of 256 MiB, 160 MiB of memory,
   * 200,000 elements, 256 deep, 500,000 with uses, 64 million characters, 2 million dashes, 8
   * million steps.
   */
  public static final ReadLimits DEFAULT =
      new ReadLimits(
          200_000_000,
          256L << 20,
          160L << 20,
          200_000,
          256,
          500_000,
          64_000_000,
          2_000_000,
          8_000_000);

  /** For what has been read within limits before. */
  static final ReadLimits UNLIMITED =
      new ReadLimits(
          Long.MAX_VALUE,
          Long.MAX_VALUE,
          Long.MAX_VALUE,
          Integer.MAX_VALUE,
          Integer.MAX_VALUE,
          Integer.MAX_VALUE,
          Long.MAX_VALUE,
          Long.MAX_VALUE,
          Long.MAX_VALUE);

  /**
   * Checks that all are above zero.
   *
   * @throws IllegalArgumentException naming the limits, if one is not
   */
  public ReadLimits {
    boolean counts = elements >= 1 && depth >= 1 && uses >= 1 && characters >= 1 && dashes >= 1;
    counts &= steps >= 1;
    if (pixels < 1 || bytes < 1 || memory < 1 || !counts) {
      throw new IllegalArgumentException(
          "limits are above zero: pixels "
              + pixels
              + ", bytes "
              + bytes
              + ", memory "
              + memory
              + ", elements "
              + elements
              + ", depth "
              + depth
              + ", uses "
              + uses
              + ", characters "
              + characters
              + ", dashes "
              + dashes
              + ", steps "
              + steps);
    }
  }

  /** The same limits with another number of pixels. */
  public ReadLimits withPixels(long most) {
    return new ReadLimits(most, bytes, memory, elements, depth, uses, characters, dashes, steps);
  }

  /** The same limits with another size of file. */
  public ReadLimits withBytes(long most) {
    return new ReadLimits(pixels, most, memory, elements, depth, uses, characters, dashes, steps);
  }

  /** The same limits with another amount of memory. */
  public ReadLimits withMemory(long most) {
    return new ReadLimits(pixels, bytes, most, elements, depth, uses, characters, dashes, steps);
  }

  /**
   * The same limits with one changed, by its name.
   *
   * @throws IllegalArgumentException if there is no such limit, or the number is not above zero or
   *     too large
   */
  public ReadLimits with(String limit, long most) {
    if (most < 1) {
      throw new IllegalArgumentException("a limit is above zero");
    }
    boolean few = List.of("elements", "depth", "uses").contains(limit);
    if (few && most > Integer.MAX_VALUE) {
      throw new IllegalArgumentException("a limit of " + limit + " is at most 2147483647");
    }
    int n = (int) Math.min(most, Integer.MAX_VALUE);
    return switch (limit) {
      case "pixels" -> withPixels(most);
      case "bytes" -> withBytes(most);
      case "memory" -> withMemory(most);
      case "elements" ->
          new ReadLimits(pixels, bytes, memory, n, depth, uses, characters, dashes, steps);
      case "depth" ->
          new ReadLimits(pixels, bytes, memory, elements, n, uses, characters, dashes, steps);
      case "uses" ->
          new ReadLimits(pixels, bytes, memory, elements, depth, n, characters, dashes, steps);
      case "characters" ->
          new ReadLimits(pixels, bytes, memory, elements, depth, uses, most, dashes, steps);
      case "dashes" ->
          new ReadLimits(pixels, bytes, memory, elements, depth, uses, characters, most, steps);
      case "steps" ->
          new ReadLimits(pixels, bytes, memory, elements, depth, uses, characters, dashes, most);
      default ->
          throw new IllegalArgumentException(
              "no such limit; there are pixels, bytes, memory, elements, depth, uses, characters,"
                  + " dashes and steps");
    };
  }

  /** Refuses what would take more memory than the limit. */
  public void checkMemory(String name, long needed) throws PictureException {
    if (needed > memory) {
      throw PictureException.over(
          ReadLimit.MEMORY,
          Fault.limit(
                  name,
                  "reading it takes some "
                      + ((needed >> 20) + 1)
                      + " MiB of memory, more than the limit of "
                      + (memory >> 20))
              .remedy("export it smaller")
              .remedy("export it as a PNG that is not interlaced"));
    }
  }

  /** The refusal of a picture that took more memory than Java has, whatever was estimated. */
  public static PictureException outOfMemory(String name, OutOfMemoryError e) {
    return new PictureException(
        Fault.limit(
                name,
                "takes more memory than the "
                    + (Runtime.getRuntime().maxMemory() >> 20)
                    + " MiB that Java may use")
            .remedy("simplify the drawing")
            .remedy("give Java more by its option -Xmx, as in -Xmx2g"),
        e);
  }
}
