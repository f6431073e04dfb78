package dev.placket.demo.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.placket.demo.Run;
import dev.placket.demo.pack.ExamplePack;
import dev.placket.packs.description.Described;
import dev.placket.packs.description.Pack;
import dev.placket.packs.description.PackReader;
import dev.placket.packs.description.PackWriter;
import dev.placket.packs.refusal.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published schema against an independent validator, and against what the reader says. */
class SchemaTest {
  @TempDir Path dir;

  private static String schemaText() throws IOException {
    try (InputStream in = SchemaTest.class.getResourceAsStream("/placket-pack-1.schema.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static List<Error> errors(String yaml) throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(schemaText(), InputFormat.JSON)
        .validate(yaml, InputFormat.YAML);
  }

  private static boolean readerTakes(String yaml) {
    try {
      Described read = PackReader.read(Path.of("pack.yaml"), yaml.getBytes(StandardCharsets.UTF_8));
      return !read.faults().any();
    } catch (Refusal e) {
      return false;
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "workbook: {file: a.xlsx, worksheets: {one: {flats: {f: {file: f.svg, role: front}}}}}"
            + " | true",
        "workbook: {file: a.xlsx, worksheets: {one: {worksheet: Flat sheet, windows: [B5:H30, Room],"
            + " labelled: A1, flats: {}}}} | true",
        "workbook: {file: a.xlsx} | false",
        "workbook: {worksheets: {one: {flats: {}}}} | false",
        "workbook: {file: a.xlsx, worksheets: {one: {window: A1, flats: {}}}} | false",
        "workbook: {file: a.xlsx, worksheets: {one: {windows: A1}}} | false"
      })
  void theReaderAndTheSchemaAgreeOnWorkbooks(String workbook, boolean sound) throws IOException {
    String yaml = "format: placket-pack/1\n" + workbook + "\n";
    assertEquals(sound, errors(yaml).isEmpty(), () -> yaml);
    assertEquals(sound, readerTakes(yaml), () -> yaml);
  }

  @Test
  void theSchemaIsASchema() throws IOException {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(List.of(), meta.validate(schemaText(), InputFormat.JSON));
  }

  @Test
  void theExampleKeepsIt() throws IOException {
    assertEquals(List.of(), errors(ExamplePack.TEXT));
    assertTrue(readerTakes(ExamplePack.TEXT));
  }

  @Test
  void theStarterKeepsIt() throws IOException {
    assertEquals(0, Run.of("starter", dir).code());
    assertEquals(List.of(), errors(Files.readString(dir.resolve("pack.yaml"))));
  }

  @Test
  void theDemoKeepsIt() throws IOException {
    Path demo = Path.of("src", "demo", "mg-3107", "pack.yaml");
    assertEquals(List.of(), errors(Files.readString(demo)));
  }

  /** Spots are in neither of the examples above. */
  @Test
  void pointsAndCalloutsKeepIt() throws IOException {
    String spots =
        ExamplePack.TEXT.replace(
            "note: bar tacks 10",
            "points: {p1: {x: 50, y: -2.5}, p2: {element: waist}},"
                + " callouts: {c1: {point: p1, text: {en: Tab}}}");
    assertEquals(List.of(), errors(spots));
    assertTrue(readerTakes(spots));
    for (String right : List.of("{element: waist, x: 2, y: 3}", "{across: 5%, down: 50.5%}")) {
      String text = spots.replace("{x: 50, y: -2.5}", right);
      assertEquals(List.of(), errors(text));
      assertTrue(readerTakes(text), right);
    }
    for (String wrong :
        List.of(
            "{x: 50}",
            "{element: waist, x: 2}",
            "{element: waist, across: 5%, down: 5%}",
            "{x: 1, y: 2, across: 5%, down: 5%}",
            "{across: 5, down: 5%}",
            "{x: fifty, y: 2}")) {
      String text = spots.replace("{x: 50, y: -2.5}", wrong);
      assertFalse(errors(text).isEmpty(), "the schema takes " + wrong);
      assertFalse(readerTakes(text), "the reader takes " + wrong);
    }
  }

  @Test
  void whatIsWrittenKeepsIt() throws IOException, Refusal {
    byte[] bytes = ExamplePack.TEXT.getBytes(StandardCharsets.UTF_8);
    Pack pack = PackReader.read(Path.of("pack.yaml"), bytes).pack();
    assertEquals(List.of(), errors(PackWriter.write(pack)));
  }

  /** Each slip in the form is one to both. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "format: placket-pack/1 | format: placket-pack/2",
        "format: placket-pack/1 | formt: placket-pack/1",
        "name: Flat sheet | nam: Flat sheet",
        "role: front | role: frnt",
        "role: front | roll: front",
        "unit: 10mm | unit: 10 miles",
        "columns: [2fr, 1fr] | columns: [2fr, 1ft]",
        "columns: [2fr, 1fr] | columns: 2fr",
        "size: 1.8mm | size: 2mm",
        "at: bottom-right | at: lower-right",
        "width: 40mm | width: [40mm]",
        "rows: [10mm] | rows: [1fr]",
        "csv: points.csv | cvs: points.csv",
        "windows: true | windows: 1",
        "file: front.svg, | ",
        "sample: \"{sample-size}\" | sample: {of: M}",
        "sheets: | leaves:",
      })
  void aSlipIsOneToSchemaAndReader(String right, String wrong) throws IOException {
    assertTrue(ExamplePack.TEXT.contains(right), right);
    String text = ExamplePack.TEXT.replace(right, wrong == null ? "" : wrong);
    assertFalse(errors(text).isEmpty(), "the schema takes " + wrong);
    assertFalse(readerTakes(text), "the reader takes " + wrong);
  }
}
