package dev.placket.packs.output;

import dev.placket.packs.refusal.Refusal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * The files of one run, written beside their places under names that nobody can foresee, then put
 * into place together or not at all. The folder is claimed meanwhile; a run that is interrupted
 * leaves nothing.
 */
public final class Staging implements AutoCloseable {
  private static final String PREFIX = ".placket-";
  private static final String SUFFIX = ".part";
  private static final String PARTS = "\\.placket-[0-9a-f-]{36}\\.part";
  private static final int TRIES = 3;

  private final Path folder;
  private final boolean overwrite;
  private final Claim claim;
  private final List<Path> madeFolders;
  private final Map<String, Path> parts = new LinkedHashMap<>();
  private final Thread interrupted = new Thread(this::drop);
  private boolean ended;

  /**
   * A file to write.
   *
   * @param path where it is for the time being
   * @param out takes its bytes; to be closed
   */
  public record Part(Path path, OutputStream out) {}

  private Staging(Path folder, boolean overwrite, Claim claim, List<Path> madeFolders) {
    this.folder = folder;
    this.overwrite = overwrite;
    this.claim = claim;
    this.madeFolders = madeFolders;
  }

  /**
   * Begins.
   *
   * @param folder made if it does not exist
   * @param overwrite whether existing files are overwritten
   * @throws Refusal if another run writes into the folder
   * @throws IOException if it cannot be made or written into
   */
  public static Staging open(Path folder, boolean overwrite) throws IOException, Refusal {
    for (int i = 1; ; i++) {
      List<Path> made = missing(folder);
      try {
        Files.createDirectories(folder);
        Claim claim = Claim.of(folder);
        Staging staging = new Staging(folder, overwrite, claim, made);
        Runtime.getRuntime().addShutdownHook(staging.interrupted);
        if (claim.locked()) {
          staging.deleteStale();
        }
        return staging;
      } catch (NoSuchFileException e) {
        // Another run that made the folder was refused and has taken it away again.
        if (i == TRIES) {
          throw e;
        }
      } catch (IOException | Refusal e) {
        delete(made);
        throw e;
      }
    }
  }

  /** The folders that do not exist yet, the innermost first. */
  private static List<Path> missing(Path folder) {
    List<Path> missing = new ArrayList<>();
    Path at = folder.toAbsolutePath();
    while (at != null && !Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
      missing.add(at);
      at = at.getParent();
    }
    return missing;
  }

  /** What a run left that was killed: no other run writes here now. */
  private void deleteStale() throws IOException {
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, PREFIX + "*" + SUFFIX)) {
      for (Path each : all) {
        if (each.getFileName().toString().matches(PARTS)
            && Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS)) {
          delete(List.of(each));
        }
      }
    }
  }

  /**
   * Begins a file, with the mode that the user's programs give to files.
   *
   * @param name what it will be called
   */
  public synchronized Part begin(String name) throws IOException {
    if (ended) {
      throw new IOException("the run was interrupted");
    }
    Path part = unforeseen();
    OutputStream out =
        Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    parts.put(name, part);
    return new Part(part, out);
  }

  private Path unforeseen() {
    return folder.resolve(PREFIX + UUID.randomUUID() + SUFFIX);
  }

  /**
   * Puts all files into place; where one cannot be, those that were are taken back.
   *
   * @throws Refusal if one exists and may not be overwritten
   */
  public synchronized void finish() throws IOException, Refusal {
    Map<Path, Path> backups = new LinkedHashMap<>();
    List<Path> placed = new ArrayList<>();
    try {
      for (Map.Entry<String, Path> part : parts.entrySet()) {
        Path file = folder.resolve(part.getKey());
        if (overwrite) {
          backUp(file, backups);
          Files.move(part.getValue(), file, StandardCopyOption.ATOMIC_MOVE);
        } else {
          moveNew(part.getValue(), file);
        }
        placed.add(file);
      }
    } catch (IOException | Refusal e) {
      takeBack(placed, backups);
      throw e;
    }
    parts.clear();
    madeFolders.clear();
    delete(backups.values());
  }

  /** Keeps what is to be overwritten under a second name, where the file system can. */
  private void backUp(Path file, Map<Path, Path> backups) {
    Path backup = unforeseen();
    try {
      Files.createLink(backup, file);
      backups.put(file, backup);
    } catch (IOException | UnsupportedOperationException e) {
      // Nothing to keep, or no second names here.
    }
  }

  /** In one step that fails where there is a file: nothing that appeared meanwhile is lost. */
  private static void moveNew(Path part, Path file) throws IOException, Refusal {
    try {
      Files.createLink(file, part);
      Files.delete(part);
      return;
    } catch (FileAlreadyExistsException e) {
      throw Refusal.input(Outputs.exists(file));
    } catch (IOException | UnsupportedOperationException e) {
      // No second names on this file system, or the next step says what is wrong.
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw Refusal.input(Outputs.exists(file));
    }
    Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
  }

  private static void takeBack(List<Path> placed, Map<Path, Path> backups) {
    for (Path file : placed) {
      Path backup = backups.remove(file);
      try {
        if (backup == null) {
          Files.deleteIfExists(file);
        } else {
          Files.move(backup, file, StandardCopyOption.ATOMIC_MOVE);
        }
      } catch (IOException e) {
        // What stopped the run is the thing to report.
      }
    }
    delete(backups.values());
  }

  /** Drops what was begun and not finished. */
  public synchronized void restart() {
    delete(parts.values());
    parts.clear();
  }

  private synchronized void drop() {
    if (!ended) {
      ended = true;
      restart();
      claim.close();
      delete(madeFolders);
    }
  }

  /** Ends; what is not finished is deleted, and the folder if it was made for it. */
  @Override
  public void close() {
    drop();
    try {
      Runtime.getRuntime().removeShutdownHook(interrupted);
    } catch (IllegalStateException e) {
      // The process is ending, and the hook with it.
    }
  }

  private static void delete(Iterable<Path> files) {
    for (Path file : files) {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        // What stopped the run is the thing to report; a folder in use stays.
      }
    }
  }
}
