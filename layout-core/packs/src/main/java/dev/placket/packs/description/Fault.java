package dev.placket.packs.description;

import org.jspecify.annotations.Nullable;

/**
 * A slip in a description.
 *
 * @param place where it was made
 * @param found what stands there
 * @param expected what was expected, or what to do
 * @param nearest the known word nearest to what was found, or null
 */
public record Fault(TextPosition place, String found, String expected, @Nullable String nearest) {
  /** The message for the file named. */
  public String message(String file) {
    return file
        + ", line "
        + place.line()
        + ", column "
        + place.column()
        + ": found "
        + found
        + "; expected "
        + expected
        + (nearest == null ? "" : "; nearest is '" + nearest + "'")
        + ".";
  }
}
