package dev.placket.benchmarks.workbooks;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * What differs between a workbook and its copy that should not: all but drawings, pictures,
 * relations and content types stays byte by byte, and a worksheet gets one {@code drawing}.
 */
final class Difference {
  private static final Pattern DRAWING = Pattern.compile("<(?:\\w+:)?drawing\\b[^<>]*/>");

  private Difference() {}

  /** The first part that differs, or was lost; null for none. */
  static @Nullable String first(Path before, Path after) throws IOException {
    try (ZipFile old = ZipFile.builder().setPath(before).get();
        ZipFile copy = ZipFile.builder().setPath(after).get()) {
      for (var all = old.getEntries(); all.hasMoreElements(); ) {
        ZipArchiveEntry entry = all.nextElement();
        if (!entry.isDirectory() && !mayChange(entry.getName())) {
          ZipArchiveEntry same = copy.getEntry(entry.getName());
          if (same == null || !same(bytes(old, entry), bytes(copy, same))) {
            return entry.getName();
          }
        }
      }
      return null;
    }
  }

  private static boolean mayChange(String name) {
    String part = name.toLowerCase(Locale.ROOT);
    return part.endsWith(".rels")
        || part.equals("[content_types].xml")
        || part.contains("/drawings/")
        || part.contains("/media/");
  }

  private static byte[] bytes(ZipFile zip, ZipArchiveEntry entry) throws IOException {
    try (var in = zip.getInputStream(entry)) {
      return in.readAllBytes();
    }
  }

  /** The same, or the same but for one element {@code drawing}. */
  static boolean same(byte[] before, byte[] after) {
    if (Arrays.equals(before, after)) {
      return true;
    }
    Charset charset = charset(before);
    String was = new String(before, charset);
    String is = new String(after, charset);
    for (Matcher m = DRAWING.matcher(is); m.find(); ) {
      if ((is.substring(0, m.start()) + is.substring(m.end())).equals(was)) {
        return true;
      }
    }
    return false;
  }

  /** Any charset that keeps every byte does, but for the two-byte ones. */
  private static Charset charset(byte[] xml) {
    boolean two = xml.length > 1 && (xml[0] == 0 || xml[1] == 0 || (xml[0] & 0xFE) == 0xFE);
    if (!two) {
      return StandardCharsets.ISO_8859_1;
    }
    boolean smallFirst = xml[1] == 0 || (xml[0] & 255) == 0xFF;
    return smallFirst ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
  }
}
