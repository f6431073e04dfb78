package dev.placket.packs.text;

import dev.placket.layout.units.Length;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The typefaces of a pack, measured by the height of their capitals: the one that comes with the
 * program first, then those that the pack names, each for the characters that those before it lack.
 *
 * <p>Capital heights come from the steps of ISO 3098: 1.8, 2.5, 3.5 and 5 mm.
 */
public final class Lettering {
  /** Captions of cells. */
  public static final Length CAPTION = Length.mm(1.8);

  /** Values in cells. */
  public static final Length VALUE = Length.mm(2.5);

  /** What a reader looks for first. */
  public static final Length HEADING = Length.mm(3.5);

  /** The name over all. */
  public static final Length TITLE = Length.mm(5);

  /** The steps, the largest first. */
  public static final List<Length> STEPS = List.of(TITLE, HEADING, VALUE, CAPTION);

  private static final String LACKING = "is in none of the sheet's letters";

  private static final int FIRST_COMBINING = 0x300;

  /** Line to line, as a multiple of the capital height. */
  private static final double LEADING = 1.65;

  /** Ideographs rise 0.88 em and capitals about 0.7 (common practice), as a share of capitals. */
  private static final double RISE = 0.26;

  private final List<Typeface> faces;

  private Lettering(List<Typeface> faces) {
    this.faces = List.copyOf(faces);
  }

  /** Loads the typeface that comes with the program; no font of the machine is ever looked at. */
  public static Lettering load() {
    return new Lettering(List.of(Typeface.builtIn()));
  }

  /** This lettering with further typefaces, asked in their order for what those before lack. */
  public Lettering with(List<Typeface> further) {
    List<Typeface> all = new ArrayList<>(faces);
    all.addAll(further);
    return new Lettering(all);
  }

  /** The typefaces, the first asked first. */
  public List<Typeface> faces() {
    return faces;
  }

  /** From one baseline to the next. */
  public Length leading(Length capitalHeight) {
    return capitalHeight.times(LEADING);
  }

  /** How far letters of a line rise over capitals of a height: those of Chinese and the like do. */
  static Length rise(String text, Length capitalHeight) {
    boolean tall = text.codePoints().anyMatch(Script::wantsRoom);
    return capitalHeight.times(tall ? RISE : 0);
  }

  /** How wide a text is, in points. */
  public double width(String text, Length capitalHeight) {
    double ems =
        composed(text)
            .codePoints()
            .filter(c -> !LanguageMarks.isMark(c))
            .mapToDouble(this::advance)
            .sum();
    return ems * capitalHeight.pt();
  }

  /** A line of text from its left end, in pieces of one typeface each. */
  public List<TextRun> line(String text, double left, double base, Length height, boolean strong) {
    List<TextRun> runs = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    Typeface current = faces.get(0);
    int language = LanguageMarks.LEADING;
    double x = left;
    for (int c : composed(text).codePoints().toArray()) {
      boolean mark = LanguageMarks.isMark(c);
      Typeface face = mark ? current : face(c);
      if ((mark || face != current) && !piece.isEmpty()) {
        runs.add(new TextRun(piece.toString(), x, base, height, current, strong, false, language));
        x += width(piece.toString(), height);
        piece.setLength(0);
      }
      current = face;
      if (mark) {
        language = LanguageMarks.language(c);
      } else {
        piece.appendCodePoint(c);
      }
    }
    if (!piece.isEmpty()) {
      runs.add(new TextRun(piece.toString(), x, base, height, current, strong, false, language));
    }
    return runs;
  }

  /**
   * Breaks a text at its line ends, and at its blanks into lines no wider than the room where a
   * single word allows it. Between Chinese or Japanese characters a line may always break.
   *
   * @param room in points
   */
  public List<String> wrap(String text, Length capitalHeight, double room) {
    List<String> lines = new ArrayList<>();
    text.lines().forEach(part -> wrap(lines, part, capitalHeight, room));
    return LanguageMarks.carried(lines);
  }

