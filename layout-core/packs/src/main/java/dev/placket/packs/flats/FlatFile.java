package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.pictures.Picture;
import java.nio.file.Path;

/**
 * A picture of the folder, read.
 *
 * @param path where it lies
 * @param id what the sheet calls it: its name without the ending, with it where two share a name
 * @param role what it is to the sheet
 * @param worded whether a word of its name gave the role
 * @param caption what stands under it
 * @param picture its content
 */
public record FlatFile(
    Path path, String id, Role role, boolean worded, String caption, Picture picture) {
  /** The file's name. */
  public String name() {
    return path.getFileName().toString();
  }
}
