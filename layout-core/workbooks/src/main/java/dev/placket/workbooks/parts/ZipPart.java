package dev.placket.workbooks.parts;

import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes single parts of a zip file. */
public final class ZipPart {
  /** The first day of zip, for parts that are new: the same contents give the same bytes. */
  public static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

  private ZipPart() {}

  /**
   * Writes one.
   *
   * @param entry its name and date
   * @param method {@link ZipEntry#STORED} or {@link ZipEntry#DEFLATED}
   * @throws IOException if {@code zip} fails
   */
  public static void put(ZipOutputStream zip, ZipEntry entry, byte[] bytes, int method)
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
