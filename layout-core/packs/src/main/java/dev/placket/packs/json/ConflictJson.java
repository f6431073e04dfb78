package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.layout.fit.Conflict;
import dev.placket.layout.fit.ConflictText;
import dev.placket.layout.fit.Relief;
import dev.placket.layout.fit.Requirement;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;

/** A conflict as the field {@code conflict} of a sheet in {@code fit.json}. */
public final class ConflictJson {
  private ConflictJson() {}

  /**
   * Writes the field.
   *
   * @param json inside the object of a sheet
   * @param conflict why nothing fits there
   * @param captions what the paragraph calls the flat of an id
   */
  public static void write(JsonGenerator json, Conflict conflict, Map<String, String> captions)
      throws IOException {
    json.writeObjectFieldStart("conflict");
    json.writeStringField("said", ConflictText.of(conflict, id -> captions.getOrDefault(id, id)));
    json.writeBooleanField("proven", conflict.proven());
    json.writeBooleanField("provenMinimal", conflict.provenMinimal());
    json.writeNumberField("steps", conflict.steps());
    json.writeArrayFieldStart("requirements");
    for (Requirement r : conflict.requirements()) {
      json.writeStartObject();
      json.writeStringField("kind", word(r.kind()));
      json.writeArrayFieldStart("of");
      for (String of : r.of()) {
        json.writeString(of);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("reliefs");
    for (Relief r : conflict.reliefs()) {
      json.writeStartObject();
      json.writeStringField("kind", word(r.kind()));
      json.writeStringField("of", r.of());
      Relief.Edge edge = r.edge();
      json.writeStringField("edge", edge == null ? null : word(edge));
      json.writeNumberField("amount", r.amount());
      json.writeStringField("unit", word(r.unit()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String word(Enum<?> of) {
    return of.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
