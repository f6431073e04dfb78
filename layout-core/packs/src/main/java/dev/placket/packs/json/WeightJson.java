package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.packs.placed.PackWeight;
import dev.placket.packs.report.Numbers;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Writes what a pack weighs. */
final class WeightJson {
  private static final int DENSITY_DECIMALS = 3;

  private WeightJson() {}

  static void write(JsonGenerator json, @Nullable PackWeight weight) throws IOException {
    if (weight == null) {
      json.writeNullField("weight");
      return;
    }
    json.writeObjectFieldStart("weight");
    json.writeNumberField("limit", weight.limit());
    json.writeNumberField("bytes", weight.bytes());
    json.writeNumberField("over", weight.over());
    PackWeight.Lowered lowered = weight.lowered();
    if (lowered == null) {
      json.writeNullField("lowered");
    } else {
      json.writeObjectFieldStart("lowered");
      json.writeNumberField("perInch", Numbers.rounded(lowered.perInch(), DENSITY_DECIMALS));
      json.writeNumberField("foreseen", lowered.foreseen());
      json.writeEndObject();
    }
    json.writeArrayFieldStart("heaviest");
    for (PackWeight.Heavy heavy : weight.heaviest()) {
      json.writeStartObject();
      json.writeStringField("source", heavy.name());
      json.writeNumberField("bytes", heavy.bytes());
      json.writeEndObject();
    }
    json.writeEndArray();
    if (!weight.parts().isEmpty()) {
      json.writeArrayFieldStart("parts");
      for (PackWeight.Part part : weight.parts()) {
        json.writeStartObject();
        json.writeStringField("file", part.name());
        json.writeNumberField("bytes", part.bytes());
        json.writeNumberField("first", part.first());
        json.writeNumberField("last", part.last());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }
}
