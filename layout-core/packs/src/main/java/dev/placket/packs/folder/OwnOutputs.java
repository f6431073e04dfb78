package dev.placket.packs.folder;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The files of earlier runs in a folder: beside a {@code fit.json}, those that share the name of a
 * report page.
 */
public final class OwnOutputs {
  private static final String JSON = "fit.json";
  private static final String REPORT = "-report.html";

  private final List<String> stems;

  private OwnOutputs(List<String> stems) {
    this.stems = stems;
  }

  /** Those in a folder. */
  public static OwnOutputs in(Path folder) {
    List<String> stems = new ArrayList<>();
    if (Files.exists(folder.resolve(JSON))) {
      try (DirectoryStream<Path> reports = Files.newDirectoryStream(folder, "*" + REPORT)) {
        for (Path report : reports) {
          String name = String.valueOf(report.getFileName());
          stems.add(name.substring(0, name.length() - REPORT.length()));
        }
      } catch (IOException | DirectoryIteratorException e) {
        // A folder that cannot be listed has nothing to offer either.
      }
    }
    return new OwnOutputs(stems);
  }

  /** Whether there is one. */
  public boolean any() {
    return !stems.isEmpty();
  }

  /** Whether a file of this name is one. */
  public boolean has(String name) {
    return any() && name.equals(JSON) || stems.stream().anyMatch(stem -> isOf(stem, name));
  }

  private static boolean isOf(String stem, String name) {
    String rest = name.startsWith(stem) ? name.substring(stem.length()) : "";
    return rest.equals(REPORT) || rest.matches("\\.pdf|-blank\\.pdf|\\.png|-[0-9]+(-.*)?\\.png");
  }
}
