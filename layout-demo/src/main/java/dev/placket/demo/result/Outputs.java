package dev.placket.demo.result;

import dev.placket.demo.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The folder that takes the results: each file appears whole or not at all. */
public final class Outputs {
  private final Path folder;
  private final boolean replace;

  /**
   * Results for a folder.
   *
   * @param folder made when something is written
   * @param replace whether files that are there may be written anew
   */
  public Outputs(Path folder, boolean replace) {
    this.folder = folder;
    this.replace = replace;
  }

  /**
   * Checks, before anything is done, that files of these names can be written.
   *
   * @return what stands against it, empty if nothing does
   */
  public List<String> obstacles(List<String> names) {
    Path there = folder.toAbsolutePath();
    while (there != null && !Files.exists(there)) {
      there = there.getParent();
    }
    if (there == null || !Files.isDirectory(there) || !Files.isWritable(there)) {
      return List.of(
          folder
              + ": cannot be written into, "
              + there
              + " is no folder open for writing; name"
              + " another with --out.");
    }
    List<String> found = new ArrayList<>();
    for (String name : names) {
      Path file = folder.resolve(name);
      if (Files.isDirectory(file)) {
        found.add(file + ": is a folder; move it away or name another place with --out.");
      } else if (Files.exists(file) && !replace) {
        found.add(
            file
                + ": is there already; write it anew with --replace, or name another place with"
                + " --out.");
      }
    }
    return found;
  }

  /**
   * Writes all files beside their places, then moves each into its place, in the order given.
   *
   * @throws Refusal if the folder or a file cannot be written; no half file is left
   */
  public void write(Map<String, byte[]> files) throws Refusal {
    Map<Path, Path> moves = new LinkedHashMap<>();
    try {
      Files.createDirectories(folder);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        // Not a file of Files.createTempFile, which nobody but its owner may read.
        Path beside = folder.resolve(".placket-" + file.getKey() + ".part");
        moves.put(beside, folder.resolve(file.getKey()));
        Files.write(beside, file.getValue());
      }
      for (Map.Entry<Path, Path> move : moves.entrySet()) {
        Files.move(move.getKey(), move.getValue(), StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException e) {
      moves.keySet().forEach(Outputs::drop);
      throw Refusal.input(
          folder + ": cannot be written: " + e + "; make room or name another with --out.");
    }
  }

  private static void drop(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // The first failure is the one to report.
    }
  }
}
