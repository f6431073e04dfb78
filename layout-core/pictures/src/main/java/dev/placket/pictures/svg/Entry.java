package dev.placket.pictures.svg;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One line of the list.
 *
 * @param elements the elements that it speaks of
 * @param name an attribute or property; {@code style:} in front of what only style may set
 * @param values the class of value
 * @param besides a property that has to be set to something else than none, or null
 * @param verdict {@code right}, or the key of a note
 * @param line in the list, for tests
 */
record Entry(
    Set<String> elements,
    String name,
    ValueClass values,
    @Nullable String besides,
    String verdict,
    int line) {
  static final String RIGHT = "right";

  boolean right() {
    return verdict.equals(RIGHT);
  }
}
