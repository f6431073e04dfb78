package dev.placket.demo.prepare;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds the files of a sheet: those named, else in the folder of its fit.json and the one above.
 */
record SheetFiles(Path sheet, List<Path> named) {
  /** Folders of a style are not deeper. */
  private static final int DEPTH = 4;

  private static final int MOST = 20_000;

  /**
   * The file with a name whose content has the digest; if none has, the nearest with the name, or
   * null.
   */
  @Nullable Path find(String name, @Nullable String digest) {
    List<Path> all = named.isEmpty() ? around(name) : named(name);
    return all.stream()
        .filter(f -> digest == null || digest.equals(digest(f)))
        .findFirst()
        .orElse(all.isEmpty() ? null : all.get(0));
  }

  private List<Path> named(String name) {
    return named.stream().filter(f -> f.getFileName().toString().equals(name)).toList();
  }

  /** Nearest first. */
  private List<Path> around(String name) {
    List<Path> found = new ArrayList<>();
    Path folder = sheet.toAbsolutePath().normalize().getParent();
    Path above = folder == null ? null : folder.getParent();
    for (Path each : Stream.of(folder, above).flatMap(Stream::ofNullable).toList()) {
      Path beside = each.resolve(name);
      if (Files.isRegularFile(beside)) {
        found.add(beside);
      }
    }
    for (Path each : Stream.of(folder, above).flatMap(Stream::ofNullable).toList()) {
      try (Stream<Path> all = Files.walk(each, DEPTH)) {
        all.limit(MOST)
            .filter(f -> name.equals(String.valueOf(f.getFileName())) && Files.isRegularFile(f))
            .sorted()
            .filter(f -> !found.contains(f))
            .forEach(found::add);
      } catch (IOException | UncheckedIOException e) {
        // A folder that may not be read has no pictures for us.
      }
    }
    return found;
  }

  private static String digest(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      new DigestInputStream(in, sha).transferTo(java.io.OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(sha.digest());
    } catch (IOException e) {
      return "";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
