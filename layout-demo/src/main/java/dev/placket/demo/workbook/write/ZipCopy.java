package dev.placket.demo.workbook.write;

import dev.placket.demo.Refusal;
import dev.placket.demo.workbook.parts.Parts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a package with some parts changed, some added, some dropped, all others as they were. */
final class ZipCopy {
  /** The first day of zip, for parts that are new: the same run gives the same bytes. */
  private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final Parts parts;
  private final Map<String, byte[]> changed;
  private final Map<String, byte[]> added;
  private final Set<String> dropped;

  ZipCopy(
      Parts parts, Map<String, byte[]> changed, Map<String, byte[]> added, Set<String> dropped) {
    this.parts = parts;
    this.changed = changed;
    this.added = added;
    this.dropped = dropped;
  }

  byte[] bytes() throws Refusal {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (String name : parts.names()) {
        if (!dropped.contains(name)) {
          byte[] now = changed.get(name);
          ZipEntry entry = new ZipEntry(name);
          entry.setTimeLocal(parts.entry(name).getTimeLocal());
          put(zip, entry, now == null ? parts.bytes(name) : now, parts.entry(name).getMethod());
        }
      }
      for (Map.Entry<String, byte[]> part : added.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTimeLocal(NO_DATE);
        // Pictures are packed already.
        boolean picture = part.getKey().endsWith(".png");
        put(zip, entry, part.getValue(), picture ? ZipEntry.STORED : ZipEntry.DEFLATED);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void put(ZipOutputStream zip, ZipEntry entry, byte[] bytes, int method)
      throws IOException {
    if (method == ZipEntry.STORED) {
      CRC32 crc = new CRC32();
      crc.update(bytes);
      entry.setMethod(ZipEntry.STORED);
      entry.setSize(bytes.length);
      entry.setCrc(crc.getValue());
    }
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }
}
