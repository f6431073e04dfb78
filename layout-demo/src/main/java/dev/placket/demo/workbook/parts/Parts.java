package dev.placket.demo.workbook.parts;

import dev.placket.demo.Refusal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/** The parts of a workbook's package, unpacked one by one and never beyond the limits. */
public final class Parts implements AutoCloseable {
  private static final byte[] COMPOUND = {
    (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
  };
  private static final int CHUNK = 1 << 16;

  private final Path file;
  private final ZipFile zip;
  private final WorkbookLimits limits;
  private final Map<String, ZipEntry> entries;
  private final Map<String, Long> unpacked = new LinkedHashMap<>();

  private Parts(Path file, ZipFile zip, WorkbookLimits limits, Map<String, ZipEntry> entries) {
    this.file = file;
    this.zip = zip;
    this.limits = limits;
    this.entries = entries;
  }

  /**
   * Opens a package.
   *
   * @throws Refusal if it is encrypted, damaged, no package, or beyond the limits
   */
  public static Parts open(Path file, WorkbookLimits limits) throws Refusal {
    checkKind(file);
    try {
      ZipFile zip = new ZipFile(file.toFile());
      try {
        return new Parts(file, zip, limits, entries(file, zip, limits));
      } catch (Refusal | RuntimeException e) {
        zip.close();
        throw e;
      }
    } catch (IOException | IllegalArgumentException e) {
      throw Refusal.input(
          file + ": is damaged as a package (" + e.getMessage() + "); save the workbook again.");
    }
  }

  private static void checkKind(Path file) throws Refusal {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(COMPOUND.length);
    } catch (IOException e) {
      throw Refusal.input(file + ": cannot be read; name the workbook with --onto.");
    }
    if (java.util.Arrays.equals(head, COMPOUND)) {
      throw Refusal.input(
          file
              + ": is encrypted, or written in the older binary form; save it as an ISO/IEC 29500"
              + " workbook without a password.");
    }
    if (head.length < 4 || head[0] != 'P' || head[1] != 'K') {
      throw Refusal.input(
          file + ": is no workbook, it is no package of parts; name an ISO/IEC 29500 workbook.");
    }
  }

  private static Map<String, ZipEntry> entries(Path file, ZipFile zip, WorkbookLimits limits)
      throws Refusal {
    Map<String, ZipEntry> entries = new LinkedHashMap<>();
    long total = 0;
    if (zip.size() > limits.entries()) {
      throw tooMuch(file, zip.size() + " parts", limits.entries() + " parts");
    }
    for (ZipEntry entry : Collections.list(zip.entries())) {
      if (entry.isDirectory()) {
        continue;
      }
      String name = entry.getName();
      total += Math.max(0, entry.getSize());
      if (entries.put(name, entry) != null) {
        throw Refusal.input(file + ": is damaged, it holds " + name + " twice; save it again.");
      }
    }
    if (total > limits.bytes()) {
      throw tooMuch(file, (total >> 20) + " MiB unpacked", (limits.bytes() >> 20) + " MiB");
    }
    return entries;
  }

  /** The file it came from. */
  public Path file() {
    return file;
  }

  /** The limits it is read with. */
  public WorkbookLimits limits() {
    return limits;
  }

  /** The names of all parts, in the order of the package. */
  public List<String> names() {
    return new ArrayList<>(entries.keySet());
  }

  /** The entry of a part, for its times and ways of packing. */
  public ZipEntry entry(String name) {
    ZipEntry entry = find(name);
    if (entry == null) {
      throw new IllegalArgumentException("no part " + name);
    }
    return entry;
  }

  /** Whether there is a part of that name. */
  public boolean has(String name) {
    return find(name) != null;
  }

  /** The name as the package spells it; names are the same in capitals or not. */
  public @Nullable String spelled(String name) {
    ZipEntry entry = find(name);
    return entry == null ? null : entry.getName();
  }

  private @Nullable ZipEntry find(String name) {
    ZipEntry entry = entries.get(name);
    if (entry != null) {
      return entry;
    }
    return entries.values().stream()
        .filter(e -> e.getName().equalsIgnoreCase(name))
        .findFirst()
        .orElse(null);
  }

  /**
   * The bytes of a part.
   *
   * @throws Refusal if there is none of that name, it is damaged, or the limits are passed
   */
  public byte[] bytes(String name) throws Refusal {
    ZipEntry entry = find(name);
    if (entry == null) {
      throw Refusal.input(
          file + ": is damaged, its part " + name + " is missing; save the workbook again.");
    }
    long before = unpacked.values().stream().mapToLong(Long::longValue).sum();
    long own = unpacked.getOrDefault(entry.getName(), 0L);
    long room = limits.bytes() - before + own;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] chunk = new byte[CHUNK];
    try (InputStream in = zip.getInputStream(entry)) {
      for (int n = in.read(chunk); n > 0; n = in.read(chunk)) {
        if (out.size() + (long) n > room) {
          throw tooMuch(file, "more bytes unpacked", (limits.bytes() >> 20) + " MiB");
        }
        out.write(chunk, 0, n);
      }
    } catch (IOException | IllegalArgumentException e) {
      throw Refusal.input(
          file + ": its part " + name + " is damaged (" + e.getMessage() + "); save it again.");
    }
    unpacked.put(entry.getName(), (long) out.size());
    return out.toByteArray();
  }

  private static Refusal tooMuch(Path file, String found, String limit) {
    return Refusal.input(
        file
            + ": holds "
            + found
            + ", the limit is "
            + limit
            + "; if the workbook is sound, raise the limit with --most-mebibytes.");
  }

  @Override
  public void close() {
    try {
      zip.close();
    } catch (IOException e) {
      // It was only read.
    }
  }
}
