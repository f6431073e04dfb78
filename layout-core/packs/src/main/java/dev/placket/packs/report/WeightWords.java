package dev.placket.packs.report;

import dev.placket.packs.placed.PackWeight;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says in words what a pack weighs. */
final class WeightWords {
  private WeightWords() {}

  static List<String> of(PackWeight weight) {
    PackWeight.Lowered lowered = weight.lowered();
    String weighs =
        "Weight: " + kilo(weight.bytes()) + " of at most " + kilo(weight.limit()) + " kB";
    if (lowered != null) {
      weighs +=
          String.format(
              Locale.ROOT,
              "; for it pictures got no more than %.0f pixels per inch, foreseen were %s kB",
              lowered.perInch(),
              kilo(lowered.foreseen()));
    }
    if (weight.over() == 0) {
      return List.of(weighs + ".");
    }
    String which =
        weight.heaviest().stream()
            .map(h -> h.name() + " (" + kilo(h.bytes()) + " kB)")
            .collect(Collectors.joining(", "));
    return List.of(
        weighs + ".",
        "It is too heavy by "
            + kilo(weight.over())
            + " kB"
            + (which.isEmpty() ? "." : "; what weighs most: " + which + "."));
  }

  /** Thousands of bytes. */
  private static String kilo(long bytes) {
    return String.format(Locale.ROOT, "%,.1f", bytes / 1000.0);
  }
}
