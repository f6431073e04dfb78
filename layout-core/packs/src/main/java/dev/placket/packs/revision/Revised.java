package dev.placket.packs.revision;

import java.util.List;

/**
 * A revision and what it changed.
 *
 * @param code what stands in the triangles, as in {@code D}
 * @param things what is marked
 */
public record Revised(String code, List<Marked> things) {
  /** Copies the list. */
  public Revised {
    things = List.copyOf(things);
  }
}
