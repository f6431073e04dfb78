package dev.placket.demo.prepare;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.TreeMap;

/** Files that are written beside their places and moved there all together, or not at all. */
final class Parts {
  private final Path folder;
  private final Map<String, Path> begun = new TreeMap<>();

  Parts(Path folder) throws IOException {
    this.folder = Files.createDirectories(folder);
  }

  /** A file to write into instead of the one with this name. */
  synchronized Path begin(String name) throws IOException {
    Path part = Files.createTempFile(folder, ".placket-", ".part");
    begun.put(name, part);
    return part;
  }

  /** Moves all into their places. */
  synchronized void finish() throws IOException {
    for (Map.Entry<String, Path> part : begun.entrySet()) {
      Files.move(part.getValue(), folder.resolve(part.getKey()), StandardCopyOption.ATOMIC_MOVE);
    }
    begun.clear();
  }

  /** Removes all that was begun and not finished. */
  synchronized void drop() {
    for (Path part : begun.values()) {
      try {
        Files.deleteIfExists(part);
      } catch (IOException e) {
        // What ended the run is the thing to report.
      }
    }
    begun.clear();
  }
}
