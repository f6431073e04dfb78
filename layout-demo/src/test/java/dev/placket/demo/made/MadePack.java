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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The demo pack on one paper, made once for all tests.
 *
 * @param folder the description's folder
 * @param pdf the pack
 * @param blank the pack without its flats
 * @param fit what {@code fit.json} says
 * @param said what the command printed
 */
record MadePack(Path folder, Path pdf, Path blank, JsonNode fit, String said) {
  private static final Map<String, MadePack> MADE = new HashMap<>();

  /** The papers that the one description is made on. */
  static Stream<String> papers() {
    return Stream.of("A4", "Letter");
  }

  /** The pack on a paper; A4 is what the description itself says. */
  static MadePack on(String paper) {
    return MADE.computeIfAbsent(paper, MadePack::make);
  }

  /** The sheets of {@code fit.json}, in order. */
  List<JsonNode> sheets() {
    return list(fit.path("sheets"));
  }

  /** The placements of a sheet, in the order in which its flats are drawn. */
  List<JsonNode> placements(int sheet) {
    return list(sheets().get(sheet).path("placements"));
  }

  /** The number of the sheet with that identifier, from 0. */
  int sheet(String id) {
    List<JsonNode> sheets = sheets();
    for (int i = 0; i < sheets.size(); i++) {
      if (sheets.get(i).path("id").asText().equals(id)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no sheet " + id);
  }

  private static List<JsonNode> list(JsonNode array) {
    List<JsonNode> items = new ArrayList<>();
    array.forEach(items::add);
    return items;
  }

  private static MadePack make(String paper) {
    Path folder = Path.of("src", "demo", "mg-3107");
    Path out = MadeSheet.WORK.resolve("pack-" + paper);
    List<String> call = new ArrayList<>();
    call.addAll(List.of("fit", folder.resolve("pack.yaml").toString(), "--out", out.toString()));
    call.addAll(List.of("--blank", "--overwrite"));
    if (!paper.equals("A4")) {
      call.addAll(List.of("--paper", paper));
    }
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
    int code = Main.run(call.toArray(String[]::new), stream, stream);
    String text = said.toString(StandardCharsets.UTF_8);
    // The swatch of the shell has too few pixels on purpose.
    assertTrue(code == 3, text);
    try {
      JsonNode fit = new ObjectMapper().readTree(out.resolve("fit.json").toFile());
      Path pdf = out.resolve("MG-3107.pdf");
      return new MadePack(folder, pdf, out.resolve("MG-3107-blank.pdf"), fit, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
