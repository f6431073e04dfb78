package dev.placket.packs.issue;

import dev.placket.packs.refusal.Refusal;
import dev.placket.packs.run.IssueFiles;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the issues in a folder by their manifests. */
public final class IssueFolder {
  private static final long MOST_BYTES = 10_000_000;

  private IssueFolder() {}

  /**
   * An issue that was found.
   *
   * @param folder where it lies
   * @param manifest what is in it
   */
  public record Found(Path folder, IssueManifest manifest) {}

  /**
   * The issues of a style, in the order of their dates, then of their revisions where they can be
   * compared.
   *
   * @param root the folder that has a folder for each issue; none if it does not exist
   * @throws Refusal if a manifest is damaged or of another format
   */
  public static List<Found> of(Path root, String style) throws Refusal {
    List<Found> found = new ArrayList<>();
    if (!Files.isDirectory(root)) {
      return found;
    }
    try (DirectoryStream<Path> folders = Files.newDirectoryStream(root, Files::isDirectory)) {
      for (Path folder : folders) {
        for (Path file : manifests(folder)) {
          IssueManifest manifest = read(file);
          if (manifest.style().equals(style)) {
            found.add(new Found(folder, manifest));
          }
        }
      }
    } catch (IOException e) {
      throw Refusal.input(Fault.unreadable(root, "cannot be read (" + e.getMessage() + ")"));
    }
    found.sort(
        (a, b) -> {
          int dates = a.manifest().date().compareTo(b.manifest().date());
          return dates != 0
              ? dates
              : RevisionSeries.compare(a.manifest().revision(), b.manifest().revision()).orElse(0);
        });
    return found;
  }

  /**
   * The manifest of an issue; empty of a folder that has none.
   *
   * @throws Refusal if it is damaged or of another format
   */
  static Optional<IssueManifest> manifest(Path folder) throws Refusal {
    try {
      List<Path> found = manifests(folder);
      return found.isEmpty() ? Optional.empty() : Optional.of(read(found.get(0)));
    } catch (IOException e) {
      throw Refusal.input(Fault.unreadable(folder, "cannot be read (" + e.getMessage() + ")"));
    }
  }

  private static List<Path> manifests(Path folder) throws IOException {
    List<Path> found = new ArrayList<>();
    if (folder.getFileName().toString().startsWith(".")) {
      return found;
    }
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(folder, "*" + IssueFiles.MANIFEST)) {
      for (Path file : files) {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
          found.add(file);
        }
      }
    }
    return found;
  }

  private static IssueManifest read(Path file) throws Refusal {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw new IOException("it has more than " + MOST_BYTES + " bytes");
      }
      return IssueManifest.read(Files.readAllBytes(file));
    } catch (IOException e) {
      String why = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
      throw Refusal.input(
          Fault.content(file, "is no manifest of an issue that can be read (" + why + ")")
              .remedy("restore it, or move its folder away"));
    }
  }
}
