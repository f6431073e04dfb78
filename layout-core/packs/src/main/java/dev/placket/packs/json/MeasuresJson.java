package dev.placket.packs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.placket.packs.measure.GradedPoint;
import dev.placket.packs.measure.MeasureList;
import dev.placket.packs.measure.Rounding;
import dev.placket.packs.measure.SizeGroup;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The points of measure as fields of {@code fit.json}: exact values in the unit of the list. */
final class MeasuresJson {
  private MeasuresJson() {}

  static void write(JsonGenerator json, MeasureList list) throws IOException {
    json.writeObjectFieldStart("measurements");
    json.writeStringField("unit", list.unit().sign());
    json.writeStringField("sample", list.table().sample());
    json.writeArrayFieldStart("sizes");
    for (SizeGroup group : list.table().groups()) {
      json.writeStartObject();
      json.writeStringField("group", group.name());
      json.writeStringField("base", group.base());
      json.writeArrayFieldStart("sizes");
      for (String size : group.sizes()) {
        json.writeString(size);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("points");
    for (GradedPoint point : list.table().points()) {
      point(json, list, point);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void point(JsonGenerator json, MeasureList list, GradedPoint point)
      throws IOException {
    String code = point.point().code();
    json.writeStartObject();
    json.writeStringField("point", code);
    json.writeStringField("name", list.names().getOrDefault(code, ""));
    json.writeBooleanField("typed", point.typed());
    number(json, list, "plus", point.point().plus());
    number(json, list, "minus", point.point().minus());
    json.writeArrayFieldStart("values");
    for (Map.Entry<String, BigDecimal> value : point.values().entrySet()) {
      json.writeStartObject();
      json.writeStringField("size", value.getKey());
      number(json, list, "value", value.getValue());
      json.writeArrayFieldStart("shown");
      for (Rounding each : list.shown()) {
        json.writeString(each.text(each.nearest(value.getValue())) + " " + each.unit().sign());
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void number(
      JsonGenerator json, MeasureList list, String name, @Nullable BigDecimal mm)
      throws IOException {
    if (mm == null) {
      json.writeNullField(name);
    } else {
      json.writeNumberField(name, list.inUnit(mm));
    }
  }
}
