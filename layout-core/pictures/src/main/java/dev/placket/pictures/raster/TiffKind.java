package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.fault.Fault;
import java.util.Arrays;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The kinds of TIFF that the decoder gets right (TIFF 6.0): what its samples stand for, by their
 * bits, format, compression, planes and extra samples. Any other kind is refused by name, since the
 * decoder makes black, grey or noise of some of them without a word.
 */
final class TiffKind {
  private static final int WHITE_IS_ZERO = 0;
  private static final int BLACK_IS_ZERO = 1;
  private static final int RGB = 2;
  private static final int PALETTE = 3;
  private static final int INKS = 5;
  private static final int YCBCR = 6;

  private static final int JPEG = 7;
  private static final Set<Integer> FAX = Set.of(2, 3, 4);
  private static final int LZW = 5;
  private static final Set<Integer> DEFLATE = Set.of(8, 32946);
  private static final Set<Integer> PLAIN = Set.of(1, LZW, 8, 32773, 32946);

  private static final int ASSOCIATED = 1;
  private static final int UNASSOCIATED = 2;

  private final int photometric;
  private final int bits;
  private final int samples;
  private final int packing;
  private final boolean planar;
  private final long[] extra;
  private final TiffDirectory d;

  private TiffKind(TiffDirectory d) {
    this.d = d;
    this.photometric = number(TiffDirectory.PHOTOMETRIC, -1);
    this.bits = number(TiffDirectory.BITS, 1);
    this.samples = number(TiffDirectory.SAMPLES, 1);
    this.packing = number(TiffDirectory.PACKING, 1);
    this.planar = number(TiffDirectory.PLANES, 1) != 1;
    this.extra = d.numbers(TiffDirectory.EXTRA);
  }

  private int number(int tag, int absent) {
    return (int) Math.min(d.number(tag, absent), Integer.MAX_VALUE);
  }

  /** Refuses a kind that is not known to be decoded right, by name. */
  static void check(String name, TiffDirectory d) throws PictureException {
    String reason = new TiffKind(d).reason();
    if (reason != null) {
      throw new PictureException(
          Fault.content(name, "is a TIFF " + reason + ", a kind that is not read")
              .in("header")
              .remedy("save it as PNG"));
    }
  }

  /** Whether alpha is multiplied into the colours. */
  static boolean multiplied(TiffDirectory d) {
    return d.number(TiffDirectory.EXTRA, 0) == ASSOCIATED;
  }

  private @Nullable String reason() {
    String reason = format();
    reason = reason != null ? reason : compression();
    return reason != null ? reason : colours();
  }

  private @Nullable String format() {
    long[] formats = d.numbers(TiffDirectory.SAMPLE_FORMAT);
    if (Arrays.stream(formats).anyMatch(f -> f == 2)) {
      return "with signed samples";
    }
    if (Arrays.stream(formats).anyMatch(f -> f == 3)) {
      return "with floating-point samples";
    }
    if (Arrays.stream(formats).anyMatch(f -> f != 1)) {
      return "with samples of no stated format";
    }
    if (Arrays.stream(d.numbers(TiffDirectory.BITS)).anyMatch(b -> b != bits)) {
      return "whose samples differ in bits";
    }
    if (d.count(TiffDirectory.BITS) > 1 && d.count(TiffDirectory.BITS) < samples) {
      return "that states the bits of some samples only";
    }
    return null;
  }

  private @Nullable String compression() {
    if (packing == JPEG) {
      return bits != 8 || planar ? "with JPEG compression of other than 8-bit pixels" : null;
    }
    if (!FAX.contains(packing) && !PLAIN.contains(packing)) {
      return "with " + word(packing) + " compression";
    }
    if (FAX.contains(packing) && (bits != 1 || samples != 1 || photometric > BLACK_IS_ZERO)) {
      return "with fax compression of more than black and white";
    }
    if (number(TiffDirectory.BIT_ORDER, 1) != 1 && !FAX.contains(packing)) {
      return "whose bits are stored in reverse";
    }
    int predictor = number(TiffDirectory.PREDICTOR, 1);
    boolean predicts = packing == LZW || DEFLATE.contains(packing);
    if (predictor != 1 && predicts && (predictor != 2 || (bits != 8 && bits != 16))) {
      return "with predictor " + predictor + " for " + bits + "-bit samples";
    }
    return null;
  }

  private static String word(int packing) {
    return switch (packing) {
      case 6 -> "old-style JPEG";
      case 9, 10, 34661 -> "JBIG";
      case 34676, 34677 -> "LogLuv";
      case 34712 -> "JPEG 2000";
      case 34887 -> "LERC";
      case 34925 -> "LZMA";
      case 50000 -> "Zstandard";
      case 50001 -> "WebP";
      case 50002 -> "JPEG XL";
      default -> "an unusual (" + packing + ")";
    };
  }

  private @Nullable String colours() {
    return switch (photometric) {
      case WHITE_IS_ZERO, BLACK_IS_ZERO -> greys();
      case RGB -> rgb();
      case PALETTE -> palette();
      case INKS -> inks();
      case YCBCR ->
          packing == JPEG && samples == 3 ? null : "in YCbCr colours without JPEG compression";
      case -1 -> "that does not state what its samples stand for";
      case 4 -> "that is a transparency mask";
      case 8, 9, 10 -> "in Lab colours";
      case 32844, 32845 -> "in LogLuv colours";
      case 32803, 34892 -> "of raw camera data";
      default -> "of an unknown kind of colours (" + photometric + ")";
    };
  }

  private @Nullable String greys() {
    if (samples == 1 && extra.length == 0) {
      return bits(Set.of(1, 2, 4, 8, 16));
    }
    if (samples == 2 && alpha() && photometric == BLACK_IS_ZERO && packing != JPEG) {
      return bits(Set.of(8, 16));
    }
    return "of " + samples + " samples of grey" + others();
  }

  private @Nullable String rgb() {
    if (samples == 3 && extra.length == 0) {
      return bits(Set.of(8, 16));
    }
    if (samples == 4 && alpha() && packing != JPEG) {
      return bits(Set.of(8, 16));
    }
    return "of " + samples + " samples of colour" + others();
  }

  private @Nullable String palette() {
    if (samples != 1 || extra.length != 0) {
      return "with a colour table and an extra sample";
    }
    if (packing == JPEG) {
      return "with a colour table and JPEG compression";
    }
    if (d.count(TiffDirectory.COLOURS) != 3L << Math.min(bits, 20)) {
      return "whose colour table has not three values for each of its colours";
    }
    return bits(Set.of(1, 2, 4, 8));
  }

  private @Nullable String inks() {
    if (number(TiffDirectory.INK_SET, 1) != 1) {
      return "in other inks than cyan, magenta, yellow and black";
    }
    if (samples == 4 && extra.length == 0) {
      return bits(Set.of(8, 16));
    }
    return "of " + samples + " samples of ink" + others();
  }

  private boolean alpha() {
    return extra.length == 1 && (extra[0] == ASSOCIATED || extra[0] == UNASSOCIATED);
  }

  private String others() {
    return extra.length == 0 ? "" : ", " + extra.length + " of them extra";
  }

  private @Nullable String bits(Set<Integer> right) {
    return right.contains(bits) ? null : "with samples of " + bits + (bits == 1 ? " bit" : " bits");
  }
}
