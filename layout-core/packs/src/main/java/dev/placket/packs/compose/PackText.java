package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.TextPosition;
import dev.placket.packs.description.Words;
import dev.placket.packs.language.Glossary;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.text.LanguageMarks;
import dev.placket.pictures.fault.Fault;
import java.nio.file.InvalidPathException;
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
  private final Phrases phrases;
  private final Map<String, Words> ofSheet;
  private final Set<String> missing;

  private PackText(
      Described described, Phrases phrases, Map<String, Words> ofSheet, Set<String> missing) {
    this.described = described;
    this.phrases = phrases;
    this.ofSheet = ofSheet;
    this.missing = missing;
  }

  /** With the glossary of the description; slips are noted. */
  static PackText of(Described described) {
    Phrases phrases = Phrases.of(described.pack().printed(), glossary(described));
    return new PackText(described, phrases, Map.of(), new LinkedHashSet<>());
  }

  private static Glossary glossary(Described described) {
    String name = described.pack().glossary();
    if (name == null) {
      return Glossary.NONE;
    }
    TextPosition place = described.places().of("glossary");
    try {
      return Glossary.read(described.folder().resolve(name).normalize());
    } catch (InvalidPathException e) {
      described.faults().add(place, "'" + name + "', which is no file name", "a file name");
    } catch (Refusal e) {
      for (Fault fault : e.faults()) {
        described.faults().add(place, fault.quoted(), "a correct glossary", fault.remedy());
      }
    }
    return Glossary.NONE;
  }

  /** The same for one sheet, whose own fields are known. */
  PackText onSheet(Map<String, Words> fields) {
    return new PackText(described, phrases, fields, missing);
  }

  /** The languages that are printed. */
  Phrases phrases() {
    return phrases;
  }

  /** What was found missing: a line for each text that lacks a language, and for the glossary. */
  List<String> missing() {
    List<String> all = new ArrayList<>(missing);
    all.addAll(phrases.untranslated());
    return all;
  }

  /** Languages under one another, to be set: each marked. */
  String setLines(Words words, String path) {
    return phrases.joined("\n", said(words, path));
  }

  /** Languages beside one another, to be set: each marked. */
  String setBeside(Words words, String path) {
    return phrases.joined(" / ", said(words, path));
  }

  /** Languages under one another. */
  String lines(Words words, String path) {
    return LanguageMarks.without(setLines(words, path));
  }

  /** Languages beside one another. */
  String beside(Words words, String path) {
    return LanguageMarks.without(setBeside(words, path));
  }

  /** A value of a file as it stands, in all languages under one another, to be set. */
  String setValue(String value) {
    return phrases.lines(language -> phrases.in(value, language));
  }

  /** A text in a language. */
  String in(Words words, String language, String path) {
    return said(words, language, path).text();
  }

  private List<Phrases.Said> said(Words words, String path) {
    return phrases.languages().stream().map(language -> said(words, language, path)).toList();
  }

  private Phrases.Said said(Words words, String language, String path) {
    String own = words.byLanguage().getOrDefault(language, "");
    if (!own.isBlank()) {
      return new Phrases.Said(language, filled(own, language, path));
    }
    if (words.plain()) {
      Phrases.Said said = phrases.in(words.byLanguage().getOrDefault("", ""), language);
      return new Phrases.Said(said.language(), filled(said.text(), language, path));
    }
    return translated(words, language, path);
  }

  /** By the glossary; else listed, and as it stands where it would not be printed at all. */
  private Phrases.Said translated(Words words, String language, String path) {
    String first = "";
    boolean printed = false;
    for (Map.Entry<String, String> each : words.byLanguage().entrySet()) {
      String text = each.getValue();
      String found = text.isBlank() ? null : phrases.translated(text, language);
      if (found != null) {
        return new Phrases.Said(language, filled(found, language, path));
      }
      first = first.isBlank() ? text : first;
      printed |= !text.isBlank() && phrases.languages().contains(each.getKey());
    }
    if (!words.blank()) {
      int line = described.places().of(path).line();
      missing.add("line " + line + ": no text in '" + language + "' (" + path + ")");
    }
    return new Phrases.Said("", printed ? "" : filled(first, language, path));
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
      return LanguageMarks.without(in(value, language, "fields/" + name));
    }
    if (!OF_SHEET.contains(name)) {
      Set<String> known = new TreeSet<>(described.pack().fields().keySet());
      known.addAll(OF_SHEET);
      described.faults().unknown(described.places().of(path), "the field", name, known);
    }
    return "";
  }
}
