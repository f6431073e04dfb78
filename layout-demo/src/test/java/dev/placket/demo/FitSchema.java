package dev.placket.demo;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Holds a {@code fit.json} against its schema, by a validator that this project did not write. */
public final class FitSchema {
  private FitSchema() {}

  /** What is wrong with it; nothing where it keeps the schema. */
  public static List<String> errors(String json) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(FitSchema.class.getResourceAsStream("/placket-fit-1.schema.json"))) {
      String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(schema, InputFormat.JSON)
          .validate(json, InputFormat.JSON)
          .stream()
          .map(Error::toString)
          .toList();
    }
  }
}
