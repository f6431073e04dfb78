package dev.placket.demo.jar;

import dev.placket.workbooks.parts.ZipPart;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Writes the runnable jar from the merged one, so that the command starts sooner.
 *
 * <p>The lambdas of our own classes become classes: one is linked when it is first met, by making a
 * class for it in memory, and a first sheet meets a hundred and fifty of them. The classes that a
 * first sheet takes lie in the jar as they are, not packed.
 */
public final class RunnableJar {
  private static final String OWN = "dev/placket/";
  private static final String CLASS = ".class";

  private final Map<String, byte[]> contents = new LinkedHashMap<>();

  private RunnableJar() {}

  /**
   * Writes it.
   *
   * @param args the merged jar, the one to write, and a folder of flats for a first sheet
   * @throws IOException if one cannot be read or written, or no sheet be made
   */
  public static void main(String[] args) throws IOException {
    RunnableJar jar = of(Path.of(args[0]));
    Path to = Path.of(args[1]);
    jar.write(to, Set.of());
    jar.write(to, FirstSheet.classes(to, Path.of(args[2])));
  }

  /** Of a merged jar. */
  static RunnableJar of(Path merged) throws IOException {
    RunnableJar jar = new RunnableJar();
    jar.read(merged);
    jar.withoutLambdas();
    return jar;
  }

  /** All but the folders, which no one asks for. */
  private void read(Path merged) throws IOException {
    try (ZipFile jar = new ZipFile(merged.toFile())) {
      for (ZipEntry entry : Collections.list(jar.entries())) {
        if (!entry.isDirectory()) {
          try (InputStream in = jar.getInputStream(entry)) {
            contents.put(entry.getName(), in.readAllBytes());
          }
        }
      }
    }
  }

  private void withoutLambdas() {
    Map<String, byte[]> all = new LinkedHashMap<>();
    Map<String, List<String>> nests = new LinkedHashMap<>();
    contents.forEach(
        (name, bytes) -> {
          if (name.startsWith(OWN) && name.endsWith(CLASS)) {
            PlainLambdas plain = new PlainLambdas(bytes);
            all.put(name, plain.bytes());
            plain.made().forEach((made, lambda) -> all.put(made + CLASS, lambda));
            nests
                .computeIfAbsent(plain.host(), h -> new ArrayList<>())
                .addAll(plain.made().keySet());
          } else {
            all.put(name, bytes);
          }
        });
    nests.forEach(
        (host, made) -> all.computeIfPresent(host + CLASS, (n, bytes) -> Nest.with(made, bytes)));
    contents.clear();
    contents.putAll(all);
  }

  /**
   * Writes it.
   *
   * @param stored names of classes that are not to be packed
   */
  void write(Path to, Set<String> stored) throws IOException {
    try (OutputStream file = Files.newOutputStream(to);
        ZipOutputStream out = new ZipOutputStream(file)) {
      for (Map.Entry<String, byte[]> each : contents.entrySet()) {
        String name = each.getKey();
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ZipPart.NO_DATE);
        boolean asIs = stored.contains(name.replace('/', '.').replaceFirst("\\.class$", ""));
        ZipPart.put(out, entry, each.getValue(), asIs ? ZipEntry.STORED : ZipEntry.DEFLATED);
      }
    }
  }
}
