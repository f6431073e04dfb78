package dev.placket.pictures;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/** Finds the outside drawings beside the project, where they are present. */
final class Flats {
  private Flats() {}

  static Path folder() {
    Path at = Path.of(System.getProperty("placket.root", ".")).toAbsolutePath().normalize();
    for (Path p = at; p != null; p = p.getParent()) {
      Path found = p.resolve("shared/flats");
      if (Files.isDirectory(found)) {
        return found;
      }
    }
    Assumptions.abort("skipped: no shared/flats beside or above " + at);
    throw new AssertionError();
  }
}
