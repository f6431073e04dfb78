package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text with its fields filled in and its languages joined. */
final class PackText {
  /** What every sheet knows of itself. */
  static final List<String> OF_SHEET = List.of("sheet", "sheets", "sheet-name", "paper");

  private static final Pattern FIELD = Pattern.compile("\\{\\{|}}|\\{([^{}\\n]*)}");

  private final Described described;
  private final Map<String, Words> ofSheet;
  private final Set<String> missing;

  private PackText(Described described, Map<String, Words> ofSheet, Set<String> missing) {
    this.described = described;
    this.ofSheet = ofSheet;
    this.missing = missing;
  }

  static PackText of(Described described) {
    return new PackText(described, Map.of(), new LinkedHashSet<>());
  }

  /** The same for one sheet, whose own fields are known. */
  PackText onSheet(Map<String, Words> fields) {
    return new PackText(described, fields, missing);
  }

  /** What was found missing: one line for each text that lacks a language. */
  List<String> missing() {
    return List.copyOf(missing);
  }

  /** Languages under one another. */
  String lines(Words words, String path) {
    return String.join("\n", texts(words, path));
  }

  /** Languages beside one another. */
  String beside(Words words, String path) {
    return String.join(" / ", texts(words, path));
  }

  private List<String> texts(Words words, String path) {
    List<String> languages = described.pack().languages();
    for (String language : words.missing(languages)) {
      int line = described.places().of(path).line();
      missing.add("line " + line + ": no text in '" + language + "' (" + path + ")");
    }
    List<String> texts = new ArrayList<>();
    for (String language : languages) {
      String text = words.byLanguage().getOrDefault(words.plain() ? "" : language, "");
      String filled = filled(text, language, path);
      if (!filled.isBlank() && !texts.contains(filled)) {
        texts.add(filled);
      }
    }
    return texts;
  }

  private String filled(String text, String language, String path) {
    Matcher m = FIELD.matcher(text);
    StringBuilder filled = new StringBuilder();
    while (m.find()) {
      String name = m.group(1);
      String value = name == null ? m.group().substring(0, 1) : value(name.strip(), language, path);
      m.appendReplacement(filled, Matcher.quoteReplacement(value));
    }
    m.appendTail(filled);
    return filled.toString();
  }

  private String value(String name, String language, String path) {
    Words value = ofSheet.get(name);
    value = value == null ? described.pack().fields().get(name) : value;
    if (value != null) {
      return String.join(" ", value.in(List.of(language)));
    }
    if (!OF_SHEET.contains(name)) {
      Set<String> known = new TreeSet<>(described.pack().fields().keySet());
      known.addAll(OF_SHEET);
      described.faults().unknown(described.places().of(path), "the field", name, known);
    }
    return "";
  }
}
