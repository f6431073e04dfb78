package dev.placket.packs.language;

import dev.placket.packs.table.Csv;
import dev.placket.packs.text.LanguageMarks;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The texts of one pack in its languages. It collects what has no translation, so each run has its
 * own.
 */
public final class Phrases {
  /** The language of the stock phrases. */
  public static final String ENGLISH = "en";

  /** Texts with such a word are language; numbers, codes and units are not. */
  private static final Pattern WORD =
      Pattern.compile("(?<![\\p{L}\\p{N}-])(?=\\p{L}*[\\p{Ll}\\p{Lo}])\\p{L}{3,}|\\p{Lo}");

  private static final Pattern FIELD = Pattern.compile("\\{[^{}]*}");

  private static final Glossary STOCK = stock();

  private final List<String> languages;
  private final Glossary glossary;
  private final Map<String, Set<String>> untranslated = new LinkedHashMap<>();

  private Phrases(List<String> languages, Glossary glossary) {
    this.languages = List.copyOf(languages);
    this.glossary = glossary;
  }

  /**
   * Texts in these languages.
   *
   * @param languages tags of BCP 47, the first leading; one or more
   * @param glossary asked before the stock phrases
   */
  public static Phrases of(List<String> languages, Glossary glossary) {
    return new Phrases(languages, glossary);
  }

  /** English alone. */
  public static Phrases english() {
    return of(List.of(ENGLISH), Glossary.NONE);
  }

  /**
   * A text with the language that it is in.
   *
   * @param language its tag; empty where it is not known
   * @param text the text, without marks
   */
  public record Said(String language, String text) {}

  /** Whether all text is in English. */
  public boolean isEnglish() {
    return languages.stream().allMatch(l -> LanguageTag.serves(ENGLISH, l));
  }

  /** The languages of the pack, the first leading. */
  public List<String> languages() {
    return languages;
  }

  /** All languages that text may be marked with, by their numbers: those of the pack, English. */
  public List<String> tags() {
    List<String> tags = new ArrayList<>(languages);
    if (!tags.contains(ENGLISH)) {
      tags.add(ENGLISH);
    }
    return tags;
  }

  /** A stock phrase in a language; in English, and listed, where it has no translation. */
  public Said in(StockPhrase phrase, String language) {
    String own = glossary.in(phrase.english(), language);
    String text = own == null ? STOCK.in(phrase.english(), language) : own;
    if (text == null) {
      list(phrase.english(), language);
    }
    return text == null ? new Said(ENGLISH, phrase.english()) : new Said(language, text);
  }

  /** A text of the pack in a language; as written, and listed, where it has no translation. */
  public Said in(String text, String language) {
    String found = glossary.in(text, language);
    if (found == null && text.strip().contains("\n")) {
      return new Said(
          language,
          text.lines().map(l -> in(l, language).text()).collect(Collectors.joining("\n")));
    }
    if (found != null) {
      return new Said(language, found);
    }
    if (wants(language) && WORD.matcher(FIELD.matcher(text).replaceAll("")).find()) {
      list(text, language);
    }
    return new Said("", text);
  }

  /** A text that is not in the glossary is taken to be in the language of its first column. */
  private boolean wants(String language) {
    return !glossary.isEmpty() && !LanguageTag.serves(glossary.languages().get(0), language);
  }

  /** A text of the pack in a language; null, and nothing listed, where it has no translation. */
  public @Nullable String translated(String text, String language) {
    return glossary.in(text, language);
  }

  /** A stock phrase in all languages, beside one another. */
  public String beside(StockPhrase phrase) {
    return beside(language -> in(phrase, language));
  }

  /** A text in all languages, beside one another. */
  public String beside(String text) {
    return beside(language -> in(text, language));
  }

  /** A text in all languages, beside one another, each text once. */
  public String beside(Function<String, Said> text) {
    return joined(" / ", languages.stream().map(text).toList());
  }

  /** A text in all languages, under one another, each text once. */
  public String lines(Function<String, Said> text) {
    return joined("\n", languages.stream().map(text).toList());
  }

  /** Texts joined and marked with their languages, each text once and none that is blank. */
  public String joined(String separator, List<Said> all) {
    List<String> tags = tags();
    Map<String, String> marked = new LinkedHashMap<>();
    for (Said said : all) {
      int number = Math.max(LanguageMarks.LEADING, tags.indexOf(said.language()));
      if (!said.text().isBlank()) {
        marked.putIfAbsent(said.text(), marked(said.text(), number));
      }
    }
    return String.join(separator, marked.values());
  }

  private static String marked(String text, int number) {
    return text.lines().map(l -> LanguageMarks.marked(l, number)).collect(Collectors.joining("\n"));
  }

  private void list(String text, String language) {
    untranslated.computeIfAbsent(language, l -> new LinkedHashSet<>()).add(text);
  }

  /** A line for each language that texts lack, with the texts. */
  public List<String> untranslated() {
    List<String> lines = new ArrayList<>();
    untranslated.forEach(
        (language, texts) ->
            lines.add(
                "Not translated into "
                    + language
                    + ", printed as written ("
                    + texts.size()
                    + "): "
                    + texts.stream()
                        .map(t -> "'" + t.strip().replaceAll("\\s+", " ") + "'")
                        .collect(Collectors.joining(", "))
                    + "."));
    return lines;
  }

  private static Glossary stock() {
    try (InputStream in = Phrases.class.getResourceAsStream("stock-phrases.csv")) {
      byte[] bytes = Objects.requireNonNull(in).readAllBytes();
      return Glossary.ofStock(Csv.read(new String(bytes, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Csv.CsvException e) {
      throw new IllegalStateException(e);
    }
  }
}
