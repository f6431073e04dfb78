package dev.placket.pictures.raster;

import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.ReadLimits;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageReader;
import org.jspecify.annotations.Nullable;

/**
 * The formats that are read: their names, their first bytes, who reads their headers and who
 * decodes them.
 */
public enum RasterFormat {
  SVG("SVG", "svg"),
  SVGZ("SVGZ", "svgz", "svg.gz"),
  PDF("PDF", "pdf"),
  PNG("PNG", "png", "apng"),
  JPEG("JPEG", "jpg", "jpeg", "jpe", "jfif"),
  TIFF("TIFF", "tif", "tiff"),
  GIF("GIF", "gif"),
  BMP("BMP", "bmp", "dib"),
  WEBP("WebP", "webp");

  /** So many first bytes tell the format. */
  public static final int ENOUGH = 1024;

  public final String word;
  private final List<String> endings;

  RasterFormat(String word, String... endings) {
    this.word = word;
    this.endings = List.of(endings);
  }

  /** All that are read, for messages. */
  public static String list() {
    List<String> words =
        Stream.of(values()).filter(f -> f != SVGZ).map(f -> f.word).collect(Collectors.toList());
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  /**
   * The header of a raster.
   *
   * @param whole whether to check what stands behind the pixels, too
   * @throws IllegalArgumentException for drawings, and for PNG and GIF, which keep more than their
   *     header and are opened by {@link RasterFile}
   */
  RasterHead head(String name, SourceBytes bytes, ReadLimits limits, boolean whole)
      throws PictureException, IOException {
    return switch (this) {
      case JPEG -> Jpeg.head(name, bytes, limits);
      case TIFF -> Tiff.head(name, bytes, limits, whole);
      case BMP -> Bmp.head(name, bytes, limits);
      case WEBP -> Webp.head(name, bytes, limits);
      case SVG, SVGZ, PDF, PNG, GIF ->
          throw new IllegalArgumentException(this + " has no header alone");
    };
  }

  /**
   * A decoder of a library, without its input.
   *
   * @throws IOException if there is none
   */
  ImageReader decoder() throws IOException {
    return switch (this) {
      case JPEG -> Jpeg.decoder();
      case TIFF -> Tiff.decoder();
      case BMP -> Bmp.decoder();
      case WEBP -> Webp.decoder();
      case GIF -> Gif.decoder();
      case SVG, SVGZ, PDF, PNG -> throw new IOException("no decoder is needed for it");
    };
  }

  /** The format of bytes that begin so, or null. */
  public static @Nullable RasterFormat of(byte[] first) {
    if (starts(first, 0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
      return PNG;
    }
    if (starts(first, 0, 0xFF, 0xD8, 0xFF)) {
      return JPEG;
    }
    if (starts(first, 0, 'I', 'I', 42, 0) || starts(first, 0, 'M', 'M', 0, 42)) {
      return TIFF;
    }
    if (starts(first, 0, 'G', 'I', 'F', '8', '7', 'a')
        || starts(first, 0, 'G', 'I', 'F', '8', '9', 'a')) {
      return GIF;
    }
    if (starts(first, 0, 'R', 'I', 'F', 'F') && starts(first, 8, 'W', 'E', 'B', 'P')) {
      return WEBP;
    }
    if (starts(first, 0, 'B', 'M') && first.length > 17 && first[15] == 0 && first[17] == 0) {
      return BMP;
    }
    if (starts(first, 0, 0x1F, 0x8B, 8)) {
      return SVGZ;
    }
    if (looksLikeXml(first)) {
      return SVG;
    }
    return isPdf(first) ? PDF : null;
  }

  /** A PDF may have other bytes before its header, as readers allow. */
  private static boolean isPdf(byte[] first) {
    for (int at = 0; at < first.length - 4; at++) {
      if (starts(first, at, '%', 'P', 'D', 'F', '-')) {
        return true;
      }
    }
    return false;
  }

  /** Whether bytes begin as the kind of TIFF does that is not read. */
  public static boolean isBigTiff(byte[] first) {
    return starts(first, 0, 'I', 'I', 43, 0) || starts(first, 0, 'M', 'M', 0, 43);
  }

  private static boolean starts(byte[] bytes, int at, int... with) {
    if (bytes.length < at + with.length) {
      return false;
    }
    for (int i = 0; i < with.length; i++) {
      if ((bytes[at + i] & 255) != with[i]) {
        return false;
      }
    }
    return true;
  }

  /** A first {@code <} after a byte order mark and blanks, or UTF-16 with its mark. */
  public static boolean looksLikeXml(byte[] bytes) {
    if (starts(bytes, 0, 0xFE, 0xFF) || starts(bytes, 0, 0xFF, 0xFE)) {
      return true;
    }
    int at = starts(bytes, 0, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    while (at < bytes.length && (bytes[at] == ' ' || (bytes[at] >= 9 && bytes[at] <= 13))) {
      at++;
    }
    return at < bytes.length && bytes[at] == '<';
  }

  /** Whether a file's name ends as those of any format do. */
  public static boolean isUsualName(String name) {
    String low = name.toLowerCase(Locale.ROOT);
    for (RasterFormat format : values()) {
      if (format.endings.stream().anyMatch(e -> low.endsWith("." + e))) {
        return true;
      }
    }
    return false;
  }

  /** What to say where a file's name ends as those of another format do, or null. */
  public @Nullable String wrongEnding(String name) {
    String low = name.toLowerCase(Locale.ROOT);
    int dot = low.lastIndexOf('.');
    if (dot < 0
        || low.indexOf('/', dot) >= 0
        || endings.stream().anyMatch(e -> low.endsWith("." + e))) {
      return null;
    }
    String ending = low.substring(dot + 1);
    for (RasterFormat other : values()) {
      if (other.endings.contains(ending)) {
        return "its name ends in ." + ending + " but it is " + word + "; it is read as what it is";
      }
    }
    return null;
  }
}
