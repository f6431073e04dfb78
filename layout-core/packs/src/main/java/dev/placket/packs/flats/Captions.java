package dev.placket.packs.flats;

import dev.placket.layout.flat.Role;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.language.StockPhrase;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The caption that a file name gives, in the languages of the pack. */
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
   * @param phrases the languages of the pack; the caption has their marks
   */
  public static String of(
      Role role, List<String> rest, List<Role> roles, boolean bothViews, Phrases phrases) {
    if (bothViews) {
      return phrases.beside(StockPhrase.BOTH_VIEWS);
    }
    String words = String.join(" ", rest);
    StockPhrase title = StockPhrase.caption(role);
    Role part = rest.size() == 1 ? foreign(rest.get(0), phrases) : null;
    if (!role.isView() && part != null) {
      StockPhrase view = StockPhrase.caption(part);
      return phrases.beside(l -> longer(phrases, title, phrases.in(view, l).text(), l));
    }
    if (!role.isView()) {
      return words.isEmpty() ? phrases.beside(title) : phrases.beside(capital(words));
    }
    boolean alone = Collections.frequency(roles, role) == 1;
    return alone || words.isEmpty()
        ? phrases.beside(title)
        : phrases.beside(l -> longer(phrases, title, phrases.in(words, l).text(), l));
  }

  /** The role that a word says in another language than that of the pack; null for none. */
  private static @Nullable Role foreign(String word, Phrases phrases) {
    return RoleWords.role(word)
        .filter(r -> !phrases.isEnglish() || !RoleWords.word(r).equalsIgnoreCase(word))
        .orElse(null);
  }

  private static Phrases.Said longer(
      Phrases phrases, StockPhrase title, String words, String language) {
    Phrases.Said said = phrases.in(title, language);
    return new Phrases.Said(said.language(), said.text() + ", " + words);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
