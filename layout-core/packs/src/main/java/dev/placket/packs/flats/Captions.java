package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** The caption that a file name gives. */
public final class Captions {
  private Captions() {}

  /**
   * A view is called by its role, with the other words of its name only where the sheet has two of
   * that role; anything else by the words beside its role.
   *
   * @param role what it is to the sheet
   * @param rest the words of its name beside that of the role
   * @param roles the roles of all flats of the sheet
   * @param bothViews whether the drawing shows front and back
   */
  public static String of(Role role, List<String> rest, List<Role> roles, boolean bothViews) {
    if (bothViews) {
      return "Front and back view";
    }
    String words = String.join(" ", rest);
    if (role.isView()) {
      boolean alone = Collections.frequency(roles, role) == 1;
      return alone || words.isEmpty() ? title(role) : title(role) + ", " + words;
    }
    return words.isEmpty() ? title(role) : capital(words);
  }

  private static String title(Role role) {
    String word = capital(RoleWords.word(role));
    return role.isView() ? word + " view" : word;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
