package dev.placket.packs.folder;

import dev.placket.layout.flat.Role;
import dev.placket.layout.units.Length;
import dev.placket.packs.flats.RoleWords;
import dev.placket.packs.language.Glossary;
import dev.placket.packs.language.LanguageTag;
import dev.placket.packs.language.Phrases;
import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.text.Lettering;
import dev.placket.packs.text.Typeface;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

/**
 * What {@code pack.properties} in the folder adds to the drawings: the header's values, the real
 * length of a drawing unit, other captions. All of it may be left out.
 *
 * <pre>
 * label=Mossgantry        style-number=MG-3107     style-name=Sluice wrap coat
 * season= stage= revision= date= size-range= sample-size= unit= fabric= factory= issued-by=
 * unit.mm=1               one drawing unit of every SVG is 1 mm on the garment
 * unit.mm.front=1         the same for one file, named without its ending
 * caption.front=Front     the caption of one file
 * role.IMG-0231=back      what one file shows, where its name does not say it
 * ratio=0.85              the scale of the other views over the front's, where one scale for all
 *                         would cost the front more than 2 %
 * line-weight=0.6mm       the width at which the outline of every SVG prints
 * line-weight.front=0.7mm the same for one file
 * languages=en, zh-Hans   the languages of the sheet, the first leading
 * glossary=../terms.csv   texts in these languages
 * fonts=han.ttf           TrueType files for letters that the built-in typeface lacks
 * </pre>
 */
public final class PackNotes {
  /** The file's name. */
  public static final String FILE = "pack.properties";

  /** The keys of the header's values. */
  public enum Field {
    /** Who issues the pack. */
    LABEL,
    /** The style's number. */
    STYLE_NUMBER,
    /** The style's name. */
    STYLE_NAME,
    /** The season. */
    SEASON,
    /** Proto, fit, size set, pre-production. */
    STAGE,
    /** The revision. */
    REVISION,
    /** The date of the revision. */
    DATE,
    /** From the smallest to the largest size. */
    SIZE_RANGE,
    /** The size that samples are made in. */
    SAMPLE_SIZE,
    /** The unit of measurements. */
    UNIT,
    /** The main cloth. */
    FABRIC,
    /** Who makes it. */
    FACTORY,
    /** Who sends the sheet. */
    ISSUED_BY;

    /** The key in the file, the same as in a description and in {@code fit.json}. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  private static final String UNIT_MM = "unit.mm";
  private static final String CAPTION = "caption.";

  /** The beginning of a key that gives a picture its role. */
  static final String ROLE = "role.";

  private static final String RATIO = "ratio";

  private static final String LINE_WEIGHT = "line-weight";
  private static final String LANGUAGES = "languages";
  private static final String GLOSSARY = "glossary";
  private static final String FONTS = "fonts";

  private final Path folder;
  private final Map<String, String> values;
  private final Phrases phrases;

  private PackNotes(Path folder, Map<String, String> values, Phrases phrases) {
    this.folder = folder;
    this.values = values;
    this.phrases = phrases;
  }

