package dev.placket.workbooks.parts;

import dev.placket.packs.refusal.Refusal;
import dev.placket.pictures.fault.Fault;
import dev.placket.workbooks.refusal.WorkbookSetting;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/** The parts of a workbook's package, unpacked one by one and never beyond the limits. */
public final class Parts implements AutoCloseable {
  private static final int CHUNK = 1 << 16;

  private final Path file;
  private final ZipFile zip;
  private final WorkbookLimits limits;

  /** By {@link PartNames#key}. */
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
   * @throws Refusal if it is encrypted, damaged, no package, or beyond the limits, or a part of it
   *     has a document type
   */
  public static Parts open(Path file, WorkbookLimits limits) throws Refusal {
    FileKind.check(file);
    try {
      ZipFile zip = new ZipFile(file.toFile());
      try {
        Map<String, ZipEntry> entries = entries(file, zip, limits);
        for (ZipEntry entry : entries.values()) {
          try (InputStream in = zip.getInputStream(entry)) {
            DocumentTypes.check(file, entry.getName(), in);
          }
        }
        return new Parts(file, zip, limits, entries);
      } catch (Refusal | RuntimeException | IOException e) {
        zip.close();
        throw e;
      }
    } catch (IOException | IllegalArgumentException e) {
      throw Refusal.input(
          Fault.content(file, "is damaged as a package (" + e.getMessage() + ")")
              .remedy("save the workbook again"));
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
      if (List.of(name.split("[/\\\\]")).contains("..")) {
        throw Refusal.input(
            Fault.content(
                    file,
                    "contains a part named "
                        + name
                        + ", which points outside the package, as in no valid workbook")
                .remedy("do not open it unless you trust its sender")
                .remedy("open it in a spreadsheet program and save it again"));
      }
      ZipEntry other = entries.put(PartNames.key(name), entry);
      if (other != null) {
        String both = name.equals(other.getName()) ? name : other.getName() + " as " + name;
        throw Refusal.input(
            Fault.content(file, "is damaged, it contains " + both + " twice")
                .remedy("save it again"));
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
    return entries.values().stream().map(ZipEntry::getName).toList();
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

  /** The name as the package spells it. */
  public @Nullable String spelled(String name) {
    ZipEntry entry = find(name);
    return entry == null ? null : entry.getName();
  }

  private @Nullable ZipEntry find(String name) {
    return entries.get(PartNames.key(name));
  }

  /**
   * The bytes of a part.
   *
   * @throws Refusal if there is none of that name, it is damaged, or the limits are passed
   */
  public byte[] bytes(String name) throws Refusal {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    copy(name, out);
    return out.toByteArray();
  }

  /**
   * Hands on the bytes of a part without holding them.
   *
   * @param to does not fail
   * @throws Refusal as {@link #bytes}
   */
  public void copy(String name, OutputStream to) throws Refusal {
    ZipEntry entry = find(name);
    if (entry == null) {
      throw Refusal.input(
          Fault.content(file, "is damaged, its part " + name + " is missing")
              .remedy("save the workbook again"));
    }
    long before = unpacked.values().stream().mapToLong(Long::longValue).sum();
    long own = unpacked.getOrDefault(entry.getName(), 0L);
    long room = limits.bytes() - before + own;
    long size = 0;
    byte[] chunk = new byte[CHUNK];
    try (InputStream in = zip.getInputStream(entry)) {
      for (int n = in.read(chunk); n > 0; n = in.read(chunk)) {
        size += n;
        if (size > room) {
          throw tooMuch(file, "more bytes unpacked", (limits.bytes() >> 20) + " MiB");
        }
        to.write(chunk, 0, n);
      }
    } catch (IOException | IllegalArgumentException e) {
      throw Refusal.input(
          Fault.content(file, "its part " + name + " is damaged (" + e.getMessage() + ")")
              .remedy("save it again"));
    }
    unpacked.put(entry.getName(), size);
  }

  private static Refusal tooMuch(Path file, String found, String limit) {
    return Refusal.input(
        Fault.limit(file, "contains " + found + ", the limit is " + limit)
            .remedy(
                "if the workbook is valid, raise the limit", WorkbookSetting.MAXIMUM_MEBIBYTES));
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
