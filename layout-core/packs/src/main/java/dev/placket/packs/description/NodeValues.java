package dev.placket.packs.description;

import dev.placket.layout.sheet.GridTrack;
import dev.placket.layout.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads single values; a slip is noted and answered with the default. */
final class NodeValues {
  private static final Pattern NUMBER =
      Pattern.compile("[0-9]{0,9}\\.?[0-9]{1,18}([eE][-+]?[0-9]{1,2})?");
  private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}_-]*");
  private static final Pattern COLOUR = Pattern.compile("#[0-9A-Fa-f]{6}");

  /** Longer than any paper. */
  private static final double MOST_MM = 10_000;

  private final Faults faults;
  private List<String> languages = List.of("en");

  NodeValues(Faults faults) {
    this.faults = faults;
  }

  Faults faults() {
    return faults;
  }

  void setLanguages(List<String> known) {
    languages = known;
  }

  String text(@Nullable PackNode node, String otherwise) {
    if (node == null) {
      return otherwise;
    }
    if (node instanceof PackNode.Text text) {
      return text.value();
    }
    faults.add(node.mark(), node.what(), "text");
    return otherwise;
  }

  @Nullable Length length(@Nullable PackNode node, double leastMm) {
    if (node == null) {
      return null;
    }
    String text = text(node, "");
    try {
      Length length = Length.parse(text);
      if (length.mm() >= leastMm && length.mm() <= MOST_MM) {
        return length;
      }
    } catch (IllegalArgumentException e) {
      // Answered below, with the place.
    }
    String above = leastMm > 0 ? " above 0" : "";
    faults.add(node.mark(), node.what(), "a length" + above + " in mm, cm, in or pt, as in 12mm");
    return null;
  }

  /** A track that may be as high as its content. */
  @Nullable GridTrack row(PackNode node) {
    return node instanceof PackNode.Text t && t.value().strip().equals("auto")
        ? new GridTrack.Auto()
        : track(node);
  }

  @Nullable GridTrack track(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    try {
      GridTrack track = GridTrack.parse(text(node, ""));
      boolean sane =
          track instanceof GridTrack.Share s
              ? s.fr() <= 1e6
              : ((GridTrack.Fixed) track).length().mm() <= MOST_MM;
      if (sane) {
        return track;
      }
    } catch (IllegalArgumentException e) {
      // Answered below, with the place.
    }
    faults.add(
        node.mark(), node.what(), "a length as in 12mm, or a share of what is left as in 1fr");
    return null;
  }

  @Nullable Double number(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    String text = text(node, "");
    double value = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : 0;
    if (value > 0) {
      return value;
    }
    faults.add(node.mark(), node.what(), "a number above 0, as in 0.85");
    return null;
  }

  /** A place along an axis of a drawing: any decimal number. */
  @Nullable Double coordinate(PackNode node) {
    String text = text(node, "");
    String digits = text.startsWith("-") ? text.substring(1) : text;
    if (NUMBER.matcher(digits).matches()) {
      return Double.parseDouble(text);
    }
    faults.add(node.mark(), node.what(), "a number in units of the drawing, as in 120.5");
    return null;
  }

  /** A share written as a percentage of 0 to 100. */
  @Nullable Double percent(PackNode node) {
    String text = text(node, "");
    String digits = text.endsWith("%") ? text.substring(0, text.length() - 1) : "";
    if (NUMBER.matcher(digits).matches() && Double.parseDouble(digits) <= 100) {
      return Double.parseDouble(digits) / 100;
    }
    faults.add(node.mark(), node.what(), "a percentage, as in 25%");
    return null;
  }

  boolean flag(@Nullable PackNode node, boolean otherwise) {
    Boolean chosen = choice(node, Map.of("true", true, "false", false), "yes or no");
    return chosen == null ? otherwise : chosen;
  }

  <T> @Nullable T choice(@Nullable PackNode node, Map<String, T> known, String what) {
    if (node == null) {
      return null;
    }
    String text = text(node, "");
    T chosen = known.get(text);
    if (chosen == null && node instanceof PackNode.Text) {
      faults.unknown(node.mark(), what, text, known.keySet().stream().sorted().toList());
    }
    return chosen;
  }

  /** Text in one language or several. */
  @Nullable Words words(@Nullable PackNode node) {
    if (node == null) {
      return null;
    }
    if (node instanceof PackNode.Keys keys) {
      Map<String, String> texts = new LinkedHashMap<>();
      keys.values()
          .forEach(
              (language, text) -> {
                if (!languages.contains(language)) {
                  TextPosition at = keys.places().getOrDefault(language, node.mark());
                  faults.unknown(at, "the language", language, languages);
                }
                texts.put(language, text(text, ""));
              });
      return new Words(texts);
    }
    return Words.of(text(node, ""));
  }

  Words words(@Nullable PackNode node, Words otherwise) {
    Words words = words(node);
    return words == null ? otherwise : words;
  }

  <T> List<T> list(@Nullable PackNode node, String what, Function<PackNode, @Nullable T> reader) {
    List<T> read = new ArrayList<>();
    if (node == null) {
      return read;
    }
    if (!(node instanceof PackNode.Items items)) {
      faults.add(node.mark(), node.what(), "a list of " + what);
      return read;
    }
    for (PackNode item : items.items()) {
      T value = reader.apply(item);
      if (value != null) {
        read.add(value);
      }
    }
    return read;
  }

  /** A list, or one item without the list. */
  List<String> oneOrMore(@Nullable PackNode node, String what) {
    return node instanceof PackNode.Text t
        ? List.of(t.value())
        : list(node, what, n -> text(n, ""));
  }

  /** Values by names that the writer of the description chose. */
  <T> Map<String, T> named(
      @Nullable PackNode node, String what, BiFunction<String, PackNode, @Nullable T> reader) {
    Map<String, T> read = new LinkedHashMap<>();
    if (node == null || (node instanceof PackNode.Text t && t.value().isEmpty())) {
      return read;
    }
    if (!(node instanceof PackNode.Keys keys)) {
      faults.add(node.mark(), node.what(), "names, each with " + what);
      return read;
    }
    keys.values()
        .forEach(
            (name, value) -> {
              if (!NAME.matcher(name).matches()) {
                TextPosition at = keys.places().getOrDefault(name, value.mark());
                faults.add(at, "the name '" + name + "'", "letters, digits, - and _");
              }
              T one = reader.apply(name, value);
              if (one != null) {
                read.put(name, one);
              }
            });
    return read;
  }

  String colour(PackNode node) {
    String text = text(node, "");
    if (!COLOUR.matcher(text).matches()) {
      faults.add(node.mark(), node.what(), "a colour as in \"#8A7F70\", in quotes");
    }
    return text;
  }
}
