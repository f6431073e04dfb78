package dev.placket.workbooks.parts;

import dev.placket.pictures.fault.Fault;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Tells what a compound file ([MS-CFB]) holds: binary documents of several kinds, or a package
 * under a password. Only the names in its directory are looked at.
 */
final class CompoundFile {
  private static final byte[] MAGIC = {
    (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
  };

  /** Directory entries have 128 bytes, and sectors whole numbers of them ([MS-CFB] 2.6.1). */
  private static final int ENTRY = 128;

  /** The length of the name with its end, in bytes, stands after the 64 bytes of the name. */
  private static final int NAME_LENGTH = 64;

  private static final int MOST_ENTRIES = 1 << 20;

  private CompoundFile() {}

  static boolean is(byte[] head) {
    return head.length >= MAGIC.length && Arrays.equals(Arrays.copyOf(head, MAGIC.length), MAGIC);
  }

  private record Content(String what, String todo, boolean certain) {}

  /** What it is and what to do. */
  static Fault fault(Path file) {
    Content content = content(file);
    return content == null
        ? is(file, "encrypted or a binary document of an older kind", FileKind.SAVE_AS)
        : is(file, content.what, content.todo);
  }

  private static Fault is(Path file, String what, String todo) {
    return Fault.content(file, "is " + what).remedy(todo);
  }

  private static @Nullable Content content(Path file) {
    Content found = null;
    byte[] entry = new byte[ENTRY];
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
      for (int i = 0; i < MOST_ENTRIES && in.readNBytes(entry, 0, ENTRY) == ENTRY; i++) {
        Content content = content(name(entry));
        // A password hides whatever else there is.
        if (content != null && content.certain) {
          return content;
        }
        found = found == null ? content : found;
      }
    } catch (IOException e) {
      // What was read so far has to do.
    }
    return found;
  }

  private static @Nullable Content content(String name) {
    return switch (name) {
      case "EncryptedPackage", "EncryptionInfo" ->
          new Content(
              "protected with a password, so encrypted",
              "open it, remove the password and save it as an ISO/IEC 29500 workbook (.xlsx)",
              true);
      case "Workbook", "Book" ->
          new Content("an old binary workbook (.xls)", FileKind.SAVE_AS, false);
      case "WordDocument" ->
          new Content("a text document (.doc), not a workbook", FileKind.NAME, false);
      case "PowerPoint Document" ->
          new Content("a set of slides (.ppt), not a workbook", FileKind.NAME, false);
      default -> null;
    };
  }

  /** The name of an entry; empty where the bytes are none. */
  private static String name(byte[] entry) {
    int length = (entry[NAME_LENGTH] & 255) + 256 * (entry[NAME_LENGTH + 1] & 255) - 2;
    return length < 2 || length >= NAME_LENGTH
        ? ""
        : new String(entry, 0, length, StandardCharsets.UTF_16LE);
  }
}
