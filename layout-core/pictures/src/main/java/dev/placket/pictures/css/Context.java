package dev.placket.pictures.css;

import java.util.Map;
import java.util.Set;

/**
 * What an element takes from the one around it and Batik would not hand on as CSS says.
 *
 * @param variables custom properties, worked out
 * @param colour the value of {@code color}
 * @param following the paints that follow {@code color}: {@code currentColor} is inherited as a
 *     word, not as the colour it stands for where it is stated
 * @param values colours and opacities that are inherited only on demand
 */
record Context(
    Map<String, String> variables,
    String colour,
    Set<String> following,
    Map<String, String> values) {
  static final Context OUTERMOST = new Context(Map.of(), "black", Set.of(), Map.of());
}
