package dev.placket.packs.report;

import dev.placket.packs.placed.PackWeight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Puts the size of a file into words. */
final class WeightWords {
  private WeightWords() {}

  static List<String> of(PackWeight weight) {
    PackWeight.Lowered lowered = weight.lowered();
    String weighs =
        "File size: " + kilo(weight.bytes()) + " kB (limit " + kilo(weight.limit()) + " kB)";
    if (lowered != null) {
      weighs +=
          String.format(
              Locale.ROOT,
              "; pictures were reduced to %.0f pixels per inch, for an estimated %s kB",
              lowered.perInch(),
              kilo(lowered.foreseen()));
    }
    if (weight.over() == 0) {
      return List.of(weighs + ".");
    }
    if (!weight.parts().isEmpty()) {
      List<String> lines = new ArrayList<>(List.of(weighs + ".", "Split to keep the limit:"));
      for (PackWeight.Part part : weight.parts()) {
        String sheets =
            part.first() == part.last()
                ? "sheet " + part.first()
                : "sheets " + part.first() + " to " + part.last();
        String over = part.bytes() > weight.limit() ? ", over the size limit" : "";
        lines.add(part.name() + ": " + sheets + ", " + kilo(part.bytes()) + " kB" + over + ".");
      }
      return lines;
    }
    String which =
        weight.heaviest().stream()
            .map(h -> h.name() + " (" + kilo(h.bytes()) + " kB)")
            .collect(Collectors.joining(", "));
    return List.of(
        weighs + ".",
        "Over the size limit by "
            + kilo(weight.over())
            + " kB"
            + (which.isEmpty() ? "." : "; largest pictures: " + which + "."));
  }

  /** Thousands of bytes. */
  private static String kilo(long bytes) {
    return String.format(Locale.ROOT, "%,.1f", bytes / 1000.0);
  }
}
