package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import java.nio.file.Path;

/** What a single file's name says about it. */
public final class NamedRole {
  private NamedRole() {}

  /** The role by the words of a file name; a detail if it has none. */
  public static Role of(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return RoleWords.read(dot > 0 ? name.substring(0, dot) : name).role();
  }
}
