package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.pictures.Picture;
import dev.placket.pictures.base.PicturePart;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A picture of the folder, read.
 *
 * @param path where it lies
 * @param part which drawing of the file it is
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
    String id,
    Role role,
    @Nullable String because,
    String caption,
    Picture picture) {
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
