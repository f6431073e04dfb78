package dev.placket.workbooks.write;

import dev.placket.packs.refusal.Refusal;
import dev.placket.workbooks.parts.Parts;
import dev.placket.workbooks.parts.ZipPart;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a package with some parts changed, some added, some dropped, all others as they were. */
final class ZipCopy {
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
    try {
      return packed();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private byte[] packed() throws Refusal, IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(expected());
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (String name : parts.names()) {
        if (!dropped.contains(name)) {
          byte[] now = changed.get(name);
          ZipEntry entry = new ZipEntry(name);
          // Dates of parts mean nothing, may be no date, and depend on the time zone of the reader.
          entry.setTimeLocal(ZipPart.NO_DATE);
          int method = parts.entry(name).getMethod();
          if (now == null && method == ZipEntry.DEFLATED) {
            zip.putNextEntry(entry);
            parts.copy(name, zip);
            zip.closeEntry();
          } else {
            ZipPart.put(zip, entry, now == null ? parts.bytes(name) : now, method);
          }
        }
      }
      for (Map.Entry<String, byte[]> part : added.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTimeLocal(ZipPart.NO_DATE);
        // Pictures are packed already.
        boolean picture = part.getKey().endsWith(".png");
        ZipPart.put(zip, entry, part.getValue(), picture ? ZipEntry.STORED : ZipEntry.DEFLATED);
      }
    }
    return bytes.toByteArray();
  }

  /** About how large the copy will be, so that it need not grow while it is written. */
  private int expected() throws IOException {
    long more = added.values().stream().mapToLong(b -> b.length).sum();
    return (int) Math.min(Integer.MAX_VALUE - 8L, Files.size(parts.file()) + more + (1 << 16));
  }
}
