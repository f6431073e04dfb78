package dev.placket.packs.description;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the areas of a drawing are coloured.
 *
 * @param fills colours of named areas, as {@code #RRGGBB}
 * @param lines names of groups of lines that stay readable, each with the areas that it lies on, or
 *     {@link #PAPER}; without any it lies on all that are filled
 * @param lowContrast names of areas and of groups of lines whose contrast may be low, which is
 *     reported and not refused
 * @param colourways codes of the colourways of the pack, or {@code all}, in which the drawing is
 *     shown, each as a flat of its own; none for this one flat
 */
public record PackColouring(
    Map<String, String> fills,
    Map<String, List<String>> lines,
    List<String> lowContrast,
    List<String> colourways) {
  /** What an outline lies on, beside its area. */
  public static final String PAPER = "paper";

  /** Every colourway of the pack. */
  public static final String ALL = "all";

  /** As drawn. */
  public static final PackColouring NONE =
      new PackColouring(Map.of(), Map.of(), List.of(), List.of());

  /** Copies collections. */
  public PackColouring {
    fills = Pack.ordered(fills);
    Map<String, List<String>> copied = new LinkedHashMap<>();
    lines.forEach((name, areas) -> copied.put(name, List.copyOf(areas)));
    lines = Pack.ordered(copied);
    lowContrast = List.copyOf(lowContrast);
    colourways = List.copyOf(colourways);
  }

  /** Lines that lie on all areas that are filled. */
  public static Map<String, List<String>> onAll(List<String> names) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    names.forEach(name -> lines.put(name, List.of()));
    return lines;
  }

  /** This colouring in one colourway, with areas and lines beside those that are stated. */
  public PackColouring in(Map<String, String> areas, Map<String, List<String>> groups) {
    Map<String, String> all = new LinkedHashMap<>(areas);
    all.putAll(fills);
    Map<String, List<String>> on = new LinkedHashMap<>(groups);
    on.putAll(lines);
    return new PackColouring(all, on, lowContrast, List.of());
  }
}