  /**
   * Reads the notes of a folder; none where the file is absent.
   *
   * @param stems the names of the folder's pictures, without endings
   * @throws Refusal naming every key that is unknown, every picture that is absent and every length
   *     that is none
   */
  static PackNotes read(Path folder, List<String> stems) throws Refusal {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return new PackNotes(folder, Map.of(), Phrases.english());
    }
    Properties read = new Properties();
    try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      read.load(in);
    } catch (CharacterCodingException e) {
      throw Refusal.input(Fault.content(file, "is not in UTF-8").remedy("save it as UTF-8"));
    } catch (IOException | IllegalArgumentException e) {
      throw Refusal.input(Fault.unreadable(file, "cannot be read: " + e.getMessage()));
    }
    Map<String, String> values = new TreeMap<>();
    read.stringPropertyNames().forEach(k -> values.put(k, read.getProperty(k).strip()));
    List<Fault> wrong = new ArrayList<>();
    values.forEach((key, value) -> check(file, key, value, stems).ifPresent(wrong::add));
    if (!wrong.isEmpty()) {
      throw Refusal.input(wrong);
    }
    return new PackNotes(folder, values, phrases(folder, values));
  }

  private static Phrases phrases(Path folder, Map<String, String> values) throws Refusal {
    List<String> languages = list(values, LANGUAGES);
    List<String> glossaries = list(values, GLOSSARY);
    Glossary glossary =
        glossaries.isEmpty() ? Glossary.NONE : Glossary.read(folder.resolve(glossaries.get(0)));
    return Phrases.of(languages.isEmpty() ? List.of(Phrases.ENGLISH) : languages, glossary);
  }

  private static List<String> list(Map<String, String> values, String key) {
    return Arrays.stream(values.getOrDefault(key, "").split(",", -1))
        .map(String::strip)
        .filter(v -> !v.isEmpty())
        .toList();
  }

  private static Optional<Fault> check(Path file, String key, String value, List<String> stems) {
    if (key.equals(UNIT_MM) || key.startsWith(UNIT_MM + ".")) {
      if (!aboveZero(value)) {
        return Optional.of(
            Fault.content(file, "is no length above zero")
                .in(key + "=" + value)
                .remedy("give the millimetres of one unit, as in 1 or 0.5"));
      }
      return key.equals(UNIT_MM)
          ? Optional.empty()
          : checkStem(file, key, key.substring(UNIT_MM.length() + 1), stems);
    }
    if (key.equals(LINE_WEIGHT) || key.startsWith(LINE_WEIGHT + ".")) {
      if (length(value).isEmpty()) {
        return Optional.of(
            Fault.content(file, "is no width of a line")
                .in(key + "=" + value)
                .remedy("give a length, as in 0.6mm"));
      }
      return key.equals(LINE_WEIGHT)
          ? Optional.empty()
          : checkStem(file, key, key.substring(LINE_WEIGHT.length() + 1), stems);
    }
    if (key.equals(RATIO)) {
      return aboveZero(value) && Double.parseDouble(value) <= 1
          ? Optional.empty()
          : Optional.of(
              Fault.content(file, "is no ratio above 0 and at most 1")
                  .in(key + "=" + value)
                  .remedy("give the scale of the back over the front's, as in 0.85"));
    }
    if (key.equals(LANGUAGES)) {
      return list(Map.of(key, value), key).stream().allMatch(LanguageTag::isTag)
          ? Optional.empty()
          : Optional.of(
              Fault.content(file, "is no list of languages")
                  .in(key + "=" + value)
                  .remedy("name them as BCP 47 does, as in en, zh-Hans"));
    }
    if (key.equals(GLOSSARY) || key.equals(FONTS)) {
      return list(Map.of(key, value), key).stream()
          .map(name -> checkFile(file, key, name))
          .flatMap(Optional::stream)
          .findFirst();
    }
    if (key.startsWith(CAPTION)) {
      return checkStem(file, key, key.substring(CAPTION.length()), stems);
    }
    if (key.startsWith(ROLE)) {
      return RoleWords.role(value).isEmpty()
          ? Optional.of(
              Fault.content(file, "is no role")
                  .in(key + "=" + value)
                  .remedy("there are " + RoleWords.list()))
          : checkStem(file, key, key.substring(ROLE.length()), stems);
    }
    for (Field f : Field.values()) {
      if (f.key().equals(key)) {
        return Optional.empty();
      }
      if (f.key().equals(key.replace('.', '-'))) {
        return Optional.of(
            Fault.content(file, "unknown key '" + key + "'").remedy("write '" + f.key() + "'"));
      }
    }
    return Optional.of(
        Fault.content(file, "unknown key '" + key + "'").remedy("known are " + known()));
  }

  private static Optional<Fault> checkFile(Path file, String key, String name) {
    try {
      return Files.isRegularFile(file.resolveSibling(name))
          ? Optional.empty()
          : Optional.of(
              Fault.content(file, "there is no file '" + name + "'")
                  .in(key)
                  .remedy("name one, from this folder"));
    } catch (InvalidPathException e) {
      return Optional.of(
          Fault.content(file, "'" + name + "' is no file name").in(key).remedy("correct it"));
    }
  }

  private static Optional<Fault> checkStem(Path file, String key, String stem, List<String> stems) {
    return stems.contains(stem)
        ? Optional.empty()
        : Optional.of(
            Fault.content(file, "the folder has no picture '" + stem + "'")
                .in(key)
                .remedy("it has " + stems));
  }

  /** The stated scale of the other views over the front's, above 0, at most 1. */
  public Optional<Double> ratio() {
    return Optional.ofNullable(values.get(RATIO)).map(Double::valueOf);
  }

  private static boolean aboveZero(String value) {
    try {
      double number = Double.parseDouble(value);
      return number > 0 && Double.isFinite(number);
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /** A length of a thousandth of a millimetre or more. */
  private static Optional<Length> length(String value) {
    try {
      return Optional.of(Length.parse(value)).filter(l -> l.mm() >= 0.001);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The width at which the outline of a picture prints, where one is stated. */
  Optional<Length> lineWeight(String stem) {
    String all = values.getOrDefault(LINE_WEIGHT, "");
    return length(values.getOrDefault(LINE_WEIGHT + "." + stem, all));
  }

  private static String known() {
    List<String> keys = new ArrayList<>();
    for (Field f : Field.values()) {
      keys.add(f.key());
    }
    keys.add("unit.mm");
    keys.add("unit.mm.NAME");
    keys.add("caption.NAME");
    keys.add("role.NAME");
    keys.add(LINE_WEIGHT);
    keys.add(LINE_WEIGHT + ".NAME");
    keys.add(LANGUAGES);
    keys.add(GLOSSARY);
    keys.add(FONTS);
    return String.join(", ", keys);
  }

  /** All fields by their keys, blank where they are not stated. */
  public Map<String, String> fields() {
    Map<String, String> fields = new LinkedHashMap<>();
    for (Field f : Field.values()) {
      fields.put(f.key(), value(f));
    }
    return fields;
  }

  /** The languages of the pack and its texts in them. */
  public Phrases phrases() {
    return phrases;
  }

  /** The value of a field in the languages of the pack, blank where it is not stated. */
  String shown(Field field) {
    String value = value(field);
    return value.isBlank() ? "" : phrases.beside(value);
  }

  /**
   * The built-in typeface and those that the notes name.
   *
   * @throws Refusal naming a file that cannot be used
   */
  public Lettering lettering() throws Refusal {
    List<Typeface> faces = new ArrayList<>();
    for (String name : list(values, FONTS)) {
      try {
        faces.add(Typeface.of(name, Files.readAllBytes(folder.resolve(name))));
      } catch (IllegalArgumentException e) {
        throw Refusal.input(
            Fault.content(folder.resolve(name), "is " + e.getMessage())
                .remedy("give a TrueType font (.ttf)"));
      } catch (IOException e) {
        throw Refusal.input(
            Fault.unreadable(folder.resolve(name), "cannot be read")
                .remedy("give a readable file"));
      }
    }
    return Lettering.load().with(faces);
  }

  /** Whether the notes name a file. */
  boolean names(String file) {
    return list(values, FONTS).contains(file) || list(values, GLOSSARY).contains(file);
  }

  /** The value of a field, blank where it is not stated. */
  public String value(Field field) {
    return values.getOrDefault(field.key(), "");
  }

  /**
   * The real length of a unit, if stated for that picture or, for a drawing, for all drawings.
   *
   * @param drawing whether the picture is drawn with paths; a pixel has no length of its own
   */
  Optional<Length> unitLength(String stem, boolean drawing) {
    String all = drawing ? values.get(UNIT_MM) : null;
    String mm = values.getOrDefault(UNIT_MM + "." + stem, all);
    return Optional.ofNullable(mm).map(v -> Length.mm(Double.parseDouble(v)));
  }

  /** The stated role of a picture. */
  Optional<Role> role(String stem) {
    return Optional.ofNullable(values.get(ROLE + stem)).flatMap(RoleWords::role);
  }

  /** The stated caption of a picture. */
  public Optional<String> caption(String stem) {
    return Optional.ofNullable(values.get(CAPTION + stem));
  }
}
