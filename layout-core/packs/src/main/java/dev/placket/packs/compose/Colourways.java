package dev.placket.packs.compose;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Flats of one drawing whose areas are filled: a list, which the factory reads beside its table.
 */
final class Colourways {
  private Colourways() {}

  /** The list of a flat; null if it is not filled, or no other of its drawing is. */
  static @Nullable String list(FlatSetter.Read flat, List<FlatSetter.Read> all) {
    boolean several = all.stream().filter(other -> isOneDrawing(flat, other)).count() > 1;
    return several ? "colourways of " + flat.found().file() + " " + flat.found().part() : null;
  }

  private static boolean isOneDrawing(FlatSetter.Read a, FlatSetter.Read b) {
    return !a.flat().colouring().fills().isEmpty()
        && !b.flat().colouring().fills().isEmpty()
        && a.flat().role() == b.flat().role()
        && a.found().file().equals(b.found().file())
        && a.found().part().equals(b.found().part());
  }
}
