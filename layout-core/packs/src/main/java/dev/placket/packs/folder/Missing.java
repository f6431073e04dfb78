package dev.placket.packs.folder;

import dev.placket.packs.description.NearestWord;
import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Says that a file of the call does not exist, and which one was probably meant. */
public final class Missing {
  /** More files are not looked through. */
  private static final int MOST = 2000;

  private Missing() {}

  /**
   * Checks that a file or folder exists.
   *
   * @throws Refusal naming its nearest neighbour, if not
   */
  public static void check(Path file) throws Refusal {
    if (!Files.exists(file)) {
      throw Refusal.input(fault(file));
    }
  }

  /** The fault of a file that does not exist. */
  public static Fault fault(Path file) {
    if (Files.isSymbolicLink(file)) {
      return Fault.unreadable(file, "is a link to a file that does not exist")
          .remedy("name another");
    }
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      return Fault.unreadable(file, "does not exist, nor does its folder " + folder)
          .remedy("check the path");
    }
    String nearest = folder == null ? null : nearest(folder, file);
    return Fault.unreadable(file, "does not exist")
        .remedy(
            nearest == null ? "check the name" : "did you mean " + sibling(file, nearest) + "?");
  }

  private static Path sibling(Path file, String name) {
    Path parent = file.getParent();
    return parent == null ? Path.of(name) : parent.resolve(name);
  }

  private static @Nullable String nearest(Path folder, Path file) {
    List<String> names = new ArrayList<>();
    OwnOutputs own = OwnOutputs.in(folder);
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
      for (Path each : all) {
        String name = String.valueOf(each.getFileName());
        boolean folderOfOutputs =
            Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS) && OwnOutputs.in(each).any();
        if (!name.startsWith(".") && !own.has(name) && !folderOfOutputs) {
          names.add(name);
        }
        if (names.size() == MOST) {
          break;
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      return null;
    }
    names.sort(null);
    return NearestWord.of(String.valueOf(file.getFileName()), names);
  }
}
