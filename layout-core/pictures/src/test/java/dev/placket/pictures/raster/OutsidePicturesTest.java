package dev.placket.pictures.raster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.placket.layout.density.PixelDensity;
import dev.placket.layout.density.PixelSize;
import dev.placket.pictures.PictureProbe;
import dev.placket.pictures.PictureReader;
import dev.placket.pictures.base.PictureException;
import dev.placket.pictures.base.PictureSource;
import dev.placket.pictures.base.ReadLimits;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The test pictures of two picture libraries: each is read or refused with a reason, and where
 * libvips is installed its sizes and densities are compared.
 */
class OutsidePicturesTest {
  private static final Set<String> ENDINGS =
      Set.of("png", "jpg", "jpeg", "tif", "tiff", "gif", "bmp", "webp");

  /** Reads every picture of a jar on the class path whose name holds a word. */
  private static List<Path> unpacked(String jarWord, Path into) throws IOException {
    Path jar =
        Stream.of(System.getProperty("java.class.path").split(java.io.File.pathSeparator))
            .filter(p -> p.contains(jarWord) && p.endsWith("tests.jar"))
            .map(Path::of)
            .findFirst()
            .orElse(null);
    Assumptions.assumeTrue(jar != null, "skipped: no tests of " + jarWord + " on the class path");
    List<Path> files = new ArrayList<>();
    try (FileSystem zip = FileSystems.newFileSystem(jar);
        Stream<Path> all = Files.walk(zip.getPath("/"))) {
      for (Path p : (Iterable<Path>) all.sorted()::iterator) {
        String name = p.toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (ENDINGS.contains(ending)) {
          String safe = files.size() + "-" + p.getFileName().toString().replaceAll("[^\\w.-]", "_");
          files.add(Files.write(into.resolve(safe), Files.readAllBytes(p)));
        }
      }
    }
    return files;
  }

  @Test
  void thoseOfCommonsImaging(@TempDir Path dir) throws IOException {
    check(unpacked("commons-imaging", dir), 60);
  }

  @Test
  void thoseOfTheTiffReader(@TempDir Path dir) throws IOException {
    check(unpacked("imageio-tiff", dir), 60);
  }

  private static void check(List<Path> files, int least) throws IOException {
    List<String> wrong = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    int read = 0;
    for (Path file : files) {
      try {
        PictureProbe p = PictureReader.probe(PictureSource.of(file), ReadLimits.DEFAULT);
        read++;
        compare(file, p, wrong);
      } catch (PictureException e) {
        String message = String.valueOf(e.getMessage());
        refused.add(message.replace(file.getParent() + "/", ""));
        if (!message.startsWith(file.toString()) || !message.contains("; ")) {
          wrong.add("unclear: " + message);
        }
      } catch (RuntimeException e) {
        wrong.add(file.getFileName() + " threw " + e);
      }
    }
    System.out.println(read + " read, " + refused.size() + " refused");
    refused.forEach(r -> System.out.println("  " + r));
    assertEquals(List.of(), wrong);
    assertTrue(read >= least, read + " of " + files.size() + " read");
  }

  private static void compare(Path file, PictureProbe p, List<String> wrong) throws IOException {
    if (p.format().equals("TIFF")) {
      SecondTagReader.compare(file, p, wrong);
    }
    if (!installed()) {
      return;
    }
    Map<String, String> header = vips(file);
    PixelSize size = p.pixels();
    if (size == null || !header.containsKey("width")) {
      return;
    }
    int w = Integer.parseInt(header.getOrDefault("width", ""));
    int h = Integer.parseInt(header.getOrDefault("height", ""));
    boolean same = size.width() == w && size.height() == h;
    boolean turned =
        size.width() == h && size.height() == w && p.notes().toString().contains("upright");
    if (!same && !turned) {
      wrong.add(file.getFileName() + ": " + size + ", libvips has " + w + " by " + h);
    }
    PixelDensity d = p.density();
    if (d == null) {
      return;
    }
    // libvips holds pixels to the millimetre.
    double x = Double.parseDouble(header.getOrDefault("xres", "1")) * 25.4;
    double ours = turned && !same ? d.y().perInch() : d.x().perInch();
    if (Math.abs(x - ours) > 0.01 * ours && Math.abs(x - 25.4) > 0.01) {
      wrong.add(file.getFileName() + ": " + d + ", libvips has " + x + " to the inch");
    }
  }

  private static boolean installed() {
    return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
        .anyMatch(p -> Files.isExecutable(Path.of(p, "vipsheader")));
  }

  /** What the header tells by libvips, by name; empty where it cannot read the file. */
  private static Map<String, String> vips(Path file) {
    try {
      Process process =
          new ProcessBuilder("vipsheader", "-a", file.toString())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      String all = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      Map<String, String> fields = new HashMap<>();
      for (String line : all.split("\n")) {
        int colon = line.indexOf(": ");
        if (colon > 0) {
          fields.putIfAbsent(line.substring(0, colon), line.substring(colon + 2).strip());
        }
      }
      return fields;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
