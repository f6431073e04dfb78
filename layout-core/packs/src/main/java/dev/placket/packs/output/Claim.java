package dev.placket.packs.output;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The right to write into a folder, held by one run at a time. It is a lock of the operating system
 * on an empty file, so it ends with the process, however that ends.
 */
final class Claim implements AutoCloseable {
  private static final String NAME = ".placket-lock";
  private static final int TRIES = 100;
  private static final int PAUSE = 50;

  private final Path file;
  private final FileChannel channel;
  private final boolean locked;

  private Claim(Path file, FileChannel channel, boolean locked) {
    this.file = file;
    this.channel = channel;
    this.locked = locked;
  }

  /**
   * Claims a folder, waiting some seconds for a run that has it.
   *
   * @throws Refusal if another run keeps it
   * @throws IOException if the folder cannot be written into
   */
  static Claim of(Path folder) throws IOException, Refusal {
    Path file = folder.resolve(NAME);
    for (int i = 0; i < TRIES; i++) {
      Claim claim = attempt(file);
      if (claim != null) {
        return claim;
      }
      pause();
    }
    throw Refusal.input(
        Fault.output(folder, "another run is writing to this folder")
            .remedy("wait until it ends")
            .remedy("give another folder"));
  }

  /** Whether nobody else writes here; false where the file system has no locks. */
  boolean locked() {
    return locked;
  }

  private static @Nullable Claim attempt(Path file) throws IOException, Refusal {
    Object before = identity(file);
    if (before == null) {
      make(file);
      return null;
    }
    FileChannel channel;
    try {
      channel = FileChannel.open(file, Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS));
    } catch (NoSuchFileException e) {
      return null;
    } catch (AccessDeniedException e) {
      throw Refusal.input(
          Fault.output(file, "belongs to a run of another user")
              .remedy("wait until it ends")
              .remedy("delete the file"));
    }
    try {
      FileLock lock = channel.tryLock();
      // A run that ended meanwhile has deleted the file, and others may lock the next of its name.
      if (lock != null && before.equals(identity(file))) {
        return new Claim(file, channel, true);
      }
    } catch (OverlappingFileLockException e) {
      // Another run in this process has it.
    } catch (IOException e) {
      return new Claim(file, channel, false);
    }
    channel.close();
    return null;
  }

  private static void make(Path file) throws IOException {
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException e) {
      // Another run was faster; the next attempt sees its file.
    }
  }

  private static @Nullable Object identity(Path file) throws IOException, Refusal {
    BasicFileAttributes found;
    try {
      found = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    } catch (NoSuchFileException e) {
      return null;
    }
    if (!found.isRegularFile()) {
      throw Refusal.input(
          Fault.output(file, "was not written by Placket, which needs this name")
              .remedy("move the file away"));
    }
    return Objects.requireNonNullElse(found.fileKey(), found.creationTime());
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(PAUSE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }

  /** Deletes the file while it is still locked, unless somebody has written into it. */
  @Override
  public void close() {
    try (channel) {
      if (channel.size() == 0) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      // An empty file that stays is locked anew by the next run.
    }
  }
}
