package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads what a flat is to its sheet from the words of its file name. */
public final class RoleWords {
  /** The most particular first: a back-pocket-detail is a detail. */
  private static final List<Role> PARTICULAR =
      List.of(
          Role.SWATCH,
          Role.ARTWORK,
          Role.PHOTO,
          Role.STEP,
          Role.DETAIL,
          Role.INSIDE,
          Role.SIDE,
          Role.BACK,
          Role.FRONT);

  private RoleWords() {}

  /**
   * What a name says.
   *
   * @param role the role
   * @param word the word of the name that gave it; null if it is a detail for want of one
   * @param rest the other words, as they stand in the name
   * @param bothViews whether it names front and back, which are then in one drawing
   */
  public record Reading(Role role, @Nullable String word, List<String> rest, boolean bothViews) {
    /** Whether a word of the name gave the role. */
    public boolean worded() {
      return word != null;
    }
  }

  /**
   * Reads a file name without its ending; words are parted by anything but letters and digits, and
   * where letters meet digits. Words for roles are known in English, German, French, Italian,
   * Spanish, Portuguese, Turkish and Chinese.
   */
  public static Reading read(String stem) {
    List<String> words = words(stem);
    List<@Nullable Role> roles = new ArrayList<>();
    words.forEach(w -> roles.add(RoleVocabulary.role(w)));
    for (Role role : PARTICULAR) {
      int at = roles.indexOf(role);
      if (at >= 0) {
        boolean both = role == Role.BACK && roles.contains(Role.FRONT);
        List<String> rest = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
          boolean named = i == at || (both && roles.get(i) == Role.FRONT);
          rest.add(named ? RoleVocabulary.without(words.get(i)) : words.get(i));
        }
        rest.removeIf(String::isEmpty);
        String word = both ? words.get(roles.indexOf(Role.FRONT)) : words.get(at);
        return new Reading(both ? Role.FRONT : role, word, List.copyOf(rest), both);
      }
    }
    return new Reading(Role.DETAIL, null, words, false);
  }

  /** The role that a word names, in any of the languages. */
  public static Optional<Role> role(String word) {
    return Optional.ofNullable(RoleVocabulary.role(word));
  }

  /** The words of all roles, for messages. */
  public static String list() {
    return Arrays.stream(Role.values()).map(RoleWords::word).collect(Collectors.joining(", "));
  }

  /** The word of a role in file names. */
  static String word(Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }

  private static List<String> words(String stem) {
    List<String> words = new ArrayList<>();
    for (String word : stem.split("[^\\p{L}\\p{N}\\p{M}]+", -1)) {
      List<String> parts = List.of(word.split("(?<=\\p{L})(?=\\p{N})|(?<=\\p{N})(?=\\p{L})", -1));
      boolean holdsRole = parts.stream().anyMatch(RoleWords::isRole);
      words.addAll(holdsRole ? parts : List.of(word));
    }
    words.removeIf(String::isEmpty);
    return List.copyOf(words);
  }

  private static boolean isRole(String word) {
    return RoleVocabulary.role(word) != null;
  }
}
