package dev.placket.packs.output;

import dev.placket.packs.refusal.PackSetting;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The folder for the results: all files of a run appear whole or none does. */
public final class Outputs {
  private final Path folder;
  private final boolean overwrite;

  /**
   * Results for a folder.
   *
   * @param folder made when something is written
   * @param overwrite whether existing files are overwritten
   */
  public Outputs(Path folder, boolean overwrite) {
    this.folder = folder;
    this.overwrite = overwrite;
  }

  /**
   * Checks, before anything is done, that files of these names can be written.
   *
   * @return a fault for each obstacle, empty if there is none
   */
  public List<Fault> obstacles(List<String> names) {
    Path there = folder.toAbsolutePath();
    while (there != null && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
      there = there.getParent();
    }
    if (there == null || !Files.isDirectory(there) || !Files.isWritable(there)) {
      String found =
          there == null || Files.isDirectory(there)
              ? " is not writable"
              : Files.exists(there) ? " is not a folder" : " is a link to nothing";
      return List.of(
          Fault.output(folder, "cannot be written, " + there + found)
              .remedy("give another folder"));
    }
    List<Fault> found = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (String name : names) {
      Path file = folder.resolve(name);
      if (!taken.add(name)) {
        found.add(
            Fault.output(file, "two files of this run would have this name")
                .remedy("rename one source"));
      } else if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
        found.add(
            Fault.output(file, "is a folder").remedy("move it away").remedy("give another folder"));
      } else if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !overwrite) {
        found.add(exists(file));
      }
    }
    return found;
  }

  /**
   * The same, and that none of them is a picture that is read.
   *
   * @param read the pictures
   */
  public List<Fault> obstacles(List<String> names, Stream<Path> read) {
    List<Fault> found = new ArrayList<>(obstacles(names));
    List<Path> files = names.stream().map(folder::resolve).toList();
    read.distinct()
        .filter(picture -> files.stream().anyMatch(file -> same(file, picture)))
        .forEach(
            picture ->
                found.add(
                    Fault.output(picture, "would be overwritten")
                        .remedy("give another folder", PackSetting.FOLDER)));
    return found;
  }

  /** Whether two paths lead to one file that exists, by whatever links. */
  public static boolean same(Path one, Path other) {
    try {
      return Files.exists(one) && Files.isSameFile(one, other);
    } catch (IOException e) {
      return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }
  }

  /** The fault of a file that may not be overwritten, also of a dangling link. */
  static Fault exists(Path file) {
    return Fault.output(file, "already exists")
        .remedy("overwrite it", PackSetting.OVERWRITE)
        .remedy("give another folder");
  }

  /**
   * Writes all files beside their places, then moves each into its place, in the order given.
   *
   * @throws Refusal if the folder or a file cannot be written; nothing is left of them then
   */
  public void write(Map<String, byte[]> files) throws Refusal {
    try (Staging staging = Staging.open(folder, overwrite)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        try (OutputStream out = staging.begin(file.getKey()).out()) {
          out.write(file.getValue());
        }
      }
      staging.finish();
    } catch (IOException e) {
      throw refused(folder, e);
    }
  }

  /**
   * Writes all files into a new folder, which appears with all of them in one step.
   *
   * @throws Refusal if the folder exists, another run writes beside it, or it cannot be written;
   *     nothing is left then
   */
  public static void writeWhole(Path folder, Map<String, byte[]> files) throws Refusal {
    try {
      WholeFolder.write(folder, files);
    } catch (IOException e) {
      throw refused(folder, e);
    }
  }

  /** The refusal for a folder that could not be written. */
  public static Refusal refused(Path folder, IOException e) {
    return Refusal.input(
        Fault.output(folder, "cannot be written (" + reason(e) + ")")
            .remedy("free some space")
            .remedy("give another folder"));
  }

  private static String reason(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "the folder was removed meanwhile";
    }
    if (e instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (e instanceof FileAlreadyExistsException f) {
      return f.getFile() + " is not a folder";
    }
    String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return reason == null ? e.getClass().getSimpleName() : reason;
  }
}
