package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.demo.Main;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * What the command made of a folder, made once for all tests.
 *
 * @param folder the drawings
 * @param pdf the sheet
 * @param blank the sheet without its flats
 * @param fit what {@code fit.json} says
 */
record MadeSheet(Path folder, Path pdf, Path blank, JsonNode fit) {
  /** The folder of the demo's flats among the sheets. */
  static final String DEMO = "demo";

  /** The ten garments of the drawings that lie beside the checkout. */
  static final List<String> GARMENTS =
      List.of(
          "aaron", "brian", "bruce", "carlton", "diana", "huey", "hugo", "jane", "noble",
          "sabrina");

  private static final Map<String, MadeSheet> MADE = new HashMap<>();

  /** Of this process alone: tests run in several, and none may read what another is writing. */
  static final Path WORK = Path.of("target", "made", "" + ProcessHandle.current().pid());

  /** The demo and the garments. */
  static Stream<String> all() {
    return Stream.concat(Stream.of(DEMO), GARMENTS.stream());
  }

  /** The sheet of the demo or of a garment; a test without the drawings ends here as skipped. */
  static MadeSheet of(String name) {
    Path folder = name.equals(DEMO) ? Path.of("src", "demo", "mg-3107", "flats") : garment(name);
    return MADE.computeIfAbsent(name, n -> make(n, folder));
  }

  /** The placements, in the order in which the flats are drawn. */
  List<JsonNode> placements() {
    List<JsonNode> placements = new ArrayList<>();
    sheet().path("placements").forEach(placements::add);
    return placements;
  }

  /** The one sheet. */
  JsonNode sheet() {
    return fit.path("sheets").get(0);
  }

  /** The file that a flat was read from. */
  Path source(JsonNode placement) {
    return folder.resolve(placement.path("source").asText());
  }

  private static MadeSheet make(String name, Path folder) {
    Path out = WORK.resolve(name);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    String[] call = {"fit", folder.toString(), "--out", out.toString(), "--blank", "--overwrite"};
    int code = Main.run(call, stream, stream);
    // 3 is a sheet with a soft picture on it.
    assertTrue(code == 0 || code == 3, () -> said.toString(StandardCharsets.UTF_8));
    try (Stream<Path> files = Files.list(out)) {
      List<Path> pdfs = files.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
      Path blank = pdfs.stream().filter(MadeSheet::blank).findFirst().orElseThrow();
      Path pdf = pdfs.stream().filter(f -> !blank(f)).findFirst().orElseThrow();
      return new MadeSheet(
          folder, pdf, blank, new ObjectMapper().readTree(out.resolve("fit.json").toFile()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean blank(Path file) {
    return file.toString().endsWith("-blank.pdf");
  }

  /** A folder with the two views of a garment under the names that a designer gives them. */
  private static Path garment(String name) {
    Path drawings = drawings();
    Path folder = WORK.resolve("folders").resolve(name);
    try {
      Files.createDirectories(folder);
      for (String view : List.of("front", "back")) {
        byte[] bytes = Files.readAllBytes(drawings.resolve(name + "-" + view + ".svg"));
        Files.write(folder.resolve(view + ".svg"), bytes);
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path drawings() {
    Path at = Path.of(System.getProperty("placket.root", ".")).toAbsolutePath().normalize();
    for (Path p = at; p != null; p = p.getParent()) {
      Path found = p.resolve("shared/flats");
      if (Files.isDirectory(found)) {
        return found;
      }
    }
    Assumptions.abort("skipped: no shared/flats beside or above " + at);
    throw new AssertionError();
  }
}