  /** The same, but a word that is wider than the room is broken, too. */
  public List<String> wrapHard(String text, Length capitalHeight, double room) {
    List<String> lines = new ArrayList<>();
    for (String line : wrap(text, capitalHeight, room)) {
      int from = 0;
      int end = line.length();
      while (width(line.substring(from), capitalHeight) > room) {
        end = line.length();
        while (line.offsetByCodePoints(from, 1) < end
            && width(line.substring(from, end), capitalHeight) > room) {
          end = line.offsetByCodePoints(end, -1);
        }
        lines.add(line.substring(from, end));
        from = end;
      }
      lines.add(line.substring(from));
    }
    lines.removeIf(l -> LanguageMarks.without(l).isEmpty() && lines.size() > 1);
    return LanguageMarks.carried(lines);
  }

  private void wrap(List<String> lines, String part, Length capitalHeight, double room) {
    String line = "";
    for (String word : Breaks.words(part.strip())) {
      String longer = line.isEmpty() ? word.stripLeading() : line + word;
      if (!line.isEmpty() && width(longer, capitalHeight) > room) {
        lines.add(line);
        line = word.stripLeading();
      } else {
        line = longer;
      }
    }
    lines.add(line);
  }

  /**
   * Checks that every character can be set.
   *
   * @param text the text
   * @param where what messages call the place it came from
   * @throws Refusal naming place and character, if no typeface has it or its script needs shaping
   */
  public void check(String text, String where) throws Refusal {
    String fault = fault(text);
    if (fault != null) {
      Fault found = Fault.content("", fault).in(where);
      throw Refusal.input(
          (fault.endsWith(LACKING)
                  ? found.remedy("name a TrueType file that has it under 'fonts'")
                  : found)
              .remedy("write it in Latin, Greek or Cyrillic letters"));
    }
  }

  /** The first character that cannot be set and why; null where all can. */
  public @Nullable String fault(String text) {
    for (int c :
        composed(LanguageMarks.without(text)).codePoints().filter(c -> c != '\n').toArray()) {
      String why = Script.refusal(c);
      if (why == null && faces.stream().noneMatch(f -> f.has(c))) {
        why = LACKING;
      }
      if (why != null) {
        String code = String.format(Locale.ROOT, "U+%04X", c);
        boolean seen = Character.isLetterOrDigit(c) || Character.isDefined(c);
        return (seen && !Character.isISOControl(c) ? "'" + Character.toString(c) + "' " : "")
            + "("
            + code
            + ") "
            + why;
      }
    }
    return null;
  }

  /** The steps, from the preferred down to the least, at which a text may be set. */
  public static List<Length> steps(String text, Length preferred, Length least) {
    boolean roomy = text.codePoints().anyMatch(Script::wantsRoom);
    Length floor = roomy && least.compareTo(VALUE) < 0 ? VALUE : least;
    List<Length> steps =
        STEPS.stream().filter(s -> s.compareTo(preferred) <= 0 && s.compareTo(floor) >= 0).toList();
    return steps.isEmpty() ? List.of(floor) : steps;
  }

  private static String composed(String text) {
    // Letters below the first combining one are composed as they stand.
    if (text.chars().allMatch(c -> c < FIRST_COMBINING)) {
      return text;
    }
    return Normalizer.isNormalized(text, Normalizer.Form.NFC)
        ? text
        : Normalizer.normalize(text, Normalizer.Form.NFC);
  }

  private Typeface face(int codePoint) {
    for (Typeface face : faces) {
      if (face.has(codePoint)) {
        return face;
      }
    }
    return faces.get(0);
  }

  /** As a multiple of the capital height. */
  private double advance(int codePoint) {
    Typeface face = face(codePoint);
    return face.advance(codePoint) / face.capitals();
  }
}
