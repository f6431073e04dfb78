package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.pictures.Picture;
import dev.placket.pictures.base.PicturePart;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A picture of the folder, read.
 *
 * @param path where it lies
 * @param part which drawing of the file it is
 * @param layers the layers of the file that were asked for; empty for those that it shows
 * @param digest SHA-256 of the file as it lies, in hexadecimal digits
 * @param id what the sheet calls it: its name without the ending, with it where two share a name
 * @param role what it is to the sheet
 * @param because what gave the role: the word of a name, or a line of {@code pack.properties}; null
 *     if nothing did
 * @param caption what stands under it; may have marks of languages
 * @param picture its content
 */
public record FlatFile(
    Path path,
    PicturePart part,
    List<String> layers,
    String digest,
    String id,
    Role role,
    @Nullable String because,
    String caption,
    Picture picture) {
  /** Copies the list. */
  public FlatFile {
    layers = List.copyOf(layers);
  }

  /** Whether areas were filled or parts hidden, so that it differs from the file. */
  public boolean filled() {
    return !digest.equals(picture.digest());
  }

  /** What stands under it, without marks of languages. */
  @Override
  public String caption() {
    return LanguageMarks.without(caption);
  }

  /** What stands under it, with marks of languages, to be set. */
  public String markedCaption() {
    return caption;
  }

  /** The file's name, with the part of it as in {@code style.pdf#3}. */
  public String name() {
    String file = path.getFileName().toString();
    return part.isWhole() ? file : file + "#" + part.key();
  }

  /** Whether something gave the role. */
  public boolean worded() {
    return because != null;
  }
}
