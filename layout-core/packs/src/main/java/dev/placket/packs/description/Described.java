package dev.placket.packs.description;

import java.nio.file.Path;

/**
 * A description that was read.
 *
 * @param file where it lies
 * @param pack what it says
 * @param places where it says it
 * @param faults the slips found so far; later checks add theirs
 */
public record Described(Path file, Pack pack, Places places, Faults faults) {
  /** The folder that its files lie in. */
  public Path folder() {
    Path parent = file.toAbsolutePath().normalize().getParent();
    return parent == null ? Path.of("").toAbsolutePath() : parent;
  }
}
