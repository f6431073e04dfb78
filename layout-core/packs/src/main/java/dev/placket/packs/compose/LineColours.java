package dev.placket.packs.compose;

import dev.placket.packs.description.Described;
import dev.placket.packs.description.PackColouring;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Chooses black or white for each group of lines on filled areas, so that it keeps 3:1 to all that
 * it lies on (WCAG 2, 1.4.11).
 *
 * <p>A drawing may have dark and light areas together: each group then names the areas that it lies
 * on. An outline lies on the paper, too. What keeps less is a slip, or a note where {@code
 * low-contrast} names it.
 */
final class LineColours {
  static final String LIGHT = "#FFFFFF";
  static final String DARK = "#000000";

  private final Described described;
  private final String path;
  private final PackColouring colouring;
  private final List<String> notes;

  /**
   * The colours for one flat.
   *
   * @param path where the flat is described
   * @param notes takes a note for each low contrast that is accepted
   */
  LineColours(Described described, String path, PackColouring colouring, List<String> notes) {
    this.described = described;
    this.path = path;
    this.colouring = colouring;
    this.notes = notes;
  }

  /** Names that are accepted at a low contrast are of areas or of groups of lines. */
  void checkNames() {
    Set<String> known = new LinkedHashSet<>(colouring.fills().keySet());
    known.addAll(colouring.lines().keySet());
    List<String> accepted = colouring.lowContrast();
    for (int i = 0; i < accepted.size(); i++) {
      unknown(
          "low-contrast/" + i, "no filled area or group of lines named", accepted.get(i), known);
    }
    Set<String> areas = new LinkedHashSet<>(colouring.fills().keySet());
    areas.add(PackColouring.PAPER);
    colouring
        .lines()
        .forEach(
            (group, on) -> {
              for (int i = 0; i < on.size(); i++) {
                unknown("lines/" + group + "/" + i, "no filled area named", on.get(i), areas);
              }
            });
  }

  /** A dark area on which no group of lines can become light. */
  void checkAreas() {
    colouring
        .fills()
        .forEach(
            (area, fill) -> {
              double dark = Contrast.ratio(DARK, fill);
              boolean lined =
                  colouring.lines().values().stream()
                      .anyMatch(a -> a.isEmpty() || a.contains(area));
              if (dark < Contrast.LINES && !lined) {
                low(
                    area,
                    "fills/" + area,
                    "%s, on which black lines keep only %s".formatted(fill, ratio(dark)),
                    "the groups of lines on it under lines, so that they can be made light");
              }
            });
  }

  /**
   * The colour of a group.
   *
   * @param outline whether it borders on the paper
   */
  String of(String group, boolean outline) {
    Map<String, String> on = on(group, outline);
    double dark = least(DARK, on);
    double light = least(LIGHT, on);
    String best = dark >= Contrast.LINES || dark >= light ? DARK : LIGHT;
    if (Math.max(dark, light) < Contrast.LINES) {
      low(
          group,
          "lines/" + group,
          "lines '%s', on which neither black (%s) nor white (%s) keeps 3:1 to %s"
              .formatted(group, ratio(dark), ratio(light), listed(on)),
          "groups of lines that lie on dark or on light areas alone");
    }
    return best;
  }

  /** What a group lies on, each with its colour. */
  private Map<String, String> on(String group, boolean outline) {
    List<String> stated = colouring.lines().getOrDefault(group, List.of());
    Map<String, String> on = new LinkedHashMap<>();
    for (String area : stated.isEmpty() ? colouring.fills().keySet() : stated) {
      on.put(area, colouring.fills().getOrDefault(area, LIGHT));
    }
    if (outline) {
      on.put(PackColouring.PAPER, LIGHT);
    }
    return on;
  }

  private static double least(String line, Map<String, String> on) {
    return on.values().stream().mapToDouble(c -> Contrast.ratio(line, c)).min().orElse(21);
  }

  private static String listed(Map<String, String> on) {
    return on.entrySet().stream()
        .map(e -> e.getKey() + (e.getKey().equals(PackColouring.PAPER) ? "" : " " + e.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String ratio(double ratio) {
    return String.format(Locale.ROOT, "%.1f:1", ratio);
  }

  private void low(String name, String key, String found, String expected) {
    if (colouring.lowContrast().contains(name)) {
      int line = described.places().of(path + "/low-contrast").line();
      notes.add("line " + line + ": " + found + "; low-contrast accepts it.");
      return;
    }
    List<String> ways = new ArrayList<>(List.of(expected));
    ways.add("'" + name + "' under low-contrast");
    described
        .faults()
        .add(described.places().of(path + "/" + key), found, String.join(", or ", ways));
  }

  private void unknown(String key, String what, String name, Set<String> known) {
    if (!known.contains(name)) {
      described.faults().unknown(described.places().of(path + "/" + key), what, name, known);
    }
  }
}
