package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The words for roles in the languages that designers name files in. */
final class RoleVocabulary {
  private static final RoleVocabulary ALL = read();

  private final Map<String, Role> words = new LinkedHashMap<>();
  private final Map<String, Role> han = new LinkedHashMap<>();

  private RoleVocabulary() {}

  /** The role of a word; null if it is the word for none. */
  static @Nullable Role role(String word) {
    String plain = plain(word);
    Role role = ALL.words.get(plain);
    if (role != null) {
      return role;
    }
    return ALL.han.entrySet().stream()
        .filter(e -> plain.contains(e.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(null);
  }

  /** A word without the Han word for its role; all of it where it has none. */
  static String without(String word) {
    String plain = Normalizer.normalize(word, Normalizer.Form.NFC);
    for (String role : ALL.han.keySet()) {
      if (plain.contains(role)) {
        return plain.replace(role, "");
      }
    }
    return "";
  }

  /** Composed, since some systems keep an accent apart from its letter, and in small letters. */
  private static String plain(String word) {
    return Normalizer.normalize(word, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }

  private static RoleVocabulary read() {
    RoleVocabulary list = new RoleVocabulary();
    for (Role role : Role.values()) {
      list.words.put(role.name().toLowerCase(Locale.ROOT), role);
    }
    try (InputStream in = RoleVocabulary.class.getResourceAsStream("role-words.tsv");
        BufferedReader lines =
            new BufferedReader(
                new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))) {
      lines.lines().filter(l -> !l.startsWith("#")).forEach(list::add);
      return list;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void add(String line) {
    String[] columns = line.split("\t", -1);
    Role role = Role.valueOf(columns[0].toUpperCase(Locale.ROOT));
    Map<String, Role> to = columns[1].equals("zh") ? han : words;
    for (String word : columns[2].split(" ", -1)) {
      Role other = to.put(plain(word), role);
      if (other != null && other != role) {
        throw new IllegalStateException(word + " is the word for two roles");
      }
    }
  }
}
