package dev.placket.demo.jar;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Writes the runnable jar from the merged one: the same, but for the lambdas of our own classes,
 * which become classes.
 *
 * <p>A lambda is linked when it is first met, by making a class for it in memory. A first sheet
 * meets a hundred and fifty of ours, which took an eighth of its time.
 */
public final class RunnableJar {
  private static final String OWN = "dev/placket/";
  private static final String CLASS = ".class";

  private final Map<String, byte[]> made = new LinkedHashMap<>();
  private final Map<String, List<String>> nests = new LinkedHashMap<>();

  private RunnableJar() {}

  /**
   * Writes it.
   *
   * @param args the merged jar and the one to write
   * @throws IOException if one cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    try (ZipFile merged = new ZipFile(args[0]);
        OutputStream file = Files.newOutputStream(Path.of(args[1]));
        ZipOutputStream out = new ZipOutputStream(file)) {
      new RunnableJar().write(merged, out);
    }
  }

  private void write(ZipFile merged, ZipOutputStream out) throws IOException {
    List<? extends ZipEntry> entries = Collections.list(merged.entries());
    Map<String, byte[]> changed = new LinkedHashMap<>();
    for (ZipEntry entry : entries) {
      if (entry.getName().startsWith(OWN) && entry.getName().endsWith(CLASS)) {
        changed.put(entry.getName(), withoutLambdas(bytes(merged, entry)));
      }
    }
    nests.forEach(
        (host, members) ->
            changed.computeIfPresent(host + CLASS, (n, bytes) -> Nest.with(members, bytes)));
    long time = 0;
    for (ZipEntry entry : entries) {
      byte[] bytes = changed.get(entry.getName());
      put(out, entry.getName(), entry.getTime(), bytes == null ? bytes(merged, entry) : bytes);
      time = Math.max(time, entry.getTime());
    }
    for (Map.Entry<String, byte[]> lambda : made.entrySet()) {
      put(out, lambda.getKey() + CLASS, time, lambda.getValue());
    }
  }

  private byte[] withoutLambdas(byte[] bytes) {
    PlainLambdas plain = new PlainLambdas(bytes);
    byte[] result = plain.bytes();
    if (!plain.made().isEmpty()) {
      nests.computeIfAbsent(plain.host(), h -> new ArrayList<>()).addAll(plain.made().keySet());
      made.putAll(plain.made());
    }
    return result;
  }

  private static byte[] bytes(ZipFile jar, ZipEntry entry) throws IOException {
    try (var in = jar.getInputStream(entry)) {
      return in.readAllBytes();
    }
  }

  private static void put(ZipOutputStream out, String name, long time, byte[] bytes)
      throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(time);
    out.putNextEntry(entry);
    out.write(bytes);
    out.closeEntry();
  }
}
