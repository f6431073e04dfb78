package dev.placket.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.placket.layout.sheet.PaperSize;
import dev.placket.pictures.PictureReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What the reader of pictures and the list of papers know is what schema, README and help name. */
class FormatNamesTest {
  private static Set<String> formats() {
    Set<String> known = new TreeSet<>(Set.of(PictureReader.formats().split(", | or ")));
    known.add("SVGZ");
    return known;
  }

  @Test
  void theSchemaOfProbeHasEveryFormat() throws IOException {
    try (InputStream in = Main.class.getResourceAsStream("/placket-probe-1.schema.json")) {
      Set<String> stated = new TreeSet<>();
      for (JsonNode format : new ObjectMapper().readTree(in).findParents("enum")) {
        Set<String> words = new TreeSet<>();
        format.get("enum").forEach(word -> words.add(word.asText()));
        stated = words.contains("PNG") ? words : stated;
      }
      assertEquals(formats(), stated);
    }
  }

  @Test
  void theReadmeNamesEveryFormat() throws IOException {
    String readme = Files.readString(Path.of("../README.md"));
    for (String format : formats()) {
      assertTrue(readme.contains(format), format);
    }
  }

  @Test
  void theHelpNamesEveryPaper() {
    String help = Run.of("fit", "--help").out().replaceAll("\\s+", " ");
    for (PaperSize paper : PaperSize.NAMED) {
      assertTrue(help.contains(paper.name() + ","), paper.name() + " in " + help);
    }
  }
}
