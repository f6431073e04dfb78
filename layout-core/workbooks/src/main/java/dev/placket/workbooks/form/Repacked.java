package dev.placket.workbooks.form;

import dev.placket.workbooks.parts.ZipPart;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook as the library writes it, without the time of writing and the password of nobody. The
 * library writes sizes behind each part in a form that {@link java.util.zip.ZipInputStream} does
 * not read, so that parts are found by the directory at the end of the file (APPNOTE 4.3.12).
 */
final class Repacked {
  private static final String PROPERTIES = "docProps/core.xml";
  private static final String CREATED = "<dcterms:created[^>]*>[^<]*</dcterms:created>";

  /** ISO/IEC 29500 would have four digits. */
  private static final String PASSWORD = "(<sheetProtection) password=\"0\"";

  private static final int END = 22;
  private static final int HEADER = 46;
  private static final int LOCAL = 30;

  private final ByteBuffer file;

  private Repacked(byte[] workbook) {
    this.file = ByteBuffer.wrap(workbook).order(ByteOrder.LITTLE_ENDIAN);
  }

  static byte[] of(byte[] workbook) {
    try {
      return new Repacked(workbook).packed();
    } catch (DataFormatException e) {
      throw new IllegalStateException("the library writes whole parts", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private byte[] packed() throws IOException, DataFormatException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    int end = file.capacity() - END;
    int count = file.getShort(end + 10) & 0xFFFF;
    int at = file.getInt(end + 16);
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (int i = 0; i < count; i++) {
        int name = file.getShort(at + 28);
        ZipEntry entry = new ZipEntry(text(at + HEADER, name));
        entry.setTimeLocal(ZipPart.NO_DATE);
        ZipPart.put(out, entry, changed(entry.getName(), part(at)), ZipEntry.DEFLATED);
        at += HEADER + name + file.getShort(at + 30) + file.getShort(at + 32);
      }
    }
    return bytes.toByteArray();
  }

  private byte[] part(int header) throws DataFormatException {
    int local = file.getInt(header + 42);
    int from = local + LOCAL + file.getShort(local + 26) + file.getShort(local + 28);
    Inflater inflater = new Inflater(true);
    try {
      byte[] part = new byte[file.getInt(header + 24)];
      inflater.setInput(file.array(), from, file.getInt(header + 20));
      int read = 0;
      while (read < part.length && !inflater.finished()) {
        read += inflater.inflate(part, read, part.length - read);
      }
      return part;
    } finally {
      inflater.end();
    }
  }

  private String text(int from, int length) {
    return new String(file.array(), from, length, StandardCharsets.UTF_8);
  }

  private static byte[] changed(String name, byte[] part) {
    if (name.equals(PROPERTIES)) {
      return without(part, CREATED, "");
    }
    return name.startsWith("xl/worksheets/") ? without(part, PASSWORD, "$1") : part;
  }

  private static byte[] without(byte[] part, String pattern, String by) {
    String text = new String(part, StandardCharsets.UTF_8);
    return text.replaceFirst(pattern, by).getBytes(StandardCharsets.UTF_8);
  }
}
