package dev.placket.packs.output;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.regex.Pattern;

/**
 * Names of written files, such as every common file system takes and no shell takes for an option:
 * none begins with a dot or a dash, is reserved, or has a sign that is not seen.
 */
public final class OutputName {
  /** Names that are devices on some systems, whatever their ending. */
  private static final Pattern RESERVED =
      Pattern.compile("(?i)(CON|PRN|AUX|NUL|CONIN\\$|CONOUT\\$|(COM|LPT)[0-9¹²³])(\\..*)?");

  /** Bytes in UTF-8 that a name may have on common file systems, less an ending. */
  private static final int LONGEST = 240;

  /** The same where more than an ending comes behind. */
  private static final int STEM = 120;

  private OutputName() {}

  /**
   * A name without an ending, from a style number or the like: letters, figures, dots, dashes and
   * underscores.
   *
   * @param otherwise what to take where nothing is left of it
   */
  public static String stem(String text, String otherwise) {
    String plain = Normalizer.normalize(text, Normalizer.Form.NFC);
    String signs = plain.replaceAll("[^\\p{L}\\p{M}\\p{N}._-]+", "-");
    return made(signs, otherwise, STEM, "[.-]+$");
  }

  /**
   * A file's own name without its ending, for its copy: only what does harm is replaced.
   *
   * @param otherwise what to take where nothing is left of it
   */
  public static String kept(String name, String otherwise) {
    return made(
        name.replaceAll("[\\p{C}\\p{Zl}\\p{Zp}<>:\"/\\\\|?*]+", "-"),
        otherwise,
        LONGEST,
        "[\\s.]+$");
  }

  private static String made(String name, String otherwise, int longest, String end) {
    String begun = possible(name).replaceAll("^[\\p{M}\\s.-]+", "");
    String whole = cut(begun, longest).replaceAll(end, "");
    if (whole.isEmpty()) {
      return otherwise;
    }
    return RESERVED.matcher(whole).matches() ? whole.replaceFirst("(\\.|$)", "_$1") : whole;
  }

  /** As it is, or in plain letters where this machine's file names have no others. */
  private static String possible(String name) {
    try {
      return Path.of(name.replace('/', '-')).toString().isEmpty() ? "" : name;
    } catch (InvalidPathException e) {
      return Normalizer.normalize(name, Normalizer.Form.NFD)
          .replaceAll("\\p{M}+", "")
          .replaceAll("[^\\x20-\\x7E]+", "-");
    }
  }

  private static String cut(String name, int longest) {
    StringBuilder cut = new StringBuilder();
    int bytes = 0;
    for (int letter : name.codePoints().toArray()) {
      String sign = Character.toString(letter);
      bytes += sign.getBytes(StandardCharsets.UTF_8).length;
      if (bytes > longest) {
        break;
      }
      cut.append(sign);
    }
    return cut.toString();
  }
}
