package dev.placket.demo.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code fit.json} against the JSON Schema that comes with the program, and against its files. */
class FitJsonTest {
  @ParameterizedTest
  @MethodSource("dev.placket.demo.made.MadeSheet#all")
  void itIsOfItsSchema(String name) throws Exception {
    assertEquals(List.of(), errors(MadeSheet.of(name).fit()));
  }

  @Test
  void theSchemaRefusesWhatIsNotOfIt() throws Exception {
    JsonNode fit = MadeSheet.of(MadeSheet.DEMO).fit().deepCopy();
    ObjectNode first = (ObjectNode) fit.path("sheets").get(0).path("placements").get(0);
    first.remove("digest");
    assertFalse(errors(fit).isEmpty(), "a placement without the digest of its drawing");
    first.put("digest", "0".repeat(64));
    assertEquals(List.of(), errors(fit));
    first.put("colour", "red");
    assertFalse(errors(fit).isEmpty(), "a field that is none");
  }

  @Test
  void drawingsHaveNoPixelsAndPicturesHave() throws Exception {
    for (JsonNode p : MadeSheet.of(MadeSheet.DEMO).placements()) {
      boolean drawing = p.path("source").asText().endsWith(".svg");
      for (String field : List.of("pixels", "density", "wantedPixels", "embedded")) {
        assertTrue(p.has(field), field);
        assertEquals(drawing, p.path(field).isNull(), field);
      }
    }
  }

  @Test
  void digestsAreThoseOfTheFiles() throws Exception {
    MadeSheet made = MadeSheet.of(MadeSheet.DEMO);
    for (JsonNode p : made.placements()) {
      // FIPS 180-4.
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      byte[] digest = sha.digest(Files.readAllBytes(made.source(p)));
      assertEquals(HexFormat.of().formatHex(digest), p.path("digest").asText());
    }
  }

  private static List<String> errors(JsonNode fit) throws Exception {
    try (InputStream in = FitJsonTest.class.getResourceAsStream("/placket-fit-1.schema.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(text);
      return schema.validate(new ObjectMapper().writeValueAsString(fit), InputFormat.JSON).stream()
          .map(Error::toString)
          .toList();
    }
  }
}
