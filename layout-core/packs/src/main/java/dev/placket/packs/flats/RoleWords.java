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
   */
  public record Reading(Role role, @Nullable String word, List<String> rest) {
    /** Whether a word of the name gave the role. */
    public boolean worded() {
      return word != null;
    }
  }

  /**
   * Reads a file name without its ending; words are parted by anything but letters and digits, and
   * where letters meet digits.
   */
  public static Reading read(String stem) {
    List<String> words = words(stem);
    List<String> lower = words.stream().map(w -> w.toLowerCase(Locale.ROOT)).toList();
    for (Role role : PARTICULAR) {
      int at = lower.indexOf(word(role));
      if (at >= 0) {
        List<String> rest = new ArrayList<>(words);
        String word = rest.remove(at);
        return new Reading(role, word, List.copyOf(rest));
      }
    }
    return new Reading(Role.DETAIL, null, words);
  }

  /** The role that a word names. */
  public static Optional<Role> role(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    return PARTICULAR.stream().filter(r -> word(r).equals(lower)).findFirst();
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
    String lower = word.toLowerCase(Locale.ROOT);
    return PARTICULAR.stream().anyMatch(r -> word(r).equals(lower));
  }
}
