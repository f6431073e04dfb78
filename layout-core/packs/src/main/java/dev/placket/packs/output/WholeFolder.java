package dev.placket.packs.output;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.UUID;

/**
 * Writes a folder that appears whole: its files are written into one beside it under a name that
 * nobody can foresee, which is then renamed. A run that was killed leaves such a folder at most,
 * which the next run beside it takes away.
 */
final class WholeFolder {
  private static final String PREFIX = ".placket-";
  private static final String SUFFIX = ".folder";
  private static final String PARTS = "\\.placket-[0-9a-f-]{36}\\.folder";

  private WholeFolder() {}

  static void write(Path folder, Map<String, byte[]> files) throws IOException, Refusal {
    Path root = folder.toAbsolutePath().getParent();
    if (root == null) {
      throw new IOException("it has no folder above it");
    }
    Files.createDirectories(root);
    try (Claim claim = Claim.of(root)) {
      if (claim.locked()) {
        deleteStale(root);
      }
      if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
        throw Refusal.input(
            Fault.output(folder, "already exists").remedy("an issue is never written again"));
      }
      Path part = root.resolve(PREFIX + UUID.randomUUID() + SUFFIX);
      Thread interrupted = new Thread(() -> delete(part));
      Runtime.getRuntime().addShutdownHook(interrupted);
      try {
        Files.createDirectory(part);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
          Files.write(part.resolve(file.getKey()), file.getValue(), StandardOpenOption.CREATE_NEW);
        }
        Files.move(part, folder, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        delete(part);
        removeHook(interrupted);
      }
    }
  }

  private static void removeHook(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The process is ending, and the hook with it.
    }
  }

  private static void deleteStale(Path root) throws IOException {
    try (DirectoryStream<Path> all = Files.newDirectoryStream(root, PREFIX + "*" + SUFFIX)) {
      for (Path each : all) {
        if (each.getFileName().toString().matches(PARTS)
            && Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)) {
          delete(each);
        }
      }
    }
  }

  private static void delete(Path part) {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(part)) {
      for (Path file : files) {
        Files.deleteIfExists(file);
      }
      Files.deleteIfExists(part);
    } catch (IOException e) {
      // It is not there, or what stopped the run is the thing to report.
    }
  }
}
